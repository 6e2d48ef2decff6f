// A reading: opens at the value that is expected, so that two or three presses do.

import { html } from "../elements.js";
import { stepAt } from "../snapshot.js";
import { DEGREE_SIGN, celsiusOf, figure, shownFrom } from "../units.js";
import { keyIn } from "./panel.js";

const LOWEST_C = -5;
const HIGHEST_C = 60;
const COMES_BACK_MS = 20000;
const ROOM_C = 20;

/**
 * @param {import("./panel.js").Bench} bench @param {number} [of] index of the bath; the one of the moment when not said
 * @param {{kept: () => void, left: () => void}} [then] where to go on; closes when not said
 * @returns {import("./panel.js").Panel}
 */
export function reading(bench, of, then = { kept: () => bench.open(null), left: () => bench.open(null) }) {
  const run = bench.run();
  const step = (of === undefined ? undefined : run.steps[of]) ?? stepAt(run, bench.at());
  const last = run.readings[run.readings.length - 1];
  let value = shownFrom(expected(run, step));
  const shown = html("b", {}, figure(value));
  const output = html("output", { "aria-live": "polite" }, shown, html("span", {}, `${DEGREE_SIGN} as read`));
  const by = (/** @type {number} */ change) => () => {
    value = Math.min(shownFrom(HIGHEST_C), Math.max(shownFrom(LOWEST_C), Math.round((value + change) * 10) / 10));
    shown.textContent = figure(value);
    bench.redraw();
  };
  const keys = [
    { label: "−1", letter: "ArrowLeft", press: by(-1), quick: true },
    { label: "−0.1", letter: "ArrowDown", press: by(-0.1), quick: true },
    { label: "+0.1", letter: "ArrowUp", press: by(0.1), quick: true },
    { label: "+1", letter: "ArrowRight", press: by(1), quick: true },
  ];
  const [down, downALittle, upALittle, up] = keys.map((key) => keyIn(key));
  const body = html("div", { class: "b-panel thermo", role: "group", "aria-label": "Reading" });
  body.append(/** @type {Node} */ (down), /** @type {Node} */ (downALittle), output, /** @type {Node} */ (upALittle), /** @type {Node} */ (up));
  const keep = () => {
    bench.post({ kind: "reading taken", step: step.index, temperatureC: celsiusOf(value), ...(last?.thermometer ? { thermometer: last.thermometer } : {}) });
    then.kept();
  };
  return {
    name: "reading",
    lines: ["Reading"],
    then: () => `of the ${step.word.toLowerCase()}${last?.thermometer ? `, thermometer ${last.thermometer}` : ""}`,
    body: () => body,
    keys,
    closesAfterMs: COMES_BACK_MS,
    slots: () => [
      { label: "Cancel", letter: "Esc", press: then.left },
      { none: ["Keys or arrows:", "up and down"] },
      null,
      { label: `Keep ${figure(value)}`, letter: "Space", press: keep, next: true },
    ],
  };
}

/** @param {import("../snapshot.js").Run} run @param {import("../snapshot.js").Step} step */
function expected(run, step) {
  const here = run.readings.filter((r) => r.step === step.index);
  const last = here[here.length - 1] ?? run.readings[run.readings.length - 1];
  if (last !== undefined) {
    return last.rawC;
  }
  return step.temperatureLowC !== null && step.temperatureHighC !== null ? (step.temperatureLowC + step.temperatureHighC) / 2 : ROOM_C;
}
