// The process that keeps the storage dies while the page lives on, as on a phone that sends it to the
// background. What is typed then stays in hand and in sight, and is stored in the end.

import assert from "node:assert/strict";
import { FOUR, onThePit, stored, typePit, untilStored } from "./cooking.mjs";
import { journey } from "./engines.mjs";

journey("a reading typed after the storage's process was killed is not lost", {}, async ({ page }) => {
  await onThePit(page, FOUR.slice(0, 1));
  await typePit(page, "251");
  await untilStored(page, "pit_read", 1);
  await page.show("cook");
  assert.ok((await page.killStorageProcess()) > 0, "there is such a process");
  await typePit(page, "262");
  // In sight at once, stored or not.
  await page.see(".cook-facts", "262");
  // The app helps itself, or offers one tap that does.
  await page.until(async () => {
    const help = document.querySelector(".trouble button, .caution[role=alert] button");
    if (help && testFinder.seen(help)) help.click();
    const texts = await testTexts().catch(() => []);
    return texts.filter((text) => JSON.parse(text).what.kind === "pit_read").length === 2;
  });
  await page.reload();
  await page.see(".cook-facts", "262");
  assert.equal((await stored(page, "pit_read")).length, 2, "nothing lost, nothing doubled");
}, ["WebKit"]);
