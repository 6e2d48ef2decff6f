// Every mark of the tape but the plates: minute lines, lid, baths, combs, temperature, torn gaps, what moved.

import { hatchOf } from "./baths.js";
import { svg } from "./elements.js";
import { minute, moved, span } from "./times.js";
import { degrees } from "./units.js";

/** @typedef {import("./snapshot.js").Run} Run @typedef {import("./snapshot.js").Step} Step */
/** @typedef {{top: number, bottom: number, height: number, clockY: number, bandTop: number, labelY: number, dimY: number}} Geometry */
/** @typedef {{run: Run, geometry: Geometry, narrow: boolean, scale: number, origin: number, wallShift: number}} View */

const BAND_HEIGHT = 18;
const LOW_PX = 140;
const TOOTH_S = 1.5;
const SEEN_MOVED_MS = 2000;

/** Where things stand on a tape of that height. @param {number} height @param {boolean} narrow @returns {Geometry} */
export function geometryOf(height, narrow) {
  const bottom = height - (narrow ? 22 : 32);
  const low = narrow && height < LOW_PX;
  const top = bottom - (low ? 46 : narrow ? 58 : 68);
  return { top, bottom, height, clockY: low ? 27 : narrow ? 32 : 36, bandTop: 46, labelY: top - (narrow ? 6 : 8), dimY: height - 17 };
}

/** @param {View} view @param {"print" | "ink"} voice @returns {Element[]} */
export function shapes(view, voice) {
  const x = (/** @type {number} */ at) => ((at - view.origin) / 1000) * view.scale;
  return [
    ...minutes(view, x),
    ...lid(view, x),
    ...(view.narrow ? [] : temperature(view, x)),
    ...view.run.steps.flatMap((step) => bath(step, view.geometry, voice, x)),
    ...view.run.steps.flatMap((step) => combs(step, view, x)),
    ...(view.narrow ? [] : whatMoved(view, x)),
    ...view.run.gaps.map((gap) => torn(gap, view, x)),
  ];
}

/** @param {View} view @param {(at: number) => number} x */
function minutes({ run, geometry, wallShift, scale }, x) {
  if (run.provisional) {
    return []; // nothing has begun, so the clock does not stand on the tape yet
  }
  const from = (run.startedAt ?? run.now) - 600000;
  const to = run.endsAt + 1200000;
  const every = scale < 2 ? 300000 : 60000;
  let fine = "";
  let major = "";
  /** @type {Element[]} */
  const clocks = [];
  for (let at = Math.ceil((from + wallShift) / every) * every - wallShift; at < to; at += every) {
    major += `M${x(at).toFixed(1)} 8V${geometry.height}`;
    clocks.push(svg("text", { class: "t-clock", x: x(at) + 7, y: geometry.clockY }, minute(at + wallShift)));
    const steps = scale < 2 ? 5 : 6;
    for (let i = 1; i < steps; i++) {
      fine += `M${x(at + (every / steps) * i).toFixed(1)} 8V${geometry.height}`;
    }
  }
  return [svg("path", { class: "grid", d: fine }), svg("path", { class: "grid major", d: major }), ...clocks];
}

/** The heavy edge: how long the lid stays on. @param {View} view @param {(at: number) => number} x */
function lid({ run }, x) {
  const dark = run.steps.filter((step) => step.lidStaysOn);
  if (dark.length === 0) {
    return [];
  }
  const from = x(dark[0].beginAt) - 4000;
  return [svg("rect", { class: "dark", x: from, y: 0, width: x(dark[dark.length - 1].endAt) - from, height: 9 })];
}

/** @param {Step} step @param {Geometry} geometry @param {string} voice @param {(at: number) => number} x */
function bath(step, { top, bottom }, voice, x) {
  if (step.fill.length === 0) {
    return [];
  }
  const points = step.fill.map((p) => `${x(p.at).toFixed(1)},${(bottom - p.level * (bottom - top)).toFixed(1)}`).join(" ");
  return [
    svg("polygon", { class: "bath", points }),
    svg("polygon", { class: "bath-hatch", fill: `url(#${voice}-${hatchOf(step.kind)})`, points }),
  ];
}

/** Teeth on the surface, one for each inversion; broken where the cue was missed. @param {Step} step @param {View} view @param {(at: number) => number} x */
function combs(step, { geometry, scale, run }, x) {
  return step.agitation.flatMap((bout, i) => {
    const teeth = bout.count > 0 ? bout.count : Math.max(1, Math.round(bout.seconds / TOOTH_S));
    const apart = Math.max(3, (bout.seconds / teeth) * scale);
    let d = "";
    for (let t = 0; t < teeth && (bout.seconds < 120 || t * apart < bout.seconds * scale); t++) {
      d += `M${(x(bout.at) + t * apart).toFixed(1)} ${geometry.top - 26}v40`;
    }
    const comb = svg("path", { class: `comb${bout.missed ? " missed" : ""}${apart < 5 ? " fine" : ""}`, d });
    const next = step.agitation[i + 1];
    const room = ((next?.at ?? step.drainAt) - bout.at) / 1000 * scale - teeth * apart;
    if (i === 0 || room < 90 || geometry.height < LOW_PX || run.phase === "finished") {
      return [comb];
    }
    const label = bout.counted ? `${bout.count}×` : `${Math.round(bout.seconds)} s`;
    return [comb, svg("text", { class: "t-label", x: x(bout.at) + teeth * apart + 10, y: geometry.labelY }, label)];
  });
}

