// Keys of this screen: each can be changed or turned off; a foot switch is learned by pressing it.

import { html } from "../elements.js";
import { CHOICES, MEANINGS, areOff, asDelivered, bind, footKey, learnFoot, shownKey, turnOff } from "../keys.js";
import { back, keyIn } from "./panel.js";

/** @typedef {import("./panel.js").Bench} Bench @typedef {import("./panel.js").Panel} Panel @typedef {import("./panel.js").Pressable} Pressable */

/** @param {Bench} bench @returns {Panel} */
export function keysPanel(bench) {
  const off = areOff();
  const foot = footKey();
  const learn = () => bench.open(learning(bench, "Press", "the switch", "the next key that is pressed becomes the foot switch", learnFoot));
  return {
    name: "keys",
    lines: ["Keys of", "this screen"],
    then: () => (off ? "all keys are off; fingers and the foot switch act" : "kept on this device only"),
    body: () =>
      html(
        "div",
        { class: "b-panel words bound", role: "group", "aria-label": "Keys of this screen" },
        ...MEANINGS.map(([letter, words]) => one(bench, letter, words)),
        plain("Choices and arrows", "more", () => bench.open(choices(bench))),
      ),
    slots: () => [
      back(bench),
      { label: off ? "Turn keys on" : "Turn keys off", letter: "O", press: () => { turnOff(!off); bench.open(keysPanel(bench)); } },
      { label: "As delivered", letter: "Z", press: () => { asDelivered(); bench.open(keysPanel(bench)); } },
      { label: foot === "" ? "Learn a foot switch" : `Foot switch: ${foot}`, letter: "P", press: learn, next: true },
    ],
  };
}

/** @param {Bench} bench @returns {Panel} */
function choices(bench) {
  return {
    name: "keys-choices",
    lines: ["Choices", "and arrows"],
    then: () => "what is picked from a list, and the steps of a reading",
    body: () => html("div", { class: "b-panel words bound", role: "group", "aria-label": "Choices and arrows" }, ...CHOICES.map(([letter, words]) => one(bench, letter, words))),
    slots: () => [{ label: "Back", letter: "Esc", press: () => bench.open(keysPanel(bench)) }, null, null, null],
  };
}

/** @param {Bench} bench @param {string} letter @param {string} words */
function one(bench, letter, words) {
  const to = (/** @type {string} */ name) => bind(letter, name);
  return plain(words, shownKey(letter), () => bench.open(learning(bench, "Press", "the new key", `for "${words}"; now ${shownKey(letter) || "off"}`, to)));
}

/** A key that only a finger presses: on this panel letters are what is changed. @param {string} words @param {string} shown @param {() => void} press */
function plain(words, shown, press) {
  const key = keyIn({ label: words, letter: `pick ${words}`, press });
  key.removeAttribute("aria-keyshortcuts");
  key.append(html("kbd", {}, shown === "" ? "off" : shown));
  return key;
}

/** @param {Bench} bench @param {string} first @param {string} second @param {string} then @param {(name: string) => void} take @returns {Panel} */
function learning(bench, first, second, then, take) {
  const done = (/** @type {string} */ name) => {
    if (name !== "Esc") {
      take(name === "Backspace" ? "" : name);
    }
    bench.open(keysPanel(bench));
  };
  bench.actions.learn(done);
  return {
    name: "learning",
    lines: [first, second],
    then: () => then,
    body: () =>
      html(
        "div",
        { class: "b-panel advice", role: "status" },
        html("p", { class: "first" }, "Waiting for a key."),
        html("p", {}, "Any key of the keyboard, a foot switch, F13 to F24, Enter, Page Down, a media key. Backspace means none, Esc leaves it as it is."),
      ),
    slots: () => [
      { label: "Leave it", letter: "Esc", press: () => done("Esc") },
      { label: "No key", letter: "Backspace", press: () => done("Backspace") },
      null,
      null,
    ],
  };
}
