// Cues of several tanks in one order, for one pair of hands. Pure.

import { lengthOf } from "./notes.js";
import { isOver } from "./snapshot.js";

/** @typedef {import("./snapshot.js").Run} Run @typedef {import("./snapshot.js").Cue} Cue */

const TICK_MS = 1000;
const WORDS_MS = 1500;

/** Every cue of every run once, the earliest first; with several runs an id also says whose it is. @param {Run[]} runs @returns {Cue[]} */
export function mergedCues(runs) {
  const [only] = runs;
  if (runs.length === 1 && only !== undefined) {
    return only.cues;
  }
  return counted(runs.flatMap((run) => told(run).map((cue) => ({ ...cue, id: `${run.run}:${cue.id}` }))).sort((one, other) => one.at - other.at));
}

/** A run that is over has nothing to come. @param {Run} run */
function told(run) {
  return isOver(run) ? run.cues.filter((cue) => cue.at <= run.endsAt) : run.cues;
}

/** Ticks before a cue never fall into the tone and the words of the other tank. @param {Cue[]} cues in order @returns {Cue[]} */
function counted(cues) {
  return cues.map((cue, i) => {
    const before = cues[i - 1];
    const room = before === undefined ? cue.countIn : Math.floor((cue.at - before.at - lengthOf(before.tone) - WORDS_MS) / TICK_MS);
    return room >= cue.countIn ? cue : { ...cue, countIn: Math.max(0, room) };
  });
}

/** The run a merged cue belongs to; a run that is led alone keeps its ids. @param {Cue} cue @param {Run} run */
export function tankOf(cue, run) {
  const mark = cue.id.indexOf(":");
  return mark < 0 ? run.run : Number(cue.id.slice(0, mark));
}
