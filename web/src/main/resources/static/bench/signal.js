// The signal for those who cannot hear: the whole sheet is printed for a second, once per act; the hand feels it.

const SHOWN_MS = 1250; // at least a second for the eye, however late the browser draws
const REST_MS = 600;
const STILL_MS = 4000;

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
    if (now < this.free) {
      return;
    }
    // With reduced motion a frame that stands still, longer, and gone before the next act, or that act would change nothing.
    const [sign, shown] = this.still.matches ? ["framed", STILL_MS] : ["flash", SHOWN_MS];
    this.free = now + shown + REST_MS;
    this.sheet.classList.add(sign);
    setTimeout(() => this.sheet.classList.remove(sign), shown);
  }
}
