// What a person does with bags, once for all journeys.

/** Types in so many cooked pieces of no cook here and packs each in a bag of its own for the freezer. */
export async function packTyped(page, count) {
  await page.show("portions");
  await page.tap(".portions .second-action", "^Type in");
  await page.type("#cooked-count", String(count));
  await page.type("#cooked-weight", "6.4");
  await page.type("#cooked-hours", "1");
  await page.tap("button", "^Add cooked");
  // Dinner's share is not wanted: all goes into bags.
  await page.tap(".lot .top button", "Dinner$");
  await page.tap(".lot button", "^Remove");
  await page.tap("button", `^Pack ${count} bags`);
  await page.see(".last-done [role=status]", `^${count} bags`);
}

/** Chooses a sheet of labels and how many of it are used already. */
export async function chooseSheet(page, sheet, used) {
  await page.tap(".labels .choice label", `^${sheet}`);
  await page.type("#labels-gone", String(used));
}
