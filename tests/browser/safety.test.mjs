// What the app says about safety: only readings prove a piece, by the rule chosen, and what is not
// proved is told so, with what to do about it.

import assert from "node:assert/strict";
import { test } from "node:test";
import { setHidden } from "./asleep.mjs";
import { EVENING, FOUR, Person } from "./cook.mjs";
import { openApp, siteAndPhone } from "./harness.mjs";

/** A breast so thin that it rises little after the pull. */
const THIN = { weight: "5.5", thickest: "1.0" };

/** A cook with one piece just put on. */
async function onePieceOn(t, piece) {
  const { site, phone } = await siteAndPhone(t, { time: EVENING });
  const person = new Person(phone);
  await openApp(phone, site);
  await person.tap("New cook");
  await person.setOutAll([piece]);
  await person.tap("Put the piece on");
  await person.stored("Piece 1 on");
  const { page } = phone;
  const pull = async () => {
    await person.goTo("Cook");
    await person.openPiece(1);
    await person.tap("Pull Piece 1");
    await person.stored("Piece 1 pulled");
    await person.goTo("Rest");
  };
  return {
    page,
    person,
    phone,
    site,
    wait: (minutes) => phone.context.clock.fastForward(minutes * 60_000),
    /** Types a reading of two places from the cook's screen. */
    async read(reading) {
      await person.goTo("Cook");
      await person.openPiece(1);
      await person.twoPlaces();
      await person.typeReading(reading);
      await person.stored(`Piece 1 reads ${reading}`);
      await sayItIsRight(person);
    },
    pull,
    async pullAndCover() {
      await pull();
      await person.tap("Cover: Piece 1");
      await person.stored("covered");
    },
    async open(screen) {
      await person.goTo("More");
      await person.tap(screen);
    },
  };
}

/** Where the app asks whether a reading is right, this cook says yes. */
async function sayItIsRight(person) {
  await person.nextStep();
  const keep = person.button(/is right$/);
  if (!(await keep.isVisible())) return;
  await keep.tap();
  await person.stored("Reading confirmed");
}

test("the rule chosen decides what proves, and undoing the reading takes the proof away", async (t) => {
  const { page, person, wait, read, pullAndCover, open } = await onePieceOn(t, FOUR[0]);
  await wait(40);
  await read("131");
  await wait(25);
  await read("161");
  await pullAndCover();
  await wait(5);
  await read("166");
  await person.goTo("Rest");
  await page.getByText(/Proved: 166\s°F at/).waitFor();

  await open("Proof rule and thermometers");
  await page.getByText(/Source: FDA Food Code 2022, 3-401\.11/).waitFor();
  await page.getByText("A higher figure", { exact: true }).tap();
  await page.getByLabel("Your figure").fill("150");
  await person.tap("Prove by this figure");
  await page.getByText(/Between 165\s°F and 185\s°F is accepted/).waitFor();
  await page.getByLabel("Your figure").fill("170");
  await person.tap("Prove by this figure");
  await person.stored(/Proof: 170\s°F at once/);
  await person.goTo("Rest");
  await page.getByText(/Resting, not yet proved.*166\s°F, is below 170\s°F/).waitFor();

  await open("Proof rule and thermometers");
  await page.getByText("Time at temperature", { exact: true }).tap();
  await page.getByText(/not validated for the surface/).waitFor();
  await page.getByText(/USDA FSIS, Time-Temperature Tables/).waitFor();
  await page.getByText(/In use: 170\s°F at once/).waitFor();
  await page.getByText(/^165\s°F at once$/).tap();
  await person.stored(/Proof: 165\s°F at once/);
  await person.goTo("Rest");
  await page.getByText(/Proved: 166\s°F at/).waitFor();

  await person.goTo("Log");
  await person.openEntry("Piece 1 reads 166");
  await person.tap(/^Undo: Piece 1 reads 166/);
  await person.goTo("Rest");
  await page.getByText(/Resting, not yet proved.*161\s°F, is below 165\s°F/).waitFor();
  assert.equal(await page.getByText(/Proved: /).count(), 0);
});

/**
 * What the rest says of a hold. The table's row of 150 F takes 4 min with 12 % fat (FSIS Appendix A);
 * a thermometer of plus or minus 2 F must show 152 for it (its maker's figure is taken off).
 */
