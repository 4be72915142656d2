// The site as such: it loads in a sub-path, can be installed, and starts with no network.

import assert from "node:assert/strict";
import { readdir } from "node:fs/promises";
import { join } from "node:path";
import { test } from "node:test";
import { DIST, goOffline, keptOffline, openApp, siteAndPhone, started, until } from "./harness.mjs";

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
  await phone.kill();
  await phone.switchOn();
  await phone.context.setOffline(true);
  await phone.page.goto(`${site.url}index.html?from=home-screen#x`);
  await started(phone.page);
});

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
