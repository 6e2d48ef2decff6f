// The picture with its patches: which part is shown, and where a pointer is in pixels of the picture.

/** @typedef {import("./rows.js").Patch} Patch */
/** @typedef {{x: number, y: number, width: number, height: number}} View */

const SVG = "http://www.w3.org/2000/svg";
const SHOWN_PIXELS = 1200;
const LEAST_PART = 64;
const GRIP_CSS = 24;

export class Plate {
  /** @param {HTMLElement} section @param {SVGSVGElement} svg */
  constructor(section, svg) {
    this.svg = svg;
    this.width = Number(section.dataset["width"]);
    this.height = Number(section.dataset["height"]);
    this.address = section.dataset["view"] ?? "";
    /** @type {View} */
    this.view = { x: 0, y: 0, width: this.width, height: this.height };
    this.drawn = /** @type {SVGGElement} */ (svg.querySelector("#drawn"));
    this.image = /** @type {SVGImageElement} */ (svg.querySelector("image"));
  }

  /** Pixels of the picture for one of the screen. */
  get scale() {
    const box = this.svg.getBoundingClientRect();
    return Math.max(this.view.width / Math.max(1, box.width), this.view.height / Math.max(1, box.height));
  }

  /** @param {{clientX: number, clientY: number}} event */
  at(event) {
    const matrix = this.svg.getScreenCTM();
    const point = new DOMPoint(event.clientX, event.clientY).matrixTransform(matrix?.inverse());
    return { x: Math.round(point.x), y: Math.round(point.y) };
  }

  /** Shows a part of the same proportions about a middle. @param {number} factor below 1: closer @param {{x: number, y: number}} [middle] */
  zoom(factor, middle) {
    const least = Math.min(1, LEAST_PART / Math.min(this.width, this.height));
    const part = Math.min(1, Math.max(least, (this.view.width / this.width) * factor));
    const centre = middle ?? { x: this.view.x + this.view.width / 2, y: this.view.y + this.view.height / 2 };
    const width = Math.round(this.width * part);
    const height = Math.round(this.height * part);
    this.show({ x: centre.x - width / 2, y: centre.y - height / 2, width, height });
  }

  /** @param {number} dx @param {number} dy */
  shift(dx, dy) {
    this.show({ ...this.view, x: this.view.x + dx, y: this.view.y + dy });
  }

  /** @param {View} wanted */
  show(wanted) {
    const inside = (/** @type {number} */ from, /** @type {number} */ size, /** @type {number} */ whole) =>
      Math.round(Math.min(Math.max(0, from), whole - size));
    this.view = {
      x: inside(wanted.x, wanted.width, this.width),
      y: inside(wanted.y, wanted.height, this.height),
      width: wanted.width,
      height: wanted.height,
    };
    const { x, y, width, height } = this.view;
    this.svg.setAttribute("viewBox", `${x} ${y} ${width} ${height}`);
  }

  /** Fetches the part that is shown; called once a movement is over. */
  load() {
    const { x, y, width, height } = this.view;
    const image = /** @type {SVGImageElement} */ (this.image.cloneNode());
    image.setAttribute("href", `${this.address}?x=${x}&y=${y}&width=${width}&height=${height}&size=${SHOWN_PIXELS}`);
    for (const [name, value] of Object.entries(this.view)) {
      image.setAttribute(name, String(value));
    }
    // The old part stays below until the new one is there.
    image.addEventListener("load", () => {
      this.svg.querySelectorAll("image").forEach((one) => one !== image && one !== this.image && one.remove());
    });
    this.svg.insertBefore(image, this.drawn);
  }

  /** Keeps a rectangle inside the picture. @param {Patch} patch @returns {Patch} */
  inside(patch) {
    const width = Math.min(Math.max(1, patch.width), this.width);
    const height = Math.min(Math.max(1, patch.height), this.height);
    return {
      ...patch,
      width,
      height,
      x: Math.min(Math.max(0, patch.x), this.width - width),
      y: Math.min(Math.max(0, patch.y), this.height - height),
    };
  }

  /** @param {Patch[]} patches @param {number | null} chosen */
  draw(patches, chosen) {
    const focused = document.activeElement?.getAttribute("data-patch");
    this.drawn.replaceChildren(...patches.map((one) => this.#element(one, one.row === chosen)));
    if (focused !== null && focused !== undefined) {
      this.focus(Number(focused));
    }
  }

  /** @param {number} row */
  focus(row) {
    const element = this.drawn.querySelector(`[data-patch="${row}"]`);
    if (element instanceof SVGElement) {
      element.focus();
    }
  }

  /** @param {Patch} patch @param {boolean} chosen */
  #element(patch, chosen) {
    const group = document.createElementNS(SVG, "g");
    group.setAttribute("class", chosen ? "patch chosen" : "patch");
    group.setAttribute("data-patch", String(patch.row));
    group.setAttribute("tabindex", "0");
    group.setAttribute("role", "img");
    group.setAttribute(
      "aria-label",
      `patch ${patch.label}: left ${patch.x}, top ${patch.y}, ${patch.width} by ${patch.height} pixels`,
    );
    for (const layer of ["under", "top"]) {
      group.append(this.#shape("rect", { ...place(patch), class: layer }));
    }
    const text = this.#shape("text", { x: patch.x, y: patch.y - 4 * this.scale, "font-size": 18 * this.scale });
    text.textContent = patch.label;
    group.append(text);
    if (chosen) {
      const corner = { cx: patch.x + patch.width, cy: patch.y + patch.height };
      group.append(this.#shape("circle", { ...corner, r: 7 * this.scale, class: "corner" }));
      group.append(this.#shape("circle", { ...corner, r: GRIP_CSS * this.scale, class: "grip" }));
    }
    return group;
  }

  /** @param {string} name @param {Record<string, string | number>} attributes */
  #shape(name, attributes) {
    const element = document.createElementNS(SVG, name);
    for (const [key, value] of Object.entries(attributes)) {
      element.setAttribute(key, String(value));
    }
    return element;
  }
}

/** @param {Patch} patch */
function place(patch) {
  return { x: patch.x, y: patch.y, width: patch.width, height: patch.height };
}
