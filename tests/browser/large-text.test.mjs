// With text twice as large, by the phone's own setting or by the browser's zoom, every screen at the pit can
// be used, and what is wrong with a field is brought into sight.

import assert from "node:assert/strict";
import { test } from "node:test";
import { allOn } from "./begun.mjs";
import { EVENING, FOUR, Person } from "./cook.mjs";
import { openApp, siteAndPhone } from "./harness.mjs";
import { show } from "./look.mjs";

/** 200 %, as WCAG 2.2 asks for (success criterion 1.4.4): by the root's letters, or half the pixels. */
const WAYS = {
  "text of 200 %": (page) => page.evaluate(() => document.documentElement.style.setProperty("font-size", "200%")),
  "zoom of 200 %": (page) => page.setViewportSize({ width: 180, height: 320 }),
};
const PIT = ["cook", "piece-1", "pit", "rest", "log", "curves", "more"];

async function fourOn(t) {
  const { phone, person } = await allOn(t, FOUR);
  await phone.context.clock.fastForward("56:00");
  await person.nextStep();
  return { phone, person };
}

for (const [name, enlarge] of Object.entries(WAYS)) {
  test(`with ${name} nothing sticks out or covers a screen, and the keys are in sight`, async (t) => {
    const { phone, person } = await fourOn(t);
    const { page } = phone;
    await enlarge(page);
    for (const screen of PIT) {
      await show(page, screen);
      const fits = await page.evaluate(() => document.documentElement.scrollWidth <= innerWidth);
      assert.ok(fits, `${screen} scrolls to the side`);
      const dock = await page.locator(".dock").evaluate((dock) => getComputedStyle(dock).position);
      assert.equal(dock, "static", `${screen}: the dock lies over the screen`);
    }
    for (const screen of ["piece-1", "pit"]) {
      await show(page, screen);
      await page.evaluate(() => scrollTo(0, 0));
      await keysInSight(page, screen);
    }
    await show(page, "cook");
    await person.tap(/^Lid up/);
    await page.locator(".round .keys").waitFor();
    await page.evaluate(() => scrollTo(0, 0));
    await keysInSight(page, "round");
    await person.typeReading("131");
    await show(page, "cook");
    await person.stored("reads 131");
  });
}

/** Fails unless what is typed and all keys are in sight. */
async function keysInSight(page, screen) {
  const outside = await page.locator(".typed input, .keys button").evaluateAll((all) =>
    all
      .map((one) => [one.innerText || one.id, one.getBoundingClientRect()])
      .filter(([, box]) => box.top < 0 || box.bottom > innerHeight)
      .map(([key, box]) => `${key} ${Math.round(box.bottom)}`),
  );
  assert.deepEqual(outside, [], `${screen}: keys out of sight`);
}

test("a number of pieces that is none, and a dinner that is over, are scrolled to", async (t) => {
  const { site, phone } = await siteAndPhone(t, { time: EVENING });
  const { page } = phone;
  const person = new Person(phone);
  await openApp(phone, site);
  await person.tap("New cook");
  await WAYS["text of 200 %"](page);
  await page.locator("#count").fill("99");
  await page.getByLabel("Weight each").fill("8");
  await person.button(/^Add \d+ piece/).first().scrollIntoViewIfNeeded();
  await person.tap(/^Add \d+ piece/);
  await inSight(page, "#count-bad");
  assert.equal(await page.locator("#count-bad").innerText(), "Between 1 and 40 is accepted.");
  await page.evaluate(() => document.documentElement.style.removeProperty("font-size"));
  await page.getByLabel("Dinner at").fill("12:00");
  await page.evaluate(() => scrollTo(0, document.body.scrollHeight));
  await page.getByLabel("Dinner at").evaluate((field) => field.blur());
  await inSight(page, "#dinner-bad");
});

/** Waits until something is said there, and is in sight. */
function inSight(page, where) {
  return page.waitForFunction((where) => {
    const bad = document.querySelector(where);
    const box = bad.getBoundingClientRect();
    return /\S/.test(bad.textContent) && box.top >= 0 && box.bottom <= innerHeight;
  }, where);
}

test("a field in error is scrolled to", async (t) => {
  const { site, phone } = await siteAndPhone(t, { time: EVENING });
  const { page } = phone;
  const person = new Person(phone);
  await openApp(phone, site);
  await person.tap("New cook");
  await WAYS["text of 200 %"](page);
  await page.getByLabel("Weight each").fill("999");
  await person.button(/^Add \d+ piece/).first().scrollIntoViewIfNeeded();
  await person.tap(/^Add \d+ piece/);
  const field = page.locator(".field", { has: page.locator(".bad:not(:empty)") }).first();
  await field.waitFor();
  await page.waitForFunction(() => {
    const bad = [...document.querySelectorAll(".field .bad")].find((one) => one.textContent);
    const box = bad?.getBoundingClientRect();
    return box && box.top >= 0 && box.bottom <= innerHeight;
  });
});
