// What every browser test starts from: the built site on a server, and a phone.

import assert from "node:assert/strict";
import { fileURLToPath } from "node:url";
import { Phone } from "./phone.mjs";
import { Site } from "./server.mjs";

/** The site that `cargo xtask build` left. */
export const DIST = fileURLToPath(new URL("../../dist/", import.meta.url));

/**
 * Starts a site and a phone for the test `t`, puts both away after it, and then fails the test if
 * a page asked another origin for anything, broke its security policy or threw an error.
 * The options are those of `Phone.unpack`; the app is not opened yet.
 */
export async function siteAndPhone(t, options = {}) {
  const site = new Site(DIST);
  await site.start();
  const phone = await Phone.unpack({ origin: site.url, ...options });
  t.after(async () => {
    await phone.throwAway();
    await site.stop().catch(() => {});
    noForeignRequests(phone);
    assert.deepEqual(phone.problems, [], "the pages had problems");
  });
  return { site, phone };
}

/** Fails if any page asked for anything but the site's own files. */
export function noForeignRequests(phone) {
  assert.deepEqual(phone.foreign, [], "requests to another origin");
}

/** Opens the app and waits until it has started. */
export async function openApp(phone, site) {
  await phone.page.goto(site.url);
  await started(phone.page);
}

/** Waits until the program has taken the loading text away. */
export async function started(page) {
  await page.locator("#loading").waitFor({ state: "detached" });
}

/** Waits until the service worker has its copy of the site and answers for the page. */
export async function keptOffline(page) {
  await page.waitForFunction(() => navigator.serviceWorker.controller?.state === "activated");
}

/** Cuts the phone off, in the truest way: no network, and no server either. */
export async function goOffline({ site, phone }) {
  await phone.context.setOffline(true);
  await site.stop();
}

/** Undoes `goOffline`. */
export async function goOnline({ site, phone }) {
  await site.start();
  await phone.context.setOffline(false);
}

/** Waits until `holds` is true of something in the test itself. */
export async function until(holds) {
  for (let tries = 0; tries < 1200; tries += 1) {
    if (holds()) return;
    await new Promise((resolve) => setTimeout(resolve, 25));
  }
  throw new Error("it did not come about within half a minute");
}
