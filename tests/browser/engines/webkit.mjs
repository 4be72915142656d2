// The WebKit engine, as on every iPhone: GTK's own view on a screen that nobody sees.

import { spawn } from "node:child_process";
import { once } from "node:events";
import { mkdir, readFile } from "node:fs/promises";
import { join } from "node:path";
import { createInterface } from "node:readline";
import { fileURLToPath } from "node:url";

const PROGRAM = fileURLToPath(new URL("webkit.py", import.meta.url));
/** X's names of keys that are not their own. */
const KEYS = { ".": "period", ",": "comma", " ": "space", "-": "minus", ":": "colon" };

export class WebKitBrowser {
  name = "WebKit";
  #profile;
  #options;
  #heard;
  #screen;
  #display;
  #process;
  #waiting = new Map();
  #asked = 0;

  constructor(profile, options, heard) {
    this.#profile = profile;
    this.#options = options;
    this.#heard = heard;
  }

  async switchOn() {
    this.#display ??= await this.#newScreen();
    const downloads = join(this.#profile, "downloads");
    await mkdir(downloads, { recursive: true });
    const { origin, locale, first } = this.#options;
    const start = { profile: this.#profile, downloads, origin, locale, first };
    const [language] = locale.replace("-", "_").split(".");
    this.#process = spawn("dbus-run-session", ["--", process.env.PULL_ORDER_WEBKIT ?? "/usr/bin/python3", PROGRAM, JSON.stringify(start)], {
      // A group of its own, so that a kill takes all its processes at once.
      detached: true,
      stdio: ["pipe", "pipe", "pipe", "pipe"],
      env: {
        ...process.env,
        DISPLAY: this.#display,
        // Without a language of its own it takes "C", in which dates are written as in no country.
        LANG: `${language}.UTF-8`,
        LC_ALL: "",
        GDK_BACKEND: "x11",
        GTK_OVERLAY_SCROLLING: "1",
        NO_AT_BRIDGE: "1",
        WEBKIT_DISABLE_COMPOSITING_MODE: "1",
        WEBKIT_DISABLE_DMABUF_RENDERER: "1",
      },
    });
    createInterface(this.#process.stdout).on("line", (line) => this.#heard({ news: "console", text: line }));
    this.#process.stderr.on("data", (text) => process.env.PULL_ORDER_LOUD && process.stderr.write(text));
    const ready = new Promise((resolve) => this.#waiting.set("ready", { resolve }));
    createInterface(this.#process.stdio[3]).on("line", (line) => this.#read(JSON.parse(line)));
    this.#process.once("exit", () => {
      for (const { reject } of this.#waiting.values()) reject?.(new Error("the browser has ended"));
      this.#waiting.clear();
    });
    await ready;
  }

  async newWindow() {
    const { width, height } = this.#options;
    return new WebKitWindow(this, await this.ask("window", { width, height }));
  }

  /** Asks for something; resolves to the answer. */
  ask(what, more = {}) {
    const id = (this.#asked += 1);
    return new Promise((resolve, reject) => {
      this.#waiting.set(id, { resolve, reject });
      this.#process.stdin.write(`${JSON.stringify({ id, ask: what, ...more })}\n`);
    });
  }

  /** Where a file may lie until the profile is thrown away. */
  path(name) {
    return join(this.#profile, name);
  }

  async kill() {
    const ended = once(this.#process, "exit");
    process.kill(-this.#process.pid, "SIGKILL");
    await ended;
  }

  /** Kills the process that has network and storage; the pages live on. */
  async killStorageProcess() {
    return this.ask("kill", { name: "WebKitNetwork" });
  }

  async switchOff() {
    if (this.#process.exitCode === null && this.#process.signalCode === null) {
      const ended = once(this.#process, "exit");
      this.#process.stdin.end();
      await ended;
    }
  }

  async throwAway() {
    await this.kill().catch(() => {});
    this.#screen?.kill();
  }

  async #newScreen() {
    this.#screen = spawn("Xvfb", ["-displayfd", "3", "-screen", "0", "2400x1400x24", "-nolisten", "tcp"], {
      stdio: ["ignore", "ignore", "ignore", "pipe"],
    });
    const [number] = await once(createInterface(this.#screen.stdio[3]), "line");
    return `:${number}`;
  }

  #read(message) {
    if (message.news === "ready") {
      this.#waiting.get("ready").resolve();
      this.#waiting.delete("ready");
    } else if (message.news) {
      this.#heard(message);
    } else {
      const { resolve, reject } = this.#waiting.get(message.id);
      this.#waiting.delete(message.id);
      if (message.error) reject(new Error(message.error));
      else resolve(message.answer);
    }
  }
}

class WebKitWindow {
  #browser;
  #window;

  constructor(browser, window) {
    this.#browser = browser;
    this.#window = window;
  }

  #ask(what, more) {
    return this.#browser.ask(what, { window: this.#window, ...more });
  }

  go(url) {
    return this.#ask("go", { url });
  }

  run(body) {
    return this.#ask("run", { body });
  }

  click(x, y) {
    return this.#ask("click", { x, y });
  }

  async clearAndType(text) {
    const keys = [...text].map((key) => KEYS[key] ?? key);
    await this.#ask("keys", { keys: ["ctrl+a", "BackSpace", ...keys] });
  }

  async picture() {
    return readFile(await this.#ask("picture", { path: this.#browser.path("picture.png") }));
  }

  /** The page printed on paper of this size with printer margins, all in millimetres. */
  async pdf({ width, height, margin = 0 }) {
    const path = this.#browser.path("printed.pdf");
    return readFile(await this.#ask("pdf", { path, width, height, margin }));
  }

  chooseNext(path) {
    return this.#ask("choose", { path });
  }

  close() {
    return this.#ask("close", {});
  }
}