const HELD = /Held at 152\s°F or more since/;

/** By the table: a piece read at 155 and resting, which a reading of 154 six minutes later proves. */
async function heldOnce(t) {
  const cook = await onePieceOn(t, FOUR[0]);
  const { page, person, wait, read, pullAndCover, open } = cook;
  await open("Proof rule and thermometers");
  await page.getByText("Time at temperature", { exact: true }).tap();
  await person.tap("I know this; prove by the table");
  await person.stored(/Proof: time at temperature, 12% fat/);
  await wait(40);
  await read("131");
  await wait(20);
  await read("155");
  await pullAndCover();
  await page.getByText(HELD).waitFor();
  return cook;
}

test("by the table two readings prove what one does not", async (t) => {
  const { page, person, wait, read } = await heldOnce(t);
  assert.equal(await page.getByText(/Proved: /).count(), 0);
  await wait(6);
  await read("154");
  await person.goTo("Rest");
  await page.getByText(/Proved: 154\s°F at/).waitFor();
  assert.equal((await clockLines(person)).length, 0, "time that goes by is no jump");
});

test("a clock set forward while the page is open is written down, and its time does not count", async (t) => {
  const { page, person, read, phone } = await heldOnce(t);
  await phone.context.clock.setSystemTime((await pageTime(page)) + 6 * 60_000);
  await read("154");
  await person.nextStep();
  await person.goTo("Rest");
  await page.getByText(HELD).waitFor();
  assert.equal(await page.getByText(/Proved: /).count(), 0);
  assert.equal((await clockLines(person)).length, 1);
});

test("time that went by unseen is written down and not credited, and proves nothing", async (t) => {
  const { page, person, wait, read, phone, site } = await heldOnce(t);
  await setHidden(page, true);
  await phone.context.clock.setSystemTime((await pageTime(page)) + 6 * 60_000);
  await setHidden(page, false);
  await read("154");
  await person.goTo("Rest");
  await page.getByText(HELD).waitFor();
  assert.equal(await page.getByText(/Proved: /).count(), 0);
  assert.equal((await clockLines(person)).length, 1);
  // The same while the app was closed.
  const time = (await pageTime(page)) + 6 * 60_000;
  await phone.switchOff();
  await phone.switchOn({ time });
  await openApp(phone, site);
  await read("153");
  await person.goTo("Rest");
  await phone.page.getByText(HELD).waitFor();
  assert.equal(await phone.page.getByText(/Proved: /).count(), 0);
  assert.equal((await clockLines(person)).length, 2);
  // From there on time counts again.
  await wait(6);
  await read("153");
  await person.goTo("Rest");
  await phone.page.getByText(/Proved: 153\s°F at/).waitFor();
});

test("a clock set back while the app was closed is written down, and the time before it does not count", async (t) => {
  const { person, wait, read, phone, site } = await heldOnce(t);
  await wait(6);
  await read("154");
  await person.goTo("Rest");
  await phone.page.getByText(/Proved: 154\s°F at/).waitFor();
  const time = (await pageTime(phone.page)) - 20 * 60_000;
  await phone.switchOff();
  await phone.switchOn({ time });
  await openApp(phone, site);
  await person.goTo("Rest");
  await phone.page.getByText(/Resting, not yet proved/).waitFor();
  assert.equal(await phone.page.getByText(/Proved: /).count(), 0);
  assert.equal((await clockLines(person)).length, 1);
});

function pageTime(page) {
  return page.evaluate(() => Date.now());
}

/** The lines of the log that tell of the phone's clock. */
async function clockLines(person) {
  return (await person.logLines()).filter((line) => /clock/.test(line));
}

test("a thin piece pulled at 160 stays unproved and is told to go back on", async (t) => {
  const { page, person, wait, read, pull } = await onePieceOn(t, THIN);
  await wait(35);
  await read("138");
  await wait(12);
  await read("160");
  await pull();
  await page.getByText(/Resting, not yet proved.*160\s°F, is below 165\s°F/).waitFor();
  await page.getByText(/Check two spots at|It was likely hottest at/).waitFor();
  await wait(8);
  await read("161");
  await wait(5);
  assert.match((await person.nextStep()).what, /^Put Piece 1 back on/);
  await page.getByText(/Back on the pit: about \d+ min/).waitFor();
  await person.goTo("Rest");
  await page.getByText(/Back on the pit: about \d+ min/).waitFor();
  assert.equal(await page.getByText(/Proved: /).count(), 0);
});

