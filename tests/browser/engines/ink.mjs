// Where there is ink on a printed page: its PDF drawn by poppler's `pdftoppm`, another program than any browser.

import { execFileSync } from "node:child_process";
import { mkdtempSync, readFileSync, readdirSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";

const DOTS_PER_INCH = 200;
const MM = DOTS_PER_INCH / 25.4;
/** What is darker than this, of 255, is ink. */
const DARK = 128;

/** Whether there is a program here that draws a PDF. */
export function canDraw() {
  try {
    execFileSync("pdftoppm", ["-v"], { stdio: "ignore" });
    return true;
  } catch {
    return false;
  }
}

/** The pages of a PDF, each to be asked where its ink is. */
export function pagesOf(pdf) {
  const folder = mkdtempSync(join(tmpdir(), "ink-"));
  try {
    const file = join(folder, "printed.pdf");
    writeFileSync(file, pdf);
    execFileSync("pdftoppm", ["-gray", "-r", String(DOTS_PER_INCH), file, join(folder, "page")]);
    const pages = readdirSync(folder).filter((name) => name.endsWith(".pgm"));
    return pages.sort().map((name) => new Ink(readFileSync(join(folder, name))));
  } finally {
    rmSync(folder, { recursive: true });
  }
}

class Ink {
  #width;
  #dots;

  /** A picture in Netpbm's grey form: "P5", width, height, 255, then a byte a dot. */
  constructor(bytes) {
    const [head, width, height] = /^P5\s+(\d+)\s+(\d+)\s+255\s/.exec(bytes.subarray(0, 40).toString("latin1"));
    this.#width = Number(width);
    this.height = Number(height) / MM;
    this.width = this.#width / MM;
    this.#dots = bytes.subarray(head.length);
  }

  /** The ink within a box, as its own box, all in millimetres; undefined where there is none. */
  within({ left, top, right, bottom }) {
    const dots = (mm) => Math.max(0, Math.round(mm * MM));
    const lines = Math.min(dots(bottom), this.#dots.length / this.#width);
    const found = { left: Infinity, top: Infinity, right: -Infinity, bottom: -Infinity };
    for (let y = dots(top); y < lines; y += 1) {
      for (let x = dots(left); x < Math.min(dots(right), this.#width); x += 1) {
        if (this.#dots[y * this.#width + x] >= DARK) continue;
        found.left = Math.min(found.left, x / MM);
        found.right = Math.max(found.right, (x + 1) / MM);
        found.top = Math.min(found.top, y / MM);
        found.bottom = Math.max(found.bottom, (y + 1) / MM);
      }
    }
    return found.left === Infinity ? undefined : found;
  }

  /** How many dots are ink. */
  get amount() {
    return this.#dots.reduce((count, dot) => count + (dot < DARK ? 1 : 0), 0);
  }

  /** How many dots within a box are ink. */
  amountWithin({ left, top, right, bottom }) {
    let count = 0;
    for (let y = Math.round(top * MM); y < Math.round(bottom * MM); y += 1) {
      for (let x = Math.round(left * MM); x < Math.round(right * MM); x += 1) {
        if (this.#dots[y * this.#width + x] < DARK) count += 1;
      }
    }
    return count;
  }
}
