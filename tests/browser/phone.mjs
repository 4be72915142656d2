// A phone for the tests: the real Chromium at phone size, with touch and an own empty profile.

import { mkdtemp, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { chromium } from "playwright-core";

const SCREEN = {
  viewport: { width: 360, height: 640 },
  deviceScaleFactor: 3,
  isMobile: true,
  hasTouch: true,
};

/** Chromium's command line, wherever it runs here. */
export const SWITCHES = [
  "--no-sandbox",
  "--disable-gpu",
  "--disable-quic",
  "--no-first-run",
  "--disable-background-networking",
  "--disable-component-update",
  "--disable-sync",
];

export class Phone {
  /** Playwright's context and its first page. */
  context;
  page;
  /** Every request that left for another origin than the site's. */
  foreign = [];
  /** What the pages complained of: uncaught errors and breaches of the security policy. */
  problems = [];

  #profile;
  #options;
  #switches;
  #origin;

  /**
   * A phone with a new, empty profile.
   * `origin`: the site's; requests elsewhere are noted.
   * `time`: a Date or its text; the pages' clock starts there, and `context.clock` moves it.
   * `context`: more options for the browser's context (a locale, a time zone, another viewport).
   * `switches`: more switches for the browser's command line.
   */
  static async unpack({ origin, time, context = {}, switches = [] }) {
    const phone = new Phone();
    phone.#switches = [...SWITCHES, ...switches];
    phone.#profile = await mkdtemp(join(tmpdir(), "phone-"));
    phone.#options = { ...SCREEN, locale: "en-US", timezoneId: "America/Chicago", ...context };
    phone.#origin = new URL(origin).origin;
    await phone.switchOn({ time });
    return phone;
  }

  /** Starts the browser on the phone's profile: at first, or again after `switchOff` or `kill`. */
  async switchOn({ time } = {}) {
    this.context = await chromium.launchPersistentContext(this.#profile, {
      executablePath: process.env.PULL_ORDER_CHROMIUM ?? "/usr/bin/chromium",
      args: this.#switches,
      ...this.#options,
    });
    this.context.on("request", (request) => this.#note(request.url()));
    this.context.on("weberror", (error) => this.problems.push(String(error.error())));
    this.context.on("console", (message) => {
      if (/Content Security Policy/.test(message.text())) this.problems.push(message.text());
    });
    if (time !== undefined) await this.context.clock.install({ time });
    this.page = this.context.pages()[0] ?? (await this.context.newPage());
  }

  /** Ends the browser in good order. The profile stays. */
  async switchOff() {
    await this.context.close();
  }

  /** Ends the browser's process without warning, as a phone short of memory does. */
  async kill() {
    await kill(this.context);
  }

  /** Ends the browser and throws the profile away. */
  async throwAway() {
    await this.context.close().catch(() => {});
    await rm(this.#profile, { recursive: true, force: true, maxRetries: 5 });
  }

  #note(url) {
    const { protocol, origin } = new URL(url);
    if (protocol.startsWith("http") && origin !== this.#origin) this.foreign.push(url);
  }
}

/** Ends a Chromium's process without warning, and waits until it is gone. */
export async function kill(context) {
  const devtools = await context.browser().newBrowserCDPSession();
  const { processInfo } = await devtools.send("SystemInfo.getProcessInfo");
  const closed = new Promise((resolve) => context.once("close", resolve));
  process.kill(processInfo.find((process) => process.type === "browser").id, "SIGKILL");
  await closed;
}
