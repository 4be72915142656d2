// Anything in the log can be corrected, and what was forgotten told afterwards.

import assert from "node:assert/strict";
import { test } from "node:test";
import { allOn } from "./begun.mjs";
import { FOUR } from "./cook.mjs";
import { databaseTexts } from "./stored.mjs";

/** Two pieces on the pit for forty minutes. */
async function twoOn(t) {
  const { phone, person } = await allOn(t, FOUR.slice(0, 2));
  await phone.context.clock.fastForward("40:00");
  return { phone, person };
}

async function read(person, piece, degrees) {
  await person.goTo("Cook");
  await person.openPiece(piece);
  await person.typeReading(degrees);
  await person.stored(`Piece ${piece} reads ${degrees}`);
}

const form = (person) => person.page.locator("form.mending");
const store = (person) => form(person).getByRole("button", { name: "Save" }).tap();

test("a mistyped reading is corrected in the log, at its own time", async (t) => {
  const { phone, person } = await twoOn(t);
  await read(person, 1, "160");
  await phone.context.clock.fastForward("02:00");
  await person.goTo("Log");
  await person.openEntry(/Piece 1 reads 160/);
  await phone.page.getByLabel(/^It was \(/).fill("106");
  await store(person);
  await person.stored("Corrected: Piece 1 reads 106");
  const entries = (await databaseTexts(phone.page)).map((text) => JSON.parse(text));
  const [first, undone, second] = entries.slice(-3);
  assert.deepEqual([first.what.kind, undone.what.kind, second.what.kind], ["core_read", "undone", "core_read"]);
  assert.equal(second.happened, first.happened);
  assert.ok(new Date(second.typed) - new Date(first.typed) >= 120_000);
  assert.equal(Math.round((second.what.temperature_c * 9) / 5 + 32), 106);
  await person.tap("Undo", { exact: true });
  await phone.page.locator(".entries li:not(.undone)", { hasText: "Piece 1 reads 160" }).waitFor();
});

test("a reading is moved to another piece, and a pull to five minutes ago", async (t) => {
  const { phone, person } = await twoOn(t);
  await read(person, 1, "120");
  await person.goTo("Log");
  await person.openEntry(/Piece 1 reads 120/);
  await form(person).getByText("Piece 2", { exact: true }).tap();
  await store(person);
  await person.stored("Corrected: Piece 2 reads 120");
  await person.goTo("Cook");
  await person.openPiece(1);
  await person.tap("Pull Piece 1");
  await person.stored("Piece 1 pulled");
  const pulled = await phone.page.evaluate(() => Date.now());
  await person.goTo("Log");
  await person.openEntry(/Piece 1 pulled/);
  await form(person).getByRole("button", { name: "5 min ago" }).tap();
  await store(person);
  await person.stored("Corrected: Piece 1 pulled");
  const last = JSON.parse((await databaseTexts(phone.page)).at(-1));
  const ago = (pulled - new Date(last.happened)) / 60_000;
  assert.ok(ago > 4.5 && ago < 5.5, `${ago} minutes before`);
});

test("a pull that was forgotten is told afterwards; what cannot be is refused with the reason", async (t) => {
  const { phone, person } = await twoOn(t);
  await person.goTo("Log");
  await person.tap("Add something you missed");
  await form(person).getByText("Pulled", { exact: true }).tap();
  await form(person).getByText("Piece 2", { exact: true }).tap();
  await form(person).getByLabel("When it was").first().fill("16:10");
  await store(person);
  await form(person).getByRole("alert").filter({ hasText: "not on the pit yet" }).waitFor();
  await form(person).getByRole("button", { name: "10 min ago" }).tap();
  await store(person);
  await person.stored("Piece 2 pulled");
  await person.goTo("Rest");
  await phone.page.getByText(/Resting 10 min/).waitFor();
});
