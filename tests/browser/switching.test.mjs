// Another cook beside one that is under way: it is asked first, and both ring.

import assert from "node:assert/strict";
import { test } from "node:test";
import { allOn, cookWith } from "./begun.mjs";
import { FOUR } from "./cook.mjs";
import { started } from "./harness.mjs";
import { DOCK, dockHeight } from "./look.mjs";

/** A cook with one piece on the pit and one resting. */
async function underWay(t) {
  const { site, phone, person } = await allOn(t, FOUR.slice(0, 2));
  await phone.context.clock.fastForward("05:00");
  await person.openPiece(2);
  await person.tap("Pull Piece 2");
  await person.stored("Piece 2 pulled");
  return { site, phone, person };
}

test("a new cook asks while meat is on the pit or rests, and names it", async (t) => {
  const { phone, person } = await underWay(t);
  await person.goTo("More");
  await person.tap("New cook");
  const question = phone.page.locator(".question");
  await question.getByText("On the pit: Piece 1").waitFor();
  await question.getByText("Resting: Piece 2").waitFor();
  await person.tap("Stay with this cook");
  await question.waitFor({ state: "detached" });
  await person.goTo("Cook");
  assert.equal(await phone.page.locator(".piece").count(), 2);
  await person.goTo("More");
  await person.tap("New cook");
  await person.tap("Start a new cook");
  await phone.page.getByRole("heading", { name: "Pieces and dinner", exact: true }).waitFor();
  assert.equal(await phone.page.getByText(/^Piece \d$/).count(), 0);
});

test("nothing is asked where nothing is on", async (t) => {
  const { phone, person } = await cookWith(t, FOUR.slice(0, 1));
  await person.goTo("More");
  await person.tap("New cook");
  await phone.page.getByRole("heading", { name: "Pieces and dinner", exact: true }).waitFor();
  assert.equal(await phone.page.locator(".question").count(), 0);
});

test("an alarm of the cook left behind rings, says of which, after a reload too, and leads there", async (t) => {
  const { phone, person } = await underWay(t);
  await person.goTo("More");
  await person.tap("New cook");
  await person.tap("Start a new cook");
  await person.setOutAll(FOUR.slice(2, 3));
  await phone.page.reload();
  await started(phone.page);
  const bar = phone.page.locator(".alarm.elsewhere");
  assert.equal(await bar.count(), 0);
  for (let minute = 0; minute < 90 && !(await bar.isVisible()); minute += 1) {
    await phone.context.clock.fastForward("01:00");
  }
  await bar.filter({ hasText: /Cook of 4:3\d.*: .*Piece/ }).waitFor();
  assert.ok((await dockHeight(phone.page)) <= DOCK, "beside the button to put on");
  await person.goTo("Cook");
  await person.nextStep();
  assert.ok((await dockHeight(phone.page)) <= DOCK, "beside the card's button");
  assert.equal(await phone.page.locator(".dock .main-action").count(), 1);
  await bar.locator(".open-alarm").tap();
  await phone.page.locator(".piece.on", { hasText: "Piece 1" }).waitFor();
});
