// How most browser tests begin: a cook with some pieces added, or with all of them on the pit.

import { listen } from "./asleep.mjs";
import { EVENING, Person } from "./cook.mjs";
import { keptOffline, openApp, siteAndPhone } from "./harness.mjs";

/**
 * A new cook with these pieces added, on an evening; the options are those of `siteAndPhone` besides. With
 * `ears` what rings is heard, and the app is kept offline, so that it can be loaded anew.
 */
export async function cookWith(t, pieces, { ears = false, ...options } = {}) {
  const { site, phone } = await siteAndPhone(t, { time: EVENING, ...options });
  const rings = ears ? await listen(phone) : undefined;
  const person = new Person(phone);
  await openApp(phone, site);
  if (ears) await keptOffline(phone.page);
  await person.tap("New cook");
  await person.setOutAll(pieces);
  return { site, phone, person, rings };
}

/** The same with all of them, two or more, put on. */
export async function allOn(t, pieces, options) {
  const begun = await cookWith(t, pieces, options);
  await begun.person.tap(`Put all ${pieces.length} on`);
  await begun.person.stored("on");
  return begun;
}
