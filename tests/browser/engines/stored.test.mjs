// What was acknowledged is still there: after a reload, after the browser was killed at any moment, and
// with no network. PULL_ORDER_KILLS says how often each engine is killed (50 in a full trial).

import assert from "node:assert/strict";
import { FOUR, onThePit, readPiece, stored } from "./cooking.mjs";
import { journey } from "./engines.mjs";

const KILLS = Number(process.env.PULL_ORDER_KILLS ?? 5);
/** The longest time of typing before a kill, milliseconds. */
const LONGEST = 1500;
/** Readings typed are whole degrees Fahrenheit that the app takes for a pit, in a row, over and over. */
const [LOWEST, COUNT] = [100, 600];

journey("a reload comes back to the same screen with everything on it", {}, async ({ page }) => {
  await onThePit(page, FOUR.slice(0, 2));
  await readPiece(page, 2, "101");
  await page.show("log");
  await page.see(".entries li", "101");
  const before = await page.count(".entries li");
  await page.reload();
  await page.see(".entries li", "101");
  assert.equal(await page.run(() => location.hash), "#log");
  assert.equal(await page.count(".entries li"), before);
});

journey(`killed ${KILLS} times while readings are typed, no acknowledged one is lost`, {}, async ({ page, site, t }) => {
  await onThePit(page, FOUR.slice(0, 1));
  // The page tells the server, which outlives it, what it types and what was acknowledged.
  const told = { typed: 0, told: 0 };
  site.instead = async (path) => {
    const [, what, count] = /^trial-(typed|told)-(\d+)$/.exec(path) ?? [];
    if (what === undefined) return undefined;
    told[what] = Math.max(told[what], Number(count));
    return Buffer.from("");
  };
  for (let kill = 1; kill <= KILLS; kill += 1) {
    const start = await readings(page);
    page.run(typeReadings, start.length, LOWEST, COUNT).catch(() => {});
    // Each kill comes at another point of the row: these moments are for chance to choose.
    await new Promise((resolve) => setTimeout(resolve, Math.random() * LONGEST));
    await page.kill();
    await page.reopen();
    await page.go();
    await page.see("nav.tabs");
    const kept = await readings(page);
    const inARow = kept.map((_, place) => LOWEST + (place % COUNT));
    assert.deepEqual(kept, inARow, `lost, doubled or out of order after kill ${kill}`);
    assert.ok(kept.length >= told.told, `kill ${kill}: ${told.told} were acknowledged, ${kept.length} are there`);
    assert.ok(kept.length <= told.typed, `kill ${kill}: ${told.typed} were typed, ${kept.length} are there`);
  }
  t.diagnostic(`${KILLS} kills, ${told.typed} typed, ${told.told} acknowledged, none lost`);
});

/** The pit's readings in the database, °F, in the order of their ids. */
async function readings(page) {
  const read = await stored(page, "pit_read");
  return read.map(({ temperature_c: celsius }) => Math.round((celsius * 9) / 5 + 32));
}

/* In the page: types one pit reading after the other by the app's own keys, as fast as the app lets it. */
async function typeReadings(start, lowest, count) {
  const until = async (found) => {
    for (;;) {
      const element = found();
      if (element) return element;
      await new Promise((resolve) => setTimeout(resolve, 2));
    }
  };
  const key = (name) => until(() => [...document.querySelectorAll(".keys button")].find((button) => button.innerText.trim() === name));
  for (let place = start; ; place += 1) {
    const value = lowest + (place % count);
    location.hash = "#pit";
    await fetch(`trial-typed-${place + 1}`);
    for (const digit of String(value)) (await key(digit)).click();
    await until(() => document.querySelector(".last-done")?.innerText.includes(value));
    await fetch(`trial-told-${place + 1}`);
  }
}
