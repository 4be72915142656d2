// A page loaded anew in every stage of a cook goes on where it was: with ears open for what rings.

import assert from "node:assert/strict";
import { test } from "node:test";
import { settle } from "./asleep.mjs";
import { cookWith } from "./begun.mjs";
import { FOUR } from "./cook.mjs";
import { started } from "./harness.mjs";

/** A cook of these pieces, with dinner at this time, and an ear for what rings. */
async function heard(t, pieces, dinner) {
  const { phone, person, rings } = await cookWith(t, pieces, { ears: true });
  if (dinner) {
    await phone.page.locator("#dinner").fill(dinner);
    await phone.page.locator("#dinner").blur();
    await person.stored("Dinner");
  }
  return new Walk(phone, person, rings);
}

class Walk {
  constructor(phone, person, rings) {
    Object.assign(this, { phone, person, rings, page: phone.page });
  }

  /** What the screen says: where it is, what is to be done, whether now, what calls, and the pieces. */
  async told() {
    await this.page.locator(".next[aria-busy=false], .round[aria-busy=false]").first().waitFor();
    await settle(this.phone);
    return this.page.evaluate(() => {
      const words = (selector) => [...document.querySelectorAll(selector)].map((one) => one.innerText);
      const due = document.querySelector(".next")?.classList.contains("due") ?? null;
      const waiting = /^\(\d+\)/.exec(document.title)?.[0] ?? null;
      const act = words(".dock .main-action, .round .question button");
      // A countdown goes on meanwhile.
      const what = words(".next h2, .round h1, .round-pieces li");
      return { at: location.hash, what, due, act, waiting, names: words(".piece .name"), offers: words(".piece .act") };
    });
  }

  /** Loads the page anew: it says the same as before, and nothing rings but what falls due only then. */
  async again(moment) {
    const before = await this.told();
    const rung = this.rings.length;
    const loaded = await this.page.evaluate(() => Date.now());
    await this.page.reload();
    await started(this.page);
    assert.deepEqual(await this.told(), before, moment);
    await this.phone.context.clock.runFor(30_000);
    await settle(this.phone);
    const early = this.rings.slice(rung).filter(({ due, rang }) => due < loaded || rang < due);
    assert.deepEqual(early, [], `${moment}: it rings`);
    return before;
  }

  /** What was told, as the log has it; that nobody saw the clock meanwhile the app adds by itself. */
  async lines() {
    const lines = await this.person.logLines();
    return lines.filter((line) => !/time at temperature starts over/.test(line));
  }

  /** The same on the cook's screen, with its log. */
  async atCook(moment) {
    const lines = await this.lines();
    await this.person.goTo("Cook");
    const told = await this.again(moment);
    assert.deepEqual(await this.lines(), lines, moment);
    await this.person.goTo("Cook");
    return told;
  }

  /** Lets minutes go by until the card says this, and it is due. */
  async until(what) {
    for (let minute = 0; minute < 120; minute += 1) {
      const next = await this.person.nextStep();
      if (next.due && what.test(next.what)) return;
      if (next.due && /^Check the pit|^Tend the fire|^Feed/.test(next.what)) {
        await this.page.locator(".dock .main-action").tap();
        if (/^Check|^Tend/.test(next.what)) await this.person.typeReading("250");
        await settle(this.phone);
        continue;
      }
      await this.phone.context.clock.fastForward(60_000);
      await settle(this.phone);
    }
    assert.fail(`it never says ${what}`);
  }
}

test("loaded anew in every stage, a cook says the same, rings nothing twice, and loses nothing", async (t) => {
  // Of one size, so that both are read at one opening.
  const walk = await heard(t, [FOUR[0], FOUR[0]], "20:30");
  const { phone, person, page } = walk;
  await person.goTo("Cook");
  await walk.atCook("raw, before anything is due");

  await walk.until(/^Light|^Season|fridge/);
  const calls = await walk.atCook("raw, with something due");
  assert.ok(calls.due);

  for (const piece of [1, 2]) {
    await person.tap(`Put on: Piece ${piece}`);
    await person.stored(`Piece ${piece} on`);
  }
  await person.nextStep();
  const on = await walk.atCook("on");
  assert.deepEqual(on.offers, []);

  await walk.until(/^Check Piece/);
  await settle(phone);
  assert.ok(walk.rings.length > 0, "the check called");
  const check = await walk.atCook("a check is due and called");
  assert.ok(check.due);

  await person.tap(/^Lid up/);
  await page.locator(".round[aria-busy=false]").waitFor();
  await walk.again("in a round, before the first piece");
  if (/Pit/.test(await page.locator(".round h1").innerText())) await person.typeReading("250");
  await person.typeReading("166");
  await page.locator(".round h1", { hasText: /^Pull Piece 1/ }).waitFor();
  const round = await walk.again("in a round, with a pull asked for");
  assert.match(round.at, /round/);
  await page.locator(".round .main-action").tap();
  await page.locator(".round h1", { hasText: /^Piece 2/ }).waitFor();
  await walk.again("in a round, at the second piece");
  await person.tap("Lid closed");
  await page.locator(".next").waitFor();
  await walk.atCook("one pulled, and the lid is down again");

  await person.goTo("Rest");
  await person.tap("Cover: Piece 1");
  await person.stored("covered");
  await person.goTo("Cook");
  await walk.atCook("covered");
});

test("loaded two seconds after a pull, it does not ring that the piece can be proved", async (t) => {
  const walk = await heard(t, FOUR.slice(3));
  const { phone, person, page } = walk;
  await person.tap("Put the piece on");
  await person.stored("on");
  await phone.context.clock.fastForward("01:05:00");
  await person.openPiece(1);
  await person.typeReading("158");
  await person.stored("reads 158");
  await person.nextStep();
  if (await person.button(/is right$/).isVisible()) await person.tap(/is right$/);
  await person.openPiece(1);
  await person.tap("Pull Piece 1");
  await person.stored("Piece 1 pulled");
  await person.goTo("Cook");
  await phone.context.clock.runFor(2_000);
  await page.reload();
  await started(page);
  await settle(phone);
  const rung = walk.rings.length;
  await phone.context.clock.runFor(60_000);
  await settle(phone);
  assert.deepEqual(walk.rings.slice(rung), []);
  // When its time has come it rings.
  await walk.until(/at rest/);
  await settle(phone);
  assert.ok(walk.rings.slice(rung).some(({ tag }) => /proof_reading_due/.test(tag)));

  await walk.atCook("resting, to be read");
  await page.locator(".dock .main-action").tap();
  await person.twoPlaces();
  await person.typeReading("167");
  await person.stored("reads 167");
  await person.goTo("Cook").catch(() => {});
  await person.nextStep();
  if (await person.button(/is right$/).isVisible()) await person.tap(/is right$/);
  await page.locator(".piece.proved").waitFor();
  await walk.atCook("proved");

  await walk.until(/^Serve|^Portion|bag/);
  await walk.atCook("to be served");
  await page.locator(".dock .main-action").tap();
  await person.stored(/served|bag/i);
  await page.locator(".piece.packed").waitFor();
  await walk.atCook("packed");
});
