// How many taps the ten commonest tasks take. A change that makes one longer fails here.

import assert from "node:assert/strict";
import { test } from "node:test";
import { EVENING, FOUR, Person } from "./cook.mjs";
import { keptOffline, openApp, siteAndPhone, started } from "./harness.mjs";

test("the ten commonest tasks take no more taps than this", async (t) => {
  const { site, phone } = await siteAndPhone(t, { time: EVENING });
  const person = new Person(phone);
  const { page } = phone;
  const { clock } = phone.context;
  const counted = {};
  const task = async (name, act) => {
    const before = person.taps;
    await act();
    counted[name] = person.taps - before;
  };

  await openApp(phone, site);
  await keptOffline(page);
  await task("begin a cook", () => person.tap("New cook"));
  await task("set out a piece, besides typing its weight and thickness", async () => {
    await person.setOutAll(FOUR.slice(0, 1));
  });
  // So much thicker that nothing of it is due in the first one's round.
  await person.setOut(FOUR[3]);
  await person.stored("Piece 2 added");
  await task("put all pieces on", async () => {
    await person.tap("Put all 2 on");
    await person.stored("on");
  });
  await task("take back a slip", async () => {
    await person.tap("Undo", { exact: true });
    await page.locator(".piece.raw").first().waitFor();
  });
  // This cook pulls a little early, so that the rest has something to do.
  await page.evaluate(() => (location.hash = "#set-out"));
  await page.locator("#pull").fill("162");
  await page.locator("#pull").blur();
  await person.stored(/Pull temp 162/);
  await person.tap("Put all 2 on");
  await person.stored("on");
  await clock.fastForward("32:00");
  await task("store the pit's reading when it is due", async () => {
    await person.tap("Type the pit temp");
    await person.typeReading("250");
    await person.stored("Pit reads 250");
  });
  await clock.fastForward("20:00");
  await task("from the app's icon to a stored reading of the piece that is due", async () => {
    await page.goto(site.url);
    await started(page);
    await person.tap(/^Lid up/);
    await person.typeReading("163");
  });
  await task("pull the piece that is ready", async () => {
    await person.tap(/pulled$/);
    await person.stored("pulled");
  });
  await task("cover what came off", async () => {
    await person.tap(/covered$/);
    await person.stored("covered");
  });
  await task("see every piece's curve", async () => {
    await person.tap("Curves");
    await page.getByRole("heading", { name: "Curves" }).waitFor();
  });
  await task("from any screen back to the next action", async () => {
    await person.goTo("Cook");
    await page.locator(".next").waitFor();
  });

  t.diagnostic(JSON.stringify(counted, null, 1));
  assert.deepEqual(counted, {
    "begin a cook": 1,
    "set out a piece, besides typing its weight and thickness": 1,
    "put all pieces on": 1,
    "take back a slip": 1,
    "store the pit's reading when it is due": 4,
    "from the app's icon to a stored reading of the piece that is due": 4,
    "pull the piece that is ready": 1,
    "cover what came off": 1,
    "see every piece's curve": 1,
    "from any screen back to the next action": 1,
  });
});