test("a pull of the cook's own is told how often it goes back, and given up with one tap", async (t) => {
  const { page, person } = await onePieceOn(t, THIN);
  await page.evaluate(() => (location.hash = "#set-out"));
  await page.locator("#pull").fill("155");
  await page.locator("#pull").blur();
  await person.stored(/Pull temp 155/);
  await person.goTo("Cook");
  await person.openPiece(1);
  await page.getByText(/Pulled at 155\s°F, it has to go back on about \d+ times in 10/).waitFor();
  await person.tap(/^Back to 16\d/);
  await page.getByText(/has to go back on about/).waitFor({ state: "detached" });
});

test("what a check of the thermometer found is shown wherever it acts", async (t) => {
  const { page, person, wait, open } = await onePieceOn(t, FOUR[1]);
  await open("Test a thermometer");
  await page.getByLabel("Altitude").fill("5280");
  await page.getByText(/Water boils at 20[23]\S*\s°F/).waitFor();
  await page.getByLabel("Reads in ice water").fill("40");
  await person.tap("Use this from now on");
  await page.getByText(/off by more than 5\s°F/).waitFor();
  await page.getByLabel("Reads in ice water").fill("34");
  await page.getByRole("status").filter({ hasText: /reads high by 2\s°F/ }).waitFor();
  await person.tap("Use this from now on");
  await person.stored(/Instant-read tested: reads high by 2\s°F/);

  await wait(45);
  await person.goTo("Cook");
  await person.openPiece(1);
  await page.getByText(/Instant-read now: reads high by 2\s°F/).waitFor();
  await person.typeReading("135");
  await person.stored("Piece 1 reads 135");
  await page.getByText(/135\s°F, counted as 133\s°F/).first().waitFor();
});

test("the clocks run, come to the front near their end, and say so when they are over", async (t) => {
  const { page, person, wait, read, pull } = await onePieceOn(t, FOUR[0]);
  await wait(65);
  await read("160");
  assert.equal(await page.getByText(/in the fridge by/).count(), 0);
  await pull();
  await page.getByText(/in the fridge by/).waitFor();
  await wait(95);
  await person.goTo("Cook");
  await page.getByText(/Piece 1: in the fridge by/).waitFor();
  await page.getByText(/2\d min left/).waitFor();
  await wait(40);
  await page.getByText(/It has been out too long to eat or to keep/).waitFor();
});

test("prompts to clean come where they belong, go with one tap, and can be turned off", async (t) => {
  const { page, person, wait, read, open } = await onePieceOn(t, FOUR[1]);
  const prompt = page.getByText(/Clean the probe before the next piece/);
  await wait(30);
  await read("110");
  await prompt.waitFor();
  await person.tap("Done", { exact: true });
  await person.stored("Cleaned");
  await prompt.waitFor({ state: "detached" });
  await wait(10);
  await read("125");
  await prompt.waitFor();
  await open("Proof rule and thermometers");
  await page.getByRole("group", { name: "Cleaning reminders" }).getByText("Off", { exact: true }).tap();
  await person.stored("Cleaning reminders off");
  await person.goTo("Cook");
  await page.locator(".next[aria-busy=false]").waitFor();
  assert.equal(await prompt.count(), 0);
});

test("how long raw chicken keeps, thawed too, stands where pieces are set out", async (t) => {
  const { site, phone } = await siteAndPhone(t, { time: EVENING });
  const person = new Person(phone);
  await openApp(phone, site);
  await person.tap("New cook");
  // USDA FSIS, Refrigeration and Food Safety: raw poultry 1 or 2 days; The Big Thaw: an additional day or two
  // once thawed in the refrigerator (both from memory).
  const said = phone.page.locator(".caution", { hasText: /one or two days in the fridge.*one or two more once it has thawed/ });
  await said.waitFor();
  assert.match(await said.innerText(), /Throw out what lay longer/);
});
