// The Chromium engine, as on most Android phones, steered by playwright-core.

import { readFile } from "node:fs/promises";
import { chromium } from "playwright-core";
import { SWITCHES, kill } from "../phone.mjs";

export class ChromiumBrowser {
  name = "Chromium";
  #profile;
  #options;
  #heard;
  #context;

  constructor(profile, options, heard) {
    this.#profile = profile;
    this.#options = options;
    this.#heard = heard;
  }

  async switchOn() {
    const { width, height, locale, first } = this.#options;
    this.#context = await chromium.launchPersistentContext(this.#profile, {
      executablePath: process.env.PULL_ORDER_CHROMIUM ?? "/usr/bin/chromium",
      args: SWITCHES,
      viewport: { width, height },
      locale,
      timezoneId: process.env.TZ,
    });
    for (const content of first) await this.#context.addInitScript({ content });
    this.#context.on("request", (request) => this.#heard({ news: "request", url: request.url() }));
    this.#context.on("console", (message) => this.#heard({ news: "console", text: message.text() }));
    this.#context.on("weberror", (error) => this.#heard({ news: "error", text: String(error.error()) }));
  }

  async newWindow() {
    const page = await this.#context.newPage();
    page.on("download", async (download) => {
      const text = await readFile(await download.path(), "utf8");
      this.#heard({ news: "download", name: download.suggestedFilename(), text });
    });
    return new ChromiumWindow(page);
  }

  async kill() {
    await kill(this.#context);
  }

  async throwAway() {
    await this.#context.close().catch(() => {});
  }
}

class ChromiumWindow {
  #page;

  constructor(page) {
    this.#page = page;
  }

  async go(url) {
    await this.#page.goto(url);
  }

  run(body) {
    return this.#page.evaluate(`(async () => { ${body} })()`).then((text) => text && JSON.parse(text));
  }

  click(x, y) {
    return this.#page.mouse.click(x, y);
  }

  async clearAndType(text) {
    await this.#page.keyboard.press("Control+A");
    await this.#page.keyboard.press("Backspace");
    await this.#page.keyboard.type(text);
  }

  picture() {
    return this.#page.screenshot();
  }

  /** The page printed on paper of this size with printer margins, all in millimetres. */
  pdf({ width, height, margin = 0 }) {
    const mm = (value) => `${value}mm`;
    const sides = Object.fromEntries(["top", "right", "bottom", "left"].map((side) => [side, mm(margin)]));
    return this.#page.pdf({ width: mm(width), height: mm(height), margin: sides });
  }

  async chooseNext(path) {
    this.#page.once("filechooser", (chooser) => chooser.setFiles(path));
  }

  close() {
    return this.#page.close();
  }
}
