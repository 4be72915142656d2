// The engines that people hold in their hands, each with the driver that steers it here, and what every
// journey starts from. A machine that lacks one says so and skips its journeys.

import assert from "node:assert/strict";
import { test } from "node:test";
import { DIST } from "../harness.mjs";
import { Site } from "../server.mjs";
import { ChromiumBrowser } from "./chromium.mjs";
import { FirefoxBrowser } from "./firefox.mjs";
import { Page } from "./page.mjs";
import { WebKitBrowser } from "./webkit.mjs";

// Every engine has the same clock on the wall; playwright alone could be told another.
process.env.TZ = "America/Chicago";

/** By which variable each is found: the set-up command sets it; "none" where it cannot be had. */
const VARIABLES = {
  Chromium: [ChromiumBrowser, "PULL_ORDER_CHROMIUM"],
  Firefox: [FirefoxBrowser, "PULL_ORDER_FIREFOX"],
  WebKit: [WebKitBrowser, "PULL_ORDER_WEBKIT"],
};
/** Only these, if named: `PULL_ORDER_ENGINES=WebKit node --test …`. */
const WANTED = process.env.PULL_ORDER_ENGINES?.split(",");

/** When every journey begins. */
export const EVENING = Date.parse("2026-06-12T16:30:00-05:00");

/**
 * A journey in each engine. `options` are those of `Page.open`; `travel` gets the page, the site, the
 * test and the engine's name. What went wrong in the page fails it afterwards.
 */
export function journey(name, options, travel, only = Object.keys(VARIABLES)) {
  for (const [engine, [Engine, variable]] of Object.entries(VARIABLES)) {
    if (!only.includes(engine) || (WANTED && !WANTED.includes(engine))) continue;
    const skip = process.env[variable] === "none" ? `${engine} cannot be had here` : false;
    test(`${engine}: ${name}`, { skip }, async (t) => {
      const { site, page } = await siteAndPage(t, Engine, options);
      await travel({ page, site, t, engine });
    });
  }
}

/** Chromium to compare others with, whose own journey it is not. */
export function chromiumBeside(t, options) {
  return siteAndPage(t, ChromiumBrowser, options);
}

async function siteAndPage(t, Engine, options) {
  const site = new Site(DIST);
  await site.start();
  const page = await Page.open(Engine, { url: site.url, time: EVENING, ...options });
  t.after(async () => {
    await page.throwAway();
    await site.stop().catch(() => {});
    assert.deepEqual(page.foreign, [], "requests to another origin");
    assert.deepEqual(page.problems, [], "the pages had problems");
  });
  return { site, page };
}
