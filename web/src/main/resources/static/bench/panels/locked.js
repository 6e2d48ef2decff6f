// Does this phone go on sounding with its screen locked? Better asked before the run than found out in it.

import { html } from "../elements.js";

const KEPT_AS = "wetside.locked";
const LANGUAGE = "en";

/**
 * @param {import("./panel.js").Bench} bench @param {() => void} then @returns {import("./panel.js").Panel}
 */
export function lockCheck(bench, then) {
  const player = new Audio(`/voice/${LANGUAGE}.opus`);
  const end = () => {
    player.pause();
    player.removeAttribute("src");
  };
  const plays = player.canPlayType('audio/ogg; codecs="opus"') !== "";
  if (plays) {
    void count(bench, player);
  }
  const answer = (/** @type {string} */ word) => () => {
    end();
    keep(word);
    then();
  };
  return {
    name: "locked",
    lines: ["Lock your", "screen now"],
    then: () => (plays ? "a voice counts; listen for ten seconds, then unlock" : "this browser does not play the sound file; keep the screen on during the run"),
    body: () =>
      html(
        "div",
        { class: "b-panel advice" },
        html("p", { class: "first" }, "Do you still hear it?"),
        html("p", {}, "If it goes on counting, the cue track can lead the run with the screen locked. If it stops, keep the screen on and the page in front."),
      ),
    slots: () => [
      { label: "Back", letter: "Esc", press: answer("not tried") },
      { label: "No, it stopped", letter: "X", press: answer("stops") },
      null,
      { label: "Yes, I heard it", letter: "Space", press: answer("goes on"), next: true },
    ],
  };
}

/** What was found out on this device: "goes on", "stops", or nothing yet. */
export function lockedSound() {
  try {
    return localStorage.getItem(KEPT_AS) ?? "";
  } catch {
    return "";
  }
}

/** The question, then one, two, three …: the numbers lie one after another in the file. @param {import("./panel.js").Bench} bench @param {HTMLAudioElement} player */
async function count(bench, player) {
  const from = bench.ear.sound.book?.clips["lock your screen now do you still hear it"];
  const numbers = bench.ear.sound.book?.clips["1"];
  if (from === undefined || numbers === undefined) {
    return;
  }
  player.currentTime = from[0] / 1000;
  let asked = false;
  player.addEventListener("timeupdate", () => {
    if (!asked && player.currentTime > (from[0] + from[1]) / 1000) {
      asked = true;
      player.currentTime = numbers[0] / 1000;
    }
  });
  await player.play().catch(() => undefined);
}

/** @param {string} word */
function keep(word) {
  try {
    localStorage.setItem(KEPT_AS, word);
  } catch {
    // then it is asked again
  }
}
