// What is put into every page before its own program: a clock that can be moved, and a way to find
// things as a person does. The same in every engine, none of which but Chromium has a clock to move.

/** The scripts, for pages whose clock starts at `time` (milliseconds), or at the true time if none. */
export function firstScripts(time) {
  const start = time === undefined ? 0 : time - Date.now();
  return [`(${clock})(${start})`, `(${finder})()`, `window.testTexts = ${databaseTexts}`];
}

/* Runs in the page: `Date` and `performance` go ahead by what was asked for, in this and every later page. */
function clock(start) {
  const KEY = "test-clock";
  const kept = () => {
    try {
      return localStorage.getItem(KEY);
    } catch {
      return null; // An empty page has none.
    }
  };
  let ahead = Number(kept() ?? start);
  const Real = Date;
  const now = performance.now.bind(performance);
  const before = ahead;
  window.Date = class Date extends Real {
    constructor(...parts) {
      if (parts.length > 0) super(...parts);
      else super(Real.now() + ahead);
    }
    static now() {
      return Real.now() + ahead;
    }
  };
  performance.now = () => now() + ahead - before;
  window.testClock = (millis) => {
    ahead += millis;
    localStorage.setItem(KEY, ahead);
  };
}

/* Runs in the page: finds what is seen, by a selector and the name that a person or a screen reader gives it. */
function finder() {
  const seen = (element) => {
    const box = element.getBoundingClientRect();
    return box.width > 0 && box.height > 0 && getComputedStyle(element).visibility === "visible";
  };
  const name = (element) =>
    (element.getAttribute("aria-label") || element.innerText || "").replace(/\s+/g, " ").trim();
  const find = ({ css, named, nth = 0 }) => {
    const matching = named && new RegExp(named);
    const found = [...document.querySelectorAll(css)].filter(seen);
    return found.filter((element) => !matching || matching.test(name(element))).at(nth);
  };
  const nextFrame = () => new Promise((resolve) => setTimeout(resolve, 20));
  /* Where to tap it, once it has come to rest and nothing lies over it. */
  const settled = async (wanted) => {
    let last = "";
    for (let still = 0; ; ) {
      const element = find(wanted);
      if (element && !element.disabled) {
        element.scrollIntoView({ block: "center", inline: "center" });
        const { left, top, width, height } = element.getBoundingClientRect();
        const [x, y] = [left + width / 2, top + height / 2];
        const hit = document.elementFromPoint(x, y);
        const free = hit && (element.contains(hit) || hit.contains(element) || hit.control === element);
        const now = [x, y].join();
        still = free && now === last ? still + 1 : 0;
        last = now;
        if (still > 1) return { x, y };
      }
      await nextFrame();
    }
  };
  window.testFinder = { find, settled, name, seen };
}

/* Runs in the page: the texts of all entries in the app's database, read beside the app. */
async function databaseTexts() {
  const wanted = (request) =>
    new Promise((resolve, reject) => {
      request.onsuccess = () => resolve(request.result);
      request.onerror = () => reject(request.error);
    });
  const database = await wanted(indexedDB.open("pull-order"));
  try {
    if (![...database.objectStoreNames].includes("log")) return [];
    return await wanted(database.transaction("log").objectStore("log").getAll());
  } finally {
    database.close();
  }
}
