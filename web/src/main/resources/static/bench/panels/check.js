// Before the first pour: one thing after another, one large key at a time. What data answer is not asked.

import { html } from "../elements.js";
import { inChosenUnits } from "../units.js";
import { handling } from "./handling.js";
import { precious } from "./precious.js";
import { reading } from "./reading.js";

/** @typedef {import("./panel.js").Bench} Bench @typedef {import("./panel.js").Panel} Panel @typedef {import("../snapshot.js").Check} Check */
/** @typedef {import("../answers.js").Answers} Answers @typedef {import("../deck.js").Slot} Slot */

/** @type {Record<string, string[]>} */
const HEADINGS = {
  closing: ["Close", "the tank"],
  handling: ["With", "care"],
  temperatures: ["Bath", "temperatures"],
  bottles: ["The", "bottles"],
  stock: ["Enough", "developer?"],
  precious: ["Precious", "film"],
};

/**
 * The first thing that is still open, as a panel; null when there is none.
 * @param {Bench} bench @param {Answers} answers @returns {Panel | null}
 */
export function check(bench, answers) {
  const open = bench.run().checks.find((one) => answers.isOpen(one) && !isSent(answers, one));
  if (open === undefined) {
    return null;
  }
  const group = bench.run().checks.filter((one) => one.group === open.group);
  const walked = walk(bench, answers, open, group);
  switch (open.group) {
    case "precious":
      return precious(bench, answers, group, walked);
    case "handling":
      return handling(bench, answers, group, walked);
    default:
      return walked;
  }
}

/** @param {Answers} answers @param {Check} one */
function isSent(answers, one) {
  return one.step !== null && one.group === "temperatures" && one.state === "open" && answers.sent.has(one.step);
}

/** Goes on to what is open next; closes when nothing is. @param {Bench} bench @param {Answers} answers */
export function goOn(bench, answers) {
  const next = check(bench, answers);
  if (next === null) {
    const left = bench.run().checks.some((one) => one.group === "closing" && !answers.ticked.has(one.id));
    bench.say(left ? "Ready to pour." : "The tank is closed.");
  }
  bench.open(next);
}

/** @param {Bench} bench @param {Answers} answers @param {Check} open @param {Check[]} group @returns {Panel} */
function walk(bench, answers, open, group) {
  const byHand = open.group === "closing";
  const pass = (/** @type {Check[]} */ which) => {
    answers.pass(which);
    goOn(bench, answers);
  };
  return {
    name: `check-${open.group}`,
    lines: HEADINGS[open.group] ?? [open.group],
    then: () => (byHand ? `${bench.run().closing.because} Light stays off until the lid is locked` : inChosenUnits(open.advice)),
    body: () => rows(answers, group, open),
    again: () => check(bench, answers),
    slots: () => [
      { label: "Pass over", letter: "Esc", press: () => pass(byHand ? [open] : group) },
      { label: "Skip all the rest", letter: "A", press: () => pass(bench.run().checks) },
      nextKey(bench, answers, open, group),
    ],
  };
}

/** @param {Bench} bench @param {Answers} answers @param {Check} open @param {Check[]} group @returns {Slot} */
function nextKey(bench, answers, open, group) {
  if (open.group === "temperatures" && open.state === "open" && open.step !== null) {
    const step = open.step;
    const read = () => {
      const back = () => goOn(bench, answers);
      bench.open(reading(bench, step, { kept: () => { answers.sent.add(step); back(); }, left: back }));
    };
    return { label: `Read: ${nameOf(open)}`, letter: "Space", press: read, next: true, wide: true };
  }
  const seen = () => {
    (open.group === "closing" ? [open] : group.filter((one) => answers.isOpen(one))).forEach((one) => answers.tick(one.id));
    goOn(bench, answers);
  };
  const label = open.group === "closing" ? `Yes: ${open.text.charAt(0).toLowerCase()}${open.text.slice(1)}` : "Seen, go on";
  return { label, letter: "Space", press: seen, next: true, wide: true };
}

/** @param {Check} one */
function nameOf(one) {
  const name = one.text.split(":")[0] ?? one.text;
  return name.charAt(0).toLowerCase() + name.slice(1);
}

/** The group as a list, what is asked now in strong ink. @param {Answers} answers @param {Check[]} group @param {Check | null} now */
export function rows(answers, group, now) {
  const items = group.map((one) => {
    const word = answers.word(one);
    const settled = !answers.isOpen(one);
    const kind = one === now ? "now" : settled ? "done" : one.state === "warning" ? "warns" : "";
    const shown = settled || one.state === "warning" ? word : one === now ? "asked" : one.group === "closing" ? "" : word;
    const advice = one.advice !== "" && !settled && one !== now ? [html("small", {}, inChosenUnits(one.advice))] : [];
    return html("li", { class: kind, ...(one === now ? { "aria-current": "step" } : {}) }, html("span", {}, inChosenUnits(one.text), ...advice), html("b", {}, shown));
  });
  return html("ol", { class: "b-panel rows", "aria-label": "Before the first pour" }, ...items);
}

/** Everything at once, after it was gone through. @param {Bench} bench @param {Answers} answers @returns {Panel} */
export function summary(bench, answers) {
  return {
    name: "checks",
    lines: ["Before the", "first pour"],
    then: () => `${bench.run().checks.filter((one) => answers.passed.has(one.id)).length} passed over`,
    body: () => rows(answers, bench.run().checks, null),
    again: () => summary(bench, answers),
    slots: () => [
      { label: "Go through again", letter: "G", press: () => { answers.again(); goOn(bench, answers); } },
      { label: "Load in the dark", letter: "D", press: bench.actions.dark },
      { label: "Back to the pour", letter: "Space", press: () => bench.open(null), next: true, wide: true },
    ],
  };
}
