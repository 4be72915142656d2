// The live screen on the smallest phone: what is to be done and three pieces are in sight at once, and
// nothing on it says other than what stands beside it.

import assert from "node:assert/strict";
import { test } from "node:test";
import { allOn, cookWith } from "./begun.mjs";
import { FOUR } from "./cook.mjs";
import { DOCK, dockHeight, show } from "./look.mjs";

/** Four breasts on the pit, with no dinner time. */
async function fourOn(t) {
  const { phone, person } = await allOn(t, FOUR);
  await person.nextStep();
  return { phone, person, clock: phone.context.clock };
}

/** What of the live screen is in sight without scrolling. */
function inSight(page) {
  return page.evaluate(() => {
    scrollTo(0, 0);
    const box = (selector) => document.querySelector(selector).getBoundingClientRect();
    const dock = box(".dock");
    const whole = (one) => one.top >= 0 && one.bottom <= dock.top;
    const rows = [...document.querySelectorAll(".piece.on")].map((row) => row.getBoundingClientRect());
    return {
      card: whole(box(".next")),
      rows: rows.filter(whole).length,
      end: Math.round(dock.bottom) <= innerHeight,
    };
  });
}

async function allInSight(person, moment) {
  await person.nextStep();
  const seen = await inSight(person.page);
  assert.ok(seen.card, `${moment}: the card is in sight`);
  assert.ok(seen.rows >= 3, `${moment}: ${seen.rows} rows are in sight`);
  const dock = await dockHeight(person.page);
  assert.ok(dock <= DOCK, `${moment}: the dock is ${dock} px high`);
  assert.ok(seen.end, `${moment}: the dock is in sight`);
}

test("the card and three pieces are in sight at once, at every stage of a cook of four", async (t) => {
  const { phone, person, clock } = await fourOn(t);
  await allInSight(person, "just put on");
  await clock.fastForward("31:00");
  await person.page.locator(".next.due", { hasText: "Check the pit" }).waitFor();
  await allInSight(person, "the pit is to be read");
  await person.tap("Type the pit temp");
  await person.typeReading("251");
  await allInSight(person, "the pit was read");
  await clock.fastForward("17:00");
  await person.page.locator(".next.due", { hasText: "Check Piece" }).waitFor();
  await allInSight(person, "pieces are to be checked");
  await person.tap(/^Lid up/);
  await person.typeReading("151");
  await show(person.page, "cook");
  await person.stored("reads 151");
  await allInSight(person, "one was read");
  await person.goTo("More");
  await person.goTo("Cook");
  await allInSight(person, "back from elsewhere");
  await person.picture("live");
});

test("where pieces are added the dock is no higher, with what to undo and with what calls", async (t) => {
  const { phone, person } = await cookWith(t, FOUR);
  const { page } = phone;
  assert.ok((await dockHeight(page)) <= DOCK, "just added");
  await page.locator("#dinner").fill("19:00");
  await page.locator("#dinner").blur();
  await person.stored("Dinner");
  await page.locator(".dock .put-on.second-action").waitFor();
  assert.ok((await dockHeight(page)) <= DOCK, "the plan and put-on stand there");
  await phone.context.clock.fastForward("01:30:00");
  await page.locator(".dock .alarm").getByRole("button", { name: "Got it" }).waitFor();
  assert.ok((await dockHeight(page)) <= DOCK, "something calls");
});

test("a piece is pulled at one temperature, on its row, its number pad and its curve", async (t) => {
  const { phone, person, clock } = await fourOn(t);
  for (const minutes of [0, 25, 12]) {
    await clock.fastForward(minutes * 60_000);
    await show(phone.page, "cook");
    await person.nextStep();
    for (const piece of [1, 2, 3, 4]) {
      await show(phone.page, "cook");
      const row = phone.page.locator(".piece.on", { hasText: `Piece ${piece}` });
      const window = await row.locator(".window").innerText();
      const told = /pull at (\d+)/i.exec(window);
      if (!told) continue;
      await show(phone.page, `piece-${piece}`);
      const pad = await phone.page.locator(".about").first().innerText();
      assert.equal(/Pull at (\d+)/.exec(pad)[1], told[1]);
      const curve = await phone.page.locator(".curve figcaption, figure figcaption").last().innerText();
      assert.equal(/At (\d+)\s°F likely/.exec(curve)[1], told[1]);
      assert.equal(/Forecast (\d+)/.exec(curve)[1], /Forecast (\d+)/.exec(pad)[1], "one core, too");
    }
  }
});

