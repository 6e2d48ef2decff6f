// The browser's voice. One voice at a time: where it speaks, the sheet does not announce itself as well.

export class Voice {
  constructor() {
    this.on = true;
    this.live = document.getElementById("act-words");
    this.speech = "speechSynthesis" in window ? window.speechSynthesis : null;
    this.speech?.addEventListener?.("voiceschanged", () => this.choose());
    this.choose();
  }

  /** Whether the browser can speak at all. */
  get canSpeak() {
    return this.speech !== null && this.speech.getVoices().length > 0;
  }

  /** @param {boolean} on */
  turn(on) {
    this.on = on;
    if (!on) {
      this.speech?.cancel();
    }
    this.choose();
  }

  /** A screen reader gets the act only where no other voice says it. */
  choose() {
    this.live?.setAttribute("aria-live", this.on && this.canSpeak ? "off" : "polite");
  }

  /** What is said last counts. @param {string} words */
  say(words) {
    if (!this.on || this.speech === null || !this.canSpeak || words === "") {
      return;
    }
    this.speech.cancel();
    const said = new SpeechSynthesisUtterance(words);
    said.lang = "en";
    this.speech.speak(said);
  }
}
