// What was told is not asked for again while the next step is still being worked out, and nothing on the
// screen moves twice for one tap.

import assert from "node:assert/strict";
import { test } from "node:test";
import { settle } from "./asleep.mjs";
import { EVENING, FOUR, Person } from "./cook.mjs";
import { openApp, siteAndPhone } from "./harness.mjs";
import { show } from "./look.mjs";

/** So long, in milliseconds, the screen waits before it says that it works something out. */
const SLOW = 300;

/** Four pieces set out, with a second thread whose answers the test can hold back. */
async function slowThread(t) {
  const { site, phone } = await siteAndPhone(t, { time: EVENING });
  await phone.context.addInitScript(() => {
    const held = (window.heldByTest = { on: false, answers: [] });
    const Real = window.Worker;
    window.Worker = class extends Real {
      set onmessage(hear) {
        super.onmessage = hear && ((event) => {
          const pass = () => hear.call(this, event);
          if (held.on) held.answers.push(pass);
          else pass();
        });
      }
    };
  });
  const person = new Person(phone);
  await openApp(phone, site);
  await person.tap("New cook");
  await person.setOutAll(FOUR);
  await person.goTo("Cook");
  await person.nextStep();
  return { phone, person, page: phone.page };
}

const hold = (page) => page.evaluate(() => (window.heldByTest.on = true));

/** Lets the answers that were held back come. */
async function letGo(page) {
  await page.evaluate(() => {
    const { heldByTest } = window;
    heldByTest.on = false;
    for (const pass of heldByTest.answers.splice(0)) pass();
  });
}

/** All that can be seen or tapped on the screen, as words; and where the card is, and the dock. */
function inSight(page) {
  return page.evaluate(() => {
    scrollTo(0, 0);
    const seen = (one) => one.checkVisibility({ visibilityProperty: true });
    const words = (selector) => [...document.querySelectorAll(selector)].filter(seen).map((one) => one.innerText);
    const box = (selector) => {
      const { top, height } = document.querySelector(selector).getBoundingClientRect();
      return { top: Math.round(top), height: Math.round(height) };
    };
    return {
      card: words(".next h2, .next .why, .next .then").join(" | "),
      buttons: words("button"),
      done: words(".last-done p").join(),
      boxes: { card: box(".next"), dock: box(".dock") },
    };
  });
}

/** What asks for a piece to be put on. */
const asks = ({ card, buttons }) => [card, ...buttons].filter((words) => /put (all|the|on)/i.test(words));

test("beside the word that all are on, nothing asks to put them on, however long the next step takes", async (t) => {
  const { phone, person, page } = await slowThread(t);
  const { clock } = phone.context;
  await hold(page);
  const before = await inSight(page);
  assert.ok(asks(before).length >= 2, "the card and its button ask");
  // From here the page's time goes by only as told.
  await clock.pauseAt((await page.evaluate(() => Date.now())) + 1000);
  await page.locator(".dock .main-action").tap();
  await settle(phone);
  await clock.runFor(50);
  await settle(phone);

  const quick = await inSight(page);
  assert.match(quick.done, /on$/);
  assert.deepEqual(asks(quick), [], "what was told is asked for no more");
  assert.equal(quick.card.replace(/[\s|]/g, ""), "", "and nothing else is said yet");
  assert.deepEqual(quick.boxes, before.boxes, "nothing has moved");

  await clock.runFor(SLOW);
  await settle(phone);
  const slow = await inSight(page);
  assert.match(slow.card, /^Working out the next step/);
  assert.deepEqual(asks(slow), []);

  await letGo(page);
  await settle(phone);
  await clock.runFor(50);
  const { what } = await person.nextStep();
  assert.doesNotMatch(what, /put|working/i);
});

