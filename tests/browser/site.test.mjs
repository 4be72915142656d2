// The site as such: it loads in a sub-path, can be installed, and starts with no network.

import assert from "node:assert/strict";
import { createHash } from "node:crypto";
import { cp, mkdtemp, readFile, readdir, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { test } from "node:test";
import {
  DIST,
  goOffline,
  goOnline,
  keptOffline,
  openApp,
  siteAndPhone,
  started,
} from "./harness.mjs";

test("the app loads in a sub-path, on a phone-sized touch screen", async (t) => {
  const { site, phone } = await siteAndPhone(t);
  await openApp(phone, site);
  const screen = await phone.page.evaluate(() => ({
    width: window.innerWidth,
    coarse: matchMedia("(pointer: coarse)").matches,
    wide: document.documentElement.scrollWidth,
  }));
  assert.deepEqual(screen, { width: 360, coarse: true, wide: 360 });
});

test("the policy forbids inline scripts and styles, and lets the program run", async (t) => {
  const { site, phone } = await siteAndPhone(t);
  await openApp(phone, site);
  const policy = await phone.page.locator("meta[http-equiv='Content-Security-Policy']");
  const rules = (await policy.getAttribute("content")).split(";").map((rule) => rule.trim());
  assert.ok(rules.includes("default-src 'none'"));
  assert.ok(rules.includes("script-src 'self' 'wasm-unsafe-eval'"));
  assert.deepEqual(phone.problems, []);
  // That the policy is in force, and that a breach is noticed: a script of the page's own is stopped.
  await phone.page.evaluate(() => {
    const script = document.createElement("script");
    script.textContent = "window.slippedIn = true";
    document.body.append(script);
  });
  assert.equal(await phone.page.evaluate(() => window.slippedIn), undefined);
  await assert.doesNotReject(until(() => phone.problems.length > 0));
  phone.problems.length = 0;
});

test("the browser offers to install the app", async (t) => {
  const { site, phone } = await siteAndPhone(t);
  await openApp(phone, site);
  await keptOffline(phone.page);
  const devtools = await phone.context.newCDPSession(phone.page);
  const { installabilityErrors } = await devtools.send("Page.getInstallabilityErrors");
  assert.deepEqual(installabilityErrors, []);
  const { data } = await devtools.send("Page.getAppManifest");
  const manifest = JSON.parse(data);
  assert.equal(manifest.display, "standalone");
  assert.ok(manifest.icons.some((icon) => icon.purpose === "maskable"));
  for (const icon of manifest.icons) assert.ok(await pictureIs(phone.page, icon), icon.src);
});

test("the service worker keeps every built file", async (t) => {
  const { site, phone } = await siteAndPhone(t);
  await openApp(phone, site);
  await keptOffline(phone.page);
  const kept = await phone.page.evaluate(async () => {
    const [name] = await caches.keys();
    const requests = await (await caches.open(name)).keys();
    return requests.map((request) => request.url);
  });
  const built = await readdir(DIST, { recursive: true, withFileTypes: true });
  const expected = built
    .filter((entry) => entry.isFile() && entry.name !== "sw.js")
    .map((entry) => join(entry.path, entry.name).slice(DIST.length).replace(/^index\.html$/, ""))
    .map((path) => site.url + path);
  assert.deepEqual(kept.sort(), expected.sort());
});

test("after one visit the app starts with no network and no server", async (t) => {
  const { site, phone } = await siteAndPhone(t);
  await openApp(phone, site);
  await keptOffline(phone.page);
  await goOffline({ site, phone });
  await phone.page.reload();
  await started(phone.page);
  await phone.switchOff();
  await phone.switchOn();
  await phone.context.setOffline(true);
  await phone.page.goto(`${site.url}index.html?from=home-screen#x`);
  await started(phone.page);
});

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

/** A copy of the site with another title, and a service worker that names its sums. */
async function newerSite(t, change = (page) => page) {
  const folder = await mkdtemp(join(tmpdir(), "newer-site-"));
  t.after(() => rm(folder, { recursive: true, force: true }));
  await cp(DIST, folder, { recursive: true });
  const page = await readFile(join(folder, "index.html"), "utf8");
  const newer = change(page.replace("<title>Pull Order</title>", "<title>Newer</title>"));
  await writeFile(join(folder, "index.html"), newer);
  const sum = (text) => createHash("sha256").update(text).digest("hex");
  const worker = await readFile(join(folder, "sw.js"), "utf8");
  const renamed = worker.replace(/BUILD = "\w+"/, 'BUILD = "newer"');
  await writeFile(join(folder, "sw.js"), renamed.replace(sum(page), sum(newer)));
  return folder;
}

/** Has the browser look for a new version. */
function look(page) {
  return page.evaluate(async () => {
    const registration = await navigator.serviceWorker.getRegistration();
    await registration.update().catch(() => {});
  });
}

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

/** True if an icon of the manifest is a picture of the size it claims. */
function pictureIs(page, { src, sizes }) {
  return page.evaluate(
    async ([address, size]) => {
      const picture = new Image();
      picture.src = address;
      await picture.decode();
      return `${picture.naturalWidth}x${picture.naturalHeight}` === size;
    },
    [src, sizes],
  );
}

async function until(holds) {
  for (let tries = 0; tries < 200; tries += 1) {
    if (holds()) return;
    await new Promise((resolve) => setTimeout(resolve, 25));
  }
  throw new Error("it did not come about within five seconds");
}
