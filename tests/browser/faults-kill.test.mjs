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
const LONGEST = 2500;

test(`killed ${KILLS} times while typing, no acknowledged reading is lost`, async (t) => {
  const { site, phone } = await siteAndPhone(t);
  const person = new Person(phone);
  await openApp(phone, site);
  await person.tap("New cook");
  await person.setOutAll([FOUR[0]]);
  await person.tap("Put the piece on");
  await person.stored("on");
  const draw = drawing(11);
  const acknowledged = [];
  let next = 0;
  let typed = 0;
  for (let kill = 0; kill < KILLS; kill += 1) {
    const heard = [];
    phone.page.on("console", (message) => {
      const [, what, value] = /^(told|typed) (\d+)$/.exec(message.text()) ?? [];
      if (what === "told") heard.push(Number(value));
      if (what === "typed") typed += 1;
    });
    // It ends by the kill, not by itself.
    phone.page.evaluate(typeReadings, next).catch(() => {});
    await new Promise((resolve) => setTimeout(resolve, draw() * LONGEST));
    await phone.kill();
    acknowledged.push(...heard);

    await phone.switchOn();
    await phone.page.goto(site.url);
    await started(phone.page);
    await phone.page.locator("nav.tabs").waitFor();
    const texts = await databaseTexts(phone.page);
    const stored = texts.map((text) => JSON.parse(text).what);
    const values = stored.filter(({ kind }) => kind === "pit_read").map(fahrenheit);
    const lost = acknowledged.filter((value) => !values.includes(value));
    assert.deepEqual(lost, [], `lost after kill ${kill + 1}`);
    assert.equal(new Set(values).size, values.length, "a reading is stored twice");
    next = values.length === 0 ? 0 : Math.max(...values) - LOWEST + 1;
    assert.ok(next <= HIGHEST - LOWEST, "the test ran out of readings that differ");
  }
  const lines = await person.logLines();
  assert.ok(!lines.some((line) => /could not be read/i.test(line)));
  assert.ok(acknowledged.length > KILLS / 4, `only ${acknowledged.length} taps were acknowledged`);
  t.diagnostic(`${KILLS} kills, ${typed} readings typed, ${acknowledged.length} acknowledged, none lost`);
});

/** Pit readings that the app takes, in whole degrees Fahrenheit; each is typed once. */
const LOWEST = 100;
const HIGHEST = 699;

function fahrenheit({ temperature_c: celsius }) {
  return Math.round((celsius * 9) / 5 + 32);
}

/**
 * In the page: types one pit reading after the other by tapping the app's own keys, as fast as the
 * app lets it, and says when each is typed and when the app has acknowledged it.
 */
async function typeReadings(first) {
  const until = async (found) => {
    for (;;) {
      const element = found();
      if (element) return element;
      await new Promise((resolve) => setTimeout(resolve, 2));
    }
  };
  const key = (name) =>
    until(() => [...document.querySelectorAll("button")].find((button) => button.innerText.trim() === name));
  for (let value = 100 + first; value < 700; value += 1) {
    location.hash = "#pit";
    for (const digit of String(value)) (await key(digit)).click();
    console.log(`typed ${value}`);
    await until(() => document.querySelector(".last-done")?.innerText.includes(`reads ${value}`));
    console.log(`told ${value}`);
  }
}
