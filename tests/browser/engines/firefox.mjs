// The Firefox engine, steered by puppeteer-core over WebDriver BiDi.

import { mkdir, readFile, readdir } from "node:fs/promises";
import { join } from "node:path";
import puppeteer from "puppeteer-core";

export class FirefoxBrowser {
  name = "Firefox";
  #profile;
  #options;
  #heard;
  #browser;
  #downloads;

  constructor(profile, options, heard) {
    this.#profile = profile;
    this.#options = options;
    this.#heard = heard;
    this.#downloads = join(profile, "downloads");
  }

  async switchOn() {
    const { locale } = this.#options;
    await mkdir(this.#downloads, { recursive: true });
    this.#browser = await puppeteer.launch({
      browser: "firefox",
      executablePath: process.env.PULL_ORDER_FIREFOX ?? "/usr/bin/firefox-esr",
      userDataDir: this.#profile,
      defaultViewport: null,
      handleSIGINT: false,
      env: { ...process.env, LANG: `${locale.replace("-", "_")}.UTF-8`, LC_ALL: "" },
      extraPrefsFirefox: {
        // A phone's scroll bars lie over the page and take no room.
        "ui.useOverlayScrollbars": 1,
        "intl.accept_languages": locale,
        "intl.regional_prefs.use_os_locales": true,
        "browser.download.dir": this.#downloads,
        "browser.download.folderList": 2,
        "browser.download.useDownloadDir": true,
        "browser.download.always_ask_before_handling_new_types": false,
      },
    });
    this.#known = new Set(await readdir(this.#downloads));
  }
  #known;

  async newWindow() {
    const { width, height, first } = this.#options;
    const page = await this.#browser.newPage();
    await page.setViewport({ width, height });
    for (const source of first) await page.evaluateOnNewDocument(source);
    page.on("request", (request) => this.#heard({ news: "request", url: request.url() }));
    page.on("console", (message) => this.#heard({ news: "console", text: message.text() }));
    page.on("pageerror", (error) => this.#heard({ news: "error", text: String(error) }));
    return new FirefoxWindow(page);
  }

  async kill() {
    const process = this.#browser.process();
    const ended = new Promise((resolve) => process.once("exit", resolve));
    process.kill("SIGKILL");
    await ended;
  }

  async throwAway() {
    await this.#browser.close().catch(() => {});
  }

  /** The next finished download that was not asked about before. */
  async downloaded() {
    for (const name of await readdir(this.#downloads)) {
      if (this.#known.has(name) || name.endsWith(".part")) continue;
      const text = await readFile(join(this.#downloads, name), "utf8");
      if (text === "") continue;
      this.#known.add(name);
      return { name, text };
    }
    return undefined;
  }
}

class FirefoxWindow {
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

  async click(x, y) {
    await this.#page.bringToFront();
    await this.#page.mouse.click(x, y);
  }

  async clearAndType(text) {
    await this.#page.keyboard.down("Control");
    await this.#page.keyboard.press("a");
    await this.#page.keyboard.up("Control");
    await this.#page.keyboard.press("Backspace");
    await this.#page.keyboard.type(text);
  }

  async picture() {
    return Buffer.from(await this.#page.screenshot());
  }

  /** The page printed on paper of this size with printer margins, all in millimetres. */
  async pdf({ width, height, margin = 0 }) {
    const mm = (value) => `${value}mm`;
    const sides = Object.fromEntries(["top", "right", "bottom", "left"].map((side) => [side, mm(margin)]));
    return Buffer.from(await this.#page.pdf({ width: mm(width), height: mm(height), margin: sides }));
  }

  /** Asked through BiDi, Firefox first tells the page that nothing was chosen: so no dialog is opened. */
  async chooseNext(path) {
    await this.#page.evaluate(() => {
      const click = HTMLInputElement.prototype.click;
      window.testChooser = new Promise((asked) => {
        HTMLInputElement.prototype.click = function () {
          HTMLInputElement.prototype.click = click;
          asked(this);
        };
      });
    });
    const asked = this.#page.evaluateHandle(() => window.testChooser);
    asked.then((input) => input.uploadFile(path)).catch(() => {});
  }

  close() {
    return this.#page.close();
  }
}
