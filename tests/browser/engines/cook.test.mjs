// A cook from its pieces to proved, with undo and mending, in each engine.

import assert from "node:assert/strict";
import { FOUR, onThePit, pull, readPiece, stored, typeDigits, undoLast, untilStored } from "./cooking.mjs";
import { journey } from "./engines.mjs";

journey("four breasts from set out to proved", {}, async ({ page }) => {
  await onThePit(page, FOUR);
  await page.pass(70);
  for (const piece of [1, 2, 3, 4]) {
    // The thickest takes longest (common practice, no source): as hot as the others so soon, it is doubted.
    if (piece === 4) await page.pass(20);
    await readPiece(page, piece, "167", 2);
    await pull(page, piece);
  }
  await page.show("rest");
  await page.untilCount(".piece.proved", 4);
});

journey("a reading undone is gone, and one mended counts", {}, async ({ page }) => {
  await onThePit(page, FOUR.slice(0, 1));
  await page.pass(30);
  await readPiece(page, 1, "131");
  await page.show("cook");
  await undoLast(page);
  await untilStored(page, "undone", 1);
  await page.until(() => !document.querySelector(".pieces, .rows").innerText.includes("131"));
  await readPiece(page, 1, "113");
  await page.show("log");
  await page.see(".entries li", "113");
  const read = await stored(page, "core_read");
  assert.equal(read.length, 2, "nothing stored is taken away");
});

journey("a reading that no piece can have is refused beside the field and stays typed", {}, async ({ page }) => {
  await onThePit(page, FOUR.slice(0, 1));
  await page.show("piece-1");
  await typeDigits(page, "999");
  await page.see("#reading-bad");
  assert.equal(await page.run(() => document.querySelector("#reading").value), "999");
  assert.equal((await stored(page, "core_read")).length, 0);
});
