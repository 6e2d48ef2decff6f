// What the server ships for the ear: the clips of a language, where each lies, and the tones that belong to no cue.

/** @typedef {import("./snapshot.js").Note} Note */
/**
 * @typedef {{
 *   language: string, clips: Record<string, [number, number]>, words: Record<string, string>, countIn: Note[], alive: Note[],
 *   mishap: Note[], aliveEverySeconds: number, loud: number, soft: number, edgeMilliseconds: number, wordsAfterMilliseconds: number
 * }} Book
 */

const NOT_SAID = /[^\p{L}\p{N}]+/gu;

/** @returns {Promise<Book>} */
export async function readBook(language = "en") {
  const answer = await fetch(`/voice/${language}.json`);
  if (!answer.ok) {
    throw new Error(`no voice ${language}`);
  }
  return answer.json();
}

/** @param {BaseAudioContext} audio @returns {Promise<AudioBuffer>} */
export async function readRecording(audio, language = "en") {
  const answer = await fetch(`/voice/${language}.opus`);
  if (!answer.ok) {
    throw new Error(`no clips ${language}`);
  }
  return audio.decodeAudioData(await answer.arrayBuffer());
}

/** The name of the clip that says a text: its letters and digits, in small letters. @param {string} text */
export function clipOf(text) {
  return text.toLowerCase().replace(NOT_SAID, " ").trim();
}

/** The clips that say a text, whole or sentence by sentence; null when one is missing. @param {Book} book @param {string} text */
export function clipsFor(book, text) {
  if (clipOf(text) in book.clips) {
    return [clipOf(text)];
  }
  const parts = text.split(/[.:;!?]+\s*/u).map(clipOf).filter((part) => part !== "");
  return parts.length > 0 && parts.every((part) => part in book.clips) ? parts : null;
}

/** Where clips lie in the recording, in s; those it does not have are left out. @param {Book} book @param {string[]} clips */
export function piecesOf(book, clips) {
  return clips.flatMap((clip) => {
    const place = book.clips[clip];
    return place === undefined ? [] : [{ from: place[0] / 1000, length: place[1] / 1000 }];
  });
}
