// How most browser tests begin: a cook with some pieces added, or with all of them on the pit.

import { EVENING, Person } from "./cook.mjs";
import { openApp, siteAndPhone } from "./harness.mjs";

/** A new cook with these pieces added, on an evening; the options are those of `siteAndPhone` besides. */
export async function cookWith(t, pieces, options = {}) {
  const { site, phone } = await siteAndPhone(t, { time: EVENING, ...options });
  const person = new Person(phone);
  await openApp(phone, site);
  await person.tap("New cook");
  await person.setOutAll(pieces);
  return { site, phone, person };
}

/** The same with all of them, two or more, put on. */
export async function allOn(t, pieces, options) {
  const begun = await cookWith(t, pieces, options);
  await begun.person.tap(`Put all ${pieces.length} on`);
  await begun.person.stored("on");
  return begun;
}
