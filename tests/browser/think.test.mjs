// What takes long is worked out on a second thread, and by the page itself where that cannot be.

import assert from "node:assert/strict";
import { test } from "node:test";
import { EVENING, FOUR, Person } from "./cook.mjs";
import { goOffline, keptOffline, openApp, siteAndPhone, started } from "./harness.mjs";

/** Runs before the app: counts what is asked of second threads, and lets a test hold answers back. */
function watchThreads() {
  const seen = { threads: 0, asked: 0, answered: 0, hold: false, held: [], last: undefined };
  window.threads = seen;
  const Real = window.Worker;
  if (!Real) return;
  window.Worker = class extends Real {
    constructor(...all) {
      super(...all);
      seen.threads += 1;
      seen.last = this;
    }
    postMessage(message, ...more) {
      if (message instanceof Uint8Array) seen.asked += 1;
      return super.postMessage(message, ...more);
    }
    set onmessage(hear) {
      super.onmessage = hear && ((event) => {
        const pass = () => {
          seen.answered += 1;
          hear.call(this, event);
        };
        if (seen.hold) seen.held.push(pass);
        else pass();
      });
    }
  };
}

/** A phone with one breast on the pit, its forecast made; `before` runs ahead of the app. */
async function cooking(t, { options = {}, before } = {}) {
  const { site, phone } = await siteAndPhone(t, options);
  await phone.context.addInitScript(watchThreads);
  if (before) await before(phone);
  const person = new Person(phone);
  await openApp(phone, site);
  await person.tap("New cook");
  await person.setOutAll(FOUR.slice(0, 1));
  await person.goTo("Cook");
  await person.tap("Put on: Piece 1");
  await person.stored("Piece 1 on");
  await person.nextStep();
  return { site, phone, person };
}

const counts = (person) => person.page.evaluate(() => ({ ...window.threads, held: undefined, last: undefined }));

/** Types a reading and waits until it is stored. */
async function read(person, reading) {
  await person.openPiece(1);
  await person.typeReading(reading);
  await person.stored(`reads ${reading}`);
}

/** When the piece is to come off, as its row tells it once the forecast is fresh. */
async function told(person) {
  await person.goTo("Cook");
  await person.nextStep();
  return person.page.locator(".piece").first().innerText();
}

test("a second thread of the program answers every question", async (t) => {
  const { phone, person } = await cooking(t);
  await read(person, "120");
  await told(person);
  const workers = phone.page.workers().map((worker) => new URL(worker.url()).pathname.split("/").at(-1));
  assert.deepEqual(workers, ["think.js"]);
  const { threads, asked, answered } = await counts(person);
  assert.equal(threads, 1);
  assert.ok(asked > 0);
  assert.equal(answered, asked);
});

test("a browser without such threads gives the same answers, and nothing is said of it", async (t) => {
  const [rows, said] = [[], []];
  for (const without of [false, true]) {
    const before = (phone) =>
      without && phone.context.addInitScript(() => Object.defineProperty(window, "Worker", { value: undefined }));
    const { phone, person } = await cooking(t, { options: { time: EVENING }, before });
    await phone.context.clock.fastForward("25:00");
    await read(person, "121");
    rows.push(await told(person));
    assert.equal((await counts(person)).answered > 0, !without);
    said.push(await phone.page.locator("[role=alert], [role=status]").allInnerTexts());
  }
  assert.equal(rows[1], rows[0]);
  assert.deepEqual(said[1], said[0]);
});

test("a thread that cannot start is tried again once, and then the page thinks for itself", async (t) => {
  const before = (phone) => phone.context.route("**/think.js", (route) => route.abort());
  const { person } = await cooking(t, { before });
  await read(person, "120");
  await told(person);
  const { threads, answered } = await counts(person);
  assert.deepEqual({ threads, answered }, { threads: 2, answered: 0 });
});

test("a thread that ends without a word is replaced, and its question answered", async (t) => {
  const { phone, person } = await cooking(t, { options: { time: EVENING } });
  const before = await counts(person);
  // What the next question meets is no living thread.
  await person.page.evaluate(() => {
    const { last } = window.threads;
    Object.getPrototypeOf(Object.getPrototypeOf(last)).terminate.call(last);
  });
  await read(person, "120");
  await person.page.waitForFunction((asked) => window.threads.asked > asked, before.asked);
  await phone.context.clock.runFor(30_000);
  await told(person);
  assert.equal((await counts(person)).threads, before.threads + 1);
});

test("of several questions while one is answered only the newest is put", async (t) => {
  const { person } = await cooking(t);
  const before = await counts(person);
  await person.page.evaluate(() => (window.threads.hold = true));
  for (const reading of ["120", "121", "122"]) await read(person, reading);
  await person.goTo("Cook");
  await person.page.waitForFunction(() => window.threads.held.length > 0);
  assert.equal((await counts(person)).asked, before.asked + 1);
  await person.page.evaluate(() => {
    window.threads.hold = false;
    for (const pass of window.threads.held.splice(0)) pass();
  });
  await told(person);
  assert.equal((await counts(person)).asked, before.asked + 2);
});

test("with no network and no server the second thread starts too", async (t) => {
  const { site, phone, person } = await cooking(t);
  await keptOffline(phone.page);
  await goOffline({ site, phone });
  await phone.page.reload();
  await started(phone.page);
  await told(person);
  const { threads, answered } = await counts(person);
  assert.equal(threads, 1);
  assert.ok(answered > 0);
});
