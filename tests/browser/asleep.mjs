// A phone that lets the page run only now and then, and an ear for what rings.
//
// The page's clock is Playwright's: `fastForward` jumps and lets each timer that came due run once, as
// after a frozen page is thawed; `runFor` lets every timer run in its turn.

const MINUTE = 60_000;

/** Notes each notification of an alarm: its tag and text, when it was due and when it rang. */
export async function listen(phone) {
  const rings = [];
  await phone.context.grantPermissions(["notifications"]);
  await phone.context.exposeBinding("heardByTest", (_, ring) => rings.push(ring));
  await phone.context.addInitScript(() => {
    // An empty page has none.
    if (!window.ServiceWorkerRegistration) return;
    const show = ServiceWorkerRegistration.prototype.showNotification;
    ServiceWorkerRegistration.prototype.showNotification = async function (title, options) {
      const [cook, id] = options.tag.split("/");
      const opening = indexedDB.open("pull-order");
      await new Promise((resolve) => (opening.onsuccess = resolve));
      const marks = opening.result.transaction("alarms").objectStore("alarms");
      const asking = marks.get([Number(cook), id]);
      await new Promise((resolve) => (asking.onsuccess = resolve));
      const { due, rang } = JSON.parse(asking.result);
      opening.result.close();
      const { tag, body } = options;
      await window.heardByTest({ tag, title, body, due: Date.parse(due), rang: Date.parse(rang) });
      return show.call(this, title, options);
    };
  });
  return rings;
}

/** Hides the page or brings it back, as the browser tells it. */
export async function setHidden(page, hidden) {
  await page.evaluate((state) => {
    Object.defineProperty(document, "visibilityState", { value: state, configurable: true });
    Object.defineProperty(document, "hidden", { value: state === "hidden", configurable: true });
    document.dispatchEvent(new Event("visibilitychange", { bubbles: true }));
  }, hidden ? "hidden" : "visible");
}

/** Lets what a timer began end: storage and notifications take real time, however the clock jumps. */
export async function settle(phone) {
  await phone.page.waitForTimeout(150);
}

/** The clock moves this far at a time while timers run: storage must answer in between. */
const STEP = 20_000;

async function runFor(phone, minutes) {
  for (let gone = 0; gone < minutes * MINUTE; gone += STEP) {
    await phone.context.clock.runFor(STEP);
    await settle(phone);
  }
}

/** Ways in which time goes by. Each returns once the page may run again. */
export const WAYS = {
  async inFront({ phone }, minutes) {
    await runFor(phone, minutes);
  },
  async hidden({ phone }, minutes) {
    await setHidden(phone.page, true);
    await runFor(phone, minutes);
    await setHidden(phone.page, false);
  },
  /** Timers run once a minute, as in a page hidden for long. */
  async throttled({ phone }, minutes) {
    await setHidden(phone.page, true);
    for (let minute = 0; minute < minutes; minute += 1) {
      await phone.context.clock.fastForward(MINUTE);
      await settle(phone);
    }
    await setHidden(phone.page, false);
  },
  async frozen({ phone }, minutes) {
    await setHidden(phone.page, true);
    await phone.context.clock.fastForward(minutes * MINUTE);
    await setHidden(phone.page, false);
  },
  /** The page is thrown out of memory and started again later. */
  async discarded({ phone, reopen }, minutes) {
    const { url } = await phone.page.evaluate(() => ({ url: location.href }));
    await phone.page.goto("about:blank");
    await phone.context.clock.fastForward(minutes * MINUTE);
    await reopen(url);
  },
};

/** Lets time go by, in a hurry, until an alarm has rung. */
export async function untilItRings(phone, rings) {
  for (let minute = 0; rings.length === 0; minute += 1) {
    if (minute > 200) throw new Error("nothing ever rang");
    await WAYS.throttled({ phone }, 1);
  }
}

/** Draws numbers from 0 to 1 that look random and are the same each time (mulberry32). */
export function drawing(seed) {
  let state = seed;
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let t = Math.imul(state ^ (state >>> 15), 1 | state);
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
}
