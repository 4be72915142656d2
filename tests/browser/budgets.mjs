// Measures what the app may cost a phone, writes it beside each budget into budgets.md, and fails where
// one is exceeded:
//
//     node budgets.mjs
//
// The processor is slowed down four times by the browser itself, which slows the page's thread only; so
// each answer of the second thread is held back until it has taken four times as long as it did. Times
// are the browser's own: its clock from the start of a page, its Event Timing (from a tap to the paint
// that answers it) and its Long Tasks. Other work on the machine makes every time worse, so it should
// have nothing else to do.

import { readFile, readdir, writeFile } from "node:fs/promises";
import { cpus, loadavg } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { brotliCompressSync, constants } from "node:zlib";
import { aside } from "./aside.mjs";
import { SLOWER, watch } from "./budgets-page.mjs";
import { Person } from "./cook.mjs";
import { DIST, goOffline, keptOffline, openApp, siteAndPhone } from "./harness.mjs";
import { show } from "./look.mjs";
import { COOK } from "./mid-cook.mjs";
import { openTwenty } from "./twenty.mjs";

const STARTS = 5;
const TABLE = fileURLToPath(new URL("budgets.md", import.meta.url));
const rows = [];
await sizes();
await aside(times);
const lines = rows.map(({ what, measured, budget, unit }) => {
  const kept = measured <= budget ? "kept" : "**over**";
  return `| ${what} | ${measured} ${unit} | ${budget} ${unit} | ${kept} |`;
});
const table = `# Budgets

Written by \`node budgets.mjs\` in \`tests/browser\`: Chromium at phone size, the page's thread and the second
one slowed down ${SLOWER} times, twenty pieces on the pit with ten readings each, the network off. At its end
${loadavg()[0].toFixed(1)} programs wanted one of the machine's ${cpus().length} processors: where that is more than 1,
others ran beside, and times are too long.

| what | measured | budget | |
| --- | --- | --- | --- |
${lines.join("\n")}
`;
await writeFile(TABLE, table);
console.log(table);
if (rows.some(({ measured, budget }) => measured > budget)) process.exitCode = 1;

async function sizes() {
  const files = await readdir(DIST, { recursive: true, withFileTypes: true });
  let [all, wasm] = [0, 0];
  for (const file of files.filter((entry) => entry.isFile())) {
    const bytes = await readFile(join(file.parentPath, file.name));
    const params = { [constants.BROTLI_PARAM_QUALITY]: 11, [constants.BROTLI_PARAM_LGWIN]: 22 };
    const weight = brotliCompressSync(bytes, { params }).length;
    all += weight;
    if (file.name.endsWith(".wasm")) wasm += weight;
  }
  tell("all files by brotli", kB(all), 540, "kB");
  tell("the program by brotli", kB(wasm), 480, "kB");
}

function tell(what, measured, budget, unit = "ms") {
  rows.push({ what, measured: unit === "ms" ? Math.round(measured) : measured, budget, unit });
}

function kB(bytes) {
  return Math.ceil(bytes / 100) / 10;
}

async function times(t) {
  const { site, phone } = await siteAndPhone(t);
  await openApp(phone, site);
  await keptOffline(phone.page);
  await openTwenty(phone);
  await goOffline({ site, phone });
  const cold = [];
  for (let count = 0; count < STARTS; count += 1) {
    await phone.kill();
    await phone.switchOn();
    await phone.context.setOffline(true);
    await phone.context.addInitScript(watch, SLOWER);
    await slow(phone);
    cold.push(await start(phone, site));
  }
  const warm = [];
  for (let count = 0; count < STARTS; count += 1) {
    await phone.page.goto("about:blank");
    warm.push(await start(phone, site));
  }
  const middle = (starts, what) => share(starts.map((one) => one[what]), 0.5);
  tell(`killed, from a new browser process to its first rows, median of ${STARTS}`, middle(cold, "rows"), 550);
  tell("the same to a usable live cook", middle(cold, "usable"), 900);
  tell(`from the kept copy to a usable live cook, median of ${STARTS}`, middle(warm, "usable"), 550);
  await phone.page.waitForTimeout(3000);
  const ofStart = await phone.page.evaluate(() => window.measured.longest());
  tell("the longest task of a start", ofStart, 50);
  await tapAbout(new Person(phone));
  const taps = await phone.page.evaluate(() => window.measured.taps());
  const longest = await phone.page.evaluate(() => window.measured.longest());
  tell(`from a tap to its paint, 75th percentile of ${taps.length}`, share(taps, 0.75), 50);
  tell("the longest task while tapping", longest, 50);
  await everyScreen(phone.page);
}

/** Slows the page's thread down. */
async function slow(phone) {
  const processor = await phone.context.newCDPSession(phone.page);
  await processor.send("Emulation.setCPUThrottlingRate", { rate: SLOWER });
}

/** Opens the app; when its rows were there, and when it could be used. */
async function start(phone, site) {
  await phone.page.goto(site.url);
  return phone.page.evaluate(() => window.measured.started);
}

/** What a person does in a few minutes at the pit. */
async function tapAbout(person) {
  for (const piece of [3, 7, 12]) {
    await person.openPiece(piece);
    await person.typeReading("151");
    await person.stored("reads 151");
    await person.tap("Undo", { exact: true });
    for (const part of ["Rest", "Log", "More", "Cook"]) await person.goTo(part);
    await person.page.waitForTimeout(1000);
  }
}

/** The longest task of any screen of the cook, its answers awaited; one piece lies off and unproved. */
async function everyScreen(page) {
  const person = new Person({ page });
  await person.openPiece(5);
  await person.tap("Pull Piece 5");
  await person.stored("Piece 5 off");
  const longest = [];
  for (const screen of COOK) {
    await page.evaluate(() => window.measured.longest());
    await show(page, screen);
    await page.waitForTimeout(1500);
    longest.push([await page.evaluate(() => window.measured.longest()), screen]);
  }
  longest.sort(([one], [other]) => other - one);
  const [[most, screen]] = longest;
  tell(`the longest task of any of ${COOK.length} screens: ${screen}`, most, 50);
}

/** The value below which this share of the values lies. */
function share(values, part) {
  const sorted = [...values].sort((a, b) => a - b);
  return sorted[Math.min(sorted.length - 1, Math.ceil(sorted.length * part) - 1)];
}
