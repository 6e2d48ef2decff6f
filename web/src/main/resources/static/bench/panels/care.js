// Cautions in full: every bath with what is on file for it, each with its source, and baths that should not follow one another.

import { html } from "../elements.js";
import { back } from "./panel.js";

/** @typedef {import("./panel.js").Bench} Bench @typedef {import("./panel.js").Panel} Panel @typedef {import("../snapshot.js").Care} Care */

/** @param {Bench} bench @param {() => void} [left] where to go back to @returns {Panel} */
export function care(bench, left) {
  return {
    name: "care",
    lines: ["With", "care"],
    then: () => "the maker's safety data sheet comes first",
    body: () => html("div", { class: "b-panel care", tabindex: "0", role: "group", "aria-label": "Cautions of all baths" }, ...baths(bench)),
    slots: () => [left === undefined ? back(bench) : { label: "Back", letter: "Esc", press: left }, null, null, null],
  };
}

/** Each bath once, however often it is poured. @param {Bench} bench */
function baths(bench) {
  const seen = new Set();
  const parts = [];
  for (const step of bench.run().steps) {
    const name = step.bottle === null ? step.word : `${step.word}, bottle ${step.bottle}`;
    if (!step.care || (seen.has(name) && step.care.against.length === 0)) {
      continue;
    }
    const first = !seen.has(name);
    seen.add(name);
    parts.push(html("h2", {}, name), html("ul", {}, ...against(step.care), ...(first ? step.care.cautions.map((one) => line(one.text, one.standing, one.source)) : [])));
  }
  return parts;
}

/** @param {Care} care */
function against(care) {
  return care.against.map((one) => html("li", {}, html("b", { class: "warns" }, one.refused ? "never" : "not so"), ` ${one.text}`));
}

/** @param {string} text @param {string} standing @param {string} source */
function line(text, standing, source) {
  return html("li", {}, text, html("small", {}, ` ${standing}, ${source}`));
}
