// The service worker: it keeps one complete copy of the site, so that the app starts with no network.
// `cargo xtask build` writes two lines before this: BUILD, the build's name, and FILES, each file's
// address and SHA-256 sum.

const CACHE = `pull-order-${BUILD}`;

// What notifications said before a page was there to hear it.
let unheard = [];

// All files or none. The sums refuse a copy put together from two versions of the site, which a
// host in the middle of an update can give. A new version then waits: only the page may let it in.
self.addEventListener("install", (event) => event.waitUntil(keepAll()));

self.addEventListener("activate", (event) => event.waitUntil(takeOver()));

self.addEventListener("fetch", (event) => {
  const { request } = event;
  if (request.method === "GET" && new URL(request.url).origin === self.location.origin) {
    event.respondWith(answer(request));
  }
});

self.addEventListener("message", (event) => {
  if (event.data === "skip-waiting") {
    self.skipWaiting();
  } else if (event.data === "ready") {
    // A page that has started asks for what it has missed.
    for (const message of unheard) event.source.postMessage(message);
    unheard = [];
  }
});

self.addEventListener("notificationclick", (event) => {
  event.notification.close();
  const { data } = event.notification;
  event.waitUntil(tellPage({ type: "notification", action: event.action, data }));
});

async function keepAll() {
  const cache = await caches.open(CACHE);
  try {
    await Promise.all(FILES.map(([address, sum]) => keep(cache, address, sum)));
  } catch (reason) {
    await caches.delete(CACHE);
    throw reason;
  }
}

async function keep(cache, address, sum) {
  const response = await fetch(new Request(address, { cache: "reload" }));
  if (!response.ok) throw new Error(`${address}: status ${response.status}`);
  const digest = await crypto.subtle.digest("SHA-256", await response.clone().arrayBuffer());
  const found = Array.from(new Uint8Array(digest), (byte) => byte.toString(16).padStart(2, "0"));
  if (found.join("") !== sum) throw new Error(`${address} is not of this version`);
  await cache.put(address, response);
}

async function takeOver() {
  for (const name of await caches.keys()) {
    if (name.startsWith("pull-order-") && name !== CACHE) await caches.delete(name);
  }
  await self.clients.claim();
}

// The copy first; then the network, since a browser can lose a file of a cache.
async function answer(request) {
  const cache = await caches.open(CACHE);
  const kept = await cache.match(request, { ignoreSearch: true });
  if (kept) return kept;
  if (request.mode === "navigate") return (await cache.match("./")) ?? fetch(request);
  return fetch(request);
}

async function tellPage(message) {
  const pages = await self.clients.matchAll({ type: "window", includeUncontrolled: true });
  const page = pages.find((candidate) => candidate.visibilityState === "visible") ?? pages[0];
  if (page) {
    page.postMessage(message);
    return page.focus();
  }
  unheard.push(message);
  return self.clients.openWindow("./");
}
