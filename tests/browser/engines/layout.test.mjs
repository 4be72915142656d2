// Every screen is laid out alike: each part as high, within a few pixels, as Chromium makes it.

import assert from "node:assert/strict";
import { FOUR, begin, putAllOn, readPiece, setOut, pull, undoLast, untilStored } from "./cooking.mjs";
import { chromiumBeside, journey } from "./engines.mjs";
import { packTyped } from "./kitchen.mjs";
import { COOK } from "../mid-cook.mjs";

const KITCHEN = ["kitchen", "portions", "rub", "chill", "labels"];
/** Engines round the heights of lines and fields differently, pixels. */
const TOLERANCE = 4;

journey(
  "every screen's parts are as high as Chromium's",
  {},
  async ({ page, t }) => {
    const { page: model } = await chromiumBeside(t, {});
    const [ours, theirs] = [await heights(page), await heights(model)];
    for (const [screen, parts] of Object.entries(theirs)) {
      const other = ours[screen];
      const differing = parts
        .map(({ name, height }, place) => ({ name, height, other: other[place]?.name === name ? other[place].height : undefined }))
        .filter(({ height, other }) => other === undefined || Math.abs(height - other) > TOLERANCE);
      assert.deepEqual(differing, [], screen);
    }
  },
  ["Firefox", "WebKit"],
);

/**
 * The heights of all that a person taps and tells apart on each screen, in the middle of a cook. What
 * only holds such parts and running text is left out: where a line breaks is each engine's own.
 */
async function heights(page) {
  await page.go();
  await packTyped(page, 3);
  await page.show("start");
  await begin(page);
  await setOut(page, FOUR.slice(0, 3));
  await putAllOn(page, 3);
  await page.pass(40);
  await readPiece(page, 2, "128");
  await readPiece(page, 1, "158");
  await pull(page, 1);
  // What is undone leaves the row as it was before.
  await readPiece(page, 2, "131");
  await page.show("cook");
  await undoLast(page);
  await untilStored(page, "undone", 1);
  const found = {};
  for (const screen of [...COOK, ...KITCHEN]) {
    await page.show(screen);
    await page.until(() => new Promise((resolve) => requestAnimationFrame(() => setTimeout(() => resolve(true), 100))));
    found[screen] = await page.run(() => {
      const parts = document.querySelectorAll("main :is(button, input, select, fieldset, legend, .choice label, h1, h2, li), footer :is(button, nav, .last-done)");
      return [...parts].filter(testFinder.seen).map((element) => ({
        // Not by its text: engines put the words of a drawing together differently.
        name: `${element.tagName.toLowerCase()}.${element.className}`,
        height: element.getBoundingClientRect().height,
      }));
    });
  }
  return found;
}
