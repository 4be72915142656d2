// Undo steps back as far as one likes and forward again, and says in few words what it took.

import assert from "node:assert/strict";
import { test } from "node:test";
import { EVENING, FOUR, Person } from "./cook.mjs";
import { openApp, siteAndPhone, started } from "./harness.mjs";

async function newCook(t) {
  const { site, phone } = await siteAndPhone(t, { time: EVENING });
  const person = new Person(phone);
  await openApp(phone, site);
  await person.tap("New cook");
  return { site, phone, person };
}

const undo = (person) => person.tap("Undo", { exact: true });
const redo = (person) => person.tap("Redo", { exact: true });

test("undo pressed again takes the tap before, and redo walks forward, across a reload", async (t) => {
  const { phone, person } = await newCook(t);
  await person.setOutAll(FOUR.slice(0, 2));
  await person.tap("Put all 2 on");
  await person.stored("on");
  await undo(person);
  await person.stored("Undone: Pieces 1 and 2 on");
  await undo(person);
  await person.stored("Undone: Piece 2 added");
  await phone.page.reload();
  await started(phone.page);
  await person.goTo("Log");
  await person.tap(/^Undo: Piece 1 added/);
  await person.stored("Undone: Piece 1 added");
  assert.equal(await person.button("Undo", { exact: true }).count(), 0, "nothing is left to undo");
  for (const words of ["Piece 1 added", "Piece 2 added", "Pieces 1 and 2 on"]) {
    await redo(person);
    await person.stored(`Done again: ${words}`);
  }
  assert.equal(await person.button("Redo", { exact: true }).count(), 0);
  await person.goTo("Cook");
  assert.equal(await phone.page.locator(".piece.on").count(), 2);
});

test("another tap ends the way forward", async (t) => {
  const { phone, person } = await newCook(t);
  await person.setOutAll(FOUR.slice(0, 2));
  await undo(person);
  await person.stored("Undone: Piece 2 added");
  await person.setOut(FOUR[2]);
  await person.stored("Piece 3 added");
  assert.equal(await person.button("Redo", { exact: true }).count(), 0);
  await undo(person);
  await undo(person);
  await person.stored("Undone: Piece 1 added");
  assert.equal(await phone.page.getByText(/^Piece \d$/).count(), 0);
});

test("twenty pieces are added, and undone, in three words", async (t) => {
  const { phone, person } = await newCook(t);
  await phone.page.getByLabel("How many").fill("20");
  await person.setOut(FOUR[1]);
  await person.stored("20 pieces added");
  const height = await phone.page.locator(".last-done").evaluate((element) => element.offsetHeight);
  assert.ok(height <= 64, `the undo takes ${height} px`);
  await undo(person);
  await person.stored("Undone: 20 pieces added");
});
