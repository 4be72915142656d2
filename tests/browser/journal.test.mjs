// What was tapped is kept until it is stored, in the log it was tapped for, and said as long as it is
// not: with a database that is slow, refuses once or for good, or is lost.

import assert from "node:assert/strict";
import { test } from "node:test";
import { badStorage, holdDatabase, letGo, storedByCook } from "./bad-storage.mjs";
import { EVENING, FOUR, Person } from "./cook.mjs";
import { openApp, siteAndPhone, started } from "./harness.mjs";
import { databaseTexts, kinds } from "./stored.mjs";

/** A cook with one piece set out, on a storage that can be made bad. */
async function oneSetOut(t, options = {}) {
  const { site, phone } = await siteAndPhone(t, options);
  const person = new Person(phone);
  await phone.page.addInitScript(badStorage);
  await openApp(phone, site);
  await person.tap("New cook");
  await person.setOutAll(FOUR.slice(0, 1));
  return { site, phone, person };
}

const set = (page, values) => page.evaluate((values) => Object.assign(window, values), values);

const told = (page) => page.locator(".trouble").getByRole("alert");

async function unstored(page, count) {
  const words = count === 1 ? "1 entry is not saved yet" : `${count} entries are not saved yet`;
  await told(page).filter({ hasText: words }).waitFor();
}

/** Waits until all is stored, and nothing is said any more. */
const allStored = (page) => told(page).waitFor({ state: "detached" });

/** Waits until this is the latest entry of the cook's log. */
async function isLatest(person, page, words) {
  await person.goTo("Log");
  await page.locator(".entries li").first().filter({ hasText: words }).waitFor();
}

async function readPit(person, page, value) {
  await page.evaluate(() => (location.hash = "#pit"));
  await person.typeReading(value);
}

test("an entry still being written when another cook is opened goes into its own cook's log", async (t) => {
  const { phone, person } = await oneSetOut(t);
  await holdDatabase(phone.page);
  await person.tap("Put the piece on");
  await readPit(person, phone.page, "251");
  await unstored(phone.page, 2);
  await phone.page.evaluate(() => (location.hash = "#start"));
  await person.tap("New cook");
  await person.tap("Start a new cook");
  await phone.page.getByRole("heading", { name: "Pieces and dinner" }).waitFor();
  await letGo(phone.page);
  await person.setOutAll(FOUR.slice(1, 2));
  await allStored(phone.page);
  assert.deepEqual(await storedByCook(phone.page), [
    ["piece_set_out", "put_on", "pit_read"],
    ["piece_set_out"],
  ]);
});

test("on a slow phone each tap is shown, counted while it waits, dated at the tap, and stored in order", async (t) => {
  const { phone, person } = await oneSetOut(t, { time: EVENING });
  await holdDatabase(phone.page);
  await person.tap("Put the piece on");
  await phone.context.clock.fastForward("01:00");
  await unstored(phone.page, 1);
  await person.stored("Piece 1 on");
  await readPit(person, phone.page, "251");
  await phone.context.clock.fastForward("00:05");
  await unstored(phone.page, 2);
  await letGo(phone.page);
  await allStored(phone.page);
  const entries = (await databaseTexts(phone.page)).map((text) => JSON.parse(text));
  assert.deepEqual(entries.map(({ what }) => what.kind), ["piece_set_out", "put_on", "pit_read"]);
  const minute = (entry) => Math.round((new Date(entry.typed) - new Date(EVENING)) / 60_000);
  assert.deepEqual(entries.map(minute), [0, 0, 1]);
});

test("pieces added while the one before is still being stored get numbers of their own", async (t) => {
  const { phone, person } = await oneSetOut(t);
  await holdDatabase(phone.page);
  await person.setOut(FOUR[1]);
  await person.setOut(FOUR[2]);
  await letGo(phone.page);
  for (const number of [2, 3]) await phone.page.getByText(`Piece ${number}`, { exact: true }).waitFor();
});

test("an entry refused once is tried again until it is stored, by itself", async (t) => {
  const { phone, person } = await oneSetOut(t);
  await set(phone.page, { refuse: "put_on" });
  await person.tap("Put the piece on");
  await unstored(phone.page, 1);
  await told(phone.page).filter({ hasText: "out of storage" }).waitFor();
  await set(phone.page, { refuse: undefined });
  await allStored(phone.page);
  assert.deepEqual(kinds(await databaseTexts(phone.page)), ["piece_set_out", "put_on"]);
});

test("a later success does not hide an earlier failure", async (t) => {
  const { phone, person } = await oneSetOut(t);
  await set(phone.page, { refuse: "put_on", deaf: true });
  await person.tap("Put the piece on");
  await unstored(phone.page, 1);
  await readPit(person, phone.page, "251");
  await person.stored("Pit reads 251");
  await unstored(phone.page, 1);
  const stored = kinds(await databaseTexts(phone.page));
  assert.deepEqual(stored, ["piece_set_out", "pit_read"], "the later one is stored");
  await set(phone.page, { refuse: undefined });
  await allStored(phone.page);
  assert.deepEqual(kinds(await databaseTexts(phone.page)), ["piece_set_out", "put_on", "pit_read"]);
});

