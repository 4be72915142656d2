// The first visit: a demo cook that runs by itself at 60 times the speed, says that it is one, can
// be left at any point, comes to its end, and leaves nothing behind.

import assert from "node:assert/strict";
import { test } from "node:test";
import { EVENING, Person } from "./cook.mjs";
import { openApp, siteAndPhone } from "./harness.mjs";
import { databaseTexts } from "./stored.mjs";

const BANNER = "Demo at 60 times the speed";

test("the demo runs to its end: every piece read, pulled, proved and served", async (t) => {
  const { phone, page } = await demo(t);
  const { clock } = phone.context;
  const stages = new Set();
  const ended = page.getByText("All pieces are served or bagged.");
  // Two and a half hours of cook are two and a half minutes of demo.
  for (let seconds = 0; seconds < 240 && !(await ended.isVisible()); seconds += 1) {
    await clock.runFor(1000);
    for (const piece of await page.locator(".piece").all()) {
      for (const stage of ((await piece.getAttribute("class").catch(() => "")) ?? "").split(" ")) stages.add(stage);
    }
  }
  assert.ok(await ended.isVisible(), `the demo does not end: ${await page.locator("main").innerText()}`);
  // What the reading proves that calls it off never rests unproved.
  for (const stage of ["on", "proved", "packed"]) assert.ok(stages.has(stage), `no piece was ${stage}`);
  assert.ok(await page.getByText(BANNER).isVisible());
  assert.deepEqual(await databaseTexts(page), [], "nothing of the demo is stored");
});

test("one minute on the clock is one second of the demo", async (t) => {
  const { phone, page } = await demo(t);
  const { clock } = phone.context;
  await clock.runFor(2000);
  await page.locator(".piece.on").nth(3).waitFor();
  // By then the pit is due to be read, and the invented cook has read it.
  await clock.runFor(40_000);
  await page.evaluate(() => (location.hash = "#log"));
  const times = await page.locator(".entries .time").allInnerTexts();
  const minutes = times.map((time) => time.match(/(\d+):(\d+)/)).map(([, hours, minutes]) => hours * 60 + +minutes);
  const passed = Math.max(...minutes) - Math.min(...minutes);
  assert.ok(passed >= 25 && passed <= 44, `${passed} minutes in 42 seconds`);
});

test("the demo says on every screen that it is one, and can be left from there", async (t) => {
  const { page, person } = await demo(t);
  for (const screen of ["cook", "piece-2", "curves", "rest", "log", "more", "plan", "settings"]) {
    await page.evaluate((address) => (location.hash = `#${address}`), screen);
    await page.getByText(BANNER).waitFor();
    await person.tap("Exit", { exact: true });
    await page.getByRole("button", { name: "New cook" }).waitFor();
    assert.equal(await page.getByText(BANNER).count(), 0);
    await person.tap("Watch a demo cook");
  }
  await person.tap("Exit", { exact: true });
  await person.tap("New cook");
  await person.setOut({ weight: "8.1", thickest: "1.45" });
  await person.stored("Piece 1 added");
  assert.equal((await databaseTexts(page)).length, 1, "a cook of one's own begins empty");
});

async function demo(t) {
  const { site, phone } = await siteAndPhone(t, { time: EVENING });
  const person = new Person(phone);
  await openApp(phone, site);
  await person.tap("Watch a demo cook");
  await phone.page.getByText(BANNER).waitFor();
  return { phone, page: phone.page, person };
}
