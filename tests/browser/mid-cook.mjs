// A phone in the middle of a cook, and the names of all that can be seen on it.

import { EVENING, FOUR, Person } from "./cook.mjs";
import { openApp, siteAndPhone } from "./harness.mjs";
import { show } from "./look.mjs";

/** The looks, by the words on their buttons. */
export const LOOKS = ["Light", "Dark", "Sun"];

/** The addresses of the cook's screens. */
export const COOK = ["start", "set-out", "plan", "habits", "cook", "piece-1", "pit", "curves", "rest", "log", "more", "settings", "alarms", "safety", "thermometer", "cautions"];

/** The addresses of the kitchen's screens. */
const KITCHEN = ["kitchen", "portions", "rub", "chill", "labels"];

/**
 * A piece raw, one on with a reading that is due again, one resting; dinner has a time; three bags from
 * before. With the addresses of all screens, those of a bag and of its code among them.
 */
export async function midCook(t) {
  const { site, phone } = await siteAndPhone(t, { time: EVENING });
  const person = new Person(phone);
  const { clock } = phone.context;
  await openApp(phone, site);
  const kitchen = await threeBags(person);
  await show(phone.page, "start");
  await person.tap("New cook");
  await person.setOutAll(FOUR.slice(0, 3));
  await phone.page.locator("#dinner").fill("18:45");
  await phone.page.locator("#dinner").blur();
  await person.goTo("Cook");
  for (const piece of [1, 2]) {
    await person.tap(`Put on: Piece ${piece}`);
    await person.stored(`Piece ${piece} on`);
  }
  await clock.fastForward("30:00");
  await show(phone.page, "pit");
  await person.typeReading("254");
  await person.stored("Pit reads 254");
  await clock.fastForward("20:00");
  for (const [piece, reading] of [[2, "128"], [1, "158"]]) {
    await person.openPiece(piece);
    await person.typeReading(reading);
    await person.stored(`reads ${reading}`);
  }
  await person.openPiece(1);
  await person.tap("Pull Piece 1");
  await person.stored("Piece 1 pulled");
  return { site, phone, person, screens: [...COOK, ...kitchen] };
}

/** Packs three bags, and returns the addresses of the kitchen's screens, those of a bag among them. */
export async function threeBags(person) {
  const { page } = person;
  await person.tap(/^Kitchen/);
  await person.packThreeTyped();
  await person.goTo("Bags");
  await page.locator(".bag-row button.row").first().tap();
  const code = await page.locator("a.code").getAttribute("href");
  const bag = new URL(page.url()).hash.slice(1);
  return [...KITCHEN, bag, code.split("#")[1]];
}

/** Chooses one of the looks in the settings. */
export async function chooseLook(page, look) {
  await show(page, "settings");
  await page.getByText(look, { exact: true }).tap();
}
