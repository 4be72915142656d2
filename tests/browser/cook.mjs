// What a person does in the app, in the words of the screens. Everything is found the way a person
// (or a screen reader) finds it: by role and name.

import { mkdir } from "node:fs/promises";
import { fileURLToPath } from "node:url";

const PICTURES = fileURLToPath(new URL("pictures/", import.meta.url));

/** Our own scenario: a weeknight with four breasts of different sizes. */
export const FOUR = [
  { weight: "6.2", thickest: "1.2" },
  { weight: "8.1", thickest: "1.45" },
  { weight: "9.4", thickest: "1.6" },
  { weight: "12", thickest: "1.9" },
];

/** When the weeknight begins. */
export const EVENING = "2026-06-12T16:30:00-05:00";

export class Person {
  /** How often the screen was touched. */
  taps = 0;

  constructor(phone) {
    this.phone = phone;
  }

  get page() {
    return this.phone.page;
  }

  button(name, options = {}) {
    return this.page.getByRole("button", { name, ...options });
  }

  async tap(name, options) {
    await this.button(name, options).first().tap();
    this.taps += 1;
  }

  /** Goes to one of the parts in the bar at the bottom. */
  async goTo(part) {
    await this.page.getByRole("navigation").getByRole("button", { name: part, exact: true }).tap();
    this.taps += 1;
  }

  /** Opens the number pad of a piece from its row. */
  async openPiece(number) {
    await this.page.locator(".piece .open", { hasText: `Piece ${number}` }).tap();
    this.taps += 1;
    await this.page.getByRole("heading", { name: `Piece ${number}`, exact: true }).waitFor();
  }

  async setOut({ weight, thickest = "" }) {
    await this.page.getByLabel("Weight each").fill(weight);
    await this.page.getByLabel("Thickest part").fill(thickest);
    await this.tap(/^Add \d+ piece/);
  }

  /** Sets out these pieces and waits until each is stored and shown. */
  async setOutAll(pieces) {
    for (const [place, piece] of pieces.entries()) {
      await this.setOut(piece);
      await this.page.getByText(`Piece ${place + 1}`, { exact: true }).waitFor();
    }
  }

  /** Types a reading on the number pad that is open: its digits, and "Store" where it needs it. */
  async typeReading(text) {
    for (const key of text) await this.tap(key === "." ? "Decimal point" : key, { exact: true });
    if (!/^\d{3}$/.test(text)) await this.tap("Save reading");
  }

  /** Says on the open number pad that the lowest of two places is typed, unless it says so already. */
  async twoPlaces() {
    const two = this.button("Lowest of two");
    if ((await two.getAttribute("aria-pressed")) === "false") await this.tap("Lowest of two");
  }

  /** What the card says once the forecast is fresh: what to do, and whether it is due. */
  async nextStep() {
    const card = this.page.locator(".next[aria-busy=false]");
    const what = await card.getByRole("heading").innerText();
    const due = await card.evaluate((element) => element.classList.contains("due"));
    return { what, due };
  }

  /** Types in three cooked pieces of no cook here, so many hours off the heat, and packs each for the freezer. */
  async packThreeTyped(hours = "1") {
    await this.goTo("Portions");
    await this.tap("Type in cooked pieces");
    await this.page.getByLabel("How many").fill("3");
    await this.page.getByLabel("Cooked weight each").fill("6.4");
    await this.page.locator("#cooked-hours").fill(hours);
    await this.tap("Add cooked pieces");
    await this.page.getByText(/^3 pieces/).waitFor();
    await this.tap("Change Dinner");
    await this.tap("Remove this meal");
    await this.tap("Pack 3 bags");
    await this.stored("3 bags packed");
  }

  /** Waits until the last tap is stored and its undo is offered. */
  async stored(words) {
    await this.page.locator(".last-done").getByRole("status").filter({ hasText: words }).waitFor();
  }

  /** Every line of the cook's log, as shown. */
  async logLines() {
    await this.goTo("Log");
    await this.page.getByRole("heading", { name: "Cook log" }).waitFor();
    return this.page.locator(".entries li").allInnerTexts();
  }

  /** Opens an entry of the log that is shown, to undo or correct it. */
  async openEntry(words) {
    await this.page.locator("button.entry", { hasText: words }).first().tap();
    this.taps += 1;
  }

  /** Opens the line of a piece on the rest's screen, if it is not open yet. */
  async openResting(number) {
    const piece = this.page.locator(".rest-piece", { hasText: `Piece ${number}` });
    if (await piece.evaluate((element) => element.open)) return;
    await piece.locator("summary").tap();
    this.taps += 1;
  }

  /** Keeps a picture of the screen for the README, if asked to. */
  async picture(name) {
    if (!process.env.PULL_ORDER_PICTURES) return;
    await mkdir(PICTURES, { recursive: true });
    await this.page.screenshot({ path: `${PICTURES}${name}.png` });
  }
}

/**
 * The core of a breast in degrees Fahrenheit, minutes after it went on: a plain curve towards what
 * a moist surface lets it reach, of no model of ours. `slow` is the time constant in minutes.
 */
export function coreOnThePit(minutes, slow) {
  const lag = Math.max(0, minutes - 6);
  return 195 - (195 - 38) * Math.exp(-lag / slow);
}
