// Keeps the next minute of the score on the audio clock, so that a hidden tab, throttled timers or a busy page shift nothing.

import { AudioClock } from "./audio-clock.js";
import { lengthOf, playNotes, playPieces } from "./notes.js";
import { scoreOf } from "./score.js";
import { clipsFor, piecesOf, readBook, readRecording } from "./voicebook.js";

const AHEAD_MS = 65000;
const FIXED_WITHIN_MS = 1000;
const DRIFT_FIXED_WITHIN_MS = 5000;
const SAME_PLAN_MS = 2;
const FORGOTTEN_AFTER_MS = 5000;
const WORTH_MOVING_MS = 4;
const MEASURE_EVERY_MS = 900;
const SOON_S = 0.05;

/** @typedef {import("./snapshot.js").Cue} Cue @typedef {import("./score.js").Sounding} Sounding */

export class Sound {
  constructor() {
    /** @type {AudioContext | null} */
    this.audio = null;
    /** @type {AudioClock | null} */
    this.clock = null;
    /** @type {import("./voicebook.js").Book | null} */
    this.book = null;
    /** @type {AudioBuffer | null} */
    this.recording = null;
    /** What is on the audio clock: when by the server's clock and when by its own. @type {Map<string, {at: number, startsAt: number, cue: boolean, stop: () => void, hush: () => void}>} */
    this.placed = new Map();
    this.on = true;
    this.wish = { words: true, alive: true };
    this.measuredAt = Number.NEGATIVE_INFINITY;
    this.reading = false;
    /** Where everything goes through; a test listens here too. @type {GainNode | null} */
    this.out = null;
    /** @type {() => void} */
    this.hush = () => undefined;
    void this.read();
  }

  /** Whether anything can be heard: a browser is silent until a key is pressed on its page. */
  get isAlive() {
    return this.audio !== null && this.audio.state === "running";
  }

  /** Whether the shipped clips are there to be played. */
  get canSpeak() {
    return this.recording !== null;
  }

  /** Called with every press: the first one wakes the sound. */
  wake() {
    if (this.audio === null) {
      this.audio = new AudioContext();
      this.clock = new AudioClock(this.audio);
      this.out = this.audio.createGain();
      this.out.connect(this.audio.destination);
      void this.read();
    }
    if (this.audio.state !== "running") {
      this.clock?.forget();
      void this.audio.resume();
    }
  }

  /** Gets what the server ships for the ear; tried again until it is there. */
  async read() {
    if (this.reading) {
      return;
    }
    this.reading = true;
    try {
      this.book ??= await readBook();
      if (this.audio !== null) {
        this.recording ??= await readRecording(this.audio);
        this.takeBack(this.audio.currentTime + 1); // what was placed without words is placed again with them
      }
    } catch {
      // without the server there are tones and no words; the next minute asks again
    } finally {
      this.reading = false;
    }
  }

  /**
   * Puts the next minute of the score on the audio clock and takes back what has moved.
   * @param {Cue[]} cues in order @param {number} now by the server's clock
   */
  plan(cues, now) {
    const { audio, clock, book } = this;
    if (audio === null || clock === null || book === null || audio.state !== "running") {
      return;
    }
    const page = performance.now();
    if (page - this.measuredAt > MEASURE_EVERY_MS || !clock.isSettled) {
      this.measuredAt = page;
      clock.measure();
      if (this.recording === null) {
        void this.read();
      }
    }
    const score = this.on ? scoreOf(cues, book, this.wish, now, now + AHEAD_MS) : [];
    const due = new Map(score.map((one) => [one.id, one]));
    const startOf = (/** @type {Sounding} */ one) => clock.at(page + one.at - now);
    for (const [id, put] of this.placed) {
      const one = due.get(id);
      const mayMove = put.at - now > FIXED_WITHIN_MS;
      // A busy page may be held up between taking a cue back and placing it anew: for a few milliseconds of drift that is not risked shortly before it.
      const drifted = one !== undefined && put.at - now > DRIFT_FIXED_WITHIN_MS && Math.abs(startOf(one) - put.startsAt) * 1000 > WORTH_MOVING_MS;
      const moved = one === undefined || Math.abs(one.at - put.at) > SAME_PLAN_MS || drifted;
      if (mayMove && moved) {
        put.stop();
        this.placed.delete(id);
      } else if (put.at < now - FORGOTTEN_AFTER_MS || (!mayMove && one !== undefined && one.at - put.at > FIXED_WITHIN_MS)) {
        this.placed.delete(id);
      }
    }
    for (const one of score) {
      if (!this.placed.has(one.id)) {
        const startsAt = startOf(one);
        this.placed.set(one.id, { at: one.at, startsAt, cue: !one.soft, ...this.put(one, startsAt) });
      }
    }
  }

