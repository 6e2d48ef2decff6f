// Patches drawn on the picture, by pointer and by keyboard. Without it the fields do.

import { byKeyboard } from "./keyboard.js";
import { byPointer } from "./pointer.js";
import { Plate } from "./plate.js";
import { Rows } from "./rows.js";

const CLOSER = 0.5;

export class Desk {
  /** @param {Rows} rows @param {Plate} plate @param {HTMLElement} told */
  constructor(rows, plate, told) {
    this.rows = rows;
    this.plate = plate;
    this.told = told;
    /** @type {number | null} */
    this.chosen = null;
    this.fine = false;
  }

  draw() {
    this.plate.draw(this.rows.patches(), this.chosen);
    this.rows.mark(this.chosen);
  }

  /** @param {number | null} row */
  choose(row) {
    if (row !== this.chosen) {
      this.chosen = row;
      this.draw();
    }
  }

  /** @param {import("./rows.js").Patch} patch */
  change(patch) {
    this.rows.write(this.plate.inside(patch));
    this.draw();
  }

  /** In the middle of what is shown. */
  add() {
    const { view } = this.plate;
    const size = Math.max(1, Math.round(Math.min(view.width, view.height) / 8));
    const place = {
      x: Math.round(view.x + (view.width - size) / 2),
      y: Math.round(view.y + (view.height - size) / 2),
      width: size,
      height: size,
    };
    const patch = this.rows.add(place);
    this.chosen = patch.row;
    this.draw();
    this.plate.focus(patch.row);
    this.say(`Patch ${patch.label} added.`);
  }

  /** @param {number} row */
  remove(row) {
    const patch = this.rows.find(row);
    this.rows.remove(row);
    this.chosen = null;
    this.draw();
    const next = this.rows.patches()[0];
    if (next) {
      this.plate.focus(next.row);
    } else {
      document.getElementById("add")?.focus();
    }
    this.say(`Patch ${patch?.label ?? ""} taken away.`);
  }

  /** @param {number} factor */
  zoom(factor) {
    const patch = this.chosen === null ? undefined : this.rows.find(this.chosen);
    this.plate.zoom(factor, patch && { x: patch.x + patch.width / 2, y: patch.y + patch.height / 2 });
    this.settled();
  }

  /** The first look is coarse, for the sake of a light page; a finer one comes once it is wanted. */
  looksCloser() {
    if (!this.fine) {
      this.fine = true;
      this.plate.load();
    }
  }

  /** What is shown has changed, and the movement is over. */
  settled() {
    this.fine = true;
    this.plate.load();
    this.draw();
    this.say(`Shown: ${this.plate.view.width} of ${this.plate.width} pixels across.`);
  }

  /** @param {string} words */
  say(words) {
    this.told.textContent = words;
  }
}

/** @param {Desk} desk */
function keys(desk) {
  /** @param {string} id @param {() => void} act */
  const on = (id, act) => document.getElementById(id)?.addEventListener("click", act);
  on("add", () => desk.add());
  on("closer", () => desk.zoom(CLOSER));
  on("wider", () => desk.zoom(1 / CLOSER));
  on("whole", () => {
    desk.plate.zoom(Number.POSITIVE_INFINITY);
    desk.settled();
  });
}

/** @param {Desk} desk @param {HTMLElement} list */
function fields(desk, list) {
  list.addEventListener("input", () => desk.draw());
  list.addEventListener("focusin", (event) => {
    const row = Rows.rowOf(event.target);
    desk.choose(row !== null && desk.rows.find(row) ? row : null);
  });
}

const list = document.getElementById("rows");
const section = document.getElementById("plate");
const svg = document.getElementById("picture");
const told = document.getElementById("told");
if (list && section && svg instanceof SVGSVGElement && told) {
  const desk = new Desk(new Rows(list), new Plate(section, svg), told);
  keys(desk);
  fields(desk, list);
  byPointer(desk, section);
  byKeyboard(desk);
  for (const wakes of ["pointerenter", "focusin"]) {
    svg.addEventListener(wakes, () => desk.looksCloser(), { once: true });
  }
  for (const id of ["plate-keys", "keys-help"]) {
    document.getElementById(id)?.removeAttribute("hidden");
  }
  addEventListener("resize", () => desk.draw());
  desk.draw();
}
