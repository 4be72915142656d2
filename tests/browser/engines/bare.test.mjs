// A browser that has none of what phones may lack: no notifications, no vibration, no screen kept on, no
// sound, no sharing. The cook goes on, and the trial of alarms says what there is not.

import assert from "node:assert/strict";
import { FOUR, onThePit, readPiece } from "./cooking.mjs";
import { journey } from "./engines.mjs";

const LACK = `
  for (const name of ["Notification", "AudioContext", "webkitAudioContext", "BroadcastChannel"]) delete window[name];
  for (const name of ["wakeLock", "vibrate", "canShare", "share", "setAppBadge", "clearAppBadge", "audioSession"]) {
    delete Navigator.prototype[name];
  }
`;

journey("a cook goes on where the phone lacks all that alarms are made of", { first: [LACK] }, async ({ page }) => {
  await onThePit(page, FOUR.slice(0, 1));
  await page.pass(30);
  await readPiece(page, 1, "121");
  await page.show("alarms");
  await page.tap(".alarms-here .main-action");
  await page.untilCount(".report li", 6);
  const works = await page.run(() => [...document.querySelectorAll(".report li.works")].length);
  assert.ok(works <= 1, "nothing works here but, at most, that the browser keeps what is stored");
});