test("with no dinner time nothing is done for dinner, and what rang is named as the card names it", async (t) => {
  const { phone, person, clock } = await fourOn(t);
  const { page } = phone;
  // Wood and charcoal: fed every 45 minutes (the app's own default, which the cook can change).
  await clock.fastForward("31:00");
  await page.locator(".next.due", { hasText: "Check the pit" }).waitFor();
  await clock.fastForward("15:00");
  await page.locator(".next.due").waitFor();
  for (let minute = 0; minute < 6; minute += 1) {
    await clock.fastForward("01:00");
    await person.nextStep();
    const text = await page.locator(".screen.live").innerText();
    assert.doesNotMatch(text, /dinner is on time/i);
    const calls = await page.locator(".dock .calls strong").allInnerTexts();
    const card = await page.locator(".next").innerText();
    for (const call of calls) assert.ok(!card.includes(call), `${call} stands twice`);
  }
  // Elsewhere the call stands in the dock, in the words that the card has for it in its turn.
  await person.goTo("Log");
  const call = await page.locator(".dock .open-alarm strong").innerText();
  assert.equal(call, "Feed the fire");
  await person.goTo("Cook");
  for (let step = 0; step < 10 && (await person.nextStep()).what !== call; step += 1) {
    await page.locator(".dock .main-action").tap();
    await page.locator(".keys").waitFor();
    // Whatever is asked for is read as it was forecast, so that nothing more is asked.
    const about = (await page.locator(".about").allInnerTexts()).join(" ");
    await person.typeReading(/(?:Forecast|Set to) (\d+)/.exec(about)[1]);
    await show(page, "cook");
    await person.stored("reads");
  }
  assert.equal((await person.nextStep()).what, call);
  await page.locator(".next .why", { hasText: /^So the pit holds 250/ }).waitFor();
});

test("what calls and what was done last share one row on every screen", async (t) => {
  const { phone, person, clock } = await fourOn(t);
  const { page } = phone;
  await clock.fastForward("46:00");
  await page.locator(".next.due").waitFor();
  await show(page, "pit");
  await person.typeReading("251");
  await show(page, "cook");
  await person.stored("Pit reads 251");
  for (const screen of ["rest", "log", "more", "plan", "habits", "curves", "set-out", "kitchen", "rub"]) {
    await show(page, screen);
    await page.locator(".dock .open-alarm").waitFor();
    const high = await page.evaluate(() => {
      const top = (selector) => document.querySelector(selector).getBoundingClientRect().top;
      return top(".dock .tabs") - top(".dock");
    });
    assert.ok(high <= DOCK, `${screen}: the dock is ${high} px high`);
    await page.getByRole("button", { name: "Got it" }).first().waitFor();
  }
});

test("nothing is next to come off once all is off", async (t) => {
  const { phone, person } = await fourOn(t);
  await phone.context.clock.fastForward("40:00");
  await show(phone.page, "curves");
  await phone.page.getByText("· next").waitFor();
  assert.equal(await phone.page.getByText("· next").count(), 1);
  for (const piece of [1, 2, 3, 4]) {
    await show(phone.page, `piece-${piece}`);
    await person.tap(`Pull Piece ${piece}`);
    await person.stored(`Piece ${piece} pulled`);
  }
  await show(phone.page, "curves");
  await phone.page.locator(".curves .card").nth(3).waitFor();
  assert.equal(await phone.page.getByText("· next").count(), 0);
});

test("an earlier cook is a card that tells its pieces and how they stand", async (t) => {
  const { phone, person } = await fourOn(t);
  await show(phone.page, "piece-1");
  await person.tap("Pull Piece 1");
  await person.stored("Piece 1 pulled");
  await show(phone.page, "start");
  const card = phone.page.locator(".cook-card");
  await card.filter({ hasText: "4 pieces: 3 on the pit, 1 off the pit" }).waitFor();
  assert.match(await card.innerText(), /^Cook of /);
});
