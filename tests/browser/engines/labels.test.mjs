// Labels come out on the labels: on the sheet's own paper, no page more, each in its place to a fraction
// of a millimetre, from every engine's own printing.

import assert from "node:assert/strict";
import { journey } from "./engines.mjs";
import { canDraw, pagesOf } from "./ink.mjs";
import { chooseSheet, packTyped } from "./kitchen.mjs";

const INCH = 25.4;
/** The sheets that are sold everywhere, in millimetres (the makers' common templates, from memory). */
const SHEETS = [
  { name: "Letter, 30", paper: [8.5 * INCH, 11 * INCH], label: [2.625 * INCH, INCH], first: [0.1875 * INCH, 0.5 * INCH], pitch: [2.75 * INCH, INCH], columns: 3, count: 30 },
  { name: "Letter, 10", paper: [8.5 * INCH, 11 * INCH], label: [4 * INCH, 2 * INCH], first: [0.15625 * INCH, 0.5 * INCH], pitch: [4.1875 * INCH, 2 * INCH], columns: 2, count: 10 },
  { name: "A4, 21", paper: [210, 297], label: [63.5, 38.1], first: [7.25, 15.15], pitch: [66, 38.1], columns: 3, count: 21 },
  { name: "A4, 14", paper: [210, 297], label: [99.1, 38.1], first: [4.65, 15.15], pitch: [101.6, 38.1], columns: 2, count: 14 },
];
const BAGS = 3;
/** No ink is nearer than this to the edge of a label, so that a printer a little off still hits it, mm. */
const CLEAR = 1;
/** How far a label's ink may be from where that of the first one is, on its own label, mm. */
const OFF = 0.4;

const journeyOfInk = canDraw() ? journey : (name, options) => journey(`${name} (not drawn: there is no pdftoppm here)`, options, () => {}, []);

journeyOfInk("every label is printed on its label", {}, async ({ page, engine }) => {
  await page.go();
  await packTyped(page, BAGS);
  await page.show("labels");
  for (const sheet of SHEETS) {
    // The first labels, the last ones, and those that need a second sheet.
    for (const used of [0, sheet.count - BAGS, sheet.count - 1]) {
      await chooseSheet(page, sheet.name, used);
      const sheets = Math.ceil((used + BAGS) / sheet.count);
      await page.untilCount(".paper", sheets);
      const [width, height] = sheet.paper;
      const printed = pagesOf(await page.pdf({ width, height }));
      checkInk(printed, sheet, used, `${engine}, ${sheet.name}, ${used} used`);
    }
  }
});

journeyOfInk(
  "a printer's margins shift labels but never shrink them",
  {},
  async ({ page }) => {
    await page.go();
    await packTyped(page, BAGS);
    await page.show("labels");
    for (const sheet of SHEETS.filter(({ columns }) => columns === 3)) {
      await chooseSheet(page, sheet.name, 0);
      const [width, height] = sheet.paper;
      const [printed, ...more] = pagesOf(await page.pdf({ width, height, margin: 5 }));
      assert.equal(more.length, 0, "one sheet");
      const left = ({ columns, first, pitch, label }, place) => {
        const begin = first[0] + 5 + pitch[0] * (place % columns);
        return printed.within({ left: begin, right: Math.min(begin + label[0], printed.width), top: 0, bottom: printed.height }).left - begin;
      };
      assert.ok(Math.abs(left(sheet, 0) - left(sheet, 2)) < OFF, `${sheet.name}: ${left(sheet, 0)}, ${left(sheet, 2)}`);
    }
  },
  ["WebKit"],
);

// Only WebKit's view hands the asking to the driver; it raises `beforeprint` later, when it prints.
journey("the button asks the browser to print", {}, async ({ page }) => {
  await page.go();
  await packTyped(page, BAGS);
  await page.show("labels");
  await page.tap(".labels .main-action");
  await page.printed();
}, ["WebKit"]);

function checkInk(printed, sheet, used, where) {
  const { paper, count, columns, first, pitch, label } = sheet;
  assert.equal(printed.length, Math.ceil((used + BAGS) / count), `${where}: sheets`);
  let expected;
  let inLabels = 0;
  for (let place = used; place < used + BAGS; place += 1) {
    const page = printed[Math.floor(place / count)];
    assert.ok(Math.abs(page.width - paper[0]) < 0.5 && Math.abs(page.height - paper[1]) < 0.5, `${where}: paper ${page.width} x ${page.height}`);
    const on = place % count;
    const left = first[0] + pitch[0] * (on % columns);
    const top = first[1] + pitch[1] * Math.floor(on / columns);
    const box = { left, top, right: left + label[0], bottom: top + label[1] };
    const ink = page.within(box);
    assert.ok(ink, `${where}: nothing on label ${on + 1}`);
    const rooms = [ink.left - box.left, ink.top - box.top, box.right - ink.right, box.bottom - ink.bottom];
    assert.ok(Math.min(...rooms) >= CLEAR, `${where}: label ${on + 1} is printed up to its edge: ${rooms}`);
    expected ??= rooms;
    assert.ok(Math.abs(rooms[0] - expected[0]) < OFF && Math.abs(rooms[1] - expected[1]) < OFF, `${where}: label ${on + 1} is off: ${rooms}, ${expected}`);
    inLabels += page.amountWithin(box);
  }
  const inAll = printed.reduce((sum, page) => sum + page.amount, 0);
  assert.equal(inAll - inLabels, 0, `${where}: ink beside the labels`);
}
