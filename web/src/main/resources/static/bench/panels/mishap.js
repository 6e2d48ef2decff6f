// A mishap: words as keys; the first-minute advice is on the page already, so it comes at once, with or without the server.

import { html } from "../elements.js";
import { stepAt } from "../snapshot.js";
import { back, keyIn } from "./panel.js";
import { more } from "./told.js";

const ON_A_PHONE = 8;

/** On a phone the words come in two parts, so that no finger has to scroll. @param {import("./panel.js").Bench} bench @param {number} [from] @returns {import("./panel.js").Panel} */
export function mishap(bench, from = 0) {
  const run = bench.run();
  const step = stepAt(run, bench.at());
  const keys = run.mishaps.map((m, i) => ({
    label: m.what.charAt(0).toUpperCase() + m.what.slice(1),
    letter: letterOf(i),
    press: () => {
      bench.post({ kind: "mishap", step: step.index, what: m.what });
      bench.alarm(m.firstMinute);
      bench.open(advice(bench, m, step));
    },
  }));
  const atOnce = window.matchMedia("(max-width: 699px) and (orientation: portrait)").matches ? ON_A_PHONE : keys.length;
  const next = from + atOnce < keys.length ? from + atOnce : 0;
  return {
    name: "mishap",
    lines: ["What", "happened?"],
    then: () => (step.developing ? "the developer runs on" : "the bath runs on"),
    body: () => html("div", { class: "b-panel words", role: "group", "aria-label": "What happened" }, ...keys.slice(from, from + atOnce).map((key) => keyIn(key))),
    keys,
    slots: () => [back(bench), { none: [step.developing ? "The developer runs on" : "The bath runs on"] }, null, atOnce < keys.length ? { label: "Other mishaps", letter: "Space", press: () => bench.open(mishap(bench, next)) } : null],
  };
}

/** 1 … 9, 0, then letters that no other key has. @param {number} index */
function letterOf(index) {
  return "1234567890ABDEFG".charAt(index);
}

/** @param {import("./panel.js").Bench} bench @param {import("../snapshot.js").Mishap} m @param {import("../snapshot.js").Step} step @returns {import("./panel.js").Panel} */
function advice(bench, m, step) {
  const asked = more(bench, m, step);
  return {
    name: "advice",
    lines: ["Do this", "now"],
    then: () => m.what,
    body: () =>
      html(
        "div",
        { class: "b-panel advice", role: "alert" },
        html("p", { class: "first" }, m.firstMinute),
        html("p", {}, m.afterwards),
        html("p", { class: "soft" }, `${m.standing}; noted in the record`),
        asked.place,
      ),
    keys: asked.keys,
    slots: () => [
      back(bench),
      bench.actions.canUndo() ? { label: "It did not happen", letter: "U", press: () => { bench.actions.undo(); bench.open(null); } } : null,
      null,
      { label: "Done", letter: "Space", press: () => bench.open(null), next: true },
    ],
  };
}
