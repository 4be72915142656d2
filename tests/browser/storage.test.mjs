// What is typed is kept: through damage, without storage, and in two windows at once.

import assert from "node:assert/strict";
import { test } from "node:test";
import { FOUR, Person } from "./cook.mjs";
import { openApp, siteAndPhone, started } from "./harness.mjs";
import { changeDatabase, databaseTexts, kinds, secondCopy } from "./stored.mjs";

/** A cook with two pieces set out: two entries. */
async function twoSetOut(t, prepare = async () => {}) {
  const { site, phone } = await siteAndPhone(t);
  const person = new Person(phone);
  await prepare(phone, site);
  await openApp(phone, site);
  await person.tap("New cook");
  await person.setOutAll(FOUR.slice(0, 2));
  return { site, phone, person };
}

async function reopen(phone) {
  await phone.page.reload();
  await started(phone.page);
}

async function twoPiecesShow(phone) {
  for (const piece of ["Piece 1", "Piece 2"]) {
    await phone.page.getByText(piece, { exact: true }).waitFor();
  }
}

test("each entry is one text in the database and one in the second copy", async (t) => {
  const { phone } = await twoSetOut(t);
  const texts = await databaseTexts(phone.page);
  assert.deepEqual(kinds(texts), ["piece_set_out", "piece_set_out"]);
  assert.deepEqual(Object.values(await secondCopy(phone.page)).sort(), texts.sort());
});

test("an entry waits for the disk before its tap is acknowledged", async (t) => {
  const note = () => {
    const asked = IDBDatabase.prototype.transaction;
    window.durabilities = [];
    IDBDatabase.prototype.transaction = function (stores, mode, options) {
      const transaction = asked.call(this, stores, mode, options);
      if (mode === "readwrite") window.durabilities.push(transaction.durability);
      return transaction;
    };
  };
  const { phone } = await twoSetOut(t, (phone) => phone.page.addInitScript(note));
  const durabilities = await phone.page.evaluate(() => window.durabilities);
  assert.deepEqual(durabilities, ["strict", "strict"], "one transaction an entry");
});

test("a damaged entry is made good from the second copy, and the damage is kept aside", async (t) => {
  const { phone, person } = await twoSetOut(t);
  await changeDatabase(phone.page, (text, place) => (place === 0 ? text.slice(0, 40) : text));
  await reopen(phone);
  await twoPiecesShow(phone);
  assert.deepEqual(kinds(await databaseTexts(phone.page)), ["piece_set_out", "piece_set_out"]);
  await person.goTo("Log");
  await phone.page.getByText("Could not be read").waitFor();
});

test("a lost database is written again from the second copy", async (t) => {
  const { phone } = await twoSetOut(t);
  const before = await databaseTexts(phone.page);
  await changeDatabase(phone.page, () => undefined);
  await reopen(phone);
  await twoPiecesShow(phone);
  assert.deepEqual(await databaseTexts(phone.page), before);
});

test("a lost second copy is written again from the database", async (t) => {
  const { phone } = await twoSetOut(t);
  const before = await secondCopy(phone.page);
  await phone.page.evaluate(() => localStorage.clear());
  await reopen(phone);
  await twoPiecesShow(phone);
  assert.deepEqual(await secondCopy(phone.page), before);
});

test("an entry of a later version is kept as it is, and told", async (t) => {
  const { phone, person } = await twoSetOut(t);
  await changeDatabase(phone.page, (text, place) =>
    place === 1 ? text.replace('"v":1', '"v":99') : text,
  );
  await phone.page.evaluate(() => localStorage.clear());
  await reopen(phone);
  await phone.page.getByText("Piece 1", { exact: true }).waitFor();
  await person.goTo("Log");
  await phone.page.getByText("Could not be read").waitFor();
  const texts = await databaseTexts(phone.page);
  assert.ok(texts.some((text) => text.includes('"v":99')));
});

test("without a database the cook goes on, the person is told, and a reload loses nothing", async (t) => {
  const without = () => Object.defineProperty(window, "indexedDB", { value: undefined });
  const { phone, person } = await twoSetOut(t, (phone) => phone.page.addInitScript(without));
  await phone.page.getByRole("alert").filter({ hasText: "saves nothing" }).waitFor();
  await person.tap("Put all 2 on");
  await person.stored("on");
  await reopen(phone);
  await person.goTo("Log");
  const lines = await person.logLines();
  assert.equal(lines.length, 4, lines.join("\n"));
});

test("with no storage at all the cook goes on until the page is closed", async (t) => {
  const nothing = () => {
    Object.defineProperty(window, "indexedDB", { value: undefined });
    Object.defineProperty(window, "localStorage", {
      get() {
        throw new DOMException("denied", "SecurityError");
      },
    });
  };
  const { phone, person } = await twoSetOut(t, (phone) => phone.page.addInitScript(nothing));
  await person.tap("Put all 2 on");
  await person.stored("on");
  await phone.page.getByRole("alert").filter({ hasText: "save the cook as a file before you close" }).waitFor();
});

test("with no room left the cook goes on and the person is told", async (t) => {
  // What a browser without room does: it ends the transaction when it is to be written.
  const full = () => {
    const commit = IDBTransaction.prototype.commit;
    IDBTransaction.prototype.commit = function () {
      return window.full && this.mode === "readwrite" ? this.abort() : commit.call(this);
    };
  };
  const { phone, person } = await twoSetOut(t, (phone) => phone.page.addInitScript(full));
  await phone.page.evaluate(() => (window.full = true));
  await person.tap("Put all 2 on");
  await person.stored("on");
  await phone.page.getByRole("alert").filter({ hasText: "out of storage" }).waitFor();
  await reopen(phone);
  assert.equal((await person.logLines()).length, 4);
  assert.equal((await databaseTexts(phone.page)).length, 4, "made good from the second copy");
});

test("a connection that the browser dropped is opened again", async (t) => {
  const keep = () => {
    const open = IDBFactory.prototype.open;
    IDBFactory.prototype.open = function (...words) {
      const request = open.apply(this, words);
      request.addEventListener("success", () => (window.database = request.result));
      return request;
    };
  };
  const { phone, person } = await twoSetOut(t, (phone) => phone.page.addInitScript(keep));
  await phone.page.evaluate(() => window.database.close());
  await person.tap("Put all 2 on");
  await person.stored("on");
  assert.equal(await phone.page.getByRole("alert").filter({ hasText: /\S/ }).count(), 0);
  assert.equal((await databaseTexts(phone.page)).length, 4);
});
