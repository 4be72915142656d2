// Measures what the app may cost a phone, and writes it beside each budget into budgets.md:
//
//     node budgets.mjs
//
// The processor is slowed down four times by the browser itself. Times are the browser's own: its
// clock from the start of a page, its Event Timing (from a tap to the paint that answers it) and its
// Long Tasks. Other work on the machine makes every time worse, so it should have nothing else to do.

import { readFile, readdir, writeFile } from "node:fs/promises";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { brotliCompressSync, constants } from "node:zlib";
import { aside } from "./aside.mjs";
import { Person } from "./cook.mjs";
import { DIST, goOffline, keptOffline, openApp, siteAndPhone } from "./harness.mjs";
import { openTwenty } from "./twenty.mjs";

const SLOWER = 4;
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

Written by \`node budgets.mjs\` in \`tests/browser\`: Chromium at phone size, the processor slowed down
${SLOWER} times, twenty pieces on the pit with ten readings each, the network off.

| what | measured | budget | |
| --- | --- | --- | --- |
${lines.join("\n")}
`;
await writeFile(TABLE, table);
console.log(table);

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
  rows.push({ what: "all files by brotli", measured: kB(all), budget: 300, unit: "kB" });
  rows.push({ what: "the program by brotli", measured: kB(wasm), budget: 220, unit: "kB" });
}

function kB(bytes) {
  return Math.ceil(bytes / 100) / 10;
}

async function times(t) {
  const { site, phone } = await siteAndPhone(t);
  const { page } = phone;
  await page.addInitScript(watch);
  await openApp(phone, site);
  await keptOffline(page);
  await openTwenty(phone);
  await goOffline({ site, phone });
  const processor = await phone.context.newCDPSession(page);
  await processor.send("Emulation.setCPUThrottlingRate", { rate: SLOWER });
  const starts = [];
  for (let count = 0; count < STARTS; count += 1) {
    await page.goto("about:blank");
    await page.goto(site.url);
    starts.push(await page.evaluate(() => window.measured.usable));
  }
  const usable = Math.round(share(starts, 0.5));
  rows.push({ what: "from the kept copy to a usable live cook, median of 5", measured: usable, budget: 1000, unit: "ms" });
  await page.waitForTimeout(3000);
  await tapAbout(new Person(phone));
  const { taps, longest } = await page.evaluate(() => window.measured.ended());
  const answer = share(taps, 0.75);
  rows.push({ what: `from a tap to its paint, 75th percentile of ${taps.length}`, measured: answer, budget: 100, unit: "ms" });
  rows.push({ what: "the longest task, start and taps", measured: Math.round(longest), budget: 200, unit: "ms" });
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

/** Runs in the page before the app: notes when the cook can be used, each tap and each long task. */
function watch() {
  const seen = { taps: new Map(), longest: 0, down: 0 };
  const note = (list) => {
    for (const entry of list) {
      if (entry.entryType === "longtask") seen.longest = Math.max(seen.longest, entry.duration);
      else if (entry.interactionId) {
        const before = seen.taps.get(entry.interactionId) ?? 0;
        seen.taps.set(entry.interactionId, Math.max(before, entry.duration));
      }
    }
  };
  const observer = new PerformanceObserver((list) => note(list.getEntries()));
  observer.observe({ type: "event", durationThreshold: 16, buffered: true });
  observer.observe({ type: "longtask", buffered: true });
  addEventListener("pointerup", () => (seen.down += 1), { capture: true });
  let resolve;
  const usable = new Promise((found) => (resolve = found));
  const look = () => {
    // All pieces drawn, the forecast made, and the button for the next thing to do there.
    const there = document.querySelector(".next[aria-busy=false]") && document.querySelector(".dock .main-action");
    if (there && document.querySelectorAll(".piece .degrees").length >= 20) {
      changes.disconnect();
      requestAnimationFrame(() => setTimeout(() => resolve(performance.now())));
    }
  };
  const changes = new MutationObserver(look);
  changes.observe(document, { subtree: true, childList: true, attributes: true });
  window.measured = {
    usable,
    ended: async () => {
      await new Promise((later) => setTimeout(later, 500));
      note(observer.takeRecords());
      const short = Array.from({ length: Math.max(0, seen.down - seen.taps.size) }, () => 16);
      return { taps: [...seen.taps.values(), ...short], longest: seen.longest };
    },
  };
}

/** The value below which this share of the values lies. */
function share(values, part) {
  const sorted = [...values].sort((a, b) => a - b);
  return sorted[Math.min(sorted.length - 1, Math.ceil(sorted.length * part) - 1)];
}
