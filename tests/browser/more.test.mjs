// More: everything that is not needed at the pit stands under what it belongs to.

import assert from "node:assert/strict";
import { test } from "node:test";
import { cookWith } from "./begun.mjs";
import { FOUR } from "./cook.mjs";

test("what belongs to this cook, to the kitchen and to this phone stand apart", async (t) => {
  const { phone, person } = await cookWith(t, FOUR.slice(0, 1));
  await person.goTo("More");
  const groups = await phone.page.evaluate(() => {
    const found = {};
    let group = "";
    for (const one of document.querySelectorAll(".more h2, .more button")) {
      if (one.tagName === "H2") found[(group = one.innerText)] = [];
      else found[group].push(one.innerText);
    }
    return found;
  });
  assert.deepEqual(Object.keys(groups), ["This cook", "Kitchen", "This phone"]);
  assert.ok(groups["This cook"].includes("Save this cook as a file"));
  assert.ok(groups["This cook"].includes("New cook"));
  assert.ok(groups["This phone"].includes("Settings"));
  assert.ok(groups["This phone"].includes("Alarms on this phone"));
});
