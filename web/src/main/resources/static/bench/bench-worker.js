// Answers a reload of the Bench while the server is away. It never answers in the server's place when the server is there.

const CACHE = "wetside-bench";
const PATIENCE_MS = 4000;

/** @type {any} */
const worker = self;

worker.addEventListener("install", () => worker.skipWaiting());
worker.addEventListener("activate", (/** @type {any} */ event) => event.waitUntil(worker.clients.claim()));

// The page says what it consists of; what earlier pages consisted of is forgotten.
worker.addEventListener("message", (/** @type {any} */ event) => event.waitUntil(keep(event.data)));

worker.addEventListener("fetch", (/** @type {any} */ event) => {
  const address = new URL(event.request.url);
  const ours = address.origin === location.origin && event.request.method === "GET";
  if (ours && address.pathname.startsWith("/static/")) {
    event.respondWith(keptFirst(event.request));
  } else if (ours && (event.request.mode === "navigate" || address.pathname.startsWith("/voice/"))) {
    event.respondWith(serverFirst(event.request));
  }
});

/** @param {string[]} addresses */
async function keep(addresses) {
  const cache = await caches.open(CACHE);
  const wanted = new Set(addresses);
  for (const request of await cache.keys()) {
    const path = new URL(request.url).pathname;
    if (path.startsWith("/static/") && !wanted.has(request.url)) {
      await cache.delete(request);
    }
  }
  await Promise.all(addresses.map((address) => store(cache, address)));
}

/** @param {Cache} cache @param {string} address */
async function store(cache, address) {
  if (address.includes("/static/") && (await cache.match(address)) !== undefined) {
    return; // a file under a mark never changes
  }
  const answer = await fetch(address, { credentials: "same-origin" }).catch(() => undefined);
  if (answer?.ok && !answer.redirected) {
    await cache.put(address, answer);
  }
}

/** @param {Request} request */
async function keptFirst(request) {
  return (await caches.match(request)) ?? fetch(request);
}

/** @param {Request} request */
async function serverFirst(request) {
  try {
    return await Promise.race([fetch(request), patience()]);
  } catch (away) {
    const kept = await caches.match(request.url);
    if (kept !== undefined) {
      return kept;
    }
    throw away;
  }
}

/** A server that says nothing for that long is away; one that has begun to answer may take its time. @returns {Promise<never>} */
function patience() {
  return new Promise((_, refuse) => setTimeout(() => refuse(new Error("no answer")), PATIENCE_MS));
}
