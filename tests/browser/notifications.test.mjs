// What the service worker does with a tapped notification. The tap itself cannot be made from outside
// the browser, so the event is given to the worker as the browser would give it.

import assert from "node:assert/strict";
import { test } from "node:test";
import { keptOffline, openApp, siteAndPhone } from "./harness.mjs";

const EXPECTED = { type: "notification", action: "snooze", data: "check 3" };

test("a page that is open is told which notification was tapped, and how", async (t) => {
  const { worker, phone } = await shown(t);
  const heard = nextMessage(phone.page);
  await tap(worker);
  assert.deepEqual(await heard, EXPECTED);
  const left = await worker.evaluate(async () => (await registration.getNotifications()).length);
  assert.equal(left, 0, "a tapped notification is taken away");
});

test("a page opened after the tap asks for it and is told once", async (t) => {
  const { worker, phone, site } = await shown(t);
  await phone.page.goto("about:blank");
  await tap(worker);
  // A page of the site without the app, which would ask before the test can listen.
  await phone.page.goto(`${site.url}icons/icon.svg`);
  const heard = nextMessage(phone.page);
  await ready(phone.page);
  assert.deepEqual(await heard, EXPECTED);
  const again = nextMessage(phone.page, 500);
  await ready(phone.page);
  assert.equal(await again, undefined);
});

/** The app open, kept offline, and one notification shown by its service worker. */
async function shown(t) {
  const { site, phone } = await siteAndPhone(t);
  await phone.context.grantPermissions(["notifications"]);
  await openApp(phone, site);
  await keptOffline(phone.page);
  const [worker] = phone.context.serviceWorkers();
  await worker.evaluate((data) => registration.showNotification("Check piece 3", { data }), "check 3");
  return { site, phone, worker };
}

/** Gives the worker the event of a tap on the notification's snooze button. */
function tap(worker) {
  return worker.evaluate(async () => {
    const [notification] = await registration.getNotifications();
    dispatchEvent(new NotificationEvent("notificationclick", { notification, action: "snooze" }));
  });
}

/** The next message of the service worker to the page; nothing after `patience` milliseconds. */
function nextMessage(page, patience = 10_000) {
  return page.evaluate(
    (limit) =>
      new Promise((resolve) => {
        navigator.serviceWorker.addEventListener("message", ({ data }) => resolve(data), {
          once: true,
        });
        setTimeout(resolve, limit);
      }),
    patience,
  );
}

function ready(page) {
  return page.evaluate(() => {
    navigator.serviceWorker.startMessages();
    navigator.serviceWorker.controller.postMessage("ready");
  });
}
