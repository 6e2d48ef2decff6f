// A few words typed, or one of the ready ones; while the field has the focus every key is the field's.

import { html } from "../elements.js";
import { back, keyIn } from "./panel.js";

/**
 * @param {import("./panel.js").Bench} bench @param {string} heading @param {(text: string) => void} keep
 * @param {string[]} [ready] @param {() => void} [afterwards] where to go on; closes when not said
 * @returns {import("./panel.js").Panel}
 */
export function written(bench, heading, keep, ready = [], afterwards = () => bench.open(null)) {
  const field = /** @type {HTMLInputElement} */ (html("input", { id: "written", autocomplete: "off", maxlength: "500" }));
  const done = (/** @type {string} */ text) => {
    if (text.trim() !== "") {
      keep(text.trim());
      afterwards();
    }
  };
  const keys = ready.map((words, i) => ({ label: words, letter: String(i + 1), press: () => done(words) }));
  field.addEventListener("keydown", (event) => {
    if (event.key === "Enter") {
      done(field.value);
    } else if (event.key === "Escape") {
      afterwards();
    }
  });
  return {
    name: `written-${heading}`,
    lines: [heading],
    then: () => "the bath runs on while you write",
    body: () =>
      html(
        "div",
        { class: "b-panel written" },
        html("div", { class: "words-row" }, ...keys.map((key) => keyIn(key))),
        html("p", { class: "line" }, html("label", { for: "written" }, ready.length === 0 ? "what is to be remembered" : "or the reason in your words"), field),
      ),
    keys,
    slots: () => [back(bench), null, null, { label: "Keep it", letter: "Space", press: () => done(field.value), next: true }],
  };
}
