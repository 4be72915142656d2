// On wish what calls is spoken, by a voice that the phone has itself. The browser here has no voices, so
// a stand-in takes down what it is to say.

import assert from "node:assert/strict";
import { test } from "node:test";
import { WAYS, listen, untilItRings } from "./asleep.mjs";
import { EVENING, Person } from "./cook.mjs";
import { keptOffline, openApp, siteAndPhone, started } from "./harness.mjs";
import { show } from "./look.mjs";

/** Longer than a tune lasts, in milliseconds. */
const AFTER_THE_TUNE = 5_000;

const OWN = { name: "own", lang: "en-US", localService: true };
const FAR = { name: "far", lang: "en-US", localService: false };
const SPANISH = { name: "propia", lang: "es-MX", localService: true };

/** A phone with these voices, and an ear for what rings; `late`: they are found only after a while. */
async function voiced(t, voices, { late = false, context } = {}) {
  const { site, phone } = await siteAndPhone(t, { time: EVENING, context });
  const rings = await listen(phone);
  await phone.context.addInitScript(([voices, late]) => {
    const test = { said: [], hushed: 0, voices, found: !late };
    window.speechOfTest = test;
    const speech = {
      onvoiceschanged: null,
      getVoices: () => (test.found ? test.voices : []),
      // An iPhone wants to have spoken at a tap before it speaks without one: nothing is heard of that.
      speak: ({ text, lang, voice }) => text && test.said.push({ text, lang, voice: voice?.name }),
      cancel: () => (test.hushed += 1),
    };
    Object.defineProperty(window, "speechSynthesis", { value: speech });
    window.SpeechSynthesisUtterance = class {
      constructor(text) {
        this.text = text;
      }
    };
  }, [voices, late]);
  await openApp(phone, site);
  await keptOffline(phone.page);
  return { phone, person: new Person(phone), rings };
}

const said = (phone) => phone.page.evaluate(() => window.speechOfTest.said);
const hushed = (phone) => phone.page.evaluate(() => window.speechOfTest.hushed);

/** Chooses on the alarms' screen whether calls are spoken. */
async function choose(phone, group, option) {
  await show(phone.page, "alarms");
  await phone.page.getByRole("group", { name: group }).getByText(option, { exact: true }).tap();
}

/** Four pieces on, and the clock at the first call that came. */
async function firstCall({ phone, person, rings }, words) {
  await show(phone.page, "start");
  await person.tap(words.newCook);
  for (const place of [0, 1, 2, 3]) {
    await phone.page.getByLabel(words.weight).fill(words.weights[place]);
    await person.tap(words.add);
    await phone.page.getByText(`${words.piece} ${place + 1}`, { exact: true }).waitFor();
  }
  await person.tap(words.allOn);
  await person.nextStep();
  await untilItRings(phone, rings);
  await phone.context.clock.runFor(AFTER_THE_TUNE);
}

const ENGLISH_WORDS = { weights: ["6", "8", "9", "12"], newCook: "New cook", weight: "Weight each", add: /^Add 1 piece/, piece: "Piece", allOn: "Put all 4 on" };
const SPANISH_WORDS = { weights: ["170", "220", "260", "330"], newCook: "Nuevo ahumado", weight: "Peso de cada una", add: /^Agregar 1 pieza/, piece: "Pieza", allOn: /^Poner las 4/ };

test("what calls is spoken once, in the card's words, and no more once it is answered", async (t) => {
  const cook = await voiced(t, [FAR, OWN]);
  const { phone, person, rings } = cook;
  await choose(phone, "Spoken calls", "On");
  await phone.page.reload();
  await started(phone.page);
  await firstCall(cook, ENGLISH_WORDS);
  const { what } = await person.nextStep();
  assert.deepEqual(await said(phone), [{ text: what, lang: "en-US", voice: "own" }]);
  await WAYS.inFront({ phone }, 2);
  await phone.context.clock.runFor(AFTER_THE_TUNE);
  assert.equal((await said(phone)).length, new Set(rings.map(({ tag }) => tag)).size, "each call once");
  const before = await hushed(phone);
  await person.goTo("Log");
  await person.tap("Got it");
  await phone.page.waitForFunction((before) => window.speechOfTest.hushed > before, before);
});

test("unless it is wished for nothing is spoken", async (t) => {
  const cook = await voiced(t, [OWN]);
  await firstCall(cook, ENGLISH_WORDS);
  assert.deepEqual(await said(cook.phone), []);
});

test("in Spanish it is spoken by a Spanish voice", async (t) => {
  const cook = await voiced(t, [OWN, SPANISH], { context: { locale: "es-MX" } });
  const { phone, person } = cook;
  await choose(phone, "Avisos hablados", "Sí");
  await firstCall(cook, SPANISH_WORDS);
  const { what } = await person.nextStep();
  assert.match(what, /[a-z] la/);
  assert.deepEqual(await said(phone), [{ text: what, lang: "es-MX", voice: "propia" }]);
});

test("a phone without a voice of its own says so, and does not speak by another's", async (t) => {
  const cook = await voiced(t, [FAR, SPANISH]);
  const { phone } = cook;
  await show(phone.page, "alarms");
  await phone.page.getByText("no English voice that works offline").waitFor();
  assert.equal(await phone.page.getByRole("group", { name: "Spoken calls" }).count(), 0);
  assert.equal(await phone.page.getByRole("button", { name: "Try the voice" }).count(), 0);
  // It had one when it was chosen, and has none now.
  await phone.page.evaluate(() => localStorage.setItem("prefs", JSON.stringify({ spoken: true })));
  await phone.page.reload();
  await started(phone.page);
  await firstCall(cook, ENGLISH_WORDS);
  assert.deepEqual(await said(phone), []);
});

test("voices that are found late are offered then, and can be tried", async (t) => {
  const { phone, person } = await voiced(t, [OWN], { late: true });
  await show(phone.page, "alarms");
  await phone.page.getByText("no English voice that works offline").waitFor();
  await phone.page.evaluate(() => {
    window.speechOfTest.found = true;
    speechSynthesis.onvoiceschanged(new Event("voiceschanged"));
  });
  await person.tap("Try the voice");
  await phone.context.clock.runFor(100);
  const [{ text }] = await said(phone);
  assert.match(text, /spoken call/);
});
