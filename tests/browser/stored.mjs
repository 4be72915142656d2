// What the phone has stored, looked at and damaged from outside the app.

/** The entries of all cooks in the database, as the texts they are stored as. */
export function databaseTexts(page) {
  return page.evaluate(async () => {
    const wanted = (request) =>
      new Promise((resolve, reject) => {
        request.onsuccess = () => resolve(request.result);
        request.onerror = () => reject(request.error);
      });
    const database = await wanted(indexedDB.open("pull-order"));
    if (![...database.objectStoreNames].includes("log")) {
      database.close();
      return [];
    }
    const texts = await wanted(database.transaction("log").objectStore("log").getAll());
    database.close();
    return texts;
  });
}

/** Changes each text in the database by `change`, the source of a function; undefined removes it. */
export function changeDatabase(page, change) {
  return page.evaluate(async (source) => {
    const changed = (0, eval)(`(${source})`);
    const opening = indexedDB.open("pull-order");
    await new Promise((resolve) => (opening.onsuccess = resolve));
    const transaction = opening.result.transaction("log", "readwrite");
    const store = transaction.objectStore("log");
    const cursor = store.openCursor();
    let place = 0;
    cursor.onsuccess = () => {
      const at = cursor.result;
      if (!at) return;
      const text = changed(at.value, place);
      if (text === undefined) at.delete();
      else if (text !== at.value) at.update(text);
      place += 1;
      at.continue();
    };
    await new Promise((resolve) => (transaction.oncomplete = resolve));
    opening.result.close();
  }, change.toString());
}

/** The second copy's texts, by their keys. */
export function secondCopy(page) {
  return page.evaluate(() =>
    Object.fromEntries(Object.entries(localStorage).filter(([key]) => key.startsWith("log/"))),
  );
}

/** Which thing happened in each stored entry. */
export function kinds(texts) {
  return texts.map((text) => JSON.parse(text).what.kind);
}
