// What the server says about a run. The shape is docs/bench-snapshot.md; here every instant is a number (ms).

/**
 * @typedef {{at: number, level: number}} Level
 * @typedef {{cue: string, at: number, seconds: number, count: number, counted: boolean, missed: boolean}} Bout
 * @typedef {{
 *   betaPerK: number, standing: string, source: string, notKnownSeconds: number, movedByLastReadingSeconds: number,
 *   reached: {at: number, share: number}[], temperatures: {at: number, celsius: number, read: boolean}[]
 * }} Dose
 * @typedef {{
 *   brief: string, cautions: {about: string, text: string, standing: string, source: string}[],
 *   against: {brief: string, text: string, refused: boolean, rinse: boolean, before: number}[]
 * }} Care
 * @typedef {{beginAt: number, fullAt: number, drainAt: number, endAt: number}} Moments
 * @typedef {{
 *   index: number, kind: string, word: string, bottle: string | null, water: boolean, wet: boolean,
 *   developing: boolean, light: string, lidStaysOn: boolean, seconds: number, plannedSeconds: number,
 *   lengthenToSeconds: number | null, temperatureLowC: number | null, temperatureHighC: number | null,
 *   planned: Moments | null, fill: Level[], agitation: Bout[], done: boolean, mayWaitBefore: boolean, waitAsked: boolean, dose: Dose | null, care: Care | null
 * } & Moments} Step
 * @typedef {{hertz: number, milliseconds: number}} Note
 * @typedef {{
 *   id: string, at: number, step: number, act: string, count: number, seconds: number, text: string, speech: string,
 *   clips: string[], countIn: number, tone: Note[], signal: {flash: boolean, milliseconds: number, vibrateMilliseconds: number[]}, missed: boolean
 * }} Cue
 * @typedef {{from: number, to: number, missed: string[]}} Gap
 * @typedef {{at: number, step: number, thermometer: string | null, rawC: number, correctedC: number, beforePour: boolean}} Reading
 * @typedef {{
 *   role: string, label: string, letter: string | null, from: number | null, until: number | null,
 *   limitSeconds: number | null, event: Record<string, unknown>
 * }} Key
 * @typedef {{id: string, text: string, detail: string, from: number | null, to: number | null}} Strip
 * @typedef {{id: string, text: string, group: string, state: string, advice: string, step: number | null}} Check
 * @typedef {{what: string, firstMinute: string, afterwards: string, standing: string, asks: string | null}} Mishap
 * @typedef {{id: string, sequence: number, kind: string, screen: string, words: string, mayUndoUntil: number | null}} Past
 * @typedef {{hang: string[], hungAt: number | null, doNotTouchUntil: number | null, totalSeconds: number, undoUntil: number | null}} After
 * @typedef {{
 *   now: number, run: number, sequence: number, name: string, tank: string,
 *   rolls: {number: string, film: string, place: string}[], volumeMl: number | null, phase: string,
 *   interrupted: boolean, provisional: boolean, startedAt: number | null, waitingUntil: number | null, endsAt: number,
 *   movedSeconds: number, movedBecause: string, steps: Step[], cues: Cue[], gaps: Gap[], readings: Reading[], keys: Key[],
 *   nothingToPress: {text: string, at: number | null} | null, strips: Strip[], mishaps: Mishap[],
 *   checks: Check[], closing: {whole: boolean, because: string}, preciousReasons: string[], events: Past[], after: After | null
 * }} Run
 */

const INSTANT = /^\d{4}-\d\d-\d\dT[\d:.]+Z$/;

/** Turns what came over the wire into a run: every instant becomes a number. @param {string} json @returns {Run} */
export function readRun(json) {
  return JSON.parse(json, (_key, value) => (typeof value === "string" && INSTANT.test(value) ? Date.parse(value) : value));
}

/**
 * The moment that stands at the line. Before the first pour all instants are as if it were now, so the sheet stands still.
 * @param {Run} run @param {number} now
 */
export function atTheLine(run, now) {
  return run.provisional ? run.now : now;
}

/** The step whose liquid is in the tank or being poured; the first before, the last after. @param {Run} run @param {number} at */
export function stepAt(run, at) {
  let current = run.steps[0];
  for (const step of run.steps) {
    if (step.beginAt <= at) {
      current = step;
    }
  }
  return current;
}

/** Whether nothing more can happen. @param {Run} run */
export function isOver(run) {
  return run.phase === "finished" || run.phase === "abandoned";
}

/** A key that may be pressed at that moment. @param {Run} run @param {string} role @param {number} at */
export function openKey(run, role, at) {
  return run.keys.find((k) => k.role === role && (k.from === null || k.from <= at) && (k.until === null || at < k.until));
}
