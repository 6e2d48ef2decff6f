// The act of the moment in words, and when the next one comes. Pure: a run and a moment in, words out.

import { named } from "./baths.js";
import { stepAt } from "./snapshot.js";
import { clock, minute } from "./times.js";
import { volume } from "./units.js";

/** @typedef {import("./snapshot.js").Run} Run @typedef {import("./snapshot.js").Cue} Cue */
/**
 * @typedef {{lines: string[], then: string, nextAt: number | null, cue: Cue | null, next: Cue | null,
 *   count: {of: number, done: number} | null}} Act
 */

const ACTS = new Set(["pour in", "light on", "agitate", "rest", "drain", "lid may come off", "hang"]);

/** @param {Run} run @param {number} at @returns {Act} */
export function actAt(run, at) {
  if (run.phase === "finished") {
    return finished(run);
  }
  if (run.phase === "abandoned") {
    return still(["Given up"], "the record keeps everything that happened");
  }
  if (run.phase === "ready") {
    return ready(run);
  }
  if (run.phase === "waiting") {
    return waiting(run);
  }
  const acts = run.cues.filter((c) => ACTS.has(c.act));
  const past = acts.filter((c) => c.at <= at);
  const cue = past[past.length - 1] ?? null;
  const next = acts[past.length] ?? null;
  return {
    lines: cue === null ? ["Get ready"] : headline(run, cue),
    then: cue === null || next === null ? "" : whatFollows(run, cue, next, acts[past.length + 1] ?? null),
    nextAt: next === null ? null : next.at,
    cue,
    next,
    count: cue === null ? null : counted(cue, at),
  };
}

/** One line for the ear and the title. @param {Act} act */
export function inOneLine(act) {
  return act.lines.join(" ");
}

/** A cue's text without the tank's name, which stands elsewhere on the sheet. @param {Run} run @param {Cue} cue */
export function plainText(run, cue) {
  const prefix = `${run.tank}: `;
  return cue.text.startsWith(prefix) ? cue.text.slice(prefix.length) : cue.text;
}

/** @param {Run} run @param {Cue} cue */
function headline(run, cue) {
  const step = run.steps[cue.step];
  switch (cue.act) {
    case "pour in":
      return step.bottle === null ? [`${step.word} in`] : [`${step.word} in,`, `bottle ${step.bottle}`];
    case "rest":
      return [step.kind === "wash" ? "Washing" : "Rest"];
    case "light on":
      return ["Light on", "the film"];
    case "lid may come off":
      return ["Lid may", "come off"];
    case "hang":
      return ["Hang", "the film"];
    case "drain":
      return ["Drain"];
    default:
      return broken(plainText(run, cue));
  }
}

/** Words too long for one line at the size of an act, in two. @param {string} text */
function broken(text) {
  const most = 12;
  if (text.length <= most) {
    return [text];
  }
  const middle = text.lastIndexOf(" ", Math.ceil(text.length / 2) + 2);
  return middle < 0 ? [text] : [text.slice(0, middle), text.slice(middle + 1)];
}

/** @param {Run} run @param {Cue} cue @param {Cue} next @param {Cue | null} afterNext */
function whatFollows(run, cue, next, afterNext) {
  if (cue.act === "agitate") {
    const tap = run.cues.some((c) => c.act === "tap" && c.step === cue.step && c.at >= cue.at && c.at <= next.at);
    const rest = next.act === "rest" && afterNext !== null ? `rest until ${clock(afterNext.at)}` : lowered(run, next);
    return tap ? `tap, then ${rest}` : `then ${rest}`;
  }
  if (cue.act === "rest" && run.steps[cue.step].kind === "wash") {
    return `hands free until ${clock(next.at)}`;
  }
  if (cue.act === "drain" || cue.act === "lid may come off") {
    const back = run.cues.find((c) => c.act === "back to bottle" && c.step === cue.step && c.at >= cue.at - 60000);
    const lid = run.cues.some((c) => c.act === "cap only" && c.step === next.step && c.at >= cue.at && c.at <= next.at);
    const where = cue.act === "drain" && back !== undefined ? `${decapitalised(plainText(run, back))}; ` : "";
    return `${where}then ${lowered(run, next)}${lid ? ". Cap only" : ""}`;
  }
  return `then ${lowered(run, next)}`;
}

/** @param {Run} run @param {Cue} cue */
function lowered(run, cue) {
  const step = run.steps[cue.step];
  switch (cue.act) {
    case "pour in":
      return step.bottle === null ? `${named(step)} in` : `${decapitalised(step.word)} in, bottle ${step.bottle}`;
    case "drain":
      return `drain at ${clock(cue.at)}`;
    case "rest":
      return "rest";
    default:
      return decapitalised(plainText(run, cue));
  }
}

/** @param {string} text */
function decapitalised(text) {
  return text.charAt(0).toLowerCase() + text.slice(1);
}

/** @param {Cue} cue @param {number} at */
function counted(cue, at) {
  if (cue.act !== "agitate" || cue.count < 1 || cue.seconds <= 0 || cue.count > 24) {
    return null;
  }
  const each = (cue.seconds * 1000) / cue.count;
  return { of: cue.count, done: Math.min(cue.count, Math.floor((at - cue.at) / each + 1e-6)) };
}

/** @param {Run} run @returns {Act} */
function ready(run) {
  const first = run.steps[0];
  const fill = run.volumeMl === null ? "" : `${volume(run.volumeMl)}, `;
  const lid = first.lidStaysOn ? "cap only, not the lid" : "the lid may be off";
  const lines = first.bottle === null ? [`${first.word} in`] : [`${first.word} in,`, `bottle ${first.bottle}`];
  return still(lines, `${fill}${lid}`);
}

/** @param {Run} run @returns {Act} */
function waiting(run) {
  const step = stepAt(run, run.now);
  const next = run.steps[step.index + 1];
  const then = next === undefined ? "then hang" : `then ${named(next)}, when you press`;
  return { ...still(["Waiting", "for you"], then), nextAt: run.waitingUntil };
}

/** @param {Run} run @returns {Act} */
function finished(run) {
  const after = run.after;
  const hang = after === null || after.hang.length === 0 ? ["Hang", "the film"] : hangLines(after.hang);
  const until = after?.doNotTouchUntil ?? null;
  return still(hang, until === null ? "" : `do not touch until ${minute(until)}`);
}

/** @param {string[]} places */
function hangLines(places) {
  const half = Math.ceil(places.length / 2);
  const second = places.slice(half).join(", ");
  return [`Hang ${places.slice(0, half).join(", ")}${second === "" ? "" : ","}`, second].filter((line) => line !== "");
}

/** @param {string[]} lines @param {string} then @returns {Act} */
function still(lines, then) {
  return { lines, then, nextAt: null, cue: null, next: null, count: null };
}
