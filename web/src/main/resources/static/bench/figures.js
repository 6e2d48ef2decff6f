// The figures of the sheet: which tank and bath, how long of how long, what is reached, what is expected.

import { hatchOf } from "./baths.js";
import { celsiusAt, shareAt } from "./dose.js";
import { byId, write } from "./elements.js";
import { isOver, stepAt } from "./snapshot.js";
import { clock, isoSpan, minute, moved, span } from "./times.js";
import { DEGREE_SIGN, degrees } from "./units.js";

/** @typedef {import("./snapshot.js").Run} Run @typedef {import("./snapshot.js").Step} Step */

/** @param {Run} run @param {number} at @param {number} wallShift */
export function showFigures(run, at, wallShift) {
  const step = stepAt(run, at);
  write(byId("tank"), run.tank === "" ? "Tank" : run.tank);
  write(byId("rolls"), run.rolls.map((roll) => roll.number).join(" · "));
  showBath(run, step);
  showElapsed(run, step, at);
  showReached(run, step, at);
  showExpected(run, step, at, wallShift);
}

/** @param {Run} run @param {Step} step */
function showBath(run, step) {
  const bath = byId("bath");
  const bottle = byId("bath-bottle");
  bath.hidden = run.phase === "ready";
  bath.dataset["bath"] = hatchOf(step.kind);
  bottle.hidden = step.bottle === null || isOver(run);
  write(bottle, step.bottle ?? "");
  bottle.setAttribute("aria-label", `bottle ${step.bottle ?? ""}`);
  write(byId("bath-word"), isOver(run) ? "All of it" : step.word);
}

/** @param {Run} run @param {Step} step @param {number} at */
function showElapsed(run, step, at) {
  const figure = byId("elapsed");
  if (run.phase === "ready") {
    write(figure, "");
    write(byId("elapsed-of"), "nothing has happened yet");
    return;
  }
  const ms = isOver(run) ? (run.after?.totalSeconds ?? 0) * 1000 : at - step.fullAt;
  write(figure, span(ms));
  figure.setAttribute("datetime", isoSpan(ms));
  write(byId("elapsed-of"), isOver(run) ? "in all" : `of ${span(step.endAt - step.fullAt)}`);
}

/** @param {Run} run @param {Step} step @param {number} at */
function showReached(run, step, at) {
  if (run.phase === "ready") {
    write(byId("reached"), "0 %");
    write(byId("reached-of"), "");
    return;
  }
  const share = isOver(run) ? 1 : Math.min(1, Math.max(0, (at - step.fullAt) / (step.endAt - step.fullAt)));
  const done = run.steps.filter((s) => s.endAt <= at).length;
  const developed = isOver(run) ? null : shareAt(step, at);
  write(byId("reached"), isOver(run) ? `${done} of ${run.steps.length}` : `${Math.floor((developed ?? share) * 100)} %`);
  write(byId("reached-of"), isOver(run) ? "baths" : developed !== null ? `developed${notKnown(step)}` : step.developing ? "of its time; not read yet" : "of its time");
}

/** What the temperatures outside the span of the developer's rate were worth, nobody knows. @param {Step} step */
function notKnown(step) {
  const seconds = step.dose?.notKnownSeconds ?? 0;
  return seconds < 1 ? "" : `; dose not known for ${span(seconds * 1000)}`;
}

/** @param {Run} run @param {Step} step @param {number} at @param {number} wallShift */
function showExpected(run, step, at, wallShift) {
  if (isOver(run)) {
    write(byId("ends"), minute(run.after?.hungAt ?? run.endsAt));
    write(byId("ends-word"), run.phase === "finished" ? "hung" : "given up");
    write(byId("degrees"), `${run.rolls.length} ${run.rolls.length === 1 ? "film" : "films"}`);
    write(byId("degrees-what"), "");
    write(byId("degrees-word"), "the record is complete");
    return;
  }
  const ready = run.phase === "ready";
  write(byId("ends"), ready ? minute(run.endsAt + wallShift) : clock(step.endAt));
  const words = byId("ends-word");
  const by = step.planned === null || ready ? 0 : step.endAt - step.planned.endAt;
  write(words, ready ? "would hang if you poured now" : Math.abs(by) < 1000 ? "ends" : `ends, moved ${moved(by)}`);
  write(byId("ends-why"), ready || Math.abs(by) < 1000 || run.movedBecause === "" ? "" : ` by ${run.movedBecause}`);
  showTemperature(run, step, at);
}

/** @param {Run} run @param {Step} step @param {number} at */
function showTemperature(run, step, at) {
  const read = run.readings.filter((r) => r.step === step.index && r.at <= at + 1000);
  const last = read[read.length - 1];
  const now = last === undefined ? null : (celsiusAt(step, at) ?? last.correctedC);
  write(byId("degrees"), now === null ? `– ${DEGREE_SIGN}` : `${degrees(now)} ${DEGREE_SIGN}`);
  const drifted = last !== undefined && now !== null && Math.abs(now - last.correctedC) >= 0.05;
  write(byId("degrees-word"), last === undefined ? "not read yet" : `${drifted ? "drifting, " : ""}read ${minute(last.at)}`);
  write(byId("degrees-what"), last === undefined ? "" : "bath, ");
}
