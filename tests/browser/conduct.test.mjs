// A whole cook by the card alone: what it costs in taps and openings of the lid, and that nothing on the
// screen contradicts the card.

import assert from "node:assert/strict";
import { test } from "node:test";
import { EVENING, FOUR, Person } from "./cook.mjs";
import { Follower } from "./follow.mjs";
import { openApp, siteAndPhone } from "./harness.mjs";

/** Time constants of the four pieces, minutes: the thinnest is done in under an hour. */
const SLOW = [32, 39, 45, 55];

test("four breasts by the card alone: few openings, few taps, each proved", async (t) => {
  const { site, phone } = await siteAndPhone(t, { time: EVENING });
  const person = new Person(phone);
  await openApp(phone, site);
  await person.tap("New cook");
  await person.setOutAll(FOUR);
  await person.tap("Put all 4 on");
  await person.stored("on");
  const before = person.taps;
  const follower = new Follower(person, { slow: SLOW });
  await follower.until(/^Serve/);
  const taps = person.taps - before;
  t.diagnostic(`${taps} taps, ${follower.openings} openings, ${follower.proofs} readings at rest`);
  t.diagnostic(follower.said.join(" | "));
  assert.equal(await phone.page.locator(".piece.proved").count(), 4);
  assert.equal(follower.putBack, 0);
  assert.ok(follower.openings <= 8, `${follower.openings} openings`);
  assert.ok(taps <= 100, `${taps} taps`);
});
