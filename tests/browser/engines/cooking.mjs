// What a person does in a cook, in terms of the screens' parts: whatever depends on where a button is
// or how it is called stands here once.

/** Our own scenario: four breasts of different sizes. */
export const FOUR = [
  { weight: "6.2", thickest: "1.2" },
  { weight: "8.1", thickest: "1.45" },
  { weight: "9.4", thickest: "1.6" },
  { weight: "12", thickest: "1.9" },
];

/** Begins a cook from the first screen. */
export async function begin(page) {
  await page.tap(".start .main-action");
  await page.see("#weight");
}

/** Sets out pieces and waits until each is stored. */
export async function setOut(page, pieces) {
  await page.show("set-out");
  for (const { weight, thickest } of pieces) {
    const before = (await stored(page, "piece_set_out")).length;
    await page.type("#weight", weight);
    await page.type("#thickest", thickest);
    await page.tap(".add-action");
    await untilStored(page, "piece_set_out", before + 1);
  }
}

/** Puts all raw pieces on. */
export async function putAllOn(page, count) {
  await page.show("set-out");
  await page.tap(".dock .put-on");
  await untilStored(page, "put_on", count);
}

/** Types a whole reading on the number pad that is open. */
export async function typeDigits(page, text) {
  for (const digit of text) await page.tap(".keys button", `^${digit}$`);
  if (text.length < 3) await page.tap(".pad .main-action");
}

/** Types a reading of a piece and waits until it is stored. */
export async function readPiece(page, piece, degrees, places = 1) {
  const before = (await stored(page, "core_read")).length;
  await page.show(`piece-${piece}`);
  await page.see(".how .toggle");
  const two = () => document.querySelector(".how .toggle").getAttribute("aria-pressed") === "true";
  // The pad keeps what was last said.
  if (places === 2 && !(await page.run(two))) await page.tap(".how .toggle");
  await typeDigits(page, degrees);
  await untilStored(page, "core_read", before + 1);
}

/** Types a reading of the pit, without waiting for anything. */
export async function typePit(page, degrees) {
  await page.show("pit");
  await typeDigits(page, degrees);
}

/** Takes a piece off and waits until that is stored. */
export async function pull(page, piece) {
  const before = (await stored(page, "pulled")).length;
  await page.show(`piece-${piece}`);
  await page.tap(".acts .second-action");
  await untilStored(page, "pulled", before + 1);
}

/** Undoes what was done last; the way forward again stands behind it. */
export async function undoLast(page) {
  await page.tap(".last-done button");
}

/** Sets out pieces and puts them on. */
export async function onThePit(page, pieces) {
  await page.go();
  await begin(page);
  await setOut(page, pieces);
  await putAllOn(page, pieces.length);
}

/** What the stored entries of one kind say, in the order of their keys. */
export async function stored(page, kind) {
  const texts = await page.run(() => testTexts());
  return texts.map((text) => JSON.parse(text).what).filter((what) => what.kind === kind);
}

/** Waits until so many entries of a kind are stored. */
export async function untilStored(page, kind, count) {
  const kept = async (kind, count) => (await testTexts()).filter((text) => JSON.parse(text).what.kind === kind).length >= count;
  await page.until(kept, kind, count);
}
