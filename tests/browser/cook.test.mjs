// A whole cook: four breasts from set-out to proved, offline, and through five sudden deaths.

import assert from "node:assert/strict";
import { test } from "node:test";
import { EVENING, FOUR, Person } from "./cook.mjs";
import { Follower } from "./follow.mjs";
import { goOffline, keptOffline, openApp, siteAndPhone, started } from "./harness.mjs";

/** Time constants of the four pieces, minutes: the thinnest is done in under an hour. */
const SLOW = [32, 39, 45, 55];

test("four breasts, each pulled in its own time, proved, with no network", async (t) => {
  const { site, phone } = await siteAndPhone(t, { time: EVENING });
  const person = new Person(phone);
  await openApp(phone, site);
  await keptOffline(phone.page);
  await person.tap("New cook");
  await phone.page.getByRole("heading", { name: "Pieces and dinner" }).waitFor();
  await goOffline({ site, phone });

  await person.setOutAll(FOUR);
  await person.tap("Put all 4 on");
  await person.stored("on");
  const before = person.taps;
  const follower = new Follower(person, { slow: SLOW });
  await follower.until(/^Serve/);

  const taps = person.taps - before;
  t.diagnostic(`${taps} taps, ${follower.openings} openings, ${follower.proofs} readings at rest`);
  assert.deepEqual([...follower.pulled.keys()], [1, 2, 3, 4], "the pull order follows the size");
  assert.equal(follower.putBack, 0);
  // What a person at the pit will bear: an opening for each piece and one or two more, and no more
  // taps than the three digits of every reading and one to act on it.
  assert.ok(follower.openings <= 7, `${follower.openings} openings`);
  assert.ok(taps <= 80, `${taps} taps`);
  await person.goTo("Rest");
  const rows = await phone.page.locator(".piece").allInnerTexts();
  assert.equal(rows.length, 4);
  for (const row of rows) assert.match(row, /Proved: 16\d\s°F at/);
  await person.picture("proved");
});

test("a leave-in that missed the middle is told, drawn and re-seated", async (t) => {
  const { site, phone } = await siteAndPhone(t, { time: EVENING });
  const person = new Person(phone);
  const { page } = phone;
  await openApp(phone, site);
  await person.tap("New cook");
  await person.setOutAll(FOUR.slice(0, 1));
  await person.tap("Put the piece on");
  await person.stored("on");
  const read = async (instrument, degrees) => {
    await person.openPiece(1);
    await page.getByText(instrument, { exact: true }).tap();
    await person.typeReading(degrees);
    await person.stored(`reads ${degrees}`);
  };
  for (const [wait, degrees] of [["20:00", "92"], ["10:00", "118"], ["08:00", "139"]]) {
    await phone.context.clock.fastForward(wait);
    await read("Leave-in", degrees);
  }
  await read("Instant-read", "122");
  // Three readings speak against this one, all of the probe: it is the probe that is doubted, and nobody
  // is asked.
  await person.openPiece(1);
  await page.locator(".cross-section svg").waitFor();
  const told = await page.locator(".cross-section figcaption").innerText();
  assert.match(told, /^The leave-in probe is probably not in the coldest spot, about 0\.\d+\sin off\./);
  assert.equal(await page.locator(".question").count(), 0);
  await page.locator(".cross-section").scrollIntoViewIfNeeded();
  await person.picture("missed");
  await person.tap("Back");
  await person.openPiece(1);
  await person.tap("Leave-in probe goes here");
  await person.stored("placed in");
  await person.openPiece(1);
  await page.locator(".cross-section").waitFor({ state: "detached" });
});

test("killed and opened again at five moments, nothing is lost", async (t) => {
  const { site, phone } = await siteAndPhone(t, { time: EVENING });
  const person = new Person(phone);
  await openApp(phone, site);
  await keptOffline(phone.page);
  await person.tap("New cook");

  const wait = (minutes) => phone.context.clock.fastForward(minutes * 60_000);
  const killAndReopen = async (moment) => {
    const before = await person.logLines();
    const time = await phone.page.evaluate(() => Date.now());
    await phone.kill();
    await phone.switchOn({ time });
    await phone.page.goto(site.url);
    await started(phone.page);
    assert.deepEqual(await person.logLines(), before, moment);
    assert.ok(before.length > 0, moment);
    await person.goTo("Cook");
  };

  await person.setOutAll(FOUR.slice(0, 2));
  await killAndReopen("while setting out");

  await person.tap("Put all 2 on");
  await person.stored("on");
  await killAndReopen("just after putting on");

  await wait(40);
  await person.openPiece(1);
  await person.typeReading("131");
  await person.stored("Piece 1 reads 131");
  await killAndReopen("just after a reading");

  await wait(25);
  await person.openPiece(1);
  await person.typeReading("164");
  await person.stored("Piece 1 reads 164");
  await person.openPiece(1);
  await person.tap("Pull Piece 1");
  await person.stored("Piece 1 pulled");
  await killAndReopen("just after a pull");

  await person.goTo("Rest");
  await person.tap("Cover: Piece 1");
  await person.stored("covered");
  await wait(5);
  await person.tap("Check", { exact: true });
  await person.twoPlaces();
  await person.typeReading("166");
  await person.stored("Piece 1 reads 166");
  await killAndReopen("just after a proof");
  await person.goTo("Rest");
  await phone.page.getByText(/Proved: 166\s°F at/).waitFor();
});

test("a countdown survives an hour in the background and a reload", async (t) => {
  const { site, phone } = await siteAndPhone(t, { time: EVENING });
  const person = new Person(phone);
  await openApp(phone, site);
  await person.tap("New cook");
  await person.setOutAll([FOUR[3]]);
  await person.tap("Put the piece on");
  await person.stored("on");
  const due = await phone.page.locator(".next .at").innerText();
  await phone.context.clock.fastForward("20:00");
  assert.equal(await phone.page.locator(".next .at").innerText(), due);
  await phone.page.reload();
  await started(phone.page);
  assert.equal(await phone.page.locator(".next .at").innerText(), due);
});

test("each one-tap action can be undone, and brought back in the log", async (t) => {
  const { site, phone } = await siteAndPhone(t, { time: EVENING });
  const person = new Person(phone);
  await openApp(phone, site);
  await person.tap("New cook");
  await person.setOutAll(FOUR.slice(0, 1));
  await person.tap("Put the piece on");
  await person.stored("Piece 1 on");
  await phone.page.locator(".piece.on").waitFor();
  await person.tap("Undo", { exact: true });
  await phone.page.locator(".piece.raw").waitFor();
  await person.goTo("Log");
  await person.openEntry("Piece 1 on");
  await person.tap("Bring back: Piece 1 on");
  await person.goTo("Cook");
  await phone.page.locator(".piece.on").waitFor();
});
