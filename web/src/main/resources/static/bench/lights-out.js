// The dark: the whole page black, nothing lit, nothing moving; only the voice leads. Any key or touch goes on.

import { html } from "./elements.js";
import { nameOf } from "./keys.js";

const TWICE_WITHIN_MS = 700;
const LEAVE_WITHIN_MS = 6000;
const HELD_MS = 1500;
const LEFT_EDGE = 0.25;

/** @typedef {{words: string, felt: string[]}} Stage what is said, and the checks that hands have answered when it is done */
/**
 * @typedef {{say: (words: string) => void, done: (felt: string[]) => void, left: () => void,
 *   words: {leave: string}}} Ear
 */

export class LightsOut {
  /** @param {Stage[]} stages @param {Ear} ear */
  constructor(stages, ear) {
    this.stages = stages;
    this.ear = ear;
    this.at = 0;
    /** @type {string[]} */
    this.felt = [];
    this.lastAt = Number.NEGATIVE_INFINITY;
    this.touchedAt = Number.NaN;
    this.leavingUntil = Number.NEGATIVE_INFINITY;
    this.cover = html("div", { id: "dark", "aria-hidden": "true" });
    /** @type {AbortController} */
    this.listening = new AbortController();
  }

  begin() {
    document.documentElement.classList.add("lights-out");
    document.body.append(this.cover);
    this.bar = barOfTheBrowser();
    const how = { capture: true, signal: this.listening.signal };
    window.addEventListener("keydown", (event) => this.key(event), how);
    window.addEventListener("keyup", (event) => swallow(event), how);
    window.addEventListener("pointerdown", (event) => this.touch(event), how);
    window.addEventListener("pointerup", (event) => this.let(event), how);
    for (const kind of ["click", "contextmenu", "wheel"]) {
      window.addEventListener(kind, swallow, { ...how, passive: false });
    }
    this.speak();
  }

  /** @param {KeyboardEvent} event */
  key(event) {
    swallow(event);
    if (event.repeat || event.timeStamp - this.lastAt < TWICE_WITHIN_MS) {
      return;
    }
    this.lastAt = event.timeStamp;
    const name = nameOf(event);
    if (name === "Esc") {
      this.leave(event.timeStamp);
    } else if (name === "Backspace" || name === "ArrowLeft") {
      this.speak();
    } else {
      this.goOn(event.timeStamp);
    }
  }

  /** @param {PointerEvent} event */
  touch(event) {
    swallow(event);
    this.touchedAt = event.timeStamp;
  }

  /** A finger that is lifted: held long it asks to leave, at the left edge it asks again, anywhere else it goes on. @param {PointerEvent} event */
  let(event) {
    swallow(event);
    const held = event.timeStamp - this.touchedAt;
    this.touchedAt = Number.NaN;
    if (Number.isNaN(held) || event.timeStamp - this.lastAt < TWICE_WITHIN_MS) {
      return;
    }
    this.lastAt = event.timeStamp;
    if (held >= HELD_MS) {
      this.leave(event.timeStamp);
    } else if (event.clientX < window.innerWidth * LEFT_EDGE) {
      this.speak();
    } else {
      this.goOn(event.timeStamp);
    }
  }

  /** Once asks, twice leaves: a screen that lights up by mistake costs the film. @param {number} at */
  leave(at) {
    if (at < this.leavingUntil) {
      this.end();
      this.ear.left();
      return;
    }
    this.leavingUntil = at + LEAVE_WITHIN_MS;
    this.ear.say(this.ear.words.leave);
  }

  /** @param {number} at */
  goOn(at) {
    if (at < this.leavingUntil) {
      this.leavingUntil = Number.NEGATIVE_INFINITY;
      this.speak();
      return;
    }
    this.felt.push(...(this.stages[this.at]?.felt ?? []));
    this.at += 1;
    if (this.at >= this.stages.length) {
      this.end();
      this.ear.done(this.felt);
    } else {
      this.speak();
    }
  }

  speak() {
    this.ear.say(this.stages[this.at]?.words ?? "");
  }

  end() {
    this.listening.abort();
    this.cover.remove();
    this.bar?.remove();
    document.documentElement.classList.remove("lights-out");
  }
}

/** @param {Event} event */
function swallow(event) {
  event.preventDefault();
  event.stopImmediatePropagation();
}

/** A phone colours its bars by the page. */
function barOfTheBrowser() {
  const bar = html("meta", { name: "theme-color", content: "#000000" });
  document.head.prepend(bar);
  return bar;
}
