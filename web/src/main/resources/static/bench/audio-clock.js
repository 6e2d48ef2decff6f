// The page's clock on the clock of the sound card. The two crystals drift apart (0.2 s an hour), so the difference is measured again
// and again; a single measurement is only as fine as one block of samples, so the middle of many is taken.

const KEPT = 21;
const SETTLED = 9;

export class AudioClock {
  /** @param {AudioContext} audio */
  constructor(audio) {
    this.audio = audio;
    /** Differences page clock − audio clock, ms. @type {number[]} */
    this.measured = [];
    this.difference = 0;
  }

  /** Whether there are measurements enough for one that was held up not to count. */
  get isSettled() {
    return this.measured.length >= SETTLED;
  }

  /** Measures once more. To be called about once a second, more often until it has settled. */
  measure() {
    const pair = this.pair();
    this.measured.push(pair.page - pair.audio * 1000);
    if (this.measured.length > KEPT) {
      this.measured.shift();
    }
    const sorted = [...this.measured].sort((one, other) => one - other);
    this.difference = sorted[Math.floor(sorted.length / 2)] ?? 0;
  }

  /** Nothing measured before counts any more: the sound card was stopped. */
  forget() {
    this.measured = [];
  }

  /** Where a moment of the page (performance.now) lies on the audio clock, s. @param {number} page ms */
  at(page) {
    return (page - this.difference) / 1000;
  }

  /** One moment on both clocks: the sample that leaves the loudspeaker now. */
  pair() {
    const heard = this.audio.getOutputTimestamp?.();
    if (heard?.performanceTime !== undefined && heard.contextTime !== undefined && heard.performanceTime > 0) {
      return { page: heard.performanceTime, audio: heard.contextTime };
    }
    return { page: performance.now(), audio: this.audio.currentTime };
  }
}
