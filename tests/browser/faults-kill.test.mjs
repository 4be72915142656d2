// The browser is killed without warning at random moments while readings are typed: no acknowledged
// tap is lost, and no entry is half-written. PULL_ORDER_KILLS says how often (200 in a full trial).

import assert from "node:assert/strict";
import { test } from "node:test";
import { drawing } from "./asleep.mjs";
import { FOUR, Person } from "./cook.mjs";
import { openApp, siteAndPhone, started } from "./harness.mjs";
import { databaseTexts } from "./stored.mjs";

const KILLS = Number(process.env.PULL_ORDER_KILLS ?? 20);
/** The longest time of typing before a kill, milliseconds. */
const LONGEST = 1500;

test(`killed ${KILLS} times while typing, no acknowledged reading is lost`, async (t) => {
  const { site, phone } = await siteAndPhone(t);
  const person = new Person(phone);
  await openApp(phone, site);
  await person.tap("New cook");
  await person.setOutAll([FOUR[0]]);
  await person.tap("Put the piece on");
  await person.stored("on");
  const draw = drawing(11);
  const told = listening(site);
  for (let kill = 0; kill < KILLS; kill += 1) {
    // It ends by the kill, not by itself.
    const start = (await stored(phone)).length;
    phone.page.evaluate(typeReadings, { start, lowest: LOWEST, count: COUNT }).catch(() => {});
    await new Promise((resolve) => setTimeout(resolve, draw() * LONGEST));
    await phone.kill();

    await phone.switchOn();
    await phone.page.goto(site.url);
    await started(phone.page);
    await phone.page.locator("nav.tabs").waitFor();
    const values = await stored(phone);
    const after = `after kill ${kill + 1}`;
    const inARow = values.map((_, place) => reading(place));
    assert.deepEqual(values, inARow, `lost, doubled or out of order ${after}`);
    assert.ok(values.length >= told.acknowledged, `an acknowledged reading is lost ${after}`);
    assert.ok(values.length <= told.typed, `a reading is stored that nobody typed ${after}`);
  }
  const lines = await person.logLines();
  assert.ok(!lines.some((line) => /could not be read/i.test(line)));
  t.diagnostic(`${KILLS} kills, ${told.typed} readings typed, ${told.acknowledged} acknowledged, none lost`);
});

/**
 * How many readings were typed and how many acknowledged, as the page tells the site's server: a word on
 * its console may die with the browser.
 */
function listening(site) {
  const told = { typed: 0, acknowledged: 0 };
  site.instead = async (path) => {
    const [, what, count] = /^trial-(typed|acknowledged)-(\d+)$/.exec(path) ?? [];
    if (what === undefined) return undefined;
    told[what] = Math.max(told[what], Number(count));
    return Buffer.from("");
  };
  return told;
}

/** The readings typed are whole degrees Fahrenheit that the app takes for a pit, in a row, over and over. */
const LOWEST = 100;
const COUNT = 600;

/** The reading typed at this place in the row, 0 the first. */
function reading(place) {
  return LOWEST + (place % COUNT);
}

/** The pit's readings in the database, °F, in the order of their ids. */
async function stored(phone) {
  const texts = await databaseTexts(phone.page);
  const whats = texts.map((text) => JSON.parse(text).what);
  const read = whats.filter(({ kind }) => kind === "pit_read");
  return read.map(({ temperature_c: celsius }) => Math.round((celsius * 9) / 5 + 32));
}

/**
 * In the page: types one pit reading after the other by tapping the app's own keys, as fast as the
 * app lets it, and tells the server before each is typed and when the app has acknowledged it.
 */
async function typeReadings({ start, lowest, count }) {
  const until = async (found) => {
    for (;;) {
      const element = found();
      if (element) return element;
      await new Promise((resolve) => setTimeout(resolve, 2));
    }
  };
  const key = (name) =>
    until(() => [...document.querySelectorAll("button")].find((button) => button.innerText.trim() === name));
  for (let place = start; ; place += 1) {
    const value = lowest + (place % count);
    location.hash = "#pit";
    await fetch(`trial-typed-${place + 1}`);
    for (const digit of String(value)) (await key(digit)).click();
    await until(() => document.querySelector(".last-done")?.innerText.includes(value));
    await fetch(`trial-acknowledged-${place + 1}`);
  }
}
