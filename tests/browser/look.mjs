// What is wrong with the look of a screen: rules of accessibility, and targets for a gloved thumb.

import { readFile } from "node:fs/promises";
import { createRequire } from "node:module";

const AXE = await readFile(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");
/** The smallest side of anything to tap, in CSS pixels. */
const TARGET = 56;

/** The most that alarm, undo and act may take above the tabs, in CSS pixels (design goal of the screens). */
export const DOCK = 96;

/** How high alarm, undo and act stand above the tabs. */
export function dockHeight(page) {
  return page.evaluate(() => {
    const top = (selector) => document.querySelector(selector).getBoundingClientRect().top;
    return top(".tabs") - top(".dock");
  });
}

/** Shows the screen of this address. */
export async function show(page, screen) {
  await page.evaluate((address) => {
    history.replaceState(null, "", `#${address}`);
    dispatchEvent(new PopStateEvent("popstate"));
  }, screen);
  await page.waitForTimeout(150);
}

/** What breaks a rule that axe-core can check. */
export function brokenRules(page) {
  return page.evaluate(runAxe, AXE);
}

/** Everything to tap that is too small. */
export function smallTargets(page) {
  return page.evaluate((least) => {
    const targets = [...document.querySelectorAll("button, select, input:not(.choice input), .choice label")];
    return targets
      .map((element) => [element.innerText || element.id, element.getBoundingClientRect()])
      .filter(([, box]) => box.width > 0 && (box.width < least || box.height < least))
      .map(([name, box]) => `${name}: ${box.width} x ${box.height}`);
  }, TARGET);
}

/** Everything that sticks out of the card it is in, to either side. */
export function outsideCards(page) {
  return page.evaluate(() => {
    const outside = [];
    for (const card of document.querySelectorAll(".card")) {
      const { left, right } = card.getBoundingClientRect();
      for (const inner of card.querySelectorAll("*:not(.unseen, input)")) {
        const box = inner.getBoundingClientRect();
        if (box.width > 0 && (box.left < left - 0.5 || box.right > right + 0.5)) {
          outside.push(`${inner.className || inner.tagName}: ${inner.textContent.slice(0, 40)}`);
        }
      }
    }
    return outside;
  });
}

async function runAxe(source) {
  if (!window.axe) (0, eval)(source);
  const { violations } = await window.axe.run(document, {
    runOnly: ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice"],
    rules: { "color-contrast-enhanced": { enabled: true }, "target-size": { enabled: true } },
  });
  return violations.map(({ id, nodes }) => `${id}: ${nodes.map((node) => node.html).join(" | ")}`);
}
