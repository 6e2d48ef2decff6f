// The signal for those who cannot hear: the whole sheet is printed for a second, once per act; the hand feels it.

const SHOWN_MS = 1100; // at least a second for the eye, however late the browser draws
const REST_MS = 600;

export class Signal {
  /** @param {HTMLElement} sheet */
  constructor(sheet) {
    this.sheet = sheet;
    this.free = 0;
    this.still = window.matchMedia("(prefers-reduced-motion: reduce)");
  }

  /**
   * Never more than two changes a second: a signal that comes too soon after another is carried by that one.
   * @param {number[]} pattern of vibration, ms
   */
  give(pattern) {
    navigator.vibrate?.(pattern);
    const now = performance.now();
    if (this.still.matches) {
      this.sheet.classList.add("framed"); // taken away when the act is over
      return;
    }
    if (now < this.free) {
      return;
    }
    this.free = now + SHOWN_MS + REST_MS;
    this.sheet.classList.add("flash");
    setTimeout(() => this.sheet.classList.remove("flash"), SHOWN_MS);
  }

  /** The act is over. */
  clear() {
    this.sheet.classList.remove("framed");
  }
}
