// What is handled, before it is: baths that should not follow one another with the rinse as the way out, then the cautions of each.

import { html } from "../elements.js";
import { screenName } from "../screen.js";
import { care } from "./care.js";
import { goOn, rows } from "./check.js";
import { keyIn } from "./panel.js";

/** @typedef {import("./panel.js").Bench} Bench @typedef {import("./panel.js").Panel} Panel @typedef {import("../snapshot.js").Check} Check */
/** @typedef {import("../answers.js").Answers} Answers @typedef {import("./panel.js").Pressable} Pressable */

/** @param {Bench} bench @param {Answers} answers @param {Check[]} group @param {Panel} walk @returns {Panel} */
export function handling(bench, answers, group, walk) {
  const keys = [...rinses(bench), { label: "Cautions in full", letter: "H", press: () => bench.open(care(bench, () => goOn(bench, answers))) }];
  return {
    ...walk,
    then: () => "gloves and goggles before a bottle is opened",
    body: () => html("div", { class: "b-panel reasons" }, html("div", { class: "words-row", role: "group", "aria-label": "The way out, and more" }, ...keys.map((key) => keyIn(key))), rows(answers, group, null)),
    keys,
  };
}

/** A key for each place where plain water between two baths is the way out. @param {Bench} bench @returns {Pressable[]} */
function rinses(bench) {
  // Asked for now: the run that is given up for another has no checks any more.
  const felt = bench.run().checks.filter((one) => one.group === "closing").map((one) => one.id);
  const places = bench.run().steps.flatMap((step) => step.care?.against.filter((one) => one.rinse).map((one) => ({ step, before: one.before })) ?? []);
  return places.map(({ step, before }, i) => ({
    label: `Rinse before the ${step.word.toLowerCase()}`,
    letter: String(i + 1),
    press: () => void rinse(bench.run().run, before).then((done) => (typeof done === "number" ? bench.goTo(done, felt) : bench.say(done))),
  }));
}

/** Opens the run anew with a rinse; its number, or why not. @param {number} run @param {number} before */
async function rinse(run, before) {
  try {
    const answer = await fetch(`/api/runs/${run}/rinse`, {
      method: "POST",
      headers: { "Content-Type": "application/json" },
      body: JSON.stringify({ before, screen: screenName() }),
    });
    const told = await answer.json();
    return answer.ok ? Number(told.run) : String(told.detail);
  } catch {
    return "The server is away: no rinse was added.";
  }
}
