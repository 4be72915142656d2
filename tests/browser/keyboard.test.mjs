// A four-breast cook with the keyboard alone, and what a screen reader hears of it.

import assert from "node:assert/strict";
import { test } from "node:test";
import { EVENING, FOUR, Person } from "./cook.mjs";
import { openApp, siteAndPhone } from "./harness.mjs";
import { openTwenty } from "./twenty.mjs";

/** More stops than any screen has. */
const MOST_STOPS = 80;

test("a cook of four breasts needs no pointer, and is told without chatter", async (t) => {
  const { site, phone } = await siteAndPhone(t, { time: EVENING });
  const { page } = phone;
  const { clock } = phone.context;
  await page.addInitScript(listen);
  await openApp(phone, site);

  await press(page, "New cook");
  for (const [place, piece] of FOUR.entries()) {
    await reach(page, /^Weight each/);
    await page.keyboard.type(piece.weight);
    await reach(page, /^Thickest part/);
    await page.keyboard.type(piece.thickest);
    await page.keyboard.press("Enter");
    await heard(page, `Piece ${place + 1} added`);
  }
  await press(page, "Put all 4 on");
  await heard(page, "on");
  assert.equal(await focusedHeading(page), "Cook", "the new screen has the focus");

  await clock.fastForward("40:00");
  await hush(page);
  // Two minutes in which nothing happens but the countdown: a listener is left in peace.
  for (let second = 0; second < 120; second += 1) await clock.runFor(1000);
  const chatter = await said(page);
  assert.ok(chatter.length <= 3, `said in two minutes: ${JSON.stringify(chatter)}`);

  for (const [place, reading] of ["161", "158", "157", "156"].entries()) {
    const name = `Piece ${place + 1}`;
    await press(page, new RegExp(`^${name}\\b`));
    assert.equal(await focusedHeading(page), name);
    await reach(page, /^Reading in/);
    await page.keyboard.type(reading);
    await page.keyboard.press("Enter");
    await heard(page, `${name} reads ${reading}`);
    await press(page, new RegExp(`^${name}\\b`));
    await press(page, `Pull ${name}`);
    await heard(page, `${name} pulled`);
  }
  await press(page, "Undo");
  await heard(page, "Undone");
  await press(page, /^Piece 4\b/);
  await press(page, "Pull Piece 4");
  await press(page, "Rest");
  await page.locator(".piece.resting").nth(3).waitFor();
  assert.equal(await focusedHeading(page), await page.locator("h1").innerText());
});

test("the keyboard keeps its place in a long log when all of it is shown", async (t) => {
  const { site, phone } = await siteAndPhone(t, { time: EVENING });
  const { page } = phone;
  await openApp(phone, site);
  await openTwenty(phone);
  await new Person(phone).goTo("Log");
  await page.locator(".entries li").nth(49).waitFor();
  const more = page.getByRole("button", { name: /^Show all/ });
  await more.focus();
  await page.keyboard.press("Enter");
  await more.waitFor({ state: "detached" });
  const row = await page.waitForFunction(() => document.activeElement.closest(".entries > li"));
  const place = await row.evaluate((row) => [...row.parentElement.children].indexOf(row));
  assert.equal(place, 50, "the first entry that was not shown before");
});

/** Moves the focus, as the Tab key does, to what has this name. */
async function reach(page, name) {
  for (let stops = 0; stops < MOST_STOPS; stops += 1) {
    await page.keyboard.press("Tab");
    const focused = await page.evaluate(nameOfFocused);
    if (typeof name === "string" ? focused === name : name.test(focused)) {
      assert.ok(await page.evaluate(focusIsSeen), `the focus on "${focused}" cannot be seen`);
      return;
    }
  }
  throw new Error(`the Tab key does not come to ${name}`);
}

async function press(page, name) {
  await page.getByRole("button", { name }).first().waitFor();
  await reach(page, name);
  await page.keyboard.press("Enter");
}

function nameOfFocused() {
  const element = document.activeElement;
  const label = element.labels?.[0]?.innerText;
  return (element.getAttribute("aria-label") ?? label ?? element.innerText ?? "").trim().replace(/\s+/g, " ");
}

/** Whether what has the focus is outlined and lies within the window, under nothing. */
function focusIsSeen() {
  const element = document.activeElement;
  const box = element.getBoundingClientRect();
  const outlined = parseFloat(getComputedStyle(element).outlineWidth) >= 2;
  const on = document.elementFromPoint(box.left + box.width / 2, box.top + box.height / 2);
  return outlined && (element === on || element.contains(on) || on?.contains(element));
}

function focusedHeading(page) {
  return page.waitForFunction(() => document.activeElement?.tagName === "H1" && document.activeElement.innerText)
    .then((handle) => handle.jsonValue());
}

/** Runs in the page before the app: notes each change of a live region, as a screen reader does. */
function listen() {
  window.said = [];
  new MutationObserver((changes) => {
    for (const { target } of changes) {
      const element = target instanceof Element ? target : target.parentElement;
      const region = element?.closest("[role=status], [role=alert], [aria-live]");
      const words = region?.textContent.trim();
      if (words && window.said.at(-1) !== words) window.said.push(words);
    }
  }).observe(document, { subtree: true, childList: true, characterData: true });
}

function said(page) {
  return page.evaluate(() => window.said);
}

function hush(page) {
  return page.evaluate(() => void (window.said = []));
}

function heard(page, words) {
  return page.waitForFunction((words) => window.said.some((text) => text.includes(words)), words);
}
