// The volume test: tones and words are played, and one voice is chosen, before anything is poured.

import { html } from "../elements.js";
import { lockCheck, lockedSound } from "./locked.js";
import { keyIn } from "./panel.js";

/** @typedef {import("./panel.js").Bench} Bench @typedef {import("../voice.js").Choice} Choice */

const HEARD_AS = "wetside.heard";
const HEARD_FOR_MS = 12 * 60 * 60 * 1000;

/** Whether this device was heard this evening: by another day its volume may be another. @param {number} now by the device's clock */
export function wasHeard(now) {
  try {
    const heardAt = Date.parse(localStorage.getItem(HEARD_AS) ?? "");
    return now - heardAt < HEARD_FOR_MS;
  } catch {
    return false;
  }
}

/** @param {Bench} bench @param {() => void} [then] what comes after it @returns {import("./panel.js").Panel} */
export function hearing(bench, then) {
  const ear = bench.ear;
  let tone = -1;
  let played = ear.sound.isAlive; // nothing sounds before the first key: nobody can have heard it
  const tones = patterns(bench);
  const play = () => ear.sound.playNow(tones[0]?.notes ?? [], ear.voice.choice === "clips" ? ["you hear the voice that leads the run"] : []);
  const test = () => {
    played = true;
    play();
    if (ear.voice.choice === "browser") {
      ear.voice.say("You hear the voice that leads the run.");
    }
  };
  /** @type {Map<Choice, HTMLElement>} */
  const buttons = new Map();
  const choose = (/** @type {Choice} */ choice) => () => {
    ear.voice.choose(choice);
    show();
    test();
    bench.redraw();
  };
  const choices = ways(bench);
  const keys = choices.map(([choice, label], i) => ({ label, letter: String(i + 1), press: choose(choice), quick: true }));
  const show = () => buttons.forEach((button, choice) => button.setAttribute("aria-pressed", String(choice === ear.voice.choice)));
  const body = html("div", { class: "b-panel words ways", role: "group", "aria-label": "What leads the run by ear" });
  choices.forEach(([choice], i) => {
    const button = keyIn(/** @type {import("./panel.js").Pressable} */ (keys[i]));
    buttons.set(choice, button);
    body.append(button);
  });
  const nextTone = () => {
    tone = (tone + 1) % tones.length;
    played = true;
    ear.sound.playNow(tones[tone]?.notes ?? [], tones[tone]?.clips ?? []);
    bench.redraw();
  };
  const track = { label: ear.track.isPlaying ? "Take the sound back" : "Hand over to the cue track", letter: "T", press: () => void handOver(bench) };
  if (bench.run().phase === "running" || bench.run().phase === "waiting") {
    body.append(keyIn(track));
    keys.push({ ...track, quick: false });
  }
  if (ear.missing.length > 0) {
    body.append(html("ul", { class: "missing" }, ...ear.missing.map((sentence) => html("li", {}, sentence))));
  }
  show();
  if (played) {
    test();
  }
  const done = () => {
    keep();
    bench.open(null);
    if (then !== undefined && isHandheld() && lockedSound() === "") {
      bench.open(lockCheck(bench, then)); // asked once of a device whose screen will be locked
    } else {
      then?.();
    }
  };
  const ready = () => played || ear.voice.choice === "none" || ear.voice.choice === "reader";
  const last = () =>
    ready() ? { label: ear.voice.choice === "none" ? "I go by sight" : "I hear it", letter: "Space", press: done, next: true } : { label: "Play it", letter: "Space", press: () => { test(); bench.redraw(); }, next: true };
  return {
    name: "hearing",
    lines: ["Do you", "hear it?"],
    then: () => (tone < 0 ? "turn the volume until tone and words are clear" : `the tone of: ${tones[tone]?.word ?? ""}`),
    body: () => body,
    keys,
    slots: () => [
      { label: "Lock-screen check", letter: "L", press: () => bench.open(lockCheck(bench, () => bench.open(hearing(bench, then)))) },
      { label: "The next tone", letter: "P", press: nextTone, quick: true },
      null,
      last(),
    ],
  };
}

/** Led by a finger: a phone or a tablet. */
function isHandheld() {
  return window.matchMedia("(pointer: coarse)").matches;
}

/** @param {Bench} bench @returns {[Choice, string][]} */
function ways(bench) {
  /** @type {[Choice, string][]} */
  const all = [
    ["clips", "The voice that comes with Wetside"],
    ["browser", "The browser's own voice"],
    ["reader", "My screen reader speaks"],
    ["tones", "Tones, no words"],
    ["none", "No sound: I look"],
  ];
  return all.filter(([choice]) => choice !== "browser" || bench.ear.voice.browserSpeaks);
}

/** One tone for each act of this run, and that of a mishap. @param {Bench} bench */
function patterns(bench) {
  /** @type {Map<string, {word: string, notes: import("../snapshot.js").Note[], clips: string[]}>} */
  const acts = new Map();
  for (const cue of bench.run().cues) {
    if (!acts.has(cue.act)) {
      acts.set(cue.act, { word: cue.act, notes: cue.tone, clips: cue.clips });
    }
  }
  const first = acts.get("pour in");
  const rest = [...acts.values()].filter((one) => one !== first);
  const all = first === undefined ? rest : [first, ...rest];
  return [...all, { word: "mishap", notes: bench.ear.sound.book?.mishap ?? [], clips: [] }];
}

/** @param {Bench} bench */
async function handOver(bench) {
  const { track } = bench.ear;
  if (track.isPlaying) {
    track.stop();
  } else {
    await track.start();
  }
  bench.open(null);
}

function keep() {
  try {
    localStorage.setItem(HEARD_AS, new Date().toISOString());
  } catch {
    // then it is asked again
  }
}
