// Two windows and an installed one on the same cook: one writes, the others follow, and no entry is
// lost or doubled.

import assert from "node:assert/strict";
import { test } from "node:test";
import { FOUR, Person } from "./cook.mjs";
import { openApp, siteAndPhone, started } from "./harness.mjs";
import { databaseTexts } from "./stored.mjs";

/** The same phone as seen through another window. */
class Window extends Person {
  #page;

  constructor(phone, page) {
    super(phone);
    this.#page = page;
  }

  get page() {
    return this.#page;
  }
}

/** Three windows on a cook with one piece on the pit. */
async function threeWindows(t) {
  const { site, phone } = await siteAndPhone(t);
  const first = new Window(phone, phone.page);
  await openApp(phone, site);
  await first.tap("New cook");
  await first.setOutAll([FOUR[0]]);
  await first.tap("Put the piece on");
  await first.stored("on");
  const windows = [first];
  while (windows.length < 3) {
    const page = await phone.context.newPage();
    await page.goto(site.url);
    await started(page);
    windows.push(new Window(phone, page));
  }
  return { phone, windows };
}

async function readPit(window, value) {
  await window.page.evaluate(() => (location.hash = "#pit"));
  await window.typeReading(String(value));
  await window.stored(`Pit reads ${value}`);
}

test("what one window stores, the others show", async (t) => {
  const { windows } = await threeWindows(t);
  const [writer, ...followers] = windows;
  await readPit(writer, 251);
  for (const follower of followers) await follower.page.getByText("Pit 251").waitFor();
});

test("three windows that write at once lose and double nothing", async (t) => {
  const { phone, windows } = await threeWindows(t);
  await Promise.all(
    windows.map(async (window, place) => {
      for (let reading = 0; reading < 6; reading += 1) await readPit(window, 200 + 10 * place + reading);
    }),
  );
  const entries = (await databaseTexts(phone.page)).map((text) => JSON.parse(text));
  const values = entries
    .filter(({ what }) => what.kind === "pit_read")
    .map(({ what }) => Math.round((what.temperature_c * 9) / 5 + 32));
  const expected = [0, 1, 2].flatMap((place) => [0, 1, 2, 3, 4, 5].map((n) => 200 + 10 * place + n));
  assert.deepEqual(values.sort((a, b) => a - b), expected);
  const ids = new Set(entries.map(({ id }) => `${id.count}/${id.device}`));
  assert.equal(ids.size, entries.length);
  const logs = await Promise.all(windows.map((window) => window.logLines()));
  assert.deepEqual(logs[1], logs[0]);
  assert.deepEqual(logs[2], logs[0]);
});
