// Every screen, in every look: no violation that axe-core can find, targets for a gloved thumb, and
// nothing that runs off a small screen.

import assert from "node:assert/strict";
import { test } from "node:test";
import { EVENING, FOUR, Person } from "./cook.mjs";
import { openApp, siteAndPhone } from "./harness.mjs";
import { brokenRules, outsideCards, show, smallTargets } from "./look.mjs";

const COOK = ["start", "set-out", "plan", "habits", "cook", "piece-1", "pit", "curves", "rest", "log", "more", "settings", "alarms", "safety", "thermometer", "cautions"];
const KITCHEN = ["kitchen", "portions", "rub", "chill", "labels"];

for (const look of ["Light", "Dark", "Sun"]) {
  test(`in the look "${look}" no screen breaks an accessibility rule`, async (t) => {
    const phone = await midCook(t, look);
    // So tall that the bar at the bottom lies over nothing.
    await phone.page.setViewportSize({ width: 360, height: 2600 });
    for (const screen of phone.screens) {
      await show(phone.page, screen);
      assert.deepEqual(await brokenRules(phone.page), [], `${screen} in ${look}`);
    }
  });
}

test("each choice of a rule stays within its card", async (t) => {
  const phone = await midCook(t, "Light");
  for (const language of ["English", "Español"]) {
    await show(phone.page, "settings");
    await phone.page.getByText(language, { exact: true }).tap();
    await show(phone.page, "safety");
    for (let rule = 0; rule < 3; rule += 1) {
      await phone.page.locator("[name=rule] + span").nth(rule).tap();
      assert.deepEqual(await outsideCards(phone.page), [], `${language}, rule ${rule + 1}`);
    }
  }
});

test("everything to tap is at least 56 pixels high and wide", async (t) => {
  const phone = await midCook(t, "Light");
  for (const screen of phone.screens) {
    await show(phone.page, screen);
    assert.deepEqual(await smallTargets(phone.page), [], screen);
    assert.deepEqual(await outsideCards(phone.page), [], screen);
  }
});

for (const [name, viewport, rootSize] of [
  ["200 % text at 360x640", { width: 360, height: 640 }, "200%"],
  ["a phone on its side", { width: 640, height: 360 }, "100%"],
  ["320 pixels wide", { width: 320, height: 568 }, "100%"],
  ["a tablet", { width: 820, height: 1180 }, "100%"],
]) {
  test(`nothing runs off the screen: ${name}`, async (t) => {
    const phone = await midCook(t, "Light");
    await phone.page.setViewportSize(viewport);
    await phone.page.evaluate((size) => document.documentElement.style.setProperty("font-size", size), rootSize);
    for (const screen of phone.screens) {
      await show(phone.page, screen);
      const wide = await phone.page.evaluate(() => document.documentElement.scrollWidth);
      assert.ok(wide <= viewport.width, `${screen} is ${wide} wide`);
    }
  });
}

/** A phone in the middle of a cook: a piece raw, one on, one resting; three bags from before. */
async function midCook(t, look) {
  const { site, phone } = await siteAndPhone(t, { time: EVENING });
  const person = new Person(phone);
  await openApp(phone, site);
  await person.tap(/^Kitchen/);
  await person.packThreeTyped();
  await person.goTo("Bags");
  await phone.page.locator(".bag-row button.row").first().tap();
  const code = await phone.page.locator("a.code").getAttribute("href");
  phone.screens = [...COOK, ...KITCHEN, new URL(phone.page.url()).hash.slice(1), code.split("#")[1]];
  await show(phone.page, "start");
  await person.tap("New cook");
  await person.setOutAll(FOUR.slice(0, 3));
  await person.goTo("Cook");
  for (const piece of [1, 2]) {
    await person.tap(`Put Piece ${piece} on`);
    await person.stored(`Piece ${piece} on`);
  }
  await phone.context.clock.fastForward("50:00");
  await person.openPiece(1);
  await person.typeReading("150");
  await person.stored("reads 150");
  await person.openPiece(1);
  await person.tap("Pull Piece 1");
  await person.stored("Piece 1 off");
  await show(phone.page, "settings");
  await phone.page.getByText(look, { exact: true }).tap();
  return phone;
}
