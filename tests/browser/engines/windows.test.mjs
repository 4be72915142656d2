// Two windows on one cook: each shows what the other stores, and writing at once loses nothing.

import assert from "node:assert/strict";
import { FOUR, onThePit, stored, typePit, untilStored } from "./cooking.mjs";
import { journey } from "./engines.mjs";

journey("two windows follow each other and lose nothing", {}, async ({ page }) => {
  await onThePit(page, FOUR.slice(0, 1));
  await page.show("cook");
  const second = await page.newWindow();
  await page.go("cook");
  await page.see("nav.tabs");
  page.turnTo(0);
  await typePit(page, "251");
  await untilStored(page, "pit_read", 1);
  page.turnTo(second);
  await page.see(".cook-facts", "251");
  await typePit(page, "262");
  await untilStored(page, "pit_read", 2);
  page.turnTo(0);
  await page.see(".cook-facts", "262");

  for (const degrees of ["231", "233", "235"]) {
    page.turnTo(0);
    await page.show("pit");
    page.turnTo(second);
    await page.show("pit");
    for (const digit of degrees) {
      for (const window of [0, second]) {
        page.turnTo(window);
        await page.tap(".keys button", `^${digit}$`);
      }
    }
  }
  await untilStored(page, "pit_read", 8);
  await page.show("log");
  await page.reload();
  await page.see(".entries li", "235");
  assert.equal((await stored(page, "pit_read")).length, 8, "nothing lost, nothing doubled");
});