  /** Whether a cue sounds, will sound, or has just sounded. @param {string} id */
  hasPlaced(id) {
    return this.placed.has(id);
  }

  /** Takes it back, or its words alone. @param {Sounding} one @param {number} startsAt s on the audio clock @returns {{stop: () => void, hush: () => void}} */
  put(one, startsAt) {
    const { audio, out, book } = this;
    const nothing = () => undefined;
    if (audio === null || out === null || book === null) {
      return { stop: nothing, hush: nothing };
    }
    const tone = playNotes(audio, out, one.notes, startsAt, one.soft ? book.soft : book.loud, book.edgeMilliseconds / 1000);
    if (this.recording === null || one.clips.length === 0) {
      return { stop: tone, hush: nothing };
    }
    const shift = startsAt - one.at / 1000;
    const words = playPieces(audio, out, this.recording, piecesOf(book, one.clips), one.wordsAt / 1000 + shift, one.wordsUntil / 1000 + shift);
    const stop = () => {
      tone();
      words();
    };
    return { stop, hush: words };
  }

  /** Nobody speaks any more; what is to come will. */
  hushWords() {
    this.hush();
    const now = this.audio?.currentTime ?? 0;
    for (const put of this.placed.values()) {
      if (put.startsAt <= now) {
        put.hush();
      }
    }
  }

  /** When the next cue with a tone begins, s on the audio clock: a sentence said meanwhile ends before it. */
  nextAt() {
    const now = this.audio?.currentTime ?? 0;
    const coming = [...this.placed.values()].filter((put) => put.startsAt > now && put.cue).map((put) => put.startsAt);
    return Math.min(Number.POSITIVE_INFINITY, ...coming);
  }

  /** Plays a pattern and its words now; what was played so before it falls silent. @param {import("./snapshot.js").Note[]} notes @param {string[]} clips */
  playNow(notes, clips) {
    const { audio, book } = this;
    this.hushWords();
    if (audio === null || book === null || !this.on) {
      return;
    }
    const startsAt = audio.currentTime + SOON_S;
    const wordsAt = (startsAt + lengthOf(notes) / 1000) * 1000 + (notes.length > 0 ? book.wordsAfterMilliseconds : 0);
    this.hush = this.put({ id: "now", at: startsAt * 1000, notes, soft: false, clips, wordsAt, wordsUntil: this.nextAt() * 1000 }, startsAt).stop;
  }

  /** Says a sentence by the shipped clips; tells whether they could. @param {string} words */
  say(words) {
    const clips = this.book === null || this.recording === null ? null : clipsFor(this.book, words);
    if (clips === null || !this.isAlive || !this.on) {
      return false;
    }
    this.playNow([], clips);
    return true;
  }

  /** Silence at once, and nothing more until it is turned on again. @param {boolean} on @param {{words: boolean, alive: boolean}} wish */
  turn(on, wish) {
    this.on = on;
    this.wish = wish;
    this.hush();
    this.takeBack(on ? (this.audio?.currentTime ?? 0) : 0);
  }

  /** Takes back what begins after a moment of the audio clock; what sounds already is left to end. @param {number} startsAfter s */
  takeBack(startsAfter) {
    for (const [id, put] of this.placed) {
      if (put.startsAt > startsAfter) {
        put.stop();
        this.placed.delete(id);
      }
    }
  }
}
