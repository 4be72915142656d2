// A cook as a file: out of one phone, into another in the middle of a cook, and what no phone takes.

import assert from "node:assert/strict";
import { readFile } from "node:fs/promises";
import { test } from "node:test";
import { EVENING, FOUR, Person } from "./cook.mjs";
import { openApp, siteAndPhone, started } from "./harness.mjs";
import { databaseTexts } from "./stored.mjs";

test("a cook saved as a file opens in the middle of another, which stays as it was", async (t) => {
  const { phone, person } = await running(t, FOUR.slice(0, 2));
  const first = await databaseTexts(phone.page);
  const file = await saved(phone, person);
  await person.goTo("More");
  await person.tap("New cook");
  await person.tap("Start a new cook");
  await person.setOutAll([FOUR[3]]);
  const second = await databaseTexts(phone.page);
  const before = second.filter((text) => !first.includes(text));

  await chooseCook(phone, person, { name: "cook.json", buffer: Buffer.from(file) });
  await phone.page.locator(".piece").nth(1).waitFor();
  const after = await databaseTexts(phone.page);
  for (const text of [...first, ...before]) {
    assert.ok(after.includes(text), "an entry of a cook that was here is gone");
  }
  assert.equal(after.length, second.length + first.length, "stored as a cook of its own");
  assert.deepEqual(JSON.parse(await saved(phone, person)), JSON.parse(file));

  // The cook that ran is still there to go back to.
  await person.goTo("More");
  await person.tap("Go to the start screen");
  const cooks = phone.page.getByRole("button", { name: /^Cook of/ });
  await cooks.nth(2).waitFor();
  assert.equal(await cooks.count(), 3);
});

for (const [what, text, says] of [
  ["no cook", "{}", /not a cook saved by this app/],
  ["a picture", "\u0089PNG\u0000\u0001", /not a cook saved by this app/],
  ["of a later form", '{"format":"pull-order cook","version":9,"entries":[]}', /later version/],
  ["too long", " ".repeat((8 << 20) + 1), /Up to 8 MB is accepted/],
]) {
  test(`a file that is ${what} is refused in plain words, and the cook goes on`, async (t) => {
    const { phone, person } = await running(t, FOUR.slice(0, 1));
    const before = await databaseTexts(phone.page);
    await chooseCook(phone, person, { name: "cook.json", buffer: Buffer.from(text) });
    await phone.page.getByRole("status").filter({ hasText: says }).waitFor();
    assert.deepEqual(await databaseTexts(phone.page), before);
  });
}

test("a name in a file that is written as markup is shown as text", async (t) => {
  const { phone, person } = await running(t, FOUR.slice(0, 1));
  const name = "<img src=x onerror=document.title='taken'>";
  const cook = JSON.parse(await saved(phone, person));
  for (const entry of cook.entries) if (entry.what.kind === "piece_set_out") entry.what.name = name;
  await chooseCook(phone, person, { name: "cook.json", buffer: Buffer.from(JSON.stringify(cook)) });
  await phone.page.getByText(name).first().waitFor();
  assert.equal(await phone.page.locator("img[src=x]").count(), 0);
  assert.notEqual(await phone.page.title(), "taken");
});

test("bags saved as a file come back on a phone that lost them, and taken in twice they are there once", async (t) => {
  const file = await (async () => {
    const { phone, person } = await inTheKitchen(t);
    await person.packThreeTyped();
    await person.goTo("Bags");
    const [warned] = await phone.page.getByText(/may delete what a web page keeps/).all();
    assert.ok(warned, "what may happen to them is said there");
    const coming = phone.page.waitForEvent("download");
    await person.tap("Save the bags as a file");
    return readFile(await (await coming).path(), "utf8");
  })();
  const { phone, person } = await inTheKitchen(t);
  const rows = phone.page.locator(".bag-row");
  assert.equal(await rows.count(), 0);
  for (let turn = 0; turn < 2; turn += 1) {
    await choose(phone, person, "Open a file of bags", { name: "bags.json", buffer: Buffer.from(file) });
    await phone.page.getByRole("status").filter({ hasText: "in the list" }).waitFor();
    await rows.nth(2).waitFor();
    assert.equal(await rows.count(), 3);
  }
  await phone.page.reload();
  await started(phone.page);
  await rows.nth(2).waitFor();
  const before = await databaseTexts(phone.page);
  const cook = '{"format":"pull-order cook","version":1,"entries":[]}';
  await choose(phone, person, "Open a file of bags", { name: "cook.json", buffer: Buffer.from(cook) });
  await phone.page.getByRole("status").filter({ hasText: "not a file of bags" }).waitFor();
  assert.deepEqual(await databaseTexts(phone.page), before);
});

/** A phone at the list of its bags. */
async function inTheKitchen(t) {
  const { site, phone } = await siteAndPhone(t, { time: EVENING });
  const person = new Person(phone);
  await openApp(phone, site);
  await person.tap(/^Kitchen/);
  return { phone, person };
}

/** A cook with these pieces on the pit. */
async function running(t, pieces) {
  const { site, phone } = await siteAndPhone(t, { time: EVENING });
  const person = new Person(phone);
  await openApp(phone, site);
  await person.tap("New cook");
  await person.setOutAll(pieces);
  await person.tap(/^Put (all|the)/);
  await person.stored("on");
  return { phone, person };
}

/** The text of the file that the open cook is saved as. */
async function saved(phone, person) {
  await person.goTo("More");
  const coming = phone.page.waitForEvent("download");
  await person.tap("Save this cook as a file");
  return readFile(await (await coming).path(), "utf8");
}

/** Chooses a cook's file to open. */
async function chooseCook(phone, person, file) {
  await person.goTo("More");
  await choose(phone, person, "Open a cook from a file", file);
}

/** Chooses a file to open, by the button of this name. */
async function choose(phone, person, button, { name, buffer }) {
  const asking = phone.page.waitForEvent("filechooser");
  await person.tap(button);
  await (await asking).setFiles({ name, mimeType: "application/json", buffer });
}
