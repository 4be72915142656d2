// The kitchen: from proved pieces to bags, their labels, and the reheat screen days later.

import assert from "node:assert/strict";
import { readFile } from "node:fs/promises";
import { test } from "node:test";
import { EVENING, FOUR, Person } from "./cook.mjs";
import { goOffline, goOnline, keptOffline, openApp, siteAndPhone, started } from "./harness.mjs";
import { pageSizes, textRuns } from "./printed.mjs";

const DAYS = 24 * 60 * 60 * 1000;
/** Lines on a label: what, bag, cooked, best by, bath. */
const LINES = 5;

test("pieces become bags, and a label's code opens its bag's reheat screen days later, offline", async (t) => {
  const { site, phone } = await siteAndPhone(t, { time: EVENING });
  const person = new Person(phone);
  await openApp(phone, site);
  await keptOffline(phone.page);
  await fourProved(person, phone);
  await person.goTo("Rest");
  await person.tap(/^Kitchen/);
  await phone.page.getByText("No bags yet").waitFor();

  await person.goTo("Portions");
  await phone.page.getByText(/^4 pieces, about/).waitFor();
  const shared = await phone.page.locator(".piece-button").count();
  assert.equal(shared, 4, "every piece has a use");
  await person.picture("portions");
  await person.tap("Change Dinner");
  await phone.page.getByLabel("How many").fill("2");
  await person.tap("Done: Dinner");
  await phone.page.getByText(/^Gets .*: 2 ×/).waitFor();
  await person.tap(/^Piece 1 .* move to Whole pieces$/);
  await phone.page.getByRole("button", { name: /^Piece 1 .* move to Dinner$/ }).waitFor();
  await person.tap("Pack 2 bags");
  await person.stored("2 bags packed");
  await person.goTo("Bags");
  assert.equal(await phone.page.locator(".bag-row").count(), 2);
  await person.picture("kitchen");

  const row = phone.page.locator(".bag-row").first();
  const name = await row.locator(".name").innerText();
  assert.match(name, /^Whole pieces, bag \d+$/);
  await row.locator("button.row").tap();
  const label = await phone.page.locator(".label p").allInnerTexts();
  assert.equal(label[0], "Chicken breast, whole");
  assert.match(label[1], /^Whole pieces, bag \d+, [\d.]+\soz$/);
  assert.match(label[2], /^Cooked .*Jun/);
  assert.match(label[3], /^Best by .*Oct/);
  assert.match(label[4], /^Water bath 145\s°F, \d+ min$/);
  const address = await phone.page.locator("a.code").getAttribute("href");
  assert.match(address, /#reheat-2\./);
  await person.picture("label");

  await phone.switchOff();
  await phone.switchOn({ time: Date.parse(EVENING) + 20 * DAYS });
  await goOffline({ site, phone });
  await phone.page.goto(address);
  await started(phone.page);
  await phone.page.getByRole("heading", { name: `Reheat: ${name}` }).waitFor();
  const minutes = await phone.page.locator(".minutes .degrees").innerText();
  assert.equal(Math.ceil(inMinutes(minutes) / 5) * 5, Number(/(\d+) min$/.exec(label[4])[1]));
  await phone.page.getByText(/USDA says 165\s°F/).waitFor();
  await person.picture("reheat");

  await person.goTo("Bags");
  assert.equal(await phone.page.locator(".bag-row").count(), 2, "the stock outlives the cook");
  await goOnline({ site, phone });
});

test("a bag is moved, used and brought back, and what is past its day says so", async (t) => {
  const { site, phone } = await siteAndPhone(t, { time: EVENING });
  const person = new Person(phone);
  await openApp(phone, site);
  await person.tap(/^Kitchen/);
  await person.packThreeTyped();
  const countRows = () => phone.page.locator(".bag-row").count();
  await person.goTo("Bags");
  assert.equal(await countRows(), 3);

  await phone.page.locator(".bag-row button.row").first().tap();
  await person.tap("Move to the fridge");
  await person.stored(/moved: Fridge/);
  await phone.page.locator(".window", { hasText: /^Eat by / }).waitFor();
  await person.goTo("Bags");
  await person.tap(/was used$/);
  await person.stored(/used$/);
  assert.equal(await countRows(), 2);
  await person.tap("Undo", { exact: true });
  await phone.page.waitForFunction(() => document.querySelectorAll(".bag-row").length === 3);
  await person.tap(/was used$/);
  await person.stored(/used$/);
  await person.tap(/^Bring back/);
  await phone.page.waitForFunction(() => document.querySelectorAll(".bag-row").length === 3);

  const time = Date.parse(EVENING) + 5 * DAYS;
  await phone.kill();
  await phone.switchOn({ time });
  await phone.page.goto(`${site.url}#kitchen`);
  await started(phone.page);
  await phone.page.getByText("Past its day: throw it away").waitFor();
  assert.equal(await countRows(), 3, "nothing is lost");

  const [file] = await Promise.all([
    phone.page.waitForEvent("download"),
    person.tap("Reminders for my calendar"),
  ]);
  assert.match(file.suggestedFilename(), /\.ics$/);
  const calendar = await readFile(await file.path(), "utf8");
  assert.equal(calendar.match(/BEGIN:VEVENT/g).length, 2, "two bags are still to be eaten in time");
  assert.match(calendar, /SUMMARY:Use from the freezer soon: Whole pieces\\, bag \d+\r\n/);
});

test("leftovers typed in keep from the day they were cooked, not from the day they are typed", async (t) => {
  const { site, phone } = await siteAndPhone(t, { time: EVENING });
  const person = new Person(phone);
  await openApp(phone, site);
  await person.tap(/^Kitchen/);
  await person.packThreeTyped("48");
  await person.goTo("Bags");
  await phone.page.locator(".bag-row button.row").first().tap();
  const label = await phone.page.locator(".label p").allInnerTexts();
  assert.match(label.join(), /Cooked .*Jun 10/);
  await person.tap("Move to the fridge");
  await person.stored(/moved: Fridge/);
  // Three to four days in the refrigerator (USDA FSIS, Leftovers and Food Safety): two are spent.
  const by = await phone.page.locator(".window", { hasText: /^Eat by / }).innerText();
  assert.match(by, /Jun 14/);
});

test("labels print on their sheet's page, as many as there are bags", async (t) => {
  const { site, phone } = await siteAndPhone(t, { time: EVENING });
  const person = new Person(phone);
  await openApp(phone, site);
  await person.tap(/^Kitchen/);
  await person.packThreeTyped();
  await person.goTo("Bags");
  await person.tap("Print labels");
  for (const [sheet, size, used, pages] of [
    ["Letter, 30", [215.9, 279.4], "0", 1],
    ["Letter, 10", [215.9, 279.4], "8", 2],
    ["A4, 21", [210, 297], "0", 1],
    ["A4, 14", [210, 297], "12", 2],
  ]) {
    await phone.page.getByText(sheet, { exact: true }).tap();
    await phone.page.getByLabel("Labels used already").fill(used);
    await phone.page.getByLabel("Labels used already").blur();
    await phone.page.waitForFunction((count) => document.querySelectorAll(".paper").length === count, pages);
    assert.equal(await phone.page.locator(".one-label").count(), 3);
    const pdf = await phone.page.pdf({ preferCSSPageSize: true });
    const sizes = pageSizes(pdf);
    assert.equal(sizes.length, pages, `${sheet}: pages`);
    for (const [width, height] of sizes) {
      assert.ok(Math.abs(width - size[0]) < 0.5 && Math.abs(height - size[1]) < 0.5, `${sheet}: ${width} x ${height}`);
    }
    assert.equal(textRuns(pdf), 3 * LINES, `${sheet}: lines of text`);
  }
  await person.picture("labels");
});

test("a rub in parts says how much to mix, and when it is too salty", async (t) => {
  const { site, phone } = await siteAndPhone(t, { time: EVENING });
  const person = new Person(phone);
  await openApp(phone, site);
  await person.tap(/^Kitchen/);
  await person.goTo("Rub");
  await person.tap("Add to the rub");
  await person.stored("Rub saved");
  await phone.page.getByText(/^100% salt by weight/).waitFor();
  await phone.page.getByText(/^The smallest piece gets/).waitFor();
  await phone.page.getByLabel("Ingredient", { exact: true }).selectOption({ label: "Paprika" });
  await phone.page.getByLabel("Parts", { exact: true }).fill("12");
  await person.tap("Add to the rub");
  // 1 teaspoon of fine salt weighs 6 g and one of paprika 2.3 g (kitchen charts): 6 / (6 + 27.6).
  await phone.page.getByText(/^18% salt by weight/).waitFor();
  await phone.page.getByText(/^The smallest piece gets/).waitFor({ state: "detached" });
  await phone.page.getByText("Dry brine", { exact: true }).tap();
  // 4 pieces of 230 g at 1 g on 100 g.
  await phone.page.getByText("Weigh out 9.2 g of salt").waitFor();
  // Chicken sold with a solution holds salt already. 15 % of one that is a twentieth salt (labels of such
  // chicken state 330 to 440 mg of sodium on 4 oz) is 0.75 g on 100 g: 6.9 g of the 9.2 are in.
  await phone.page.getByText("I don't know", { exact: true }).tap();
  await phone.page.getByText("Weigh out 2.3 g of salt").waitFor();
  await phone.page.getByText(/^It may already hold 0.75 g/).waitFor();
  await phone.page.getByText("Yes", { exact: true }).tap();
  await phone.page.getByLabel("Solution added").fill("20");
  await phone.page.getByLabel("Solution added").blur();
  await phone.page.getByText(/^The chicken already holds as much salt/).waitFor();
  await phone.page.getByText("No", { exact: true }).tap();
  await phone.page.getByText("Weigh out 9.2 g of salt").waitFor();
  await person.picture("rub");
});

/** Four breasts cooked, each proved by a reading in two places while on, and pulled. */
async function fourProved(person, phone) {
  await person.tap("New cook");
  await person.setOutAll(FOUR);
  await person.tap("Put all 4 on");
  await person.stored("on");
  await phone.context.clock.fastForward(70 * 60_000);
  for (const piece of [1, 2, 3, 4]) {
    // The thickest takes longest (common practice, no source): as hot as the others so soon, it is doubted.
    if (piece === 4) await phone.context.clock.fastForward(20 * 60_000);
    // The list comes to rest with the forecast.
    await person.nextStep();
    await person.openPiece(piece);
    await person.twoPlaces();
    await person.typeReading("167");
    await person.stored(`Piece ${piece} reads 167`);
    await person.nextStep();
    await person.openPiece(piece);
    await person.tap(`Pull Piece ${piece}`);
    await person.stored(`Piece ${piece} pulled`);
  }
}

/** "48 min" or "1 h 05 min" in minutes. */
function inMinutes(text) {
  const [, hours = "0", minutes] = /^(?:(\d+)\s*h\s*)?(\d+)\s*min$/.exec(text.trim());
  return Number(hours) * 60 + Number(minutes);
}
