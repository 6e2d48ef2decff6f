// The cue track in a media element: it goes on with the screen locked, which a page does not. Always at the present moment.

const OFF_BY_S = 0.06;
const LOOK_EVERY_MS = 2000;

/** @typedef {import("./snapshot.js").Run} Run */
/**
 * @typedef {{run: () => Run, now: () => number, playing: (is: boolean) => void, moved: () => void, failed: (why: string) => void}} Listener
 */

export class Track {
  /** @param {Listener} listener */
  constructor(listener) {
    this.listener = listener;
    /** @type {HTMLAudioElement | null} */
    this.player = null;
    this.startsAt = 0;
    /** When each cue of the track is due. @type {Map<string, number>} */
    this.known = new Map();
    this.lookedAt = 0;
  }

  get isPlaying() {
    return this.player !== null && !this.player.paused;
  }

  /** From the present moment to the end of the run. To be called by a press: browsers ask for one. */
  async start() {
    const run = this.listener.run();
    const player = this.player ?? new Audio();
    this.player = player;
    this.startsAt = Math.floor(this.listener.now() / 1000) * 1000;
    this.known = new Map(run.cues.map((cue) => [cue.id, cue.at]));
    const ending = player.canPlayType('audio/ogg; codecs="opus"') === "" ? "wav" : "opus";
    player.src = `/api/runs/${run.run}/track.${ending}?from=${encodeURIComponent(new Date(this.startsAt).toISOString())}`;
    player.onended = () => this.stop();
    player.onerror = () => this.fail("The cue track could not be played.");
    try {
      await player.play();
      this.listener.playing(true);
      this.align();
      this.tellLockScreen(run);
    } catch {
      this.fail("The cue track could not be played.");
    }
  }

  stop() {
    this.player?.pause();
    this.player?.removeAttribute("src");
    this.player = null;
    this.listener.playing(false);
  }

  /** Keeps the track at the present moment, and sees whether the plan has moved away from it. */
  beat() {
    if (this.player === null || performance.now() - this.lookedAt < LOOK_EVERY_MS) {
      return;
    }
    this.lookedAt = performance.now();
    this.align();
    if (hasMoved(this.known, this.listener.run(), this.listener.now())) {
      this.listener.moved();
      void this.start();
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

/** Whether a cue that is still to come is elsewhere than in the track. @param {Map<string, number>} known @param {Run} run @param {number} now */
function hasMoved(known, run, now) {
  return run.cues.some((cue) => cue.at > now + 1000 && Math.abs((known.get(cue.id) ?? Number.NEGATIVE_INFINITY) - cue.at) > 50);
}
