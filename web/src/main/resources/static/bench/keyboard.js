// When a key of the keyboard counts as a key of the Bench.

import { isFoot, meaningOf, nameOf } from "./keys.js";

const TWICE_WITHIN_MS = 700;
const CONTROLS = "input, textarea, select, a[href], [contenteditable], dialog, summary, audio, video, iframe";

/** Whether a control other than the Bench has the focus: then all keys are its own. @param {Element | null} focused */
function isElsewhere(focused) {
  if (focused === null || focused === document.body || focused === document.documentElement) {
    return false;
  }
  return focused.closest("#sheet") === null || focused.closest(CONTROLS) !== null;
}

export class Keyboard {
  /** @param {(letter: string) => boolean} press tells whether the letter meant something */
  constructor(press) {
    this.press = press;
    this.last = { letter: "", at: Number.NEGATIVE_INFINITY };
    /** Letters that may follow one another quickly, such as the steps of a reading. @type {Set<string>} */
    this.quick = new Set();
    /** Takes the next key, whatever it is. @type {((name: string) => void) | null} */
    this.learner = null;
    document.addEventListener("keydown", (event) => this.down(event));
  }

  /** The next key is learned and does nothing else. @param {((name: string) => void) | null} learner */
  learn(learner) {
    this.learner = learner;
  }

  /** @param {KeyboardEvent} event */
  down(event) {
    if (event.ctrlKey || event.altKey || event.metaKey || event.isComposing || isElsewhere(document.activeElement)) {
      return;
    }
    const name = nameOf(event);
    if (name === "Tab" || name === "Shift") {
      return;
    }
    if (event.repeat) {
      event.preventDefault(); // a key that is held down is one press, also for the key that has the focus
      return;
    }
    if (this.learner !== null) {
      event.preventDefault();
      const learner = this.learner;
      this.learner = null;
      this.last = { letter: name, at: event.timeStamp }; // the switch that was learned does not act at once
      learner(name);
      return;
    }
    this.act(event, name);
  }

  /** @param {KeyboardEvent} event @param {string} name */
  act(event, name) {
    const onAKey = document.activeElement instanceof HTMLButtonElement && (name === "Space" || name === "Enter");
    if (onAKey && !isFoot(name)) {
      return; // the key that has the focus is pressed by the browser itself
    }
    const letter = meaningOf(name);
    if (letter === null) {
      return;
    }
    if (this.isTwice(name, letter, event.timeStamp)) {
      event.preventDefault();
      return;
    }
    if (this.press(letter)) {
      event.preventDefault();
    }
  }

  /** The same key again within 0.7 s is one press of a wet hand. @param {string} name @param {string} letter @param {number} at */
  isTwice(name, letter, at) {
    const twice = name === this.last.letter && at - this.last.at < TWICE_WITHIN_MS && !this.quick.has(letter);
    if (!twice) {
      this.last = { letter: name, at };
    }
    return twice;
  }
}
