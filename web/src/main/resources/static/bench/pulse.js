// Beats from a worker: its timers keep their pace when the tab is hidden and those of the page are throttled.

const EVERY_MS = 200;

/** @param {() => void} beat */
export function startPulse(beat) {
  let last = Number.NEGATIVE_INFINITY;
  const once = () => {
    last = performance.now();
    beat();
  };
  try {
    const worker = new Worker(new URL("pulse-worker.js", import.meta.url));
    worker.onmessage = once;
    worker.postMessage(EVERY_MS);
  } catch {
    // a browser without workers beats from the page alone
  }
  setInterval(() => {
    if (performance.now() - last >= EVERY_MS) {
      once();
    }
  }, EVERY_MS);
}
