// Patches as they stand in the fields: the fields are the truth, the picture shows them.

/** @typedef {{row: number, label: string, x: number, y: number, width: number, height: number}} Patch */

const CELLS = /** @type {const} */ (["label", "x", "y", "width", "height"]);
const NAMES = { label: "label", x: "left", y: "top", width: "width", height: "height" };

export class Rows {
  /** @param {HTMLElement} list */
  constructor(list) {
    this.list = list;
  }

  /** @returns {HTMLElement[]} */
  #elements() {
    return [...this.list.querySelectorAll("[data-row]")].map((one) => /** @type {HTMLElement} */ (one));
  }

  /** @param {HTMLElement} element @param {string} cell */
  static #input(element, cell) {
    const row = element.dataset["row"] ?? "";
    const input = element.querySelector(`[name="${cell}${row}"]`);
    if (!(input instanceof HTMLInputElement)) {
      throw new Error(`row ${row} has no ${cell}`);
    }
    return input;
  }

  /** @param {HTMLElement} element @returns {Patch} */
  static #patch(element) {
    const number = (/** @type {string} */ cell) => {
      const text = Rows.#input(element, cell).value.trim();
      return /^\d+$/.test(text) ? Number(text) : Number.NaN;
    };
    return {
      row: Number(element.dataset["row"]),
      label: Rows.#input(element, "label").value.trim(),
      x: number("x"),
      y: number("y"),
      width: number("width"),
      height: number("height"),
    };
  }

  /** Those with four whole numbers; the others are left to the server. @returns {Patch[]} */
  patches() {
    return this.#elements()
      .map((element) => Rows.#patch(element))
      .filter((one) => one.x >= 0 && one.y >= 0 && one.width >= 1 && one.height >= 1);
  }

  /** @param {number} row */
  find(row) {
    return this.patches().find((one) => one.row === row);
  }

  /** @param {Patch} patch */
  write(patch) {
    const element = this.#elements().find((one) => Number(one.dataset["row"]) === patch.row);
    if (element) {
      for (const cell of CELLS) {
        Rows.#input(element, cell).value = String(patch[cell]);
      }
    }
  }

  /** Into the first empty row, or a new one; labelled with the next number. @param {{x: number, y: number, width: number, height: number}} place */
  add(place) {
    const empty = this.#elements().find((one) => CELLS.every((cell) => Rows.#input(one, cell).value.trim() === ""));
    const element = empty ?? this.#make();
    const patch = { ...place, row: Number(element.dataset["row"]), label: this.#nextLabel() };
    this.write(patch);
    if (element === this.#elements().at(-1)) {
      this.#make();
    }
    return patch;
  }

  /** @param {number} row */
  remove(row) {
    const element = this.#elements().find((one) => Number(one.dataset["row"]) === row);
    if (element) {
      for (const cell of CELLS) {
        Rows.#input(element, cell).value = "";
      }
    }
  }

  /** @param {number | null} row */
  mark(row) {
    for (const element of this.#elements()) {
      element.classList.toggle("chosen", Number(element.dataset["row"]) === row);
    }
  }

  /** Row of a field. @param {EventTarget | null} field */
  static rowOf(field) {
    const element = field instanceof Element ? field.closest("[data-row]") : null;
    return element instanceof HTMLElement ? Number(element.dataset["row"]) : null;
  }

  #nextLabel() {
    const numbers = this.#elements().map((one) => Number.parseInt(Rows.#input(one, "label").value, 10));
    return String(Math.max(0, ...numbers.filter((one) => !Number.isNaN(one))) + 1);
  }

  #make() {
    const row = Math.max(-1, ...this.#elements().map((one) => Number(one.dataset["row"]))) + 1;
    const element = document.createElement("div");
    element.className = "patch-row";
    element.dataset["row"] = String(row);
    element.setAttribute("role", "group");
    element.setAttribute("aria-label", `patch ${row + 1}`);
    for (const cell of CELLS) {
      const input = document.createElement("input");
      input.name = cell + row;
      input.autocomplete = "off";
      input.setAttribute("aria-label", NAMES[cell]);
      if (cell !== "label") {
        input.inputMode = "numeric";
      }
      element.append(input);
    }
    this.list.append(element);
    return element;
  }
}
