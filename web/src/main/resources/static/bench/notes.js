// Tones and clips at a moment of the audio clock. What is put there sounds even if the page is hidden or busy.

/** @typedef {import("./snapshot.js").Note} Note */

/**
 * A pattern of notes: triangle waves that come and go softly, so that nothing clicks.
 * @param {AudioContext} audio @param {AudioNode} out @param {Note[]} notes @param {number} startsAt s on the audio clock
 * @param {number} loudness of full scale @param {number} edge s @returns {() => void} takes it back
 */
export function playNotes(audio, out, notes, startsAt, loudness, edge) {
  /** @type {AudioNode[]} */
  const voices = [];
  let at = startsAt;
  for (const note of notes) {
    const seconds = note.milliseconds / 1000;
    if (note.hertz > 0) {
      voices.push(...ring(audio, out, note.hertz, at, seconds, loudness, edge));
    }
    at += seconds;
  }
  return () => voices.forEach((voice) => voice.disconnect());
}

/**
 * @param {AudioContext} audio @param {AudioNode} out @param {number} hertz @param {number} at @param {number} seconds
 * @param {number} loudness @param {number} edge
 */
function ring(audio, out, hertz, at, seconds, loudness, edge) {
  const voice = audio.createOscillator();
  const shape = audio.createGain();
  voice.type = "triangle";
  voice.frequency.value = hertz;
  shape.gain.setValueAtTime(0, at);
  shape.gain.linearRampToValueAtTime(loudness, at + edge);
  shape.gain.setValueAtTime(loudness, at + seconds - edge);
  shape.gain.linearRampToValueAtTime(0, at + seconds);
  voice.connect(shape).connect(out);
  voice.start(at);
  voice.stop(at + seconds);
  return [voice, shape];
}

/**
 * Pieces of one recording, one after another.
 * @param {AudioContext} audio @param {AudioNode} out @param {AudioBuffer} recording
 * @param {{from: number, length: number}[]} pieces in s @param {number} startsAt s @param {number} until s; nothing sounds after it
 * @returns {() => void} takes it back
 */
export function playPieces(audio, out, recording, pieces, startsAt, until) {
  /** @type {AudioNode[]} */
  const voices = [];
  let at = startsAt;
  for (const piece of pieces) {
    const length = Math.min(piece.length, until - at);
    if (length <= 0) {
      break;
    }
    const voice = audio.createBufferSource();
    voice.buffer = recording;
    voice.connect(out);
    voice.start(at, piece.from, length);
    voices.push(voice);
    at += piece.length;
  }
  return () => voices.forEach((voice) => voice.disconnect());
}

/** How long a pattern takes, in ms. @param {Note[]} notes */
export function lengthOf(notes) {
  return notes.reduce((sum, note) => sum + note.milliseconds, 0);
}
