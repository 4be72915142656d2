// What can go wrong around a cook that runs: the network, the time zone, the service worker, a new
// version. The cook goes on.

import assert from "node:assert/strict";
import { test } from "node:test";
import { EVENING, FOUR, Person } from "./cook.mjs";
import { keptOffline, openApp, siteAndPhone, started } from "./harness.mjs";
import { look, newerSite } from "./newer-site.mjs";
import { databaseTexts, kinds } from "./stored.mjs";

/** A piece on the pit: two entries. */
async function oneOn(t, options = {}) {
  const { site, phone } = await siteAndPhone(t, options);
  const person = new Person(phone);
  await openApp(phone, site);
  await keptOffline(phone.page);
  await person.tap("New cook");
  await person.setOutAll([FOUR[1]]);
  await person.tap("Put the piece on");
  await person.stored("on");
  return { site, phone, person };
}

async function readPit(person, page, value) {
  await page.evaluate(() => (location.hash = "#pit"));
  await person.typeReading(value);
  await person.stored(`Pit reads ${value}`);
}

test("a network that comes and goes changes nothing", async (t) => {
  const { phone, person } = await oneOn(t);
  for (let reading = 0; reading < 8; reading += 1) {
    await phone.context.setOffline(reading % 2 === 0);
    await readPit(person, phone.page, String(240 + reading));
    if (reading % 3 === 0) {
      await phone.page.reload();
      await started(phone.page);
    }
  }
  const stored = kinds(await databaseTexts(phone.page));
  assert.equal(stored.filter((kind) => kind === "pit_read").length, 8);
});

test("a service worker that the browser threw out comes back, and the cook is whole", async (t) => {
  const { phone, person } = await oneOn(t);
  await phone.page.evaluate(async () => {
    const registration = await navigator.serviceWorker.getRegistration();
    await registration.unregister();
    for (const name of await caches.keys()) await caches.delete(name);
  });
  await readPit(person, phone.page, "250");
  await phone.page.reload();
  await started(phone.page);
  await keptOffline(phone.page);
  assert.equal((await person.logLines()).length, 3);
  await phone.context.setOffline(true);
  await phone.page.reload();
  await started(phone.page);
  assert.equal((await person.logLines()).length, 3);
});

test("another time zone shows other clock times and moves no deadline", async (t) => {
  const { phone, person } = await oneOn(t, { time: EVENING, context: { timezoneId: undefined } });
  const devtools = await phone.context.newCDPSession(phone.page);
  const moveTo = (timezoneId) => devtools.send("Emulation.setTimezoneOverride", { timezoneId });
  await moveTo("America/Chicago");
  const happened = async () =>
    (await databaseTexts(phone.page)).map((text) => JSON.parse(text).happened);
  const before = { log: await person.logLines(), happened: await happened() };
  await person.goTo("Cook");
  const due = await phone.page.locator(".next .count").innerText();
  await moveTo("America/Denver");
  await phone.page.reload();
  await started(phone.page);
  assert.equal(await phone.page.locator(".next .count").innerText(), due);
  const after = { log: await person.logLines(), happened: await happened() };
  assert.deepEqual(after.happened, before.happened);
  assert.match(before.log[0], /4:30/);
  assert.match(after.log[0], /3:30/);
});

test("a new version in the middle of a cook is offered, and taken with nothing lost", async (t) => {
  const { site, phone, person } = await oneOn(t);
  site.folder = await newerSite(t);
  await look(phone.page);
  const offer = phone.page.getByRole("region", { name: /new version/i });
  await offer.waitFor();
  await readPit(person, phone.page, "250");
  assert.equal(await phone.page.title(), "Pull Order", "nothing is forced");
  const reloaded = phone.page.waitForEvent("load");
  await offer.getByRole("button").first().tap();
  await reloaded;
  await started(phone.page);
  assert.equal(await phone.page.title(), "Newer");
  assert.equal((await person.logLines()).length, 3);
});

test("the first visit offers no new version", async (t) => {
  const { phone } = await oneOn(t);
  assert.equal(await phone.page.getByRole("region", { name: /new version/i }).count(), 0);
});
