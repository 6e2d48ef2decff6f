// The plates that name each bath. They stay in sight while their bath is, and keep off the now-line where there is room.

import { svg } from "./elements.js";

const SIDE = 8;
const OFF_LINE = 16;
const TIGHT = 40;

/** @typedef {import("./tape-marks.js").View} View @typedef {import("./snapshot.js").Step} Step */
/** @typedef {{step: Step, width: number, groups: Element[]}} Plate */

export class Plates {
  /** @param {View} view @param {Element} past @param {Element} future */
  constructor(view, past, future) {
    this.gaps = view.run.gaps;
    /** @type {Plate[]} */
    this.plates = view.run.steps
      .filter((step) => step.fill.length > 0)
      .map((step) => {
        const groups = [past, future].map((side) => {
          const group = plate(step, view);
          side.append(group);
          return group;
        });
        return { step, width: widthOf(step, view.narrow), groups };
      });
  }

  /** @param {number} at @param {number} scale @param {number} lineX distance from the left edge to the line */
  place(at, scale, lineX) {
    for (const { step, width, groups } of this.plates) {
      const from = ((step.fullAt - at) / 1000) * scale + SIDE;
      const to = ((step.drainAt - at) / 1000) * scale - SIDE - width;
      const tight = to < from && to > from - TIGHT; // a short bath: its plate reaches over the slopes
      const x = tight ? (from + to) / 2 : to < from ? null : offTheLine(Math.min(Math.max(from, -lineX + SIDE), to), from, to, width);
      const free = x === null ? null : offTheGaps(x, width, to, this.gaps.map((gap) => ({ from: ((gap.from - at) / 1000) * scale, to: ((gap.to - at) / 1000) * scale })));
      for (const group of groups) {
        group.setAttribute("visibility", free === null ? "hidden" : "visible");
        group.setAttribute("transform", `translate(${(free ?? 0).toFixed(2)} 0)`);
      }
    }
  }
}

/** @param {number} x @param {number} from @param {number} to @param {number} width */
function offTheLine(x, from, to, width) {
  const crosses = x < OFF_LINE && x + width > -OFF_LINE;
  if (!crosses) {
    return x;
  }
  const left = -width - OFF_LINE;
  if (left >= from) {
    return left;
  }
  return OFF_LINE <= to ? OFF_LINE : x;
}

/** Nothing is written where nobody watched. @param {number} x @param {number} width @param {number} to @param {{from: number, to: number}[]} gaps */
function offTheGaps(x, width, to, gaps) {
  const over = gaps.find((gap) => x < gap.to && x + width > gap.from);
  if (over === undefined) {
    return x;
  }
  const behind = Math.max(over.to + SIDE, over.to < 0 && over.to + SIDE + width > -OFF_LINE ? OFF_LINE : 0 - 1e9);
  return behind <= to ? behind : null;
}

/** @param {Step} step @param {boolean} narrow */
function widthOf(step, narrow) {
  const letter = step.bottle === null ? 0 : 46;
  return narrow && step.bottle !== null ? 34 : letter + step.word.length * 15.2 + 12;
}

/** @param {Step} step @param {View} view */
function plate(step, { geometry, narrow }) {
  const y = (geometry.top + geometry.bottom) / 2 - 17;
  const wordless = narrow && step.bottle !== null;
  const group = svg("g", { class: "bath-plate" });
  if (!wordless) {
    group.append(svg("rect", { class: "plate", x: -6, y: y - 5, width: widthOf(step, narrow), height: 44 }));
  }
  if (step.bottle !== null) {
    group.append(
      svg("g", { class: "letter" }, svg("rect", { x: 0, y, width: 34, height: 34 }), svg("text", { x: 17, y: y + 27, "text-anchor": "middle" }, step.bottle)),
    );
  }
  if (!wordless) {
    group.append(svg("text", { class: "t-name", x: step.bottle === null ? 0 : 44, y: y + 27 }, step.word));
  }
  return group;
}
