// The page that holds the module of tests/bench, which `cargo xtask bench` builds.

import { fileURLToPath } from "node:url";
import { Phone } from "./phone.mjs";
import { Site } from "./server.mjs";

/** Where the module is. */
const FOLDER = fileURLToPath(new URL("../../target/web/bench/", import.meta.url));

/** Opens the page, gives it and its phone to `use`, and puts everything away. */
export async function withBench(use) {
  const site = new Site(FOLDER, "/");
  await site.start();
  const phone = await Phone.unpack({ origin: site.url });
  try {
    await phone.page.goto(site.url);
    await phone.page.evaluate(async () => {
      globalThis.bench = await import("./bench.js");
      globalThis.benchMemory = (await globalThis.bench.default()).memory;
    });
    return await use(phone.page, phone);
  } finally {
    await phone.throwAway();
    await site.stop();
  }
}
