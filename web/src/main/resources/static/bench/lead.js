// Leads by ear, eye and hand: what is due sounds, is spoken, flashes and is felt, each cue once.

import { Awake } from "./awake.js";
import { tankOf } from "./hands.js";
import { Signal } from "./signal.js";
import { isOver } from "./snapshot.js";
import { Sound } from "./sound.js";
import { Voice } from "./voice.js";

const TOO_LATE_MS = 3000;
const SAME_PAGE_WITHIN_MS = 60000;

/** Acts that film is developed by: to miss one is worth a line in the record. */
export const HANDS = new Set(["pour in", "light on", "agitate", "drain"]);

/** @typedef {import("./snapshot.js").Run} Run @typedef {import("./snapshot.js").Cue} Cue */

/**
 * Whether a reloaded page was back soon enough: nothing for the hands was due meanwhile.
 * @param {{since: number, upTo: number}} before @param {Cue[]} cues @param {number} now
 */
export function goesOn(before, cues, now) {
  return now - before.upTo < SAME_PAGE_WITHIN_MS && !cues.some((cue) => HANDS.has(cue.act) && cue.at > before.upTo && cue.at <= now);
}

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
    /** The run whose cue track plays in its own element: the page itself is quiet about it. @type {number | null} */
    this.handedOver = null;
    this.upTo = Number.NaN;
    /** Since when this page has followed the run without a break, by the server's clock. */
    this.unbrokenSince = Number.NaN;
  }

  /**
   * A reloaded page goes on leading where it was, unless something was due meanwhile.
   * @param {{since: number, upTo: number}} before @param {Cue[]} cues @param {number} now
   */
  resume(before, cues, now) {
    if (goesOn(before, cues, now)) {
      this.unbrokenSince = before.since;
    }
  }

  /** Whether this screen should sound but cannot yet. */
  get isSilent() {
    return this.voice.choice !== "none" && this.voice.choice !== "reader" && !this.sound.isAlive && this.handedOver === null;
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
    if (run.provisional || run.phase === "abandoned") {
      this.sound.plan([], now);
      this.upTo = now;
      return;
    }
    // The last cue and the news that the run is over come together: it is told all the same.
    const own = run.cues.filter((cue) => tankOf(cue, run) !== this.handedOver);
    this.sound.plan(isOver(run) ? [] : own, now);
    const from = Number.isNaN(this.upTo) ? now : this.upTo;
    const due = run.cues.filter((cue) => cue.at > from && cue.at <= now);
    const unheard = this.isSilent && due.some((cue) => HANDS.has(cue.act));
    if (Number.isNaN(this.unbrokenSince) || now - from > TOO_LATE_MS || unheard) {
      this.unbrokenSince = now;
    }
    this.upTo = Math.max(now, from);
    if (due.length === 0) {
      return;
    }
    const fresh = due.filter((cue) => now - cue.at < TOO_LATE_MS);
    const last = fresh[fresh.length - 1];
    if (last !== undefined) {
      this.voice.sayDue(fresh.filter((cue) => own.includes(cue)).map((cue) => cue.speech).join(" "));
      if (isOver(run) && !this.sound.hasPlaced(last.id) && own.includes(last)) {
        this.sound.playNow(last.tone, this.voice.choice === "clips" ? last.clips : []); // ended by hand, before its time
      }
      if (fresh.some((cue) => cue.signal.flash)) {
        this.signal.give(last.signal.vibrateMilliseconds);
      }
    }
    if (fresh.length < due.length) {
      this.missed(due.filter((cue) => now - cue.at >= TOO_LATE_MS));
    }
  }
}
