// On a desk the screen's width is used: three columns, and no column that holds nothing but a button.

import assert from "node:assert/strict";
import { test } from "node:test";
import { allOn } from "./begun.mjs";
import { FOUR } from "./cook.mjs";

for (const [width, height] of [[1024, 768], [1440, 900], [1024, 1366]]) {
  test(`at ${width} x ${height} the duty, the pieces and a curve stand side by side over one bar`, async (t) => {
    const { phone, person } = await allOn(t, FOUR, { context: { viewport: { width, height } } });
    const { page } = phone;
    await person.nextStep();
    await page.locator(".live figure svg").waitFor();
    const places = await page.evaluate(() => {
      const box = (selector) => document.querySelector(selector).getBoundingClientRect();
      const [card, piece, curve, dock] = [".next", ".piece.on", ".live figure", ".dock"].map(box);
      return { card, piece, curve, dock, width: innerWidth, height: innerHeight };
    });
    assert.ok(places.card.right <= places.piece.left, "the pieces stand beside the card");
    assert.ok(places.piece.right <= places.curve.left, "the curve stands beside the pieces");
    assert.ok(places.curve.bottom <= places.height, "the curve is in sight");
    assert.ok(places.dock.width >= places.width - 20, "the dock is as wide as the page");
    assert.ok(places.dock.height <= 96, `the dock is ${places.dock.height} px high`);
    assert.equal(Math.round(places.dock.bottom), places.height);
  });
}
