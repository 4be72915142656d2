// Draws the icons of other sizes from public/icons/icon.svg. Run by hand after the drawing changes:
//   cd tests/browser && npm ci && node draw-icons.mjs

import { readFile } from "node:fs/promises";
import { fileURLToPath } from "node:url";
import { chromium } from "playwright-core";

const icon = (name) => fileURLToPath(new URL(`../../public/icons/${name}`, import.meta.url));
const drawing = await readFile(icon("icon.svg"), "utf8");

// Phones cut their own outline, so these fill the square; a maskable icon's drawing keeps within the
// circle of 80 % that every outline leaves (W3C, Web Application Manifest, "icon masks").
const square = drawing.replace('rx="96"', 'rx="0"');
const maskable = square.replace('id="bars"', 'id="bars" transform="translate(51.2 51.2) scale(0.8)"');

const browser = await chromium.launch({
  executablePath: process.env.PULL_ORDER_CHROMIUM ?? "/usr/bin/chromium",
  args: ["--no-sandbox"],
});
for (const [name, size, svg] of [
  ["icon-180.png", 180, square],
  ["icon-192.png", 192, drawing],
  ["icon-512.png", 512, drawing],
  ["icon-maskable-512.png", 512, maskable],
]) {
  const page = await browser.newPage({ viewport: { width: size, height: size } });
  await page.setContent(`<style>body { margin: 0 } svg { display: block }</style>${svg}`);
  await page.screenshot({ path: icon(name), omitBackground: true });
  await page.close();
}
await browser.close();
