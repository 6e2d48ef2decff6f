// A question the server asks once before it does what was pressed.

import { html } from "../elements.js";
import { back } from "./panel.js";

/**
 * @param {import("./panel.js").Bench} bench @param {string} question @param {() => void} yes
 * @returns {import("./panel.js").Panel}
 */
export function ask(bench, question, yes) {
  return {
    name: `question-${question}`,
    lines: ["Really?"],
    then: () => "nothing has been kept yet",
    body: () => html("div", { class: "b-panel advice", role: "alert" }, html("p", { class: "first" }, question)),
    slots: () => [
      back(bench, "No, go back"),
      null,
      null,
      {
        label: "Yes, do it",
        letter: "Y",
        next: true,
        press: () => {
          yes();
          bench.open(null);
        },
      },
    ],
  };
}