test("what is about other pieces stays in sight meanwhile", async (t) => {
  const { phone, person, page } = await slowThread(t);
  await hold(page);
  await person.tap("Put on: Piece 2");
  await person.stored("Piece 2 on");
  await settle(phone);
  const offers = () => page.locator(".piece .act").evaluateAll((all) => all.map((one) => one.ariaLabel));
  assert.deepEqual((await offers()).sort(), ["Put on: Piece 1", "Put on: Piece 3", "Put on: Piece 4"]);
  await letGo(page);
  await person.nextStep();
  assert.deepEqual((await offers()).sort(), ["Put on: Piece 1", "Put on: Piece 3", "Put on: Piece 4"]);
});

test("a call that was answered by what was told goes at once", async (t) => {
  const { phone, person, page } = await slowThread(t);
  await show(page, "set-out");
  await page.locator("#dinner").fill("18:45");
  await page.locator("#dinner").blur();
  await person.stored("Dinner");
  await person.goTo("Cook");
  await person.nextStep();
  const calls = () => page.waitForFunction(() => /^\(\d/.test(document.title));
  await phone.context.clock.fastForward("30:00");
  await calls();
  await hold(page);
  for (const piece of [1, 2, 3, 4]) {
    await person.tap(`Put on: Piece ${piece}`);
    await person.stored(`Piece ${piece} on`);
  }
  await person.goTo("More");
  const left = await page.locator(".alarm").allInnerTexts();
  assert.ok(!left.some((words) => /put/i.test(words)), left.join());
});

test("two taps on a number count as two, and two figures are both kept, however long the next look takes", async (t) => {
  const { person, page } = await slowThread(t);
  await show(page, "habits");
  await hold(page);
  // Faster than any finger: nothing is stored or drawn in between.
  await page.evaluate(() => {
    const more = document.querySelector("[aria-label='One spot more']");
    more.click();
    more.click();
  });
  await page.locator(".stepped", { hasText: /^2$/ }).waitFor();
  await page.evaluate(() => {
    for (const [id, typed] of [["rest", "12"], ["carving", "25"]]) {
      const field = document.getElementById(id);
      field.value = typed;
      for (const event of ["input", "change"]) field.dispatchEvent(new Event(event, { bubbles: true }));
    }
  });
  await person.stored(/Cook times/);
  await letGo(page);
  await person.goTo("Cook");
  await person.nextStep();
  await show(page, "habits");
  assert.equal(await page.locator("#rest").inputValue(), "12");
  assert.equal(await page.locator("#carving").inputValue(), "25");
});

test("nothing moves from under a finger, and a finger that rests keeps nothing waiting for long", async (t) => {
  const { person, page } = await slowThread(t);
  const finger = (what) => page.locator(".piece .open").first().dispatchEvent(what);
  const thinks = () => page.locator(".next").getAttribute("aria-busy");
  const pause = (ms) => new Promise((resolve) => setTimeout(resolve, ms));
  await hold(page);
  await person.tap("Put on: Piece 2");
  await person.stored("Piece 2 on");
  await finger("pointerdown");
  await letGo(page);
  await pause(1000);
  assert.equal(await thinks(), "true", "the next step waits for the finger");
  await finger("pointerup");
  await page.locator(".next[aria-busy=false]").waitFor();
  await hold(page);
  await person.tap("Put on: Piece 1");
  await person.stored("Piece 1 on");
  await finger("pointerdown");
  await letGo(page);
  await page.locator(".next[aria-busy=false]").waitFor();
});

test("a piece just added is on the list and goes on with the others, however long the next look takes", async (t) => {
  const { person, page } = await slowThread(t);
  await show(page, "set-out");
  await hold(page);
  await person.setOut({ weight: "7", thickest: "1.3" });
  await page.getByText("Piece 5", { exact: true }).waitFor();
  await person.tap("Put all 5 on");
  await person.stored("Pieces 1, 2, 3, 4 and 5 on");
  await letGo(page);
  await person.nextStep();
  assert.equal(await page.locator(".piece.on").count(), 5);
});
