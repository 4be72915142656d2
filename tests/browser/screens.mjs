// Takes a picture of every screen in every look, on a phone upright and aside and on a tablet, and
// once for the left hand:
//
//     node screens.mjs [folder]      (target/screens unless told)

import { mkdir } from "node:fs/promises";
import { fileURLToPath } from "node:url";
import { aside } from "./aside.mjs";
import { show } from "./look.mjs";
import { LOOKS, chooseLook, midCook } from "./mid-cook.mjs";

const folder = process.argv[2] ?? fileURLToPath(new URL("../../target/screens/", import.meta.url));
const SHAPES = { upright: { width: 360, height: 640 }, aside: { width: 640, height: 360 }, tablet: { width: 810, height: 1080 } };

await mkdir(folder, { recursive: true });
await aside(async (t) => {
  const { phone, screens } = await midCook(t);
  const { page } = phone;
  for (const look of LOOKS) {
    await chooseLook(page, look);
    await takeAll(page, screens, look.toLowerCase());
  }
  await show(page, "settings");
  await page.getByText("Left", { exact: true }).tap();
  await takeAll(page, screens, "left");
});
console.log(`the pictures are in ${folder}`);

async function takeAll(page, screens, series) {
  for (const [shape, size] of Object.entries(SHAPES)) {
    await page.setViewportSize(size);
    for (const screen of screens) {
      await show(page, screen);
      await page.evaluate(() => scrollTo(0, 0));
      const name = `${series}-${shape}-${screen.replace(/\W.*/, "")}`;
      await page.screenshot({ path: `${folder}/${name}.png` });
    }
  }
}
