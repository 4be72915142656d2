// Every time of day stands in one form: 12 hours or 24, as the phone has it, in every place.

import assert from "node:assert/strict";
import { begin, pull, putAllOn, readPiece, setOut } from "./cooking.mjs";
import { journey } from "./engines.mjs";

for (const locale of ["es-MX", "es-ES", "en-GB", "en-US"]) {
  journey(`one form of the clock on a phone set to ${locale}`, { locale }, async ({ page }) => {
    await page.go();
    await begin(page);
    // In whatever units that phone would have; these numbers need no decimal mark.
    await page.tap(".choice label", "^°F");
    await setOut(page, [{ weight: "8", thickest: "1" }, { weight: "12", thickest: "2" }]);
    await putAllOn(page, 2);
    // The cook began at 4:30 in the afternoon, so that every time is told apart by its form.
    await page.pass(90);
    await readPiece(page, 1, "165");
    await pull(page, 1);
    const forms = new Set();
    for (const screen of ["start", "cook", "piece-2", "rest", "log", "plan"]) {
      await page.show(screen);
      await page.until((screen) => document.querySelector("main section") && location.hash === `#${screen}`, screen);
      const text = await page.text();
      for (const [, hours, half] of text.matchAll(/\b([01]?\d|2[0-3]):[0-5]\d\b(?!:)(\s*[ap]\.?\s?m\.?)?/gi)) {
        if (half) forms.add("12");
        else if (Number(hours) > 12) forms.add("24");
      }
    }
    assert.equal(forms.size, 1, `${locale}: ${[...forms]}`);
  });
}
