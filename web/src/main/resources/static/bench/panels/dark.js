// Loading in the dark: what is to be done while there is light, then lights out and the voice alone.

import { html } from "../elements.js";
import { LightsOut } from "../lights-out.js";

/** @typedef {import("./panel.js").Bench} Bench @typedef {import("./panel.js").Panel} Panel @typedef {import("../lights-out.js").Stage} Stage */
/** @typedef {import("../snapshot.js").Run} Run */

const KEPT_AS = "wetside.loading";

/** Every sentence of the dark, as it stands in the file of spoken words (page.dark-…). */
export const WORDS = {
  bag: "Phone and watch out of the bag. Lights out. Press any key to go on.",
  out: "Lights out. Press any key to go on.",
  reel: "Take the reel. Feel that it is dry and whole.",
  leader: "Open the film. Cut the leader square.",
  wind: "Wind the film on. It runs on the edges of the reel, never across.",
  nextReel: "Next reel. Feel that it is dry and whole.",
  core: "Centre core in.",
  lid: "Lid on. Turn it until it locks.",
  tug: "One tug at the lid. It holds.",
  on: "Lights on when the lid is locked. Then press any key.",
  leave: "Press escape again and the screen lights up. Is all film covered?",
  left: "Left. The screen is lit.",
};

/** The first question before a run: is the film in the tank? @param {Bench} bench @param {(felt: string[]) => void} loaded @returns {Panel} */
export function isItLoaded(bench, loaded) {
  return {
    name: "loaded",
    lines: ["Is the film", "in the tank?"],
    then: () => "on its reel, the lid locked",
    body: () => html("div", { class: "b-panel advice" }, html("p", { class: "first" }, reelsOf(bench.run())), html("p", {}, "Loading is dark. The voice can lead it while this screen is black.")),
    slots: () => [
      { label: "Look round first", letter: "Esc", press: () => bench.open(null) },
      { label: "Load in the dark", letter: "D", press: () => bench.open(beforeTheDark(bench, loaded)) },
      { label: "Yes, it is loaded", letter: "Space", press: () => loaded([]), next: true, wide: true },
    ],
  };
}

/** While there is light. @param {Bench} bench @param {(felt: string[]) => void} loaded @returns {Panel} */
export function beforeTheDark(bench, loaded) {
  const inBag = loadsInBag();
  return {
    name: "before-the-dark",
    lines: ["Load in", inBag ? "the bag" : "the dark"],
    then: () => "everything within reach: film, scissors, reels, tank, lid",
    body: () =>
      html(
        "div",
        { class: "b-panel advice" },
        html("p", { class: "first" }, inBag ? "Phone and watch out of the bag: they light up by themselves." : "Watch off, other screens out of the room, no light under the door."),
        html("p", {}, "This page goes black and speaks. Space, any key or a touch goes on; Backspace, or a touch at the left edge, says it again; Esc twice, or a finger held on the screen twice, lights it. Quieten notices, turn the brightness down, keep the screen from sleeping."),
        html("p", { class: "soft" }, reelsOf(bench.run())),
      ),
    slots: () => [
      { label: "Back", letter: "Esc", press: () => bench.open(isItLoaded(bench, loaded)) },
      { label: inBag ? "In a dark room" : "In a bag", letter: "B", press: () => { keepBag(!inBag); bench.open(beforeTheDark(bench, loaded)); } },
      bench.ear.voice.leadsInTheDark
        ? { label: "Lights out", letter: "Space", press: () => lightsOut(bench, inBag, loaded), next: true, wide: true }
        : { none: ["No voice yet.", "Wait, or load without it"] },
    ],
  };
}

/** @param {Bench} bench @param {boolean} inBag @param {(felt: string[]) => void} loaded */
function lightsOut(bench, inBag, loaded) {
  const { voice } = bench.ear;
  voice.turnDark(true);
  const dark = new LightsOut(stages(bench.run(), inBag), {
    say: bench.say,
    words: WORDS,
    done: (felt) => {
      voice.turnDark(false);
      loaded(felt);
    },
    left: () => {
      bench.say(WORDS.left);
      voice.turnDark(false);
      bench.open(isItLoaded(bench, loaded));
    },
  });
  dark.begin();
}

/** What is said, in the order of hands. @param {Run} run @param {boolean} inBag @returns {Stage[]} */
export function stages(run, inBag) {
  const asked = new Set(run.checks.filter((one) => one.group === "closing").map((one) => one.id));
  /** @type {Stage[]} */
  const all = [{ words: inBag ? WORDS.bag : WORDS.out, felt: [] }];
  run.rolls.forEach((_roll, i) => {
    all.push({ words: i === 0 ? WORDS.reel : WORDS.nextReel, felt: ["reel-dry"] });
    all.push({ words: WORDS.leader, felt: ["leader-square"] });
    all.push({ words: WORDS.wind, felt: ["film-on-edges"] });
  });
  if (asked.has("centre-core")) {
    all.push({ words: WORDS.core, felt: ["centre-core"] });
  }
  all.push({ words: WORDS.lid, felt: ["lid-locked"] });
  all.push({ words: WORDS.tug, felt: ["tug"] });
  all.push({ words: WORDS.on, felt: [] });
  return all.map((stage) => ({ ...stage, felt: stage.felt.filter((id) => asked.has(id)) }));
}

/** @param {Run} run */
function reelsOf(run) {
  return run.rolls.map((roll) => `${roll.number}, ${roll.film}: ${roll.place}`).join(" · ");
}

/** Where this screen's user loads; kept on the device. */
function loadsInBag() {
  try {
    return localStorage.getItem(KEPT_AS) === "bag";
  } catch {
    return false;
  }
}

/** @param {boolean} inBag */
function keepBag(inBag) {
  try {
    localStorage.setItem(KEPT_AS, inBag ? "bag" : "room");
  } catch {
    // then it is asked anew with every page
  }
}
