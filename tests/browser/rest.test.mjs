// The rest and the log tell much in little room: a line a piece and a line an entry, and what is due
// with all pieces is done with one tap.

import assert from "node:assert/strict";
import { test } from "node:test";
import { allOn } from "./begun.mjs";
import { FOUR } from "./cook.mjs";
import { show } from "./look.mjs";

/** Three breasts read at 166 in two spots and pulled, four and a half minutes apart, more than one trip takes. */
async function threePulled(t) {
  const { phone, person } = await allOn(t, FOUR.slice(0, 3));
  await phone.context.clock.fastForward("55:00");
  for (const piece of [1, 2, 3]) {
    await phone.context.clock.fastForward("04:30");
    await show(phone.page, `piece-${piece}`);
    await person.twoPlaces();
    await person.typeReading("166");
    await person.stored(`Piece ${piece} reads 166`);
    const question = person.button(/^166\s°F is right/);
    await person.nextStep();
    if (await question.isVisible()) await question.tap();
    await show(phone.page, `piece-${piece}`);
    await person.tap(`Pull Piece ${piece}`);
    await person.stored(`Piece ${piece} pulled`);
  }
  await person.nextStep();
  await person.goTo("Rest");
  return { phone, person };
}

const heights = (page, selector) =>
  page.locator(selector).evaluateAll((all) => all.map((one) => one.getBoundingClientRect().height));

test("what rests takes a line a piece and one clock, and is covered and served with one tap each", async (t) => {
  const { phone, person } = await threePulled(t);
  const { page } = phone;
  await page.locator(".rest-piece").nth(2).waitFor();
  // A line for a gloved thumb is 56 px; two lines of small text fit in 64.
  const rows = await heights(page, ".rest .piece");
  assert.equal(rows.length, 3);
  for (const height of rows) assert.ok(height <= 64, `a row is ${height} px high`);
  assert.equal(await page.locator(".clock").count(), 1, "one clock for all of them");
  assert.match(await page.locator(".clock").innerText(), /Pieces 1, 2 and 3: in the fridge by/);

  await person.tap(/^All 3 covered/);
  await person.stored("Pieces 1, 2 and 3 covered");
  await phone.context.clock.fastForward("20:00");
  await person.tap(/^All 3 served/);
  await person.stored("Pieces 1, 2 and 3 served");
  await page.locator(".piece.packed").nth(2).waitFor();
});

test("a piece at rest tells the rest of it when tapped", async (t) => {
  const { phone, person } = await threePulled(t);
  const last = phone.page.locator(".rest-piece", { hasText: "Piece 2" }).locator(".last");
  assert.equal(await last.isVisible(), false);
  await person.openResting(2);
  await last.waitFor();
});

test("an entry of the log is one line, and a tap opens it to be mended", async (t) => {
  const { phone, person } = await threePulled(t);
  const { page } = phone;
  await person.goTo("Log");
  await page.locator(".entries li").nth(8).waitFor();
  const rows = await heights(page, ".entries li");
  for (const height of rows) assert.ok(height <= 64, `an entry is ${height} px high`);
  await person.openEntry("Piece 2 pulled");
  await page.locator("form.mending").getByRole("button", { name: "10 min ago" }).waitFor();
  await person.button(/^Undo: Piece 2 pulled/).waitFor();
});
