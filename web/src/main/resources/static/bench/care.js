// Which bath hands are about to touch, and what is said of it then. Pure: a run and a moment in, words out.

import { stepAt } from "./snapshot.js";

/** @typedef {import("./snapshot.js").Run} Run @typedef {import("./snapshot.js").Care} Care */

/**
 * The care for the bath of the moment: from its "get ready" until the tank is full of it; null between, for water and for light.
 * @param {Run} run @param {number} at @returns {Care | null}
 */
export function careAt(run, at) {
  if (run.phase === "finished" || run.phase === "abandoned") {
    return null;
  }
  if (run.phase === "ready") {
    return run.steps[0].care ?? null; // a run kept on the device by an older page has none
  }
  const step = stepAt(run, at);
  if (at < step.fullAt) {
    return step.care ?? null;
  }
  const next = run.steps[step.index + 1];
  if (next === undefined) {
    return null;
  }
  const readyAt = run.cues.find((cue) => cue.act === "get ready" && cue.step === next.index)?.at ?? step.drainAt;
  return run.phase === "waiting" || at >= readyAt ? (next.care ?? null) : null;
}
