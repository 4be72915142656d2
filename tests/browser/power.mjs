// Measures how much of a processor core the page takes while a cook runs and nobody touches it:
//
//     node power.mjs [minutes]      (5 unless told)
//
// once with the live cook in front, once hidden. It prints figures and judges nothing: a loaded machine
// changes little, since processor time is counted and not the clock on the wall.

import { setHidden } from "./asleep.mjs";
import { FOUR, Person } from "./cook.mjs";
import { DIST, openApp } from "./harness.mjs";
import { Phone } from "./phone.mjs";
import { Site } from "./server.mjs";

const MINUTES = Number(process.argv[2] ?? 5);

const site = new Site(DIST);
await site.start();
const phone = await Phone.unpack({ origin: site.url });
try {
  const person = new Person(phone);
  await openApp(phone, site);
  await person.tap("New cook");
  await person.setOutAll(FOUR);
  await person.tap("Put all 4 on");
  await person.stored("on");
  // The first forecasts, and the offer to undo, are over by then.
  await phone.page.waitForTimeout(45_000);
  await measure("in front");
  await setHidden(phone.page, true);
  await measure("hidden");
} finally {
  await phone.throwAway();
  await site.stop();
}

/** Prints the processor time over the minutes as a share of a core. */
async function measure(state) {
  const page = await phone.context.newCDPSession(phone.page);
  await page.send("Performance.enable");
  const browser = await phone.context.browser().newBrowserCDPSession();
  const before = await used(page, browser);
  await phone.page.waitForTimeout(MINUTES * 60_000);
  const after = await used(page, browser);
  await page.detach();
  await browser.detach();
  const share = (seconds) => `${((100 * seconds) / (MINUTES * 60)).toFixed(2)} %`;
  const processes = Object.keys(after.processes).map(
    (id) => after.processes[id] - (before.processes[id] ?? 0),
  );
  console.log(
    `${state}, ${MINUTES} min: tasks of the page ${share(after.tasks - before.tasks)} of a core ` +
      `(of it script ${share(after.script - before.script)}); the busiest renderer, all its threads, ` +
      `${share(Math.max(...processes))}`,
  );
}

/** Seconds of processor time so far: of the page's tasks and script, and of each renderer process. */
async function used(page, browser) {
  const { metrics } = await page.send("Performance.getMetrics");
  const metric = (name) => metrics.find((one) => one.name === name).value;
  const { processInfo } = await browser.send("SystemInfo.getProcessInfo");
  const renderers = processInfo.filter(({ type }) => type === "renderer");
  return {
    tasks: metric("TaskDuration"),
    script: metric("ScriptDuration"),
    processes: Object.fromEntries(renderers.map(({ id, cpuTime }) => [id, cpuTime])),
  };
}
