// Tones on the audio clock, scheduled ahead, so that a busy or hidden page does not delay them.

const AHEAD_MS = 65000;
const FIXED_WITHIN_MS = 1000;
const LOUDNESS = 0.25;
const EDGE_S = 0.008;

/** @typedef {import("./snapshot.js").Cue} Cue */

export class Sound {
  constructor() {
    /** @type {AudioContext | null} */
    this.audio = null;
    /** What is already on the audio clock. @type {Map<string, {at: number, stop: () => void}>} */
    this.placed = new Map();
    this.on = true;
  }

  /** Whether anything can be heard: a browser is silent until a key is pressed on its page. */
  get isAlive() {
    return this.audio !== null && this.audio.state === "running";
  }

  /** Called with every press: the first one wakes the sound. */
  wake() {
    if (this.audio === null) {
      this.audio = new AudioContext();
    }
    if (this.audio.state === "suspended") {
      void this.audio.resume();
    }
  }

  /** Puts all tones of the next minute on the audio clock and takes back those that have moved. @param {Cue[]} cues @param {number} now */
  plan(cues, now) {
    const audio = this.audio;
    if (audio === null || audio.state !== "running") {
      return;
    }
    const due = new Map(this.on ? cues.filter((c) => c.at > now && c.at - now < AHEAD_MS).map((c) => [c.id, c]) : []);
    for (const [id, tone] of this.placed) {
      const cue = due.get(id);
      const gone = tone.at <= now;
      const movedAway = tone.at - now > FIXED_WITHIN_MS && (cue === undefined || Math.abs(cue.at - tone.at) > 5);
      if (movedAway) {
        tone.stop();
      }
      if (gone || movedAway || (!this.on && !gone)) {
        this.placed.delete(id);
      }
    }
    for (const [id, cue] of due) {
      if (!this.placed.has(id)) {
        const startsAt = audio.currentTime + (cue.at - now) / 1000;
        this.placed.set(id, { at: cue.at, stop: play(audio, cue, startsAt) });
      }
    }
  }

  /** Silence at once, and nothing more until it is turned on again. @param {boolean} on */
  turn(on) {
    this.on = on;
    if (!on) {
      this.placed.forEach((tone) => tone.stop());
      this.placed.clear();
    }
  }
}

/** @param {AudioContext} audio @param {Cue} cue @param {number} startsAt @returns {() => void} */
function play(audio, cue, startsAt) {
  const gain = audio.createGain();
  gain.connect(audio.destination);
  /** @type {OscillatorNode[]} */
  const voices = [];
  let at = startsAt;
  for (const note of cue.tone) {
    const seconds = note.milliseconds / 1000;
    if (note.hertz > 0) {
      voices.push(ring(audio, gain, note.hertz, at, seconds));
    }
    at += seconds;
  }
  return () => {
    voices.forEach((voice) => voice.disconnect());
    gain.disconnect();
  };
}

/** @param {AudioContext} audio @param {AudioNode} out @param {number} hertz @param {number} at @param {number} seconds */
function ring(audio, out, hertz, at, seconds) {
  const voice = audio.createOscillator();
  const edge = audio.createGain();
  voice.type = "triangle";
  voice.frequency.value = hertz;
  edge.gain.setValueAtTime(0, at);
  edge.gain.linearRampToValueAtTime(LOUDNESS, at + EDGE_S);
  edge.gain.setValueAtTime(LOUDNESS, at + seconds - EDGE_S);
  edge.gain.linearRampToValueAtTime(0, at + seconds);
  voice.connect(edge).connect(out);
  voice.start(at);
  voice.stop(at + seconds);
  return voice;
}
