// A precious roll: a test of its baths, noted in the bottle's book with one key, or a reason with one key.

import { html } from "../elements.js";
import { goOn, rows } from "./check.js";
import { keyIn } from "./panel.js";
import { written } from "./written.js";

/** @typedef {import("./panel.js").Bench} Bench @typedef {import("./panel.js").Panel} Panel @typedef {import("../snapshot.js").Check} Check */
/** @typedef {import("../answers.js").Answers} Answers */

const TEST_OF = /^precious-(leader|clip)-(.+)$/;

/** @param {Bench} bench @param {Answers} answers @param {Check[]} group @param {Panel} walk @returns {Panel} */
export function precious(bench, answers, group, walk) {
  const excuse = (/** @type {string} */ reason) => {
    answers.excuse(reason);
    goOn(bench, answers);
  };
  const reasons = bench.run().preciousReasons.map((words, i) => ({ label: words, letter: String(i + 1), press: () => excuse(words) }));
  const own = { label: "Another reason", letter: String(reasons.length + 1), press: () => bench.open(written(bench, "Why untested?", answers.excuse.bind(answers), [], () => goOn(bench, answers))) };
  const keys = [...reasons, own];
  const open = group.find((one) => answers.isOpen(one));
  const found = open === undefined ? null : TEST_OF.exec(open.id);
  const note = (/** @type {boolean} */ passed) => () => {
    if (found !== null) {
      void noteTest(found[2] ?? "", found[1] ?? "", passed).then((refusal) => (refusal === "" ? bench.refresh() : bench.say(refusal)));
    }
  };
  const [pass] = walk.slots();
  const test = found === null ? null : `${found[1]} test, bottle ${found[2]}`;
  return {
    ...walk,
    body: () => html("div", { class: "b-panel reasons" }, rows(answers, group, open ?? null), html("div", { class: "words-row", role: "group", "aria-label": "Or a reason" }, ...keys.map((key) => keyIn(key)))),
    keys,
    then: () => "a test in room light, or a reason; both stand in the record",
    slots: () => [
      pass ?? null,
      test === null ? null : { label: `Failed: ${test}`, letter: "F", press: note(false) },
      test === null ? null : { label: `Passed: ${test}`, letter: "Space", press: note(true), next: true, wide: true },
    ],
  };
}

/** Adds a line to the bottle's book; empty when it was taken, else why not. @param {string} letter @param {string} test @param {boolean} passed */
async function noteTest(letter, test, passed) {
  try {
    const answer = await fetch(`/api/bottles/${encodeURIComponent(letter)}/book`, {
      method: "POST",
      headers: { "Content-Type": "application/json" },
      body: JSON.stringify({ test, passed }),
    });
    return answer.ok ? "" : String((await answer.json()).detail);
  } catch {
    return "The server is away: the test was not noted. Give a reason.";
  }
}
