// One page for every engine: what a person does with a phone, in terms that all drivers have.

import assert from "node:assert/strict";
import { mkdtemp, readFile, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { basename, join } from "node:path";
import { firstScripts } from "./first.mjs";

/** A phone's screen, as in the other browser tests. */
const SCREEN = { width: 360, height: 640 };
/** After this a wait has failed. It only bounds a failure: no wait lasts as long on a working page. */
const PATIENCE = 90_000;
/** What browsers say of our policy that is no breach of it. */
const HARMLESS = /Unrecognized Content-Security-Policy directive/;

/** A browser of one engine on a profile of its own, with the page that is in front. */
export class Page {
  /** What went wrong in any page: errors, and breaches of the security policy. */
  problems = [];
  /** Requests to another origin than the site's. */
  foreign = [];
  /** The page's own lines on the console. */
  console = [];
  #browser;
  #windows = [];
  #window;
  #profile;
  #downloads = [];
  #prints = 0;
  #origin;
  #address;

  /**
   * Starts a browser on a new, empty profile. `time`: when the pages' clock starts, milliseconds.
   * `locale`: the phone's. `first`: more scripts to run before the page's own.
   */
  static async open(Engine, { url, time, locale = "en-US", first = [], screen = SCREEN }) {
    const page = new Page();
    page.#profile = await mkdtemp(join(tmpdir(), "phone-"));
    page.#address = url;
    page.#origin = new URL(url).origin;
    const scripts = [...firstScripts(time), ...first];
    const options = { ...screen, origin: page.#origin, locale, first: scripts };
    page.#browser = new Engine(page.#profile, options, (message) => page.#hear(message));
    await page.reopen();
    return page;
  }

  /** Starts the browser again on the same profile. */
  async reopen() {
    await this.#browser.switchOn();
    this.#windows = [];
    await this.newWindow();
  }

  /** Opens one more window and brings it to the front. Returns its number. */
  async newWindow() {
    this.#windows.push(await this.#browser.newWindow());
    return this.turnTo(this.#windows.length - 1);
  }

  /** From now on all is done in this window. */
  turnTo(number) {
    this.#window = this.#windows[number];
    return number;
  }

  /** Loads the app, at one of its addresses, and waits until it has started. */
  async go(fragment = "") {
    await this.#window.go(`${this.#address}${fragment && `#${fragment}`}`);
    await this.started();
  }

  /** Waits until the program has taken the loading text away. */
  async started() {
    await this.until(() => document.readyState === "complete" && !document.querySelector("#loading"));
  }

  /** Shows another screen of the running app. */
  async show(fragment) {
    await this.run((address) => {
      if (location.hash !== address) location.hash = address;
    }, `#${fragment}`);
    await this.until((address) => location.hash === address, `#${fragment}`);
  }

  /** Loads the page anew, as a person does by pulling it down. */
  async reload() {
    await this.run(() => {
      window.testOld = true;
    });
    // The answer may be lost with the page that was to give it.
    this.run(() => void setTimeout(() => location.reload())).catch(() => {});
    await this.until(() => window.testOld === undefined);
    await this.started();
  }

  /** Runs a function in the page; arguments and result as JSON. */
  run(what, ...given) {
    return this.#window.run(`return JSON.stringify((await (${what})(...${JSON.stringify(given)})) ?? null)`);
  }

  /** Waits until a function in the page returns something true, and returns that. */
  async until(what, ...given) {
    const deadline = Date.now() + PATIENCE;
    for (let last; ; ) {
      // A page on its way to another answers nothing.
      const found = await this.run(what, ...given).catch((error) => void (last = error));
      if (found) return found;
      assert.ok(Date.now() < deadline, `it never came about: ${what} ${JSON.stringify(given)} ${last ?? ""}\n${await this.text().catch(() => "")}`);
      await new Promise((resolve) => setTimeout(resolve, 30));
    }
  }

  /** Waits until something is seen; by a selector and, if given, a part of its name. Returns its name. */
  async see(css, named) {
    return this.until((wanted) => {
      const found = testFinder.find(wanted);
      return found && (testFinder.name(found) || " ");
    }, wantedBy(css, named));
  }

  /** Whether it is seen now. */
  async sees(css, named) {
    return this.run((wanted) => testFinder.find(wanted) !== undefined, wantedBy(css, named));
  }

  /** How many of them there are. */
  async count(css) {
    return this.run((css) => document.querySelectorAll(css).length, css);
  }

  /** Waits until there are so many of them. */
  async untilCount(css, count) {
    await this.until((css, count) => document.querySelectorAll(css).length === count, css, count);
  }

  /** The text of the page, or of a part of it. */
  async text(css = "body") {
    return this.run((css) => document.querySelector(css)?.innerText ?? "", css);
  }

  /** Taps it, when it is there and has come to rest. The last one with `nth` -1. */
  async tap(css, named, nth = 0) {
    await this.see(css, named);
    const { x, y } = await this.#bounded(this.run((wanted) => testFinder.settled(wanted), { ...wantedBy(css, named), nth }), css);
    await this.#window.click(x, y);
  }

  /** Types into a field, in place of what was there, and leaves it. */
  async type(css, text) {
    await this.tap(css);
    await this.until((css) => document.activeElement === document.querySelector(css), css);
    await this.#window.clearAndType(text);
    await this.until((css, text) => document.querySelector(css).value === text, css, text);
    await this.run((css) => document.querySelector(css).blur(), css);
  }

  /** Lets so many minutes pass at once, as if the page had slept. */
  async pass(minutes) {
    await this.run((millis) => testClock(millis), minutes * 60_000);
  }

  /** A picture of what is seen, as PNG. */
  picture() {
    return this.#window.picture();
  }

  /** The page printed on paper of this size with printer margins, all in millimetres. */
  pdf(paper) {
    return this.#window.pdf(paper);
  }

  /** Answers the next file chooser with a file of this name and text. */
  async chooseNext(path) {
    await this.#window.chooseNext(path);
  }

  /** Where a file may lie as long as this browser's profile does. */
  place(name) {
    return join(this.#profile, name);
  }

  /** The next file that was downloaded: its name and text. */
  async downloaded() {
    return untilHere(async () => this.#downloads.shift() ?? (await this.#browser.downloaded?.()), "nothing was downloaded");
  }

  /** Waits until the page has asked to be printed. */
  async printed() {
    return untilHere(async () => this.#prints > 0, "nothing was printed");
  }

  /** Whether a file was downloaded that `downloaded` has not told yet. */
  async hasDownload() {
    return this.#downloads.length > 0 || (await this.#browser.downloaded?.()) !== undefined;
  }

  /** Ends the browser without warning, as a phone short of memory does. */
  async kill() {
    await this.#browser.kill();
  }

  /** Kills the process that keeps the storage, if the engine has one by itself. */
  async killStorageProcess() {
    return this.#browser.killStorageProcess();
  }

  /** Ends the browser and throws its profile away. */
  async throwAway() {
    await this.#browser.throwAway();
    await rm(this.#profile, { recursive: true, force: true, maxRetries: 10 });
  }

  async #bounded(work, what) {
    let timer;
    const late = new Promise((_, reject) => {
      timer = setTimeout(() => reject(new Error(`it never came to rest: ${what}`)), PATIENCE);
    });
    return Promise.race([work, late]).finally(() => clearTimeout(timer));
  }

  async #hear({ news, url, text, path, name }) {
    if (news === "request") {
      const { protocol, origin } = new URL(url);
      if (protocol.startsWith("http") && origin !== this.#origin) this.foreign.push(url);
    } else if (news === "download") {
      this.#downloads.push({ name: name ?? basename(path), text: text ?? (await readFile(path, "utf8")) });
    } else if (news === "print") {
      this.#prints += 1;
    } else if (news === "error") {
      this.problems.push(text);
    } else if (news === "console") {
      this.console.push(text);
      const wrong = /Content.Security.Policy|CONSOLE JS ERROR|CONSOLE SECURITY ERROR/i.test(text);
      if (wrong && !HARMLESS.test(text)) this.problems.push(text);
    }
  }
}

/** Waits until something in the test itself is true. */
async function untilHere(found, complaint) {
  const deadline = Date.now() + PATIENCE;
  for (;;) {
    const value = await found();
    if (value) return value;
    assert.ok(Date.now() < deadline, complaint);
    await new Promise((resolve) => setTimeout(resolve, 50));
  }
}

function wantedBy(css, named) {
  return { css, named: named instanceof RegExp ? named.source : named };
}
