// How many taps the longer journeys take, a tap into a field being one and what is typed there none.

import assert from "node:assert/strict";
import { test } from "node:test";
import { EVENING, Person } from "./cook.mjs";
import { openApp, siteAndPhone } from "./harness.mjs";

/** A phone's wheel of hours and minutes, and what puts it away (from memory). */
const TIME_WHEEL = 3;

async function newPhone(t) {
  const { site, phone } = await siteAndPhone(t, { time: EVENING });
  await openApp(phone, site);
  return new Person(phone);
}

/** Taps into a field and types. */
async function fill(person, label, text, how = {}) {
  const field = person.page.getByLabel(label, how);
  await field.tap();
  person.taps += 1;
  await field.fill(text);
}

async function dinnerAt(person, time) {
  await fill(person, "Dinner at", time);
  await person.page.getByLabel("Dinner at").blur();
  person.taps += TIME_WHEEL;
  await person.stored(/Dinner at/);
}

/** Adds pieces alike. */
async function add(person, count, weight) {
  await fill(person, "How many", String(count));
  await fill(person, "Weight each", weight);
  await person.tap(`Add ${count} pieces`);
  await person.stored(`${count} pieces added`);
}

test("from first use to a plan for four in at most twelve taps", async (t) => {
  const person = await newPhone(t);
  await person.tap("New cook");
  await dinnerAt(person, "20:30");
  await add(person, 4, "8 oz");
  await person.tap("See the plan");
  await person.page.locator(".timeline").waitFor();
  assert.ok(person.taps <= 12, `${person.taps} taps`);
});

test("twenty in two sizes are added in at most twelve taps, and put on in thirty", async (t) => {
  const person = await newPhone(t);
  await person.tap("New cook");
  const before = person.taps;
  await add(person, 12, "1/2 lb");
  await add(person, 8, "11");
  assert.ok(person.taps - before <= 12, `${person.taps - before} taps`);
  await person.page.locator(".set-out-row").nth(19).waitFor();
  const weights = await person.page.locator(".set-out-row .facts").allInnerTexts();
  assert.equal(weights.filter((text) => /\b8\soz/.test(text)).length, 12);
  assert.equal(weights.filter((text) => /\b11\soz/.test(text)).length, 8);
  await person.tap("Put all 20 on");
  await person.page.locator(".piece.on").nth(19).waitFor();
  assert.ok(person.taps <= 30, `${person.taps} taps`);
});

test("the plan of twenty in two sizes is told by what is done together", async (t) => {
  const person = await newPhone(t);
  await person.tap("New cook");
  await dinnerAt(person, "20:30");
  await add(person, 12, "8");
  await add(person, 8, "11");
  await person.tap("See the plan");
  // The plan follows the pieces a moment later.
  await person.page.locator(".plan .entries li", { hasText: /Put Pieces .*20 on/ }).waitFor();
  const lines = await person.page.locator(".plan .entries li").allInnerTexts();
  // Put on, pull and rested for each piece alone would be sixty.
  assert.ok(lines.length <= 20, `${lines.length} lines`);
});

test("dinner is 45 minutes earlier in two taps", async (t) => {
  const person = await newPhone(t);
  await person.tap("New cook");
  await dinnerAt(person, "20:30");
  await add(person, 2, "8");
  await person.tap("Put all 2 on");
  await person.page.locator(".piece.on").nth(1).waitFor();
  const before = person.taps;
  await person.tap(/Dinner 8:30/);
  await person.tap("45 min earlier");
  await person.page.getByText(/Dinner 7:45/).first().waitFor();
  assert.equal(person.taps - before, 2);
});

test("a pack with smaller and larger ones is shared out by that", async (t) => {
  const person = await newPhone(t);
  await person.tap("New cook");
  await fill(person, "How many", "4", { exact: true });
  await person.page.getByText("Weigh the pack").tap();
  await fill(person, "Weight of the pack of 4 (lb)", "2 lb");
  await fill(person, "How many are smaller", "5");
  await person.tap("Add 4 pieces");
  await person.page.getByText("Between 0 and 4 is accepted").waitFor();
  assert.equal(await person.page.getByLabel("How many are smaller").inputValue(), "5");
  await fill(person, "How many are smaller", "1");
  await fill(person, "How many are larger", "1");
  await person.tap("Add 4 pieces");
  await person.stored("4 pieces added");
  await person.page.locator(".set-out-row").nth(3).waitFor();
  const facts = await person.page.locator(".set-out-row .facts").allInnerTexts();
  const weights = facts.map((text) => Number(/([\d.]+)\soz/.exec(text)[1]));
  // Two pounds are 32 ounces; the smallest lies first, as the leave-in goes into it.
  assert.ok(Math.abs(weights.reduce((sum, one) => sum + one) - 32) < 0.3, String(weights));
  assert.ok(weights[0] < weights[1] && weights[1] === weights[2] && weights[2] < weights[3], String(weights));
});

test("a piece is changed and named by a tap, and what is wrong stays beside its field", async (t) => {
  const person = await newPhone(t);
  const { page } = person;
  await person.tap("New cook");
  await add(person, 2, "8");
  await page.locator(".set-out-row .open").nth(1).tap();
  await fill(person, "Weight (oz)", "half");
  await fill(person, /^Name/, "The woody one");
  await person.tap("Save", { exact: true });
  await page.getByText(/not a number/).waitFor();
  assert.equal(await page.getByLabel("Weight (oz)").inputValue(), "half");
  await fill(person, "Weight (oz)", "9.5");
  await person.tap("Save", { exact: true });
  await person.stored("The woody one is now 9.5 oz");
  await page.locator(".set-out-row", { hasText: "The woody one" }).getByText("9.5 oz").waitFor();
  await person.tap("Undo", { exact: true });
  await page.locator(".set-out-row", { hasText: "Piece 2" }).getByText("8 oz").waitFor();
});

test("a pack of one is added, whatever was typed of others before", async (t) => {
  const person = await newPhone(t);
  await person.tap("New cook");
  await fill(person, "How many", "4", { exact: true });
  await person.page.getByText("Weigh the pack").tap();
  await fill(person, "How many are smaller", "2");
  await fill(person, "How many", "1", { exact: true });
  await fill(person, "Weight of the pack of 1 (lb)", "1/2");
  await person.tap("Add 1 piece");
  await person.page.locator(".set-out-row .facts", { hasText: "8 oz" }).waitFor();
});
