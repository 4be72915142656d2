// With no network: the app starts, cooks, is killed and starts again.

import assert from "node:assert/strict";
import { FOUR, begin, putAllOn, readPiece, setOut, stored } from "./cooking.mjs";
import { journey } from "./engines.mjs";

journey("with no network it starts, cooks, and starts again after a kill", {}, async ({ page, site }) => {
  await page.go();
  await page.until(() => navigator.serviceWorker.controller?.state === "activated");
  await site.stop();
  await page.reload();
  await begin(page);
  await setOut(page, FOUR.slice(0, 1));
  await putAllOn(page, 1);
  await page.pass(20);
  await readPiece(page, 1, "91");
  await page.kill();
  await page.reopen();
  await page.go("log");
  await page.see(".entries li", "91");
  assert.equal((await stored(page, "core_read")).length, 1);
});
