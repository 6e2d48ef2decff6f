// What is seldom wanted: wait for me, longer, shorter, a note, giving up, leaving. A developer is never lengthened.

import { html } from "../elements.js";
import { openKey, stepAt } from "../snapshot.js";
import { back, keyIn } from "./panel.js";
import { written } from "./written.js";

/** @typedef {import("./panel.js").Bench} Bench @typedef {import("./panel.js").Pressable} Pressable */

/** @param {Bench} bench @returns {import("./panel.js").Panel} */
export function change(bench) {
  const keys = wishes(bench);
  const step = stepAt(bench.run(), bench.at());
  return {
    name: "change",
    lines: ["Change", "the run"],
    then: () => (step.developing ? "a developer cannot be lengthened or paused" : "only what the bath allows"),
    body: () => html("div", { class: "b-panel words", role: "group", "aria-label": "Changes" }, ...keys.map((key) => keyIn(key))),
    keys,
    slots: () => [
      back(bench),
      bench.actions.canUndo() ? { label: "Undo", letter: "U", press: bench.actions.undo } : { none: ["Nothing to undo", "on this screen"] },
      null,
      { label: "Leave the Bench", letter: "X", press: bench.actions.leave },
    ],
  };
}

/** @param {Bench} bench @returns {Pressable[]} */
function wishes(bench) {
  const run = bench.run();
  const at = bench.at();
  /** @type {Pressable[]} */
  const keys = [];
  const wish = (/** @type {string} */ label, /** @type {() => void} */ press) => keys.push({ label, letter: String((keys.length + 1) % 10), press });
  const send = (/** @type {import("../snapshot.js").Key} */ key, /** @type {Record<string, unknown>} */ more) => () => {
    bench.post({ ...key.event, ...more });
    bench.open(null);
  };
  const wait = openKey(run, "wait", at);
  if (wait !== undefined) {
    wish(wait.label, send(wait, {}));
  }
  const lengthen = openKey(run, "lengthen", at);
  for (const seconds of lengthen === undefined ? [] : [30, 60, 120]) {
    if (lengthen !== undefined && (lengthen.limitSeconds ?? 0) >= seconds) {
      wish(`${seconds < 60 ? "0:30" : `${seconds / 60}:00`} longer`, send(lengthen, { seconds, reason: "longer by a key at the Bench" }));
    }
  }
  const cut = openKey(run, "cut", at);
  if (cut !== undefined) {
    const left = Math.round((stepAt(run, at).drainAt - at) / 1000);
    if (left > 0) {
      wish("Drain now", send(cut, { seconds: left, reason: "cut short by a key at the Bench" }));
    }
  }
  const note = openKey(run, "note", at);
  if (note !== undefined) {
    wish("Write a note", () => bench.open(written(bench, "A note", (text) => bench.post({ ...note.event, text }))));
  }
  const abandon = openKey(run, "abandon", at);
  if (abandon !== undefined) {
    wish("Give the run up", () => bench.open(written(bench, "Give up?", (reason) => bench.post({ ...abandon.event, reason }), ["film is lost", "bath was wrong", "was only a trial"])));
  }
  return keys;
}
