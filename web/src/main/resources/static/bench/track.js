// The cue track in a media element: it goes on with the screen locked, which a page does not. Always at the present moment.

const OFF_BY_S = 0.06;
const LOOK_EVERY_MS = 2000;

/** @typedef {import("./snapshot.js").Run} Run */
/**
 * @typedef {{run: (number: number | null) => Run | null, now: () => number, playing: (run: number | null) => void, moved: () => void, failed: (why: string) => void}} Listener
 */

export class Track {
  /** @param {Listener} listener */
  constructor(listener) {
    this.listener = listener;
    /** @type {HTMLAudioElement | null} */
    this.player = null;
    this.startsAt = 0;
    /** Whose track it is. @type {number | null} */
    this.of = null;
    /** When each cue of the track is due. @type {Map<string, number>} */
    this.known = new Map();
    this.lookedAt = 0;
  }

  get isPlaying() {
    return this.player !== null && !this.player.paused;
  }

  /**
   * From the present moment to the end of the run. To be called by a press: browsers ask for one. What plays already plays on until the
   * new one does.
   * @param {number | null} [number] of the run; the one that is led when nothing is said
   */
  async start(number = null) {
    const run = this.listener.run(number);
    if (run === null) {
      return;
    }
    const player = new Audio();
    const before = this.player;
    const startsAt = Math.floor(this.listener.now() / 1000) * 1000;
    const ending = player.canPlayType('audio/ogg; codecs="opus"') === "" ? "wav" : "opus";
    player.src = `/api/runs/${run.run}/track.${ending}?from=${encodeURIComponent(new Date(startsAt).toISOString())}`;
    try {
      await player.play();
    } catch {
      if (before === null) {
        this.fail("The cue track could not be played.");
      } else {
        this.listener.failed("A new cue track is ready. Press S and hand over again: the one that plays is out of date.");
        this.known = knownOf(run);
      }
      return;
    }
    before?.pause();
    this.player = player;
    this.of = run.run;
    this.startsAt = startsAt;
    this.known = knownOf(run);
    player.onended = () => this.stop();
    player.onerror = () => this.fail("The cue track could not be played.");
    this.listener.playing(run.run);
    this.align();
    this.tellLockScreen(run);
  }

  stop() {
    this.player?.pause();
    this.player?.removeAttribute("src");
    this.player = null;
    this.of = null;
    this.listener.playing(null);
  }

  /** Keeps the track at the present moment, and sees whether the plan has moved away from it. */
  beat() {
    if (this.player === null || performance.now() - this.lookedAt < LOOK_EVERY_MS) {
      return;
    }
    this.lookedAt = performance.now();
    this.align();
    const run = this.listener.run(this.of);
    if (run !== null && hasMoved(this.known, run, this.listener.now())) {
      this.listener.moved();
      void this.start(run.run);
    }
  }

  align() {
    const player = this.player;
    if (player === null || player.readyState < 2 || player.seeking) {
      return;
    }
    const should = (this.listener.now() - this.startsAt) / 1000;
    if (Math.abs(player.currentTime - should) > OFF_BY_S) {
      player.currentTime = should;
    }
  }

  /** @param {string} why */
  fail(why) {
    this.stop();
    this.listener.failed(why);
  }

  /** @param {Run} run */
  tellLockScreen(run) {
    if ("mediaSession" in navigator) {
      navigator.mediaSession.metadata = new MediaMetadata({ title: `${run.tank}: cue track`, artist: "Wetside" });
    }
  }
}

/** @param {Run} run */
function knownOf(run) {
  return new Map(run.cues.map((cue) => [cue.id, cue.at]));
}

/** Whether a cue that is still to come is elsewhere than in the track. @param {Map<string, number>} known @param {Run} run @param {number} now */
function hasMoved(known, run, now) {
  return run.cues.some((cue) => cue.at > now + 1000 && Math.abs((known.get(cue.id) ?? Number.NEGATIVE_INFINITY) - cue.at) > 50);
}
