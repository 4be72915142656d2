// Alarms ring once, and no later than a second after the page is allowed to run.

import assert from "node:assert/strict";
import { test } from "node:test";
import { WAYS, drawing, setHidden, settle, untilItRings } from "./asleep.mjs";
import { allOn } from "./begun.mjs";
import { FOUR } from "./cook.mjs";
import { started, until } from "./harness.mjs";

const MINUTE = 60_000;
/** An alarm whose time moves this much later calls anew (AGAIN_AFTER in the model). */
const AGAIN_AFTER = 10 * MINUTE;

/** Four pieces on the pit, and an ear for what rings. */
async function fourOn(t) {
  const begun = await allOn(t, FOUR, { ears: true });
  const { page } = begun.phone;
  const reopen = async (url) => {
    await page.goto(url);
    await started(page);
  };
  return { ...begun, reopen };
}

function pageTime(phone) {
  return phone.page.evaluate(() => Date.now());
}

test("over six hours of sleep and waking each alarm rings once, on time or on waking", async (t) => {
  const cook = await fourOn(t);
  const { phone, rings } = cook;
  // From here time goes by only as told, however slow this machine is.
  await phone.context.clock.pauseAt((await pageTime(phone)) + 1000);
  const draw = drawing(7);
  const ways = Object.keys(WAYS);
  const spells = [];
  const end = (await pageTime(phone)) + 6 * 60 * MINUTE;
  while ((await pageTime(phone)) < end) {
    const way = ways[Math.floor(draw() * ways.length)];
    const minutes = 1 + Math.floor(draw() * (way === "inFront" ? 5 : 30));
    const from = await pageTime(phone);
    await WAYS[way](cook, minutes);
    await settle(phone);
    // What was to be done at once on waking is done within this.
    await phone.context.clock.runFor(500);
    await settle(phone);
    spells.push({ way, from, to: await pageTime(phone) });
  }
  // Nobody answers: a fire to be fed, a check, pieces likely past their pull, and a limit that runs out.
  const kinds = rings.map(({ tag }) => /"kind":(\{.*?\}|"\w+")/.exec(tag)[1]);
  for (const kind of ['{"chore_due":"feed_fire"}', '"check_due"', '"likely_past_target"', '"warm_up_limit"']) {
    assert.ok(kinds.includes(kind), `${kind} never rang: ${kinds}`);
  }
  // Once a limit has run out nothing else is asked of its pieces: what the sleep left unheard stays so.
  assert.equal(kinds.at(-1), '"warm_up_limit"');
  onceEach(rings);
  for (const ring of rings) {
    assert.ok(ring.rang >= ring.due, `${ring.tag} rang before it was due`);
    const late = ring.rang - allowed(ring.due, spells);
    assert.ok(late <= 1000, `${ring.tag} rang ${late} ms after the page was allowed to run`);
  }
});

/** When the page was first allowed to run after a moment: at once, or at the end of its sleep. */
function allowed(due, spells) {
  const spell = spells.find(({ from, to }) => from <= due && due <= to);
  if (!spell) return due;
  if (spell.way === "throttled") {
    return spell.from + Math.ceil((due - spell.from) / MINUTE) * MINUTE;
  }
  return ["frozen", "discarded"].includes(spell.way) ? spell.to : due;
}

/** Fails if an alarm rang twice for the same time, or for two times closer than a new call. */
function onceEach(rings) {
  const last = new Map();
  for (const { tag, due } of rings) {
    const before = last.get(tag);
    assert.ok(before === undefined || due - before >= AGAIN_AFTER, `${tag} rang twice`);
    last.set(tag, due);
  }
}

test("an alarm missed in sleep is shown on return, with how late it is", async (t) => {
  const { phone, person, rings } = await fourOn(t);
  await person.goTo("Log");
  await WAYS.frozen({ phone }, 120);
  await bar(phone).filter({ hasText: /Due .*(min|h).* ago/ }).waitFor();
  while (!/Piece 1/.test(await bar(phone).innerText())) await answer(phone, "Got it");
  await until(() => rings.some(({ body }) => /^Due .* ago$/.test(body)));
  assert.match(await phone.page.title(), /^\(\d+\) /, "the title counts what waits");
});

test("snooze calls again after five minutes, done never", async (t) => {
  const { phone, person, rings } = await fourOn(t);
  await person.goTo("Log");
  await untilItRings(phone, rings);
  const { tag } = rings[0];
  await answer(phone, "Snooze 5 min");
  await settle(phone);
  await WAYS.inFront({ phone }, 4);
  await settle(phone);
  assert.equal(count(rings, tag), 1);
  await WAYS.inFront({ phone }, 2);
  await settle(phone);
  assert.equal(count(rings, tag), 2, "it calls again");
  while ((await waiting(phone)) > 0) await answer(phone, "Got it");
  await bar(phone).waitFor({ state: "detached" });
  await WAYS.inFront({ phone }, 6);
  await settle(phone);
  assert.equal(count(rings, tag), 2, "it is done");
});

test("a button of its notification ends an alarm", async (t) => {
  const { phone, person, rings } = await fourOn(t);
  await person.goTo("Log");
  await untilItRings(phone, rings);
  const [worker] = phone.context.serviceWorkers();
  await bar(phone).waitFor();
  const before = await waiting(phone);
  await worker.evaluate(async () => {
    const [notification] = await registration.getNotifications();
    dispatchEvent(new NotificationEvent("notificationclick", { notification, action: "done" }));
  });
  await fewer(phone, before);
});

test("the phone's clock set back an hour rings nothing twice, and is written down", async (t) => {
  const { phone, person, rings } = await fourOn(t);
  await untilItRings(phone, rings);
  const heard = rings.length;
  const now = await pageTime(phone);
  await phone.context.clock.setSystemTime(now - 60 * MINUTE);
  await setHidden(phone.page, false);
  await WAYS.throttled({ phone }, 58);
  await settle(phone);
  assert.equal(rings.length, heard, "nothing rings twice");
  const lines = await person.logLines();
  assert.ok(lines.some((line) => /clock/.test(line)), lines.join("\n"));
});

test("the phone's clock set forward an hour rings what is due by it at once", async (t) => {
  const { phone, person, rings } = await fourOn(t);
  // What is due is known: without a forecast nothing is.
  await person.nextStep();
  await phone.context.clock.setSystemTime((await pageTime(phone)) + 60 * MINUTE);
  await setHidden(phone.page, false);
  await until(() => rings.length > 0);
  await settle(phone);
  onceEach(rings);
});

/** The most urgent of the alarms that wait, as any screen but the live cook shows it. */
function bar(phone) {
  return phone.page.getByRole("region", { name: "Alarms" });
}

/** How many alarms wait, as the page's title says. */
async function waiting(phone) {
  return Number(/^\((\d+)\) /.exec(await phone.page.title())?.[1] ?? 0);
}

/** Answers the alarm that shows, and waits until it has gone. */
async function answer(phone, name) {
  const before = await waiting(phone);
  await bar(phone).getByRole("button", { name }).tap();
  await fewer(phone, before);
}

/** Waits until fewer than so many alarms wait. */
function fewer(phone, before) {
  return phone.page.waitForFunction(
    (before) => Number(/^\((\d+)\) /.exec(document.title)?.[1] ?? 0) < before,
    before,
  );
}

function count(rings, tag) {
  return rings.filter((ring) => ring.tag === tag).length;
}
