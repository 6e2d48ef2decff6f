// The tape: a strip that runs to the left under the fixed line. Drawn once per snapshot in its own coordinates, then only
// moved: x = (instant - now) * px per second. Past and future are the same drawing twice, printed and drawn.

import { svg } from "./elements.js";
import { geometryOf, shapes } from "./tape-marks.js";
import { Plates } from "./tape-plates.js";

const WIDE_PX = 4;
const NARROW_PX = 2.4;
const SLOW_PX = 1;
const LONG_WAIT_MS = 180000;
const FAR = 100000;

/** @typedef {import("./snapshot.js").Run} Run @typedef {import("./act.js").Act} Act */

export class Tape {
  /** @param {HTMLElement} figure */
  constructor(figure) {
    this.figure = figure;
    this.drawing = /** @type {SVGSVGElement} */ (figure.querySelector("svg"));
    this.still = window.matchMedia("(prefers-reduced-motion: reduce)");
    this.drawn = "";
    /** @type {Element[]} */
    this.moving = [];
    /** @type {Plates | null} */
    this.plates = null;
    this.origin = 0;
    this.scale = WIDE_PX;
  }

  /** Whether the narrow drawing fits this sheet; the style sheet knows. */
  get narrow() {
    return getComputedStyle(this.figure).getPropertyValue("--tape").trim() === "narrow";
  }

  /** @param {Run} run @param {Act} act @param {number} at moment at the line @param {number} wallShift what to add for the wall clock */
  show(run, act, at, wallShift) {
    const narrow = this.narrow;
    const height = this.figure.clientHeight;
    if (height === 0) {
      return; // a panel lies over it
    }
    const scale = scaleOf(act, narrow, run);
    const signature = [run.run, run.sequence, run.phase, run.now, narrow, height, scale].join();
    if (signature !== this.drawn) {
      this.drawn = signature;
      this.scale = scale;
      this.origin = at;
      this.draw(run, height, narrow, wallShift);
    }
    const seconds = this.still.matches ? Math.floor((at - this.origin) / 1000) : (at - this.origin) / 1000;
    const x = -seconds * this.scale;
    for (const group of this.moving) {
      group.setAttribute("transform", `translate(${x.toFixed(2)} 0)`);
    }
    this.plates?.place(at, this.scale, this.lineX());
  }

  lineX() {
    return this.drawing.getBoundingClientRect().left - this.figure.getBoundingClientRect().left;
  }

  /** @param {Run} run @param {number} height @param {boolean} narrow @param {number} wallShift */
  draw(run, height, narrow, wallShift) {
    const geometry = geometryOf(height, narrow);
    const view = { run, geometry, narrow, scale: this.scale, origin: this.origin, wallShift };
    const past = svg("g", { class: "past", "clip-path": "url(#clip-past)" });
    const future = svg("g", { class: "future", "clip-path": "url(#clip-future)" });
    this.moving = [past, future].map((side) => {
      const group = svg("g", {}, ...shapes(view, side === past ? "print" : "ink"));
      side.append(group);
      return group;
    });
    this.plates = new Plates(view, past, future);
    const line = svg("path", { class: "nowline", d: `M-3 0V${height}H3V0Z` });
    this.drawing.setAttribute("height", String(height));
    this.drawing.replaceChildren(clip("clip-past", -FAR, height), clip("clip-future", 0, height), past, future, line);
  }
}

/** @param {string} id @param {number} x @param {number} height */
function clip(id, x, height) {
  return svg("clipPath", { id }, svg("rect", { x, y: -50, width: FAR, height: height + 100 }));
}

/** A long wait runs slower, so that a quarter of an hour fits. @param {Act} act @param {boolean} narrow @param {Run} run */
function scaleOf(act, narrow, run) {
  const over = run.phase === "finished" || run.phase === "abandoned";
  const wait = act.cue !== null && act.next !== null && act.next.at - act.cue.at >= LONG_WAIT_MS;
  if (over || wait || run.phase === "waiting") {
    return narrow ? SLOW_PX * 0.6 : SLOW_PX;
  }
  return narrow ? NARROW_PX : WIDE_PX;
}
