// The number pad remembers how a piece is read, and what was typed for the wrong one is moved with two taps.

import assert from "node:assert/strict";
import { test } from "node:test";
import { allOn } from "./begun.mjs";
import { FOUR } from "./cook.mjs";
import { databaseTexts } from "./stored.mjs";

/** Two pieces on the pit for forty minutes. */
async function twoOn(t) {
  const { phone, person } = await allOn(t, FOUR.slice(0, 2));
  await phone.context.clock.fastForward("40:00");
  await person.nextStep();
  return { phone, person };
}

const chosen = (person) => person.page.locator(".how input:checked + span").innerText();

test("thermometer and number of spots stay as last chosen for this piece, and for no other", async (t) => {
  const { phone, person } = await twoOn(t);
  await person.openPiece(1);
  assert.equal(await chosen(person), "Instant-read");
  await phone.page.getByText("Leave-in", { exact: true }).tap();
  await person.typeReading("120");
  await person.stored("Piece 1 reads 120");
  await person.openPiece(2);
  assert.equal(await chosen(person), "Instant-read");
  await person.picture("reading");
  await person.twoPlaces();
  await person.typeReading("112");
  await person.stored("Piece 2 reads 112");

  await phone.context.clock.fastForward("05:00");
  await person.openPiece(1);
  assert.equal(await chosen(person), "Leave-in");
  await person.typeReading("126");
  await person.stored("Piece 1 reads 126");
  await person.openPiece(2);
  assert.equal(await person.button("Lowest of two").getAttribute("aria-pressed"), "true");
  const reads = (await databaseTexts(phone.page)).map((text) => JSON.parse(text).what);
  const last = reads.filter((what) => what.kind === "core_read" && what.piece === 1).at(-1);
  assert.equal(last.instrument, "leave_in", "an untouched default never makes an instant-read of it");
});

test("a reading that is asked about is moved to the piece that it was", async (t) => {
  const { phone, person } = await twoOn(t);
  await person.openPiece(2);
  await person.typeReading("47");
  await phone.page.getByText(/Piece 2: 47\s°F\? The forecast was near/).waitFor();
  await person.tap("It was another piece");
  await phone.page.locator(".question").getByText("Piece 1", { exact: true }).tap();
  await person.stored("Corrected: Piece 1 reads 47");
  await phone.page.getByText(/Piece 1: 47\s°F\? The forecast was near/).waitFor();
});