test("what is refused for good stays in sight on every screen, and a reload loses none of it", async (t) => {
  const { phone, person } = await oneSetOut(t);
  await set(phone.page, { refuse: '"v":1' });
  await person.tap("Put the piece on");
  await unstored(phone.page, 1);
  await readPit(person, phone.page, "251");
  await unstored(phone.page, 2);
  await readPit(person, phone.page, "252");
  await unstored(phone.page, 3);
  for (const part of ["Log", "More", "Rest", "Cook"]) {
    await person.goTo(part);
    await unstored(phone.page, 3);
  }
  await phone.page.reload();
  await started(phone.page);
  assert.equal((await person.logLines()).length, 4);
  await allStored(phone.page);
  const all = ["piece_set_out", "put_on", "pit_read", "pit_read"];
  assert.deepEqual(kinds(await databaseTexts(phone.page)), all);
});

test("a browser that lost its storage gets the page anew by itself, with what was not stored", async (t) => {
  const { phone, person } = await oneSetOut(t);
  await person.tap("Put the piece on");
  await person.stored("Piece 1 on");
  await set(phone.page, { lost: true, deaf: true });
  const reloaded = phone.page.waitForEvent("load");
  await person.tap("Undo", { exact: true });
  await reloaded;
  await started(phone.page);
  await phone.page.locator(".piece.raw").waitFor();
  await allStored(phone.page);
  assert.deepEqual(kinds(await databaseTexts(phone.page)), ["piece_set_out", "put_on", "undone"]);
});

test("where loading anew did not help, or the person is typing, it waits for a tap and says so", async (t) => {
  const { phone, person } = await oneSetOut(t);
  await person.tap("Put the piece on");
  await person.stored("Piece 1 on");
  await phone.page.reload();
  await started(phone.page);
  await set(phone.page, { lost: true });
  await readPit(person, phone.page, "251");
  await told(phone.page).filter({ hasText: "lost its storage" }).waitFor();
  assert.doesNotMatch(await told(phone.page).innerText(), /keep this page open|Refresh/);
  const reloaded = phone.page.waitForEvent("load");
  await person.tap("Reload");
  await reloaded;
  await started(phone.page);
  await isLatest(person, phone.page, "Pit reads 251");
  await allStored(phone.page);
  assert.ok(kinds(await databaseTexts(phone.page)).includes("pit_read"));
});

test("a database that opens and cannot be read hides nothing, and what is told then comes after it", async (t) => {
  const { phone, person } = await oneSetOut(t);
  await person.tap("Put the piece on");
  await person.stored("Piece 1 on");
  await phone.page.addInitScript(() => {
    if (sessionStorage.getItem("unreadable")) window.unreadable = true;
  });
  await phone.page.evaluate(() => sessionStorage.setItem("unreadable", "yes"));
  await phone.page.reload();
  await started(phone.page);
  await phone.page.locator(".piece.on").waitFor();
  await readPit(person, phone.page, "251");
  await unstored(phone.page, 1);
  await phone.page.evaluate(() => sessionStorage.removeItem("unreadable"));
  const reloaded = phone.page.waitForEvent("load");
  await person.tap("Reload");
  await reloaded;
  await isLatest(person, phone.page, "Pit reads 251");
  await allStored(phone.page);
  assert.deepEqual(kinds(await databaseTexts(phone.page)), ["piece_set_out", "put_on", "pit_read"]);
});

test("a database that opens and never answers hides nothing", async (t) => {
  const { site, phone, person } = await oneSetOut(t);
  await person.tap("Put the piece on");
  await person.stored("Piece 1 on");
  const other = await phone.context.newPage();
  await openApp({ page: other }, site);
  await holdDatabase(other);
  await phone.page.reload();
  await phone.page.locator(".piece.on").waitFor();
  await told(phone.page).waitFor();
  await letGo(other);
});

test("what the browser says in English is a detail for a Spanish reader, and no part of what is said", async (t) => {
  const { site, phone } = await siteAndPhone(t, { context: { locale: "es-MX" } });
  await phone.page.addInitScript(badStorage);
  await openApp(phone, site);
  await phone.page.getByRole("button", { name: /^Nuevo/ }).tap();
  await set(phone.page, { odd: "The data provided does not meet requirements." });
  await phone.page.locator("#weight").fill("230");
  await phone.page.getByRole("button", { name: /^Añadir|^Agregar/ }).tap();
  await told(phone.page).filter({ hasText: "Falló el almacenamiento" }).waitFor();
  assert.doesNotMatch(await told(phone.page).innerText(), /requirements|navegador dice/);
  await phone.page.locator(".trouble summary").tap();
  await phone.page.getByText(/does not meet requirements/).waitFor();
});

test("the kitchen's entries are kept in the same way", async (t) => {
  const { site, phone } = await siteAndPhone(t);
  const person = new Person(phone);
  await phone.page.addInitScript(badStorage);
  await openApp(phone, site);
  await person.tap(/^Kitchen/);
  await set(phone.page, { refuse: "bag_packed" });
  await person.packThreeTyped();
  await unstored(phone.page, 3);
  await set(phone.page, { refuse: undefined });
  await allStored(phone.page);
  assert.deepEqual(kinds(await databaseTexts(phone.page)), ["bag_packed", "bag_packed", "bag_packed"]);
  await person.tap("Undo", { exact: true });
  await person.stored("Undone: 3 bags packed");
  await person.tap("Redo", { exact: true });
  await person.stored("Done again: 3 bags packed");
});
