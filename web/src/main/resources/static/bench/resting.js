// The four keys while nothing is asked: Where am I?, Reading, Mishap, and the one next step.

import { isOver, openKey } from "./snapshot.js";
import { mishap } from "./panels/mishap.js";
import { reading } from "./panels/reading.js";
import { clock } from "./times.js";

/** @typedef {import("./deck.js").Slot} Slot @typedef {import("./panels/panel.js").Bench} Bench */

/**
 * @param {Bench} bench
 * @param {{whereAmI: () => void, answered: () => Record<string, unknown>, check: () => void, putAway: () => void}} actions
 * @param {Set<string>} pressed marks of next steps pressed on this screen and not yet answered
 * @returns {Slot[]}
 */
export function restingSlots(bench, actions, pressed) {
  const run = bench.run();
  /** @type {Slot} */
  const whereAmI = { label: "Where am I?", letter: "W", press: actions.whereAmI };
  if (isOver(run)) {
    const undo = bench.actions.canUndo() ? { label: "Undo", letter: "U", press: bench.actions.undo } : null;
    return [whereAmI, undo, null, { label: "Put away", letter: "Space", press: actions.putAway, next: true }];
  }
  if (run.phase === "ready") {
    const look = { label: "Checks", letter: "L", press: actions.check };
    return [whereAmI, { label: "Reading", letter: "R", press: () => bench.open(reading(bench)) }, look, nextStep(bench, actions, pressed)];
  }
  return [
    whereAmI,
    { label: "Reading", letter: "R", press: () => bench.open(reading(bench)) },
    { label: "Mishap", letter: "M", press: () => bench.open(mishap(bench)) },
    nextStep(bench, actions, pressed),
  ];
}

/**
 * @param {Bench} bench @param {{answered: () => Record<string, unknown>}} actions @param {Set<string>} pressed @returns {Slot}
 */
function nextStep(bench, actions, pressed) {
  const run = bench.run();
  const at = bench.at();
  const key = openKey(run, "next", at) ?? openKey(run, "finish", at);
  if (key === undefined) {
    const coming = run.nothingToPress;
    return { none: coming === null ? ["Nothing to press."] : ["Nothing to press.", coming.at === null ? coming.text : `${coming.text} at ${clock(coming.at)}`] };
  }
  const mark = `${run.run}:${run.sequence}:${JSON.stringify(key.event)}`;
  if (pressed.has(mark)) {
    return { none: ["Pressed and kept.", "On its way"] };
  }
  return {
    label: key.label,
    letter: "Space",
    next: true,
    press: () => {
      pressed.add(mark);
      bench.post({ ...key.event, key: "Space", ...(run.phase === "ready" ? actions.answered() : {}) });
      bench.redraw();
    },
  };
}
