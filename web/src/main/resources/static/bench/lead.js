// Leads by ear, eye and hand: what is due sounds, is spoken, flashes and is felt, each cue once.

import { Awake } from "./awake.js";
import { Signal } from "./signal.js";
import { isOver } from "./snapshot.js";
import { Sound } from "./sound.js";
import { Voice } from "./voice.js";

const TOO_LATE_MS = 3000;
const KEPT_AS = "wetside.sound";

/** What this screen gives to the ear. @type {readonly ["all", "tones", "none"]} */
const CHOICES = ["all", "tones", "none"];

/** @typedef {import("./snapshot.js").Run} Run */

export class Lead {
  /** @param {HTMLElement} sheet */
  constructor(sheet) {
    this.sound = new Sound();
    this.voice = new Voice();
    this.signal = new Signal(sheet);
    this.awake = new Awake();
    /** Next steps pressed here that the server has not answered. @type {Set<string>} */
    this.pressed = new Set();
    this.upTo = Number.NaN;
    this.choice = chosen();
    this.apply();
  }

  /** Whether this screen should sound but cannot yet. */
  get isSilent() {
    return this.choice !== "none" && !this.sound.isAlive;
  }

  /** What the key for it says: what a press would do. */
  get changeWord() {
    return this.choice === "all" ? "Tones only" : this.choice === "tones" ? "Sound off" : "Sound on";
  }

  wake() {
    this.sound.wake();
  }

  /** @param {string} words */
  say(words) {
    this.voice.say(words);
  }

  change() {
    this.choice = CHOICES[(CHOICES.indexOf(this.choice) + 1) % CHOICES.length] ?? "all";
    try {
      localStorage.setItem(KEPT_AS, this.choice);
    } catch {
      // then the choice lasts as long as the page
    }
    this.apply();
  }

  apply() {
    this.sound.turn(this.choice !== "none");
    this.voice.turn(this.choice === "all");
  }

  /** @param {Run} run @param {number} now */
  follow(run, now) {
    this.awake.want(!isOver(run));
    if (run.provisional || isOver(run)) {
      this.sound.plan([], now);
      this.upTo = now;
      return;
    }
    this.sound.plan(run.cues, now);
    const from = Number.isNaN(this.upTo) ? now : this.upTo;
    const due = run.cues.filter((cue) => cue.at > from && cue.at <= now);
    this.upTo = Math.max(now, from);
    if (due.length === 0) {
      return;
    }
    this.signal.clear();
    const fresh = due.filter((cue) => now - cue.at < TOO_LATE_MS);
    const last = fresh[fresh.length - 1];
    if (last !== undefined) {
      this.voice.say(fresh.map((cue) => cue.speech).join(" "));
      if (fresh.some((cue) => cue.signal.flash)) {
        this.signal.give(last.signal.vibrateMilliseconds);
      }
    }
  }
}

/** @returns {"all" | "tones" | "none"} */
function chosen() {
  try {
    const kept = localStorage.getItem(KEPT_AS);
    return CHOICES.find((choice) => choice === kept) ?? "all";
  } catch {
    return "all";
  }
}
