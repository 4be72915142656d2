// A person who does what the card says and nothing else, with meat of our own: what was done is counted.

import assert from "node:assert/strict";
import { coreOnThePit } from "./cook.mjs";

/** What carryover adds in this scenario, degrees Fahrenheit, and within how many minutes. */
const CARRYOVER = { degrees: 4, minutes: 8 };
/** Longer than any cook of these tests. */
const MOST_MINUTES = 300;

export class Follower {
  /** Minutes since the pieces went on. */
  minute = 0;
  /** By piece: the minute of its pull, and its core then. */
  pulled = new Map();
  /** Openings of the lid, pieces put back, readings at rest, and what the card said, in order. */
  openings = 0;
  putBack = 0;
  proofs = 0;
  said = [];

  /** `slow`: the time constant of each piece, minutes; `pit`: what its thermometer shows at a minute. */
  constructor(person, { slow, pit = () => 250 }) {
    Object.assign(this, { person, slow, pit });
  }

  get page() {
    return this.person.page;
  }

  /** The core of a piece now, degrees Fahrenheit. */
  core(piece) {
    const off = this.pulled.get(piece);
    if (off === undefined) return coreOnThePit(this.minute, this.slow[piece - 1]);
    const rested = Math.min(1, (this.minute - off.minute) / CARRYOVER.minutes);
    return off.core + CARRYOVER.degrees * rested;
  }

  async wait(minutes) {
    await this.page.clock.fastForward(minutes * 60_000);
    this.minute += minutes;
  }

  /** Goes on until the card says what matches `end`; the card's words then. */
  async until(end) {
    for (let steps = 0; steps < 1200 && this.minute < MOST_MINUTES; steps += 1) {
      if (await this.page.locator(".round").isVisible()) {
        await this.inRound();
        continue;
      }
      const { what, due } = await this.person.nextStep();
      if (due && this.said.at(-1) !== what) this.said.push(what);
      if (due && end.test(what)) return what;
      if (!due) await this.wait(0.5);
      else await this.act(what);
    }
    return assert.fail(`it leads nowhere: ${this.said.slice(-12).join(" | ")}`);
  }

  async act(what) {
    const keep = this.person.button(/is right$/);
    if (await keep.isVisible()) {
      await keep.tap();
      this.person.taps += 1;
      return this.settled();
    }
    if (/^Check Piece(?!.*at rest)/.test(what)) this.openings += 1;
    if (/back on$/.test(what)) this.putBack += 1;
    const piece = Number(/Pieces? (\d+)/.exec(what)?.[1]);
    if (/^Pull/.test(what)) await this.note(piece, ".next");
    await this.page.locator(".dock .main-action").tap();
    this.person.taps += 1;
    if (/^Check the pit|^Tend the fire/.test(what)) {
      await this.person.typeReading(String(this.pit(this.minute)));
    }
    await this.settled();
  }

  async inRound() {
    // By now it may have ended by itself.
    const title = await this.page.evaluate(() => document.querySelector(".round h1")?.innerText);
    if (title === undefined) return this.settled();
    if (await this.page.locator(".round .keys").isVisible()) {
      const piece = Number(/Piece (\d+)/.exec(title)?.[1]);
      if (/^Pit$/.test(title)) {
        await this.person.typeReading(String(this.pit(this.minute)));
      } else if (piece) {
        await this.person.twoPlaces();
        if (this.pulled.has(piece)) this.proofs += 1;
        await this.person.typeReading(String(Math.floor(this.core(piece))));
      }
      await this.wait(0.2);
    } else {
      const action = this.page.locator(".round .main-action, .round .question button").first();
      if (await action.isVisible()) {
        // The title may have been read before the look that the button is of.
        const asked = await this.page.locator(".round h1").innerText();
        const piece = Number(/Piece (\d+)/.exec(asked)?.[1]);
        if (/^Pull/.test(asked)) await this.note(piece, ".round");
        await action.tap();
        this.person.taps += 1;
        await this.wait(0.1);
      }
    }
    await this.settled();
  }

  /** A piece comes off; what says so tells at what reading, and from what temperature on. */
  async note(piece, where) {
    const why = await this.page.locator(where).innerText();
    const told = /It read (\d+)\s°F\. It comes off at (\d+)\s°F\./.exec(why);
    assert.ok(told && Number(told[1]) >= Number(told[2]), why);
    this.pulled.set(piece, { minute: this.minute, core: this.core(piece) });
  }

  /** Waits until the app has taken a new look, or has led on. */
  async settled() {
    await this.page.evaluate(() => new Promise((done) => requestAnimationFrame(() => setTimeout(done, 0))));
    await this.page.locator(".next[aria-busy=false], .round[aria-busy=false]").first().waitFor();
  }
}
