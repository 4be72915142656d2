// How a person saves and opens files, once for all journeys.

/** Saves the open cook as a file. */
export async function saveFile(page) {
  await page.show("more");
  await page.tap(".more .row", "^Save this cook");
}

/** Opens a cook from the file at `path`. */
export async function openFile(page, path) {
  await page.show("more");
  await page.chooseNext(path);
  await page.tap(".more .row", "^Open a cook");
}
