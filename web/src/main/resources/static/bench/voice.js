// One voice at a time: the shipped clips, the browser's voice, or the screen reader; chosen at the volume test, kept on this device.

const KEPT_AS = "wetside.voice";

/** @typedef {"clips" | "browser" | "reader" | "tones" | "none"} Choice */
/** @type {readonly Choice[]} */
const CHOICES = ["clips", "browser", "reader", "tones", "none"];

export class Voice {
  /** @param {import("./sound.js").Sound} sound */
  constructor(sound) {
    this.sound = sound;
    this.live = document.getElementById("act-words");
    this.forReader = document.getElementById("said");
    this.speech = "speechSynthesis" in window ? window.speechSynthesis : null;
    /** @type {Choice} */
    this.choice = kept();
    /** In the dark there is nothing but the voice, whatever leads in the light. */
    this.dark = false;
    this.apply();
  }

  /** Whether the browser has a voice of its own. */
  get browserSpeaks() {
    return this.speech !== null && this.speech.getVoices().length > 0;
  }

  /** @param {Choice} choice */
  choose(choice) {
    this.choice = choice;
    try {
      localStorage.setItem(KEPT_AS, choice);
    } catch {
      // then the choice lasts as long as the page
    }
    this.apply();
  }

  /** A screen reader gets the act only where no other voice says it. */
  apply() {
    this.sound.turn(this.dark || this.choice !== "none", { words: this.choice === "clips", alive: true });
    this.live?.setAttribute("aria-live", this.choice === "clips" || this.choice === "browser" ? "off" : "polite");
    if (this.choice !== "browser") {
      this.speech?.cancel();
    }
  }

  /** Whether somebody in the dark would hear what to do. */
  get leadsInTheDark() {
    return this.sound.isAlive && (this.sound.canSpeak || this.browserSpeaks);
  }

  /** @param {boolean} dark */
  turnDark(dark) {
    this.dark = dark;
    this.apply();
  }

  /** The words of cues that are due now; the clips are on the audio clock already, and nobody speaks into them. @param {string} words */
  sayDue(words) {
    if (this.choice === "browser") {
      this.read(words);
    } else if (words !== "") {
      this.speech?.cancel();
    }
  }

  /** What is said last counts. @param {string} words */
  say(words) {
    if (this.dark) {
      this.aloud(words);
    } else if (this.choice === "browser") {
      this.read(words);
    } else if (this.choice === "clips") {
      this.aloud(words);
    } else if (this.choice === "reader") {
      this.forReader?.replaceChildren(words);
    }
  }

  /** By the clips; a sentence that nobody spoke beforehand is read by the browser's voice, when the clips are quiet. @param {string} words */
  aloud(words) {
    this.speech?.cancel();
    if (!this.sound.say(words)) {
      this.sound.hushWords();
      this.read(words);
    }
  }

  /** @param {string} words */
  read(words) {
    if (this.speech === null || !this.browserSpeaks || words === "") {
      return;
    }
    this.speech.cancel();
    const said = new SpeechSynthesisUtterance(words);
    said.lang = "en";
    this.speech.speak(said);
  }
}

/** @returns {Choice} */
function kept() {
  try {
    const known = localStorage.getItem(KEPT_AS);
    return CHOICES.find((choice) => choice === known) ?? "clips";
  } catch {
    return "clips";
  }
}
