// Every screen, in every look: no violation that axe-core can find, targets for a gloved thumb, and
// nothing that runs off a small screen.

import assert from "node:assert/strict";
import { test } from "node:test";
import { brokenRules, outsideCards, show, smallTargets } from "./look.mjs";
import { LOOKS, chooseLook, midCook } from "./mid-cook.mjs";

for (const look of LOOKS) {
  test(`in the look "${look}" no screen breaks an accessibility rule`, async (t) => {
    const { phone, screens } = await midCook(t);
    await chooseLook(phone.page, look);
    // So tall that the bar at the bottom lies over nothing.
    await phone.page.setViewportSize({ width: 360, height: 2600 });
    for (const screen of screens) {
      await show(phone.page, screen);
      assert.deepEqual(await brokenRules(phone.page), [], `${screen} in ${look}`);
    }
  });
}

test("each choice of a rule stays within its card", async (t) => {
  const { phone } = await midCook(t);
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
  const { phone, screens } = await midCook(t);
  for (const screen of screens) {
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
    const { phone, screens } = await midCook(t);
    await phone.page.setViewportSize(viewport);
    await phone.page.evaluate((size) => document.documentElement.style.setProperty("font-size", size), rootSize);
    for (const screen of screens) {
      await show(phone.page, screen);
      const wide = await phone.page.evaluate(() => document.documentElement.scrollWidth);
      assert.ok(wide <= viewport.width, `${screen} is ${wide} wide`);
    }
  });
}
