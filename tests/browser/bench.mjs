// Holds traces and forecasts in Chromium to the native ones, bit for bit; then times the same calls in
// both, in turns so that a busy machine slows both alike, and tells the least time of each:
// `cargo xtask bench` runs it.

import assert from "node:assert/strict";
import { execFileSync } from "node:child_process";
import { withBench } from "./bench-page.mjs";

const TURNS = 15;
const TRACES = 200;
const FORECASTS = 5;
const PLANS = 2;
/** How many times the browser slows its processor down, as for a plain phone. */
const SLOWER = 4;

/** Nanoseconds a call, in the page. */
function inPage({ traces, forecasts, plans }) {
  const timed = (calls, run) => {
    run();
    const began = performance.now();
    run();
    return ((performance.now() - began) * 1e6) / calls;
  };
  globalThis.cook ??= new globalThis.bench.Cook(20, 10);
  return {
    heat_trace: timed(traces, () => globalThis.bench.heat_trace(traces)),
    forecast: timed(forecasts, () => globalThis.cook.forecast(forecasts)),
    plan: timed(plans, () => globalThis.bench.plan_three_waves(plans)),
  };
}

/** What the native program prints when asked for this. */
function native(what) {
  return JSON.parse(execFileSync(process.env.PULL_ORDER_NATIVE, [what], { encoding: "utf8" }));
}

/** Fails if a trace or a forecast in the page differs from the native one in its last bit. */
async function alike(page) {
  const { heat, cooks } = native("bits");
  assert.equal(await page.evaluate(() => globalThis.bench.heat_bits()), heat);
  for (const { pieces, readings, forecast } of cooks) {
    const here = await page.evaluate(
      (cook) => new globalThis.bench.Cook(cook.pieces, cook.readings).forecast_bits(),
      { pieces, readings },
    );
    assert.equal(here, forecast, `${pieces} pieces, ${readings} readings each`);
  }
  console.log(`a trace and ${cooks.length} forecasts in Chromium are the native ones, bit for bit`);
}

/** The cook of 20 x 10 forecast on a slowed processor, and the memory all of the above has taken. */
async function slowed(page, phone) {
  const processor = await phone.context.newCDPSession(page);
  await processor.send("Emulation.setCPUThrottlingRate", { rate: SLOWER });
  const times = [];
  for (let turn = 0; turn < TURNS; turn += 1) {
    times.push(
      await page.evaluate(() => {
        const began = performance.now();
        globalThis.cook.forecast(1);
        return performance.now() - began;
      }),
    );
  }
  const memory = await page.evaluate(() => globalThis.benchMemory.buffer.byteLength);
  const middle = times.sort((a, b) => a - b)[Math.floor(TURNS / 2)];
  console.log(`forecast, 20 pieces x 10 readings, processor slowed ${SLOWER} times: ${middle.toFixed(0)} ms`);
  console.log(`memory of the module after all this: ${(memory / 1e6).toFixed(1)} MB`);
}

const least = (all, name) => Math.min(...all.map((times) => times[name])) / 1e3;

await withBench(async (page, phone) => {
  await alike(page);
  const [here, there] = [[], []];
  for (let turn = 0; turn < TURNS; turn += 1) {
    here.push(native("time"));
    there.push(await page.evaluate(inPage, { traces: TRACES, forecasts: FORECASTS, plans: PLANS }));
  }
  for (const [name, what] of [
    ["heat_trace", "heat trace, 90 min and rest"],
    ["forecast", "forecast, 20 pieces x 10 readings"],
    ["plan", "plan, 20 pieces in three waves"],
  ]) {
    const [n, w] = [least(here, name), least(there, name)];
    console.log(`${what}: native ${n.toFixed(0)} us, Chromium ${w.toFixed(0)} us, ratio ${(w / n).toFixed(2)}`);
  }
  await slowed(page, phone);
});
