// Leads by ear, eye and hand: what is due sounds, is spoken, flashes and is felt, each cue once.

import { Awake } from "./awake.js";
import { Signal } from "./signal.js";
import { isOver } from "./snapshot.js";
import { Sound } from "./sound.js";
import { Voice } from "./voice.js";

const TOO_LATE_MS = 3000;

/** @typedef {import("./snapshot.js").Run} Run @typedef {import("./snapshot.js").Cue} Cue */

export class Lead {
  /** @param {HTMLElement} sheet @param {(cues: Cue[]) => void} missed cues that came and went while the page was frozen */
  constructor(sheet, missed) {
    this.sound = new Sound();
    this.voice = new Voice(this.sound);
    this.signal = new Signal(sheet);
    this.awake = new Awake();
    this.missed = missed;
    /** Next steps pressed here that the server has not answered. @type {Set<string>} */
    this.pressed = new Set();
    /** While a cue track plays in its own element, the page itself is quiet. */
    this.handedOver = false;
    this.upTo = Number.NaN;
  }

  /** Whether this screen should sound but cannot yet. */
  get isSilent() {
    return this.voice.choice !== "none" && this.voice.choice !== "reader" && !this.sound.isAlive && !this.handedOver;
  }

  wake() {
    this.sound.wake();
  }

  /** @param {string} words */
  say(words) {
    this.voice.say(words);
  }

  /** Something went wrong: its tone, then the first advice. @param {string} words */
  alarm(words) {
    const book = this.sound.book;
    this.sound.playNow(book?.mishap ?? [], []);
    this.signal.give([200, 100, 200, 100, 400]);
    setTimeout(() => this.say(words), 650);
  }

  /** @param {Run} run @param {number} now */
  follow(run, now) {
    this.awake.want(!isOver(run));
    if (run.provisional || isOver(run)) {
      this.sound.plan([], now);
      this.upTo = now;
      return;
    }
    this.sound.plan(this.handedOver ? [] : run.cues, now);
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
      this.voice.sayDue(fresh.map((cue) => cue.speech).join(" "));
      if (fresh.some((cue) => cue.signal.flash)) {
        this.signal.give(last.signal.vibrateMilliseconds);
      }
    }
    if (fresh.length < due.length) {
      this.missed(due.filter((cue) => now - cue.at >= TOO_LATE_MS));
    }
  }
}
