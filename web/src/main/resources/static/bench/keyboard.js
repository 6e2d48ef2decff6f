// When a key of the keyboard counts as a key of the Bench.

const TWICE_WITHIN_MS = 700;

/** The letter of a key as the sheet writes it: Space, Esc, W, ArrowUp. @param {KeyboardEvent} event */
function letterOf(event) {
  if (event.key === " " || event.code === "Space") {
    return "Space";
  }
  if (event.key === "Escape") {
    return "Esc";
  }
  return event.key.length === 1 ? event.key.toUpperCase() : event.key;
}

/** Whether a control other than the Bench has the focus: then all keys are its own. @param {Element | null} focused */
function isElsewhere(focused) {
  return focused !== null && focused.closest("input, textarea, select, a[href], [contenteditable], dialog") !== null;
}

export class Keyboard {
  /** @param {(letter: string) => boolean} press tells whether the letter meant something */
  constructor(press) {
    this.press = press;
    this.last = { letter: "", at: Number.NEGATIVE_INFINITY };
    /** Letters that may follow one another quickly, such as the steps of a reading. @type {Set<string>} */
    this.quick = new Set();
    document.addEventListener("keydown", (event) => this.down(event));
  }

  /** @param {KeyboardEvent} event */
  down(event) {
    if (event.repeat || event.ctrlKey || event.altKey || event.metaKey || isElsewhere(document.activeElement)) {
      return;
    }
    const letter = letterOf(event);
    const onAKey = document.activeElement instanceof HTMLButtonElement && (letter === "Space" || letter === "Enter");
    if (onAKey) {
      return; // the key that has the focus is pressed by the browser itself
    }
    if (this.isTwice(letter, event.timeStamp)) {
      event.preventDefault();
      return;
    }
    if (this.press(letter)) {
      event.preventDefault();
    }
  }

  /** The same key again within 0.7 s is one press of a wet hand. @param {string} letter @param {number} at */
  isTwice(letter, at) {
    const twice = letter === this.last.letter && at - this.last.at < TWICE_WITHIN_MS && !this.quick.has(letter);
    if (!twice) {
      this.last = { letter, at };
    }
    return twice;
  }
}
