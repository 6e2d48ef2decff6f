// "Where am I?": the whole run as a list, said aloud. What is seldom wanted lives here too.

import { actAt, inOneLine, plainText } from "../act.js";
import { html } from "../elements.js";
import { stepAt } from "../snapshot.js";
import { clock, minute, span } from "../times.js";
import { care } from "./care.js";
import { change } from "./change.js";
import { hearing } from "./hearing.js";
import { back, keyIn } from "./panel.js";

/** @param {import("./panel.js").Bench} bench @returns {import("./panel.js").Panel} */
export function where(bench) {
  const keys = { label: "Keys of this screen", letter: "K", press: bench.actions.keys };
  const cautions = { label: "Cautions", letter: "H", press: () => bench.open(care(bench)) };
  return {
    name: "where",
    lines: ["Where", "am I?"],
    then: () => `${inOneLine(actAt(bench.run(), bench.at())).toLowerCase()}${bench.run().provisional ? "" : `; ${nextWords(bench)}`}`,
    body: () => html("div", { class: "b-panel place" }, list(bench), html("p", { class: "words-row" }, keyIn(cautions), keyIn(keys))),
    keys: [cautions, keys],
    slots: () => [
      back(bench),
      { label: "Night or day", letter: "N", press: bench.actions.night },
      { label: "Sound", letter: "S", press: () => bench.open(hearing(bench)) },
      { label: "Change the run", letter: "C", press: () => bench.open(change(bench)) },
    ],
  };
}

/** What is said aloud. @param {import("./panel.js").Bench} bench */
export function spokenPlace(bench) {
  const run = bench.run();
  const at = bench.at();
  const step = stepAt(run, at);
  const act = actAt(run, at);
  if (run.phase === "ready") {
    return `${run.tank}: nothing has been poured yet. First: ${act.lines.join(" ")}.`;
  }
  const left = act.nextAt === null ? "" : ` for ${spoken(act.nextAt - at)} more`;
  const then = act.next === null ? "" : ` Then ${act.next.speech}`;
  return `${run.tank}, ${step.word}, ${spoken(at - step.fullAt)} of ${spoken(step.endAt - step.fullAt)}. ${inOneLine(act)}${left}.${then}`;
}

/** @param {number} ms */
function spoken(ms) {
  const s = Math.max(0, Math.round(ms / 1000));
  const minutes = Math.floor(s / 60);
  const words = minutes === 0 ? "" : `${minutes} ${minutes === 1 ? "minute" : "minutes"} `;
  return s % 60 === 0 && minutes > 0 ? words.trim() : `${words}${s % 60} seconds`;
}

/** @param {import("./panel.js").Bench} bench */
function nextWords(bench) {
  const act = actAt(bench.run(), bench.at());
  if (act.next === null) {
    return act.then;
  }
  const text = plainText(bench.run(), act.next);
  const short = act.next.act === "rest" ? "rest" : text.charAt(0).toLowerCase() + text.slice(1);
  return `next: ${short} at ${clock(act.next.at)}`;
}

/** @param {import("./panel.js").Bench} bench */
function list(bench) {
  const run = bench.run();
  const at = bench.at();
  const current = stepAt(run, at);
  const items = run.steps.map((step) => {
    const now = step === current && !run.provisional;
    const past = step.endAt <= at && !run.provisional;
    return line(step.bottle ?? "", step.word, now ? span(at - step.fullAt) : span(step.endAt - step.fullAt), now ? "now" : run.provisional ? "" : clock(step.beginAt), past || now);
  });
  const hang = line("", "Hang", "", run.provisional ? "" : minute(run.endsAt), false);
  const rows = Math.ceil((items.length + 1) / 2);
  return html("ol", { class: `b-panel list rows-${rows}` }, ...items, hang);
}

/** @param {string} letter @param {string} word @param {string} long @param {string} when @param {boolean} done */
function line(letter, word, long, when, done) {
  const parts = [html("b", {}, letter), html("span", {}, word), html("span", { class: "soft" }, long), html("span", { class: "t" }, when)];
  return html("li", done ? { class: "done" } : {}, ...parts);
}
