// A panel lies over the tape while something is asked; the count to the next act never leaves the sheet.

import { html } from "../elements.js";
import { shortcut, shownKey } from "../keys.js";
import { pressable } from "../press.js";

/** @typedef {import("../deck.js").Slot} Slot @typedef {import("../deck.js").Pressable} Pressable */
/**
 * What leads by ear, and what this browser cannot do.
 * @typedef {{voice: import("../voice.js").Voice, sound: import("../sound.js").Sound, track: import("../track.js").Track, missing: string[]}} Ear
 */
/**
 * What a panel may see and do.
 * @typedef {{
 *   run: () => import("../snapshot.js").Run, at: () => number, post: (event: Record<string, unknown>) => void,
 *   open: (panel: Panel | null) => void, say: (words: string) => void, alarm: (words: string) => void, ear: Ear, redraw: () => void,
 *   refresh: () => void, goTo: (run: number, felt: string[]) => void,
 *   actions: {dark: () => void, learn: (take: (name: string) => void) => void, keys: () => void, night: () => void, undo: () => void,
 *     leave: () => void, canUndo: () => boolean}
 * }} Bench
 * @typedef {{
 *   name: string, lines: string[], then: () => string, body: () => HTMLElement, slots: () => Slot[],
 *   keys?: Pressable[], closesAfterMs?: number, again?: () => Panel | null
 * }} Panel
 */

/** @param {Bench} bench @returns {Pressable} */
export function back(bench, label = "Back") {
  return { label, letter: "Esc", press: () => bench.open(null) };
}

/** A large key inside a panel. @param {Pressable} key @param {string} [kind] */
export function keyIn(key, kind = "key") {
  const button = html("button", { type: "button", class: kind, ...shortcut(key.letter) }, html("span", {}, key.label));
  const shown = shownKey(key.letter);
  if (key.letter.length === 1 && shown !== "") {
    button.append(html("kbd", { "aria-hidden": "true" }, shown));
  }
  pressable(button, () => key);
  return button;
}