/** @param {View} view @param {(at: number) => number} x */
function temperature({ run, geometry }, x) {
  /** @type {Element[]} */
  const marks = [];
  const middle = geometry.bandTop + BAND_HEIGHT / 2;
  for (const step of run.steps) {
    const read = run.readings.filter((r) => r.step === step.index && !r.beforePour);
    const low = step.temperatureLowC;
    const high = step.temperatureHighC;
    const banded = low !== null && high !== null && high > low;
    const aim = banded ? (low + high) / 2 : read[0]?.correctedC;
    if (aim === undefined) {
      continue;
    }
    const perK = banded ? BAND_HEIGHT / (high - low) : 8;
    const y = (/** @type {number} */ c) => Math.min(geometry.top - 32, Math.max(42, middle - (c - aim) * perK));
    if (banded) {
      marks.push(svg("rect", { class: "aim", x: x(step.beginAt), y: geometry.bandTop, width: x(step.endAt) - x(step.beginAt), height: BAND_HEIGHT }));
    }
    if (read.length > 0) {
      const last = read[read.length - 1];
      const curve = step.dose?.temperatures ?? [];
      const known = curve.length > 0 ? curve.map((p) => ({ at: p.at, celsius: p.celsius })) : read.map((r) => ({ at: r.at, celsius: r.correctedC }));
      const path = (/** @type {{at: number, celsius: number}[]} */ points) => points.map((p) => `${x(p.at).toFixed(1)} ${y(p.celsius).toFixed(1)}`).join("L");
      const expected = known.filter((p) => p.at >= last.at);
      marks.push(svg("path", { class: "pen", d: `M${path(known.filter((p) => p.at >= read[0].at && p.at <= last.at))}` }));
      if (known[0] !== undefined && known[0].at < read[0].at) {
        marks.push(svg("path", { class: "pen guess", d: `M${path(known.filter((p) => p.at <= read[0].at))}` }));
      }
      marks.push(svg("path", { class: "pen guess", d: expected.length > 1 ? `M${path(expected)}` : `M${x(last.at).toFixed(1)} ${y(last.correctedC).toFixed(1)}H${x(step.drainAt).toFixed(1)}` }));
      for (const r of read) {
        marks.push(svg("circle", { class: "dot", cx: x(r.at), cy: y(r.correctedC), r: 7 }));
        marks.push(svg("text", { class: "t-small", x: x(r.at) - 12, y: geometry.top - 8, "text-anchor": "end" }, degrees(r.correctedC)));
      }
    }
  }
  return marks;
}

/** Where the plan had the end of a step, and how far it has moved. @param {View} view @param {(at: number) => number} x */
function whatMoved({ run, geometry }, x) {
  return run.steps.flatMap((step) => {
    const by = step.planned === null ? 0 : step.endAt - step.planned.endAt;
    if (step.planned === null || step.done || Math.abs(by) < SEEN_MOVED_MS || step.beginAt > run.now) {
      return [];
    }
    const was = x(step.planned.endAt);
    const is = x(step.endAt);
    const head = by > 0 ? -12 : 12;
    return [
      svg("path", { class: "ghost", d: `M${was} ${geometry.top - 4}V${geometry.height - 5}` }),
      svg("path", { class: "dim", d: `M${was} ${geometry.dimY}H${is}M${is} ${geometry.bottom}V${geometry.height - 5}M${is + head} ${geometry.dimY - 6}L${is} ${geometry.dimY}L${is + head} ${geometry.dimY + 6}` }),
      svg("text", { class: "t-small", x: Math.max(was, is) + 12, y: geometry.dimY + 10 }, moved(by)),
      svg("text", { class: "t-small", x: Math.min(was, is) - 10, y: geometry.dimY + 10, "text-anchor": "end" }, by > 0 ? "plan" : "now"),
    ];
  });
}

/** Time that nobody watched: torn paper. @param {import("./snapshot.js").Gap} gap @param {View} view @param {(at: number) => number} x */
function torn(gap, { geometry }, x) {
  const from = x(gap.from);
  const to = x(gap.to);
  const middle = (from + to) / 2;
  const wide = to - from > 190;
  const teeth = (/** @type {number} */ at, /** @type {number} */ way) => {
    let d = "";
    for (let i = 0; i <= 9; i++) {
      const y = way > 0 ? (geometry.height / 9) * i : geometry.height - (geometry.height / 9) * i;
      d += `L${(at + (i % 2 === 0 ? -5 : 7)).toFixed(1)} ${y.toFixed(1)}`;
    }
    return d;
  };
  const paper = svg("path", { class: "torn", d: `M${from} -5${teeth(from, 1)}L${to} ${geometry.height}${teeth(to, -1)}Z` });
  const words = wide ? [svg("text", { class: "torn-word", x: middle, y: geometry.clockY, "text-anchor": "middle" }, "nobody watched")] : [];
  const long = to - from > 60 ? [svg("text", { class: "torn-word", x: middle, y: geometry.clockY + 32, "text-anchor": "middle" }, span(gap.to - gap.from))] : [];
  return svg("g", {}, paper, ...words, ...long);
}
