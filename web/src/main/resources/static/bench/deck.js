// The keys at the foot of the sheet: made anew only when they change, so that a finger never loses its key.

import { html } from "./elements.js";
import { shortcut, shownKey } from "./keys.js";
import { pressable } from "./press.js";

/**
 * @typedef {{label: string, letter: string, press: () => void, next?: boolean, quick?: boolean, wide?: boolean}} Pressable
 * @typedef {{none: string[]}} Nothing
 * @typedef {Pressable | Nothing | null} Slot
 */

export class Deck {
  /** @param {HTMLElement} where */
  constructor(where) {
    this.where = where;
    this.drawn = "";
    /** @type {Slot[]} */
    this.slots = [];
  }

  /** @param {Slot[]} slots */
  show(slots) {
    this.slots = slots;
    const signature = slots.map(signatureOf).join("|");
    if (signature !== this.drawn) {
      this.drawn = signature;
      this.where.replaceChildren(...slots.map((slot, i) => this.element(slot, i)));
    }
  }

  /** @param {string} letter @returns {Pressable | undefined} */
  find(letter) {
    return /** @type {Pressable[]} */ (this.slots.filter((slot) => slot !== null && "press" in slot)).find((slot) => slot.letter === letter);
  }

  /** @param {Slot} slot @param {number} index */
  element(slot, index) {
    if (slot === null) {
      return html("span", {});
    }
    if ("none" in slot) {
      return html("p", { class: "key none" }, ...slot.none.map((line) => html("span", {}, line)));
    }
    const button = html("button", { type: "button", class: `key${slot.next === true ? " next" : ""}${slot.wide === true ? " wide" : ""}`, ...shortcut(slot.letter) }, html("span", {}, slot.label), html("kbd", { "aria-hidden": "true" }, shownKey(slot.letter)));
    pressable(button, () => {
      const now = this.slots[index];
      return now !== null && now !== undefined && "press" in now ? now : undefined;
    });
    return button;
  }
}

/** @param {Slot} slot */
function signatureOf(slot) {
  if (slot === null) {
    return "-";
  }
  return "none" in slot ? `none:${slot.none.join("/")}` : `${slot.label}:${shownKey(slot.letter)}:${slot.next === true}`;
}
