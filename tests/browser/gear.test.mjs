// What belongs to the phone's owner is told once, and holds in the next cook.

import assert from "node:assert/strict";
import { test } from "node:test";
import { EVENING, FOUR, Person } from "./cook.mjs";
import { openApp, siteAndPhone, started } from "./harness.mjs";
import { show } from "./look.mjs";
import { databaseTexts, kinds } from "./stored.mjs";

async function newCook(t) {
  const { site, phone } = await siteAndPhone(t, { time: EVENING });
  const person = new Person(phone);
  await openApp(phone, site);
  await person.tap("New cook");
  return { site, phone, person };
}

async function checkThermometer(person, page, shows) {
  await show(page, "thermometer");
  await page.getByLabel(/^Reads in ice water/).fill(shows);
  await person.tap("Use this from now on");
  await person.stored("Instant-read tested");
}

async function another(person, page) {
  await show(page, "more");
  await person.tap("New cook");
  await page.getByRole("heading", { name: "Pieces and dinner", exact: true }).waitFor();
}

test("a thermometer's offset and a pit's kind hold in the next cook, which says so and logs it", async (t) => {
  const { site, phone, person } = await newCook(t);
  const { page } = phone;
  await checkThermometer(person, page, "34");
  await show(page, "habits");
  await page.getByLabel("Type of pit").selectOption("Pellet grill");
  await person.stored("Type of pit: Pellet grill");
  await page.goto(site.url);
  await started(page);
  await another(person, page);
  await person.stored(/^From this phone: .*reads high by 2/);
  await person.setOutAll(FOUR.slice(0, 1));
  const newest = kinds(await databaseTexts(page)).slice(-4);
  // A pellet grill's usual times came with it.
  assert.deepEqual(newest, ["pit_kind_set", "habits_set", "thermometer_checked", "piece_set_out"]);
  await show(page, "thermometer");
  await page.getByText(/Instant-read now: reads high by 2/).waitFor();
});

test("two thermometers by name keep their own offsets", async (t) => {
  const { phone, person } = await newCook(t);
  const { page } = phone;
  await checkThermometer(person, page, "34");
  await page.getByLabel("Name of this thermometer").fill("Blue one");
  await person.tap("Another one");
  await page.getByText(/Instant-read now: reads true/).waitFor();
  await page.getByLabel("Name of this thermometer").fill("Red one");
  await another(person, page);
  await show(page, "thermometer");
  await page.getByText(/Instant-read now: reads true/).waitFor();
  await person.tap("Use Blue one");
  await page.getByText(/Instant-read now: reads high by 2/).waitFor();
  await another(person, page);
  await person.stored(/^From this phone: .*reads high by 2/);
});

test("taking back what a cook started from does not forget the thermometer", async (t) => {
  const { phone, person } = await newCook(t);
  const { page } = phone;
  await checkThermometer(person, page, "34");
  await another(person, page);
  await person.stored(/^From this phone/);
  await person.tap("Undo", { exact: true });
  await person.stored("Undone");
  await another(person, page);
  await person.stored(/^From this phone: .*reads high by 2/);
});
