// New versions of the site: offered, complete, refused when mixed, undone when they cannot start.

import assert from "node:assert/strict";
import { readFile } from "node:fs/promises";
import { join } from "node:path";
import { test } from "node:test";
import {
  goOffline,
  goOnline,
  keptOffline,
  openApp,
  siteAndPhone,
  started,
  until,
} from "./harness.mjs";
import { look, newerSite } from "./newer-site.mjs";

test("a new version waits until the page lets it in, and is then complete", async (t) => {
  const { site, phone } = await siteAndPhone(t);
  await openApp(phone, site);
  await keptOffline(phone.page);
  site.folder = await newerSite(t);
  await look(phone.page);
  await waiting(phone.page);
  await phone.page.reload();
  await started(phone.page);
  assert.equal(await phone.page.title(), "Pull Order", "the old version still answers");
  await takeWaiting(phone.page);
  await goOffline({ site, phone });
  await phone.page.reload();
  await started(phone.page);
  assert.equal(await phone.page.title(), "Newer");
  assert.equal(await phone.page.evaluate(async () => (await caches.keys()).length), 1);
});

test("a version mixed of two, or cut off half-way, is refused", async (t) => {
  const { site, phone } = await siteAndPhone(t);
  await openApp(phone, site);
  await keptOffline(phone.page);
  const old = site.folder;
  site.folder = await newerSite(t);
  // The host already sends the new service worker, but still the old page.
  site.instead = async (path) =>
    path === "index.html" ? readFile(join(old, "index.html")) : undefined;
  assert.equal(await outcomeOfUpdate(phone.page), "redundant");
  // Now one file does not come at all.
  site.instead = async (path) => (path === "start.js" ? new Promise(() => {}) : undefined);
  site.asked.length = 0;
  const broken = outcomeOfUpdate(phone.page);
  await until(() => site.asked.includes("start.js"));
  await site.stop();
  assert.equal(await broken, "redundant");
  await phone.page.reload();
  await started(phone.page);
  assert.equal(await phone.page.title(), "Pull Order");
  // With the host whole again the same version is taken.
  site.instead = async () => undefined;
  await goOnline({ site, phone });
  assert.equal(await outcomeOfUpdate(phone.page), "installed");
});

test("a version that cannot start gives way to what the host has next", async (t) => {
  const { site, phone } = await siteAndPhone(t);
  await openApp(phone, site);
  await keptOffline(phone.page);
  const whole = site.folder;
  site.folder = await newerSite(t, (page) => page.replace(/data-wasm="[^"]+"/, 'data-wasm="./none"'));
  await look(phone.page);
  await takeWaiting(phone.page);
  await phone.page.reload();
  await phone.page.getByText("could not start").waitFor();
  // The host goes back to the version before.
  site.folder = whole;
  await phone.page.reload();
  await started(phone.page);
  assert.equal(await phone.page.title(), "Pull Order");
});

/** Waits until a new version is there and waits. */
function waiting(page) {
  return page.evaluate(async () => {
    const registration = await navigator.serviceWorker.getRegistration();
    while (!registration.waiting) await new Promise((resolve) => setTimeout(resolve, 20));
  });
}

/** Lets the waiting version in. */
async function takeWaiting(page) {
  await waiting(page);
  await page.evaluate(async () => {
    const registration = await navigator.serviceWorker.getRegistration();
    const changed = new Promise((resolve) =>
      navigator.serviceWorker.addEventListener("controllerchange", resolve, { once: true }),
    );
    registration.waiting.postMessage("skip-waiting");
    await changed;
  });
}

/** Has the browser look for a new version; resolves to how its install ended. */
function outcomeOfUpdate(page) {
  return page.evaluate(async () => {
    const registration = await navigator.serviceWorker.getRegistration();
    return new Promise((resolve) => {
      registration.addEventListener("updatefound", () => {
        const worker = registration.installing;
        worker.addEventListener("statechange", () => resolve(worker.state), { once: true });
      }, { once: true });
      registration.update().catch(() => {});
    });
  });
}
