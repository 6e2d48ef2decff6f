// What is to be heard and when, from the cues of a run: their tones, the ticks before them, the words after them, and the tick that
// says the sound is alive. Pure: the same cues give the same score, live and tested.

import { lengthOf } from "./notes.js";

const TICK_APART_MS = 1000;
const CLEAR_OF_CUES_MS = 1500;
const CLEAR_BEFORE_NEXT_MS = 30;

/** @typedef {import("./snapshot.js").Cue} Cue @typedef {import("./snapshot.js").Note} Note */
/**
 * @typedef {{id: string, at: number, notes: Note[], soft: boolean, clips: string[], wordsAt: number, wordsUntil: number}} Sounding
 * @typedef {{words: boolean, alive: boolean}} Wish
 */

/**
 * Everything that begins after one moment and before another, by the server's clock.
 * @param {Cue[]} cues in order @param {import("./voicebook.js").Book} book @param {Wish} wish @param {number} after @param {number} before
 * @returns {Sounding[]}
 */
export function scoreOf(cues, book, wish, after, before) {
  /** @type {Sounding[]} */
  const score = [];
  cues.forEach((cue, i) => {
    if (cue.at > before + TICK_APART_MS * 4) {
      return;
    }
    for (let tick = cue.countIn; tick > 0; tick--) {
      score.push(bare(`${cue.id}-count-${tick}`, cue.at - tick * TICK_APART_MS, book.countIn));
    }
    const wordsAt = cue.at + lengthOf(cue.tone) + book.wordsAfterMilliseconds;
    const next = cues[i + 1];
    const wordsUntil = next === undefined ? Number.POSITIVE_INFINITY : next.at - CLEAR_BEFORE_NEXT_MS;
    score.push({ id: cue.id, at: cue.at, notes: cue.tone, soft: false, clips: wish.words ? cue.clips : [], wordsAt, wordsUntil });
  });
  if (wish.alive) {
    score.push(...ticks(cues, book, after, before));
  }
  return score.filter((one) => one.at > after && one.at <= before).sort((one, other) => one.at - other.at);
}

/** @param {Cue[]} cues @param {import("./voicebook.js").Book} book @param {number} after @param {number} before */
function ticks(cues, book, after, before) {
  const every = book.aliveEverySeconds * 1000;
  /** @type {Sounding[]} */
  const alive = [];
  for (let at = Math.ceil(after / every) * every; at <= before; at += every) {
    const free = cues.every((cue) => at < cue.at - cue.countIn * TICK_APART_MS - CLEAR_OF_CUES_MS || at > cue.at + CLEAR_OF_CUES_MS);
    if (free) {
      alive.push(bare(`alive-${at}`, at, book.alive));
    }
  }
  return alive;
}

/** @param {string} id @param {number} at @param {Note[]} notes @returns {Sounding} */
function bare(id, at, notes) {
  return { id, at, notes, soft: true, clips: [], wordsAt: at, wordsUntil: at };
}
