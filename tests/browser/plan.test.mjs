// The day back from dinner: planned, drawn, changed, taken into the phone's calendar.

import assert from "node:assert/strict";
import { readFile } from "node:fs/promises";
import { test } from "node:test";
import { EVENING, FOUR, Person } from "./cook.mjs";
import { openApp, siteAndPhone } from "./harness.mjs";

/** A phone with four breasts set out and a time for dinner. */
async function planned(t, dinner) {
  const { site, phone } = await siteAndPhone(t, { time: EVENING });
  const person = new Person(phone);
  await openApp(phone, site);
  await person.tap(/New cook/);
  await person.setOutAll(FOUR);
  await person.page.getByLabel("Dinner at").fill(dinner);
  await person.page.getByLabel("Dinner at").blur();
  await person.stored(/Dinner at/);
  await person.goTo("More");
  await person.tap("Plan", { exact: true });
  await person.page.locator(".timeline").waitFor();
  return person;
}

/** What the plan says at `place`. While it is worked out anew it is hidden, and would read as nothing. */
async function told(person, place) {
  const all = person.page.locator(place);
  await all.first().waitFor();
  return all.allInnerTexts();
}

/** The plan's lines, in order of time. */
const lines = (person) => told(person, ".plan .entries li");

test("the plan names every time from the fridge to dinner, in words and drawn", async (t) => {
  const person = await planned(t, "20:30");
  const plan = (await lines(person)).join("\n");
  for (const what of [/fridge/, /Light the fire/, /Put Pieces 1, 2, 3 and 4 on/, /Pull Pieces? .*4/, /rested/, /Dinner/]) {
    assert.match(plan, what);
  }
  assert.equal(await person.page.locator(".timeline .window-box").count(), FOUR.length);
  // 8:30 PM is the last thing: nothing is planned past dinner.
  assert.match((await lines(person)).at(-1), /8:30\sPM\s+Dinner/);
});

test("the way of loading is chosen by what it costs, and undone", async (t) => {
  const person = await planned(t, "20:30");
  const costs = await told(person, ".costs dd");
  assert.equal(costs.length, 2);
  for (const cost of costs) assert.match(cost, /Total hold .+ lid opened .+ pit going .+ in time \d+%/);
  const on = async () => (await lines(person)).filter((line) => /Put Pieces? .*on/.test(line));
  const together = new Set((await on()).map((line) => line.split("\n")[0]));
  assert.equal(together.size, 1);
  await person.page.getByText("All pulled together").first().tap();
  await person.stored(/Loading of the pit/);
  await person.page.waitForFunction(
    () =>
      new Set(
        [...document.querySelectorAll(".plan .entries li")]
          .filter((line) => /Put Pieces? .*on/.test(line.innerText))
          .map((line) => line.innerText.split("\n")[0]),
      ).size > 1,
  );
  await person.tap("Undo", { exact: true });
  await person.stored(/Undone/);
});

test("while a plan is worked out nothing of the one before is in sight", async (t) => {
  const person = await planned(t, "20:30");
  await person.page.evaluate(() => {
    window.drawn = [];
    const draw = () => {
      const rows = document.querySelector(".plan .entries");
      const seen = rows && getComputedStyle(rows).visibility === "visible";
      window.drawn.push([document.querySelector(".last-done p")?.textContent ?? "", seen ? rows.innerText : null]);
      requestAnimationFrame(draw);
    };
    draw();
  });
  const before = (await lines(person)).join("\n");
  await person.page.getByText("All pulled together").first().tap();
  await person.stored(/Loading of the pit/);
  await person.page.waitForFunction((before) => {
    const rows = document.querySelector(".plan .entries");
    return getComputedStyle(rows).visibility === "visible" && [...rows.children].map((row) => row.innerText).join("\n") !== before;
  }, before);
  const drawn = await person.page.waitForFunction(() => window.drawn.at(-1)[1] !== null && window.drawn).then((drawn) => drawn.jsonValue());
  const told = drawn.filter(([done, seen]) => /Loading of the pit/.test(done) && seen !== null);
  assert.deepEqual([...new Set(told.map(([, seen]) => seen))], [await person.page.locator(".plan .entries").innerText()]);
});

test("who owns a pellet grill starts the pit and is never told to feed it", async (t) => {
  const person = await planned(t, "20:30");
  assert.match((await lines(person)).join("\n"), /Light the fire[^]*Feed the fire/);
  await person.tap("Pit, grate and times");
  await person.page.getByLabel("Feed the fire every").waitFor();
  await person.page.getByLabel("Type of pit").selectOption("Pellet grill");
  await person.stored(/Type of pit: Pellet grill|How long things take/);
  await person.page.getByLabel("Feed the fire every").waitFor({ state: "detached" });
  // Hot in a quarter of an hour (common practice, no source), where the fire of an offset takes 40 minutes.
  assert.equal(await person.page.getByLabel("Start to up to temp").inputValue(), "15");
  await person.goTo("More");
  await person.tap("Plan", { exact: true });
  await person.page.locator(".entries li", { hasText: "Start the pit" }).waitFor();
  assert.doesNotMatch(await person.page.locator(".screen").innerText(), /Feed|Light the fire/);
});

test("a dinner that cannot be made is said, with what could be done", async (t) => {
  const person = await planned(t, "17:20");
  await person.page.getByText(/late/).first().waitFor();
  await person.page.getByText(/Raise the pit to/).waitFor();
  const later = person.button(/^Do it: Eat at/);
  await later.tap();
  await person.stored(/Dinner at/);
  await person.page.getByText(/on time|early/).first().waitFor();
});

test("the plan goes into the phone's calendar", async (t) => {
  const person = await planned(t, "20:30");
  const coming = person.page.waitForEvent("download");
  await person.tap("Save the plan to my calendar");
  const file = await coming;
  assert.match(file.suggestedFilename(), /^pull-order-2026-06-12\.ics$/);
  const text = await readFile(await file.path(), "utf8");
  assert.match(text, /^BEGIN:VCALENDAR\r\n/);
  // 8:30 PM in Chicago in June is half past one the next day in UTC.
  assert.match(text, /DTSTART:20260613T013000Z/);
  assert.equal(text.match(/BEGIN:VALARM/g).length, text.match(/BEGIN:VEVENT/g).length);
});

test("fewer places than pieces means waves, and the times around the cook are the cook's own", async (t) => {
  const person = await planned(t, "21:30");
  await person.tap("Pit, grate and times");
  await person.tap("One spot more");
  await person.tap("One spot more");
  await person.page.locator(".stepped", { hasText: /^2$/ }).waitFor();
  await person.page.getByLabel("Slicing and sides (min)").fill("999");
  await person.page.getByLabel("Slicing and sides (min)").blur();
  await person.page.getByText(/is accepted/).waitFor();
  await person.page.getByLabel("Slicing and sides (min)").fill("25");
  await person.page.getByLabel("Slicing and sides (min)").blur();
  await person.stored(/Cook times/);
  await person.page.goBack();
  await person.page.locator(".timeline").waitFor();
  await person.page.waitForFunction(
    () =>
      new Set(
        [...document.querySelectorAll(".plan .entries li")]
          .filter((line) => /Put Pieces? .*on/.test(line.innerText))
          .map((line) => line.innerText.split("\n")[0]),
      ).size === 2,
  );
});
