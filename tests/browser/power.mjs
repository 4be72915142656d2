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

/** Prints the processor time of the page's own process over the minutes, as a share of a core. */
async function measure(state) {
  const before = await used();
  await phone.page.waitForTimeout(MINUTES * 60_000);
  const after = await used();
  const share = (name) => `${((100 * (after[name] - before[name])) / (MINUTES * 60)).toFixed(2)} %`;
  console.log(
    `${state}, ${MINUTES} min: tasks of the page ${share("tasks")} of a core ` +
      `(of it script ${share("script")}); the page's whole process ${share("process")}`,
  );
}

async function used() {
  const page = await phone.context.newCDPSession(phone.page);
  await page.send("Performance.enable", { timeDomain: "threadTicks" });
  const { metrics } = await page.send("Performance.getMetrics");
  const metric = (name) => metrics.find((one) => one.name === name).value;
  await page.detach();
  const browser = await phone.context.browser().newBrowserCDPSession();
  const { processInfo } = await browser.send("SystemInfo.getProcessInfo");
  await browser.detach();
  const renderers = processInfo.filter(({ type }) => type === "renderer");
  return {
    tasks: metric("TaskDuration"),
    script: metric("ScriptDuration"),
    process: Math.max(...renderers.map(({ cpuTime }) => cpuTime)),
  };
}
