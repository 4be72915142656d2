// What an alarm does besides its notification: it vibrates, counts on the icon and in the title, and
// the screen stays on while a piece is on the pit. The browser here has no motor and no icon, so what
// the page asks of it is written down.

import assert from "node:assert/strict";
import { test } from "node:test";
import { setHidden, settle } from "./asleep.mjs";
import { EVENING, FOUR, Person } from "./cook.mjs";
import { keptOffline, openApp, siteAndPhone } from "./harness.mjs";

/** The trial of the alarms is to be over within this, in milliseconds. */
const TRIAL = 10_000;

test("\"Test my alarms\" proves each part within ten seconds", async (t) => {
  const { phone, person } = await listened(t);
  await phone.context.grantPermissions(["notifications", "screen-wake-lock"]);
  await person.tap("New cook");
  await person.goTo("More");
  await person.tap("Alarms on this phone");
  const before = Date.now();
  await person.tap("Test my alarms");
  const rows = phone.page.locator(".report li");
  await rows.first().waitFor();
  assert.ok(Date.now() - before <= TRIAL);
  const told = await report(phone);
  assert.match(told, /✓ A tune played/);
  assert.match(told, /✓ The browser said it would vibrate/);
  assert.match(told, /✓ A notification was shown/);
  assert.match(told, /✓ The screen can be kept on/);
  assert.match(told, /✗ The app runs in a browser tab/);
  const [worker] = phone.context.serviceWorkers();
  const shown = await worker.evaluate(async () =>
    (await registration.getNotifications()).map(({ title }) => title),
  );
  assert.deepEqual(shown, ["Test alarm"]);
  assert.ok((await asked(phone)).some(({ what }) => what === "vibrate"));
});

test("what does not work is said, not hidden", async (t) => {
  const { phone, person } = await listened(t, { wakeLock: "refused" });
  await person.tap("New cook");
  await person.goTo("More");
  await person.tap("Alarms on this phone");
  await person.tap("Test my alarms");
  await phone.page.locator(".report li").first().waitFor({ timeout: TRIAL });
  const told = await report(phone);
  assert.match(told, /✗ The screen cannot be kept on now/);
  assert.match(told, /✗ No notification was shown/);
});

test("permission to notify is not asked for by opening the app or starting a cook", async (t) => {
  const { phone, person } = await listened(t);
  await onThePit(person);
  assert.ok(!(await asked(phone)).some(({ what }) => what === "permission"));
});

test("between tunes the audio sleeps: awake it takes processor time even in silence", async (t) => {
  const { phone, person } = await listened(t);
  await onThePit(person);
  await phone.page.waitForFunction(() => window.audioOfTest.state === "suspended");
});

test("the screen stays on from the first piece on, and again on coming back", async (t) => {
  const { phone, person } = await listened(t);
  const locks = async () => (await asked(phone)).filter(({ what }) => what === "awake").length;
  assert.equal(await locks(), 0);
  await onThePit(person);
  await phone.page.waitForFunction(() => window.askedByTest.some(({ what }) => what === "awake"));
  const before = await locks();
  // The browser itself lets go of the lock when the page is hidden.
  await phone.page.evaluate(() => window.lockOfTest.release());
  await setHidden(phone.page, true);
  await setHidden(phone.page, false);
  await phone.page.waitForFunction(
    (count) => window.askedByTest.filter(({ what }) => what === "awake").length > count,
    before,
  );
});

test("an alarm vibrates, and counts on the icon and in the title until it is answered", async (t) => {
  const { phone, person } = await listened(t, {}, { time: EVENING });
  await onThePit(person);
  const waiting = async () => /^\((\d+)\) \S/.exec(await phone.page.title())?.[1];
  for (let minute = 0; minute < 90 && !(await waiting()); minute += 1) {
    await phone.context.clock.runFor(60_000);
    await settle(phone);
  }
  const asks = await asked(phone);
  assert.ok(asks.some(({ what }) => what === "vibrate"));
  assert.equal(asks.findLast(({ what }) => what === "badge").value, Number(await waiting()));
  await person.goTo("Log");
  const done = person.page.locator(".alarm").getByRole("button", { name: "Got it" });
  while ((await done.count()) > 0) {
    await done.first().tap();
    await settle(phone);
  }
  await phone.page.waitForFunction(() => document.title === "Pull Order");
  assert.equal((await asked(phone)).findLast(({ what }) => what === "badge").value, 0);
});

/** The app open on a phone that writes down what is asked of it. */
async function listened(t, { wakeLock } = {}, options = {}) {
  const { site, phone } = await siteAndPhone(t, options);
  await phone.context.addInitScript((refused) => {
    window.askedByTest = [];
    const note = (what, value) => window.askedByTest.push({ what, value });
    navigator.vibrate = (pattern) => {
      note("vibrate", pattern);
      return true;
    };
    navigator.setAppBadge = async (count) => note("badge", count);
    const askPermission = Notification.requestPermission;
    Notification.requestPermission = function () {
      note("permission");
      return askPermission.call(Notification);
    };
    window.AudioContext = class extends AudioContext {
      constructor() {
        super();
        window.audioOfTest = this;
      }
    };
    const take = navigator.wakeLock.request.bind(navigator.wakeLock);
    navigator.wakeLock.request = async (kind) => {
      note("awake", kind);
      if (refused) throw new DOMException("no", "NotAllowedError");
      window.lockOfTest = await take(kind);
      return window.lockOfTest;
    };
  }, wakeLock === "refused");
  await openApp(phone, site);
  await keptOffline(phone.page);
  return { phone, person: new Person(phone) };
}

async function onThePit(person) {
  await person.tap("New cook");
  await person.setOutAll(FOUR);
  await person.tap("Put all 4 on");
  await person.stored("on");
}

/** What the trial says, a line for each part. */
async function report(phone) {
  const rows = await phone.page.locator(".report li").allInnerTexts();
  return rows.map((row) => row.replace(/\s+/g, " ")).join("\n");
}

function asked(phone) {
  return phone.page.evaluate(() => window.askedByTest);
}
