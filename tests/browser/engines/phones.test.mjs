// What phones do to a page, by stand-ins that behave as their makers tell: no phone is here to try.

import assert from "node:assert/strict";
import { FOUR, begin, onThePit, setOut, stored, untilStored } from "./cooking.mjs";
import { journey } from "./engines.mjs";
import { saveFile } from "./keeping.mjs";

/** A sheet of apps that is closed again (W3C Web Share: an AbortError). */
const SHARE_CANCELLED = `
  Navigator.prototype.canShare = () => true;
  Navigator.prototype.share = async () => {
    window.shared = (window.shared ?? 0) + 1;
    throw new DOMException("", "AbortError");
  };
`;

journey("a cancelled share downloads nothing", { first: [SHARE_CANCELLED] }, async ({ page }) => {
  await onThePit(page, FOUR.slice(0, 1));
  await page.run(() => {
    window.links = 0;
    const click = HTMLAnchorElement.prototype.click;
    HTMLElement.prototype.click = function (...rest) {
      if (this instanceof HTMLAnchorElement) window.links += 1;
      return click.apply(this, rest);
    };
  });
  await saveFile(page);
  await page.until(() => window.shared === 1);
  await page.show("cook");
  assert.equal(await page.run(() => window.links), 0);
  assert.equal(await page.hasDownload(), false);
});

/** An audio session, and audio that a call has interrupted (W3C Audio Session; Web Audio's "interrupted"). */
const AUDIO = `
  window.heard = [];
  Object.defineProperty(Navigator.prototype, "audioSession", {
    value: { set type(type) { heard.push("session " + type); } },
  });
  const param = () => ({ value: 0, setValueAtTime() {}, linearRampToValueAtTime() {} });
  const node = (more) => ({ connect() {}, ...more });
  window.AudioContext = class {
    state = "suspended";
    currentTime = 0;
    destination = node();
    resume() { heard.push("resume"); this.state = "running"; return Promise.resolve(); }
    suspend() { if (this.state !== "interrupted") this.state = "suspended"; return Promise.resolve(); }
    createGain() { return node({ gain: param() }); }
    createOscillator() {
      return node({ frequency: param(), start() { heard.push("note"); }, stop() {} });
    }
    constructor() { window.audio = this; }
  };
`;

journey("the sound is asked for as music is, and a tap brings interrupted sound back", { first: [AUDIO] }, async ({ page }) => {
  await onThePit(page, FOUR.slice(0, 1));
  await page.show("alarms");
  await page.tap(".alarms-here .main-action");
  await page.until(() => heard.includes("note"));
  const heard = await page.run(() => heard);
  assert.ok(heard.includes("session playback"), String(heard));
  assert.ok(heard.indexOf("session playback") < heard.indexOf("note"), "before the sound");

  await page.run(() => {
    heard.length = 0;
    audio.state = "interrupted";
  });
  await page.tap("h1");
  await page.until(() => heard.includes("resume") && audio.state !== "interrupted");
});

journey("a wheel that turns through twenty times sets one", {}, async ({ page }) => {
  await page.go();
  await begin(page);
  await setOut(page, FOUR.slice(0, 1));
  const turn = (leave) =>
    page.run((leave) => {
      const field = document.querySelector("#dinner");
      field.focus();
      for (let minute = 20; minute < 40; minute += 1) {
        field.value = `${leave ? 18 : 19}:${minute}`;
        field.dispatchEvent(new Event("input", { bubbles: true }));
        field.dispatchEvent(new Event("change", { bubbles: true }));
      }
      if (leave) field.blur();
    }, leave);
  await turn(true);
  await untilStored(page, "dinner_set", 1);
  // Left turning, it counts when it has stood still, and when the screen is left.
  await turn(false);
  await untilStored(page, "dinner_set", 2);
  await page.show("settings");
  assert.equal((await stored(page, "dinner_set")).length, 2);
});

/** A browser whose notifications have no buttons, as on an iPhone. */
const NO_BUTTONS = `
  window.Notification = class { static permission = "default"; static requestPermission() {} };
`;
const BUTTONS = `
  window.Notification = class { static permission = "default"; static maxActions = 2; };
`;

journey("no text promises buttons that notifications do not have", { first: [NO_BUTTONS] }, async ({ page }) => {
  await page.go("alarms");
  await page.see(".alarms-here .second-action");
  assert.doesNotMatch(await page.text("main"), /snooze/i);
});

journey("where notifications have buttons, they are told", { first: [BUTTONS] }, async ({ page }) => {
  await page.go("alarms");
  await page.see(".alarms-here .second-action");
  assert.match(await page.text("main"), /snooze/i);
});
