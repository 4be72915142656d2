// Bad input: a plain message beside the field says what is accepted, and nothing typed is lost.

import assert from "node:assert/strict";
import { test } from "node:test";
import { EVENING, FOUR, Person } from "./cook.mjs";
import { openApp, siteAndPhone } from "./harness.mjs";

async function settingOut(t, context = {}) {
  const { site, phone } = await siteAndPhone(t, { time: EVENING, context });
  const person = new Person(phone);
  await openApp(phone, site);
  await person.tap("New cook");
  return { phone, person };
}

/** What a field says is wrong with it. */
async function complaint(page, label) {
  const field = page.getByLabel(label);
  const ids = (await field.getAttribute("aria-describedby")).split(" ");
  const bad = ids.find((id) => id.endsWith("-bad"));
  assert.equal(await field.getAttribute("aria-invalid"), "true");
  return page.locator(`#${bad}`).innerText();
}

for (const [typed, says] of [
  ["", /Nothing typed yet\. Type a number such as 8\.1/],
  ["half", /not a number.*at most one decimal point or comma/],
  ["-40", /Between 1\.8\soz and 35\.2\soz is accepted/],
  ["0", /Between 1\.8\soz and 35\.2\soz is accepted/],
  ["176", /Between 1\.8\soz and 35\.2\soz is accepted/], // 5 kg
  ["1,234", /can be read two ways/],
  ["1e3", /not a number/],
]) {
  test(`a weight of "${typed}" is refused in plain words, and stays`, async (t) => {
    const { phone, person } = await settingOut(t);
    await person.setOut({ weight: typed, thickest: "1.5" });
    assert.match(await complaint(phone.page, "Weight each"), says);
    assert.equal(await phone.page.getByLabel("Weight each").inputValue(), typed);
    assert.equal(await phone.page.getByLabel("Thickest part").inputValue(), "1.5");
    assert.equal(await phone.page.locator(".set-out-row").count(), 0);
  });
}

test("a decimal comma is read as one", async (t) => {
  const { phone, person } = await settingOut(t);
  await person.setOut({ weight: "8,1", thickest: "1,5" });
  await phone.page.getByText("8.1 oz, 1.5 in thick", { exact: true }).waitFor();
});

test("a breast of 5 kg is refused in grams, too", async (t) => {
  const { phone, person } = await settingOut(t);
  await phone.page.getByText("°C · g · mm").tap();
  await person.setOut({ weight: "5000" });
  assert.match(await complaint(phone.page, "Weight each"), /Between 50\sg and 1000\sg is accepted/);
});

test("a pack's weight is shared out to so many pieces, within what each may weigh", async (t) => {
  const { phone, person } = await settingOut(t);
  await phone.page.getByText("Weigh the pack").tap();
  await person.tap("One more");
  await person.tap("One more");
  const pack = phone.page.getByLabel("Weight of the pack of 3 (lb)");
  await pack.fill("9");
  await person.tap("Add 3 pieces");
  assert.match(await complaint(phone.page, /^Weight of the pack/), /Between 0\.4\slb and 6\.6\slb is accepted/);
  assert.equal(await pack.inputValue(), "9");
  await pack.fill("1.5");
  await person.tap("Add 3 pieces");
  await phone.page.getByText("Piece 3", { exact: true }).waitFor();
  assert.equal(await phone.page.getByText("8 oz", { exact: true }).count(), 3);
});

test("a pit of 999 F is refused, and stays", async (t) => {
  const { phone } = await settingOut(t);
  const pit = phone.page.getByLabel("Pit temp at the grate");
  await pit.fill("999");
  await pit.blur();
  assert.match(
    await complaint(phone.page, "Pit temp at the grate"),
    /Between 180\s°F and 450\s°F is accepted/,
  );
  assert.equal(await pit.inputValue(), "999");
});

test("a dinner in the past is refused, and tomorrow is offered", async (t) => {
  const { phone, person } = await settingOut(t);
  const dinner = phone.page.locator("#dinner");
  await dinner.fill("15:00");
  await dinner.blur();
  await phone.page.getByText("3:00 PM today has passed").waitFor();
  assert.equal(await dinner.inputValue(), "15:00");
  await phone.page.getByText("Tomorrow", { exact: true }).tap();
  await person.stored("Dinner at 3:00");
  await phone.page.getByText("has passed").waitFor({ state: "detached" });
});

test("a reading before the piece is on is refused, and stays", async (t) => {
  const { phone, person } = await settingOut(t);
  await person.setOutAll(FOUR.slice(0, 1));
  await person.goTo("Cook");
  await person.openPiece(1);
  await person.typeReading("147");
  assert.match(await complaint(phone.page, "Reading in"), /Piece 1 is not on the pit yet/);
  assert.equal(await phone.page.getByLabel("Reading in").inputValue(), "147");
});

for (const [typed, says] of [
  ["", /Nothing typed yet/],
  ["999", /Between 28\s°F and 215\s°F is accepted/],
  ["-40", /Between 28\s°F and 215\s°F is accepted/],
  ["hot", /not a number/],
]) {
  test(`a reading of "${typed}" is refused in plain words, and stays`, async (t) => {
    const { phone, person } = await settingOut(t);
    await person.setOutAll(FOUR.slice(0, 1));
    await person.tap("Put the piece on");
    await person.stored("on");
    await person.openPiece(1);
    await phone.page.getByLabel("Reading in").fill(typed);
    await person.tap("Save reading");
    assert.match(await complaint(phone.page, "Reading in"), says);
    assert.equal(await phone.page.getByLabel("Reading in").inputValue(), typed);
  });
}

test("a reading that fits nothing is asked about, and is kept or typed again", async (t) => {
  const { phone, person } = await settingOut(t);
  await person.setOutAll(FOUR.slice(0, 1));
  await person.tap("Put the piece on");
  await person.stored("on");
  await phone.context.clock.fastForward("45:00");
  await person.openPiece(1);
  await person.typeReading("47");
  await phone.page.getByText(/Piece 1: 47\s°F\? The forecast was near 1\d\d\s°F/).waitFor();
  await person.tap("Type it again");
  await phone.page.getByRole("heading", { name: "Piece 1" }).waitFor();
  await person.typeReading("140");
  await person.stored("Piece 1 reads 140");
  assert.equal(await phone.page.getByText("The forecast was near").count(), 0);
});
