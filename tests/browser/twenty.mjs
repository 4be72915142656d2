// Our own scenario of a large day: twenty breasts of different sizes, mid-cook, as a file to open.

import { coreOnThePit, Person } from "./cook.mjs";

const PIECES = 20;
const READINGS = 10;
/** Minutes from putting on to now, and between two readings of a piece. */
const ON_SINCE = 50;
const EVERY = 4;

/** The file's text, the cook standing where it would at the moment `now`. */
function twentyPieces(now) {
  const entries = [];
  const tell = (minutesAgo, what) => {
    const at = new Date(now - minutesAgo * 60_000).toISOString();
    const id = { count: entries.length + 1, device: 7 };
    entries.push({ v: 1, id, happened: at, typed: at, what });
  };
  const dinner = new Date(now + 60 * 60_000).toISOString();
  tell(ON_SINCE + 5, { kind: "dinner_set", at: dinner });
  const pieces = Array.from({ length: PIECES }, (_, place) => place + 1);
  for (const piece of pieces) {
    const facts = { weight_g: 170 + 9 * piece, thickest_mm: 30 + piece, shape: "natural", start_c: 3.5 };
    tell(ON_SINCE + 1, { kind: "piece_set_out", piece, facts });
  }
  for (const piece of pieces) tell(ON_SINCE, { kind: "put_on", piece });
  tell(ON_SINCE - 5, { kind: "pit_read", temperature_c: 124 });
  for (let turn = 0; turn < READINGS; turn += 1) {
    for (const piece of pieces) {
      const minutes = 8 + turn * EVERY + piece / 10;
      const core = (coreOnThePit(minutes, 45 + 4 * piece) - 32) / 1.8;
      const reading = { temperature_c: Math.round(core * 10) / 10, instrument: "instant_read", places: 1 };
      tell(ON_SINCE - minutes, { kind: "core_read", piece, ...reading });
    }
  }
  return JSON.stringify({ format: "pull-order cook", version: 1, entries });
}

/** Opens that cook on this phone, by the phone's own clock. */
export async function openTwenty(phone) {
  const { page } = phone;
  const now = await page.evaluate(() => {
    location.hash = "#more";
    return Date.now();
  });
  const choosing = page.waitForEvent("filechooser");
  await new Person(phone).tap("Open a cook from a file");
  const buffer = Buffer.from(twentyPieces(now));
  await (await choosing).setFiles({ name: "twenty.json", mimeType: "application/json", buffer });
  await page.locator(".piece.on").nth(19).waitFor();
}
