// A newer version of the site, as its host would have it.

import { createHash } from "node:crypto";
import { cp, mkdtemp, readFile, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { DIST } from "./harness.mjs";

/** A copy of the site with another title, and a service worker that names its sums. */
export async function newerSite(t, change = (page) => page) {
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
export function look(page) {
  return page.evaluate(async () => {
    const registration = await navigator.serviceWorker.getRegistration();
    await registration.update().catch(() => {});
  });
}
