// A press by finger or mouse: a wet finger that lands twice within 0.7 s has pressed once.

const TWICE_WITHIN_MS = 700;
let last = { letter: "", at: Number.NEGATIVE_INFINITY };

/** @typedef {{label: string, letter: string, press: () => void, quick?: boolean}} Pressable */

/**
 * Lets a key be pressed by finger, mouse, or the browser's own way with the focus.
 * @param {HTMLElement} button @param {() => Pressable | undefined} current the key this button stands for now
 */
export function pressable(button, current) {
  button.addEventListener("click", (event) => {
    const key = current();
    if (key === undefined) {
      return;
    }
    const twice = key.letter === last.letter && event.timeStamp - last.at < TWICE_WITHIN_MS && key.quick !== true;
    last = { letter: key.letter, at: event.timeStamp };
    if (!twice) {
      key.press();
    }
    if (event.detail > 0) {
      button.blur(); // pressed by hand: the keyboard's Space goes on meaning the next step
    }
  });
}
