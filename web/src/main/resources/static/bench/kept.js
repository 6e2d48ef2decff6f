// What a page needs to come back by itself while the server is away: the run as it was last told, the clock, and the page with its files.

/** @typedef {import("./snapshot.js").Run} Run */

const NAME = "wetside.run.";
const WORKER = "/bench-worker.js";

/** @param {number} number @param {number} offset of the server's clock against this device's, ms @param {Run} run */
export function keepRun(number, offset, run) {
  try {
    localStorage.setItem(NAME + number, JSON.stringify({ offset, run }));
  } catch {
    // a browser that keeps nothing goes on as long as the page lives
  }
}

/** @param {number} number @returns {{offset: number, run: Run} | null} */
export function keptRun(number) {
  try {
    return JSON.parse(localStorage.getItem(NAME + number) ?? "null");
  } catch {
    return null;
  }
}

/** The runs kept here that were going on when they were last told and whose plan is not over. @param {number} now by the device's clock @returns {{offset: number, run: Run}[]} */
export function keptRuns(now) {
  try {
    return Object.keys(localStorage)
      .filter((name) => name.startsWith(NAME))
      .map((name) => keptRun(Number(name.slice(NAME.length))))
      .filter((kept) => kept !== null)
      .filter(({ run, offset }) => (run.phase === "running" || run.phase === "waiting") && run.endsAt > now + offset);
  } catch {
    return [];
  }
}

/** Since when this page has led, and up to when it has told the cues. @param {number} number @param {{since: number, upTo: number}} lead */
export function keepLead(number, lead) {
  try {
    sessionStorage.setItem(NAME + number, JSON.stringify(lead));
  } catch {
    // then a reload counts as a break
  }
}

/** @param {number} number @returns {{since: number, upTo: number} | null} */
export function keptLead(number) {
  try {
    return JSON.parse(sessionStorage.getItem(NAME + number) ?? "null");
  } catch {
    return null;
  }
}

/** @param {number} number */
export function forgetRun(number) {
  try {
    localStorage.removeItem(NAME + number);
    sessionStorage.removeItem(NAME + number);
  } catch {
    // nothing was kept
  }
}

/** Whether this page would come back from a reload while the server is away. */
export function survivesReload() {
  return "serviceWorker" in navigator && navigator.serviceWorker.controller !== null;
}

/** Hands the page and all its files to the worker that answers a reload. Not over plain HTTP: browsers allow it only on loopback or over a certificate. */
export async function keepPage() {
  if (!("serviceWorker" in navigator)) {
    return;
  }
  try {
    await navigator.serviceWorker.register(WORKER, { scope: "/bench/" });
    const ready = await navigator.serviceWorker.ready;
    const files = performance.getEntriesByType("resource").map((entry) => entry.name);
    const own = files.filter((name) => /\/(static|voice)\//.test(new URL(name).pathname));
    ready.active?.postMessage([location.href, ...new Set(own)]);
  } catch {
    // then the page says that it must not be reloaded
  }
}
