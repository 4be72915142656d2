// A database that is slow, refuses, or has been lost, as browsers make them.

/** Run before the page: what the test sets on `window` later decides how its storage behaves. */
export function badStorage() {
  // window.refuse: a text; a transaction that is to add an entry with it is ended, as without room.
  const add = IDBObjectStore.prototype.add;
  IDBObjectStore.prototype.add = function (value, ...rest) {
    const request = add.call(this, value, ...rest);
    if (window.refuse !== undefined && value.includes(window.refuse)) this.transaction.abort();
    return request;
  };
  // window.lost: the process that stores is gone. What WebKit then says of every opening and of every
  // transaction until the page is loaded anew.
  const gone = () => new DOMException("Connection to Indexed Database server lost.", "UnknownError");
  const { open } = IDBFactory.prototype;
  IDBFactory.prototype.open = function (...words) {
    const request = open.apply(this, words);
    if (!window.lost) return request;
    Object.defineProperty(request, "error", { get: gone });
    request.addEventListener("success", (event) => {
      event.stopImmediatePropagation();
      request.result.close();
      request.dispatchEvent(new Event("error"));
    });
    return request;
  };
  const { transaction } = IDBDatabase.prototype;
  IDBDatabase.prototype.transaction = function (...words) {
    if (window.lost || window.unreadable) throw gone();
    // window.odd: it fails in a way that nobody foresaw, with these words.
    if (window.odd) throw new DOMException(window.odd, "DataError");
    return transaction.apply(this, words);
  };
  // window.unreadable: it opens, and every transaction then fails in that way.
  // window.deaf: the small stores take everything and keep nothing, as when their process went too.
  const { setItem } = Storage.prototype;
  Storage.prototype.setItem = function (...words) {
    if (!window.deaf) setItem.apply(this, words);
  };
}

/** Keeps the log's store busy until `letGo`: whoever else wants to write waits. */
export function holdDatabase(page) {
  return page.evaluate(async () => {
    const opening = indexedDB.open("pull-order");
    await new Promise((resolve) => (opening.onsuccess = resolve));
    const store = opening.result.transaction("log", "readwrite").objectStore("log");
    window.held = true;
    const goOn = () => {
      if (window.held) store.count().onsuccess = goOn;
      else opening.result.close();
    };
    goOn();
  });
}

/** Ends `holdDatabase`. */
export function letGo(page) {
  return page.evaluate(() => {
    window.held = false;
  });
}

/** What is stored: for each cook, the kinds of its entries in the order of their ids. */
export function storedByCook(page) {
  return page.evaluate(async () => {
    const opening = indexedDB.open("pull-order");
    await new Promise((resolve) => (opening.onsuccess = resolve));
    const log = opening.result.transaction("log").objectStore("log");
    const wanted = (request) => new Promise((resolve) => (request.onsuccess = () => resolve(request.result)));
    const [keys, texts] = await Promise.all([wanted(log.getAllKeys()), wanted(log.getAll())]);
    opening.result.close();
    const cooks = {};
    keys.forEach(([cook], place) => (cooks[cook] ??= []).push(JSON.parse(texts[place]).what.kind));
    return Object.values(cooks);
  });
}
