// Cues of several tanks in one order, for one pair of hands. Pure.

/** @typedef {import("./snapshot.js").Run} Run @typedef {import("./snapshot.js").Cue} Cue */

/** Every cue of every run once, the earliest first; with several runs an id also says whose it is. @param {Run[]} runs @returns {Cue[]} */
export function mergedCues(runs) {
  const [only] = runs;
  if (runs.length === 1 && only !== undefined) {
    return only.cues;
  }
  return runs.flatMap((run) => run.cues.map((cue) => ({ ...cue, id: `${run.run}:${cue.id}` }))).sort((one, other) => one.at - other.at);
}
