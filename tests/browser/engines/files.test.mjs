// A cook leaves as a file and comes back as one.

import assert from "node:assert/strict";
import { writeFile } from "node:fs/promises";
import { FOUR, begin, onThePit, readPiece, setOut, stored, untilStored } from "./cooking.mjs";
import { journey } from "./engines.mjs";
import { openFile, saveFile } from "./keeping.mjs";

journey("a cook saved as a file opens beside another", {}, async ({ page }) => {
  await onThePit(page, FOUR.slice(0, 2));
  await readPiece(page, 2, "103");
  await saveFile(page);
  const { name, text } = await page.downloaded();
  assert.match(name, /\.json$/);
  const saved = JSON.parse(text);
  assert.ok(saved.entries.length >= 5);

  const path = page.place("cook.json");
  await writeFile(path, text);
  await page.show("start");
  await page.tap("button", "^New");
  await setOut(page, FOUR.slice(3));
  const before = (await stored(page, "core_read")).length;
  await openFile(page, path);
  await untilStored(page, "core_read", before + 1);
  await page.show("log");
  await page.see(".entries li", "103");
});

journey("a file that is no cook is refused in plain words", {}, async ({ page }) => {
  await page.go();
  await begin(page);
  await setOut(page, FOUR.slice(0, 1));
  const path = page.place("other.json");
  await writeFile(path, "{}");
  await openFile(page, path);
  await page.see(".more [role=status]", /\w/);
  assert.equal((await stored(page, "piece_set_out")).length, 1);
});
