// Writes the sheet: the act, the seconds, the count, the strip. Everything else has its own file.

import { inOneLine } from "./act.js";
import { byId, html, svg, write } from "./elements.js";
import { isoSpan, span } from "./times.js";

const MIDDLING_LINE = 11;
const LONG_LINE = 13;

/** @typedef {import("./act.js").Act} Act */

/** @param {Act} act @param {string[] | null} panelLines @param {string} then */
export function showAct(act, panelLines, then) {
  const lines = panelLines ?? act.lines;
  const heading = byId("act-words");
  const words = lines.join("\n");
  if (heading.dataset["words"] !== words) {
    heading.dataset["words"] = words;
    heading.replaceChildren(...lines.flatMap((line, i) => (i === 0 ? [line] : [" ", html("br"), line])));
    const box = byId("act-box");
    box.classList.toggle("two", lines.length > 1);
    const longest = Math.max(...lines.map((line) => line.length));
    box.classList.toggle("middling", longest >= MIDDLING_LINE && longest < LONG_LINE);
    box.classList.toggle("long", longest >= LONG_LINE);
  }
  write(byId("then"), then);
}

/** What is said of the bath that hands are about to touch. @param {import("./snapshot.js").Care | null} care */
export function showCare(care) {
  byId("sheet").classList.toggle("caring", care !== null);
  const words = care === null ? "" : [...care.against.map((one) => one.brief), care.brief].join("\n");
  for (const place of [byId("care"), byId("care-low")]) {
    if (place.dataset["words"] !== words) {
      place.dataset["words"] = words;
      place.replaceChildren(...(care === null ? [] : [...care.against.flatMap((one) => [html("b", { class: "warns" }, capital(one.brief)), " "]), capital(care.brief)]));
    }
  }
}

/** @param {string} words */
function capital(words) {
  return words.charAt(0).toUpperCase() + words.slice(1);
}

/** @param {number | null} ms until the next act; null when there is none */
export function showSeconds(ms) {
  const seconds = byId("seconds");
  write(seconds, ms === null ? "" : span(ms, "up"));
  if (ms !== null) {
    seconds.setAttribute("datetime", isoSpan(ms));
  }
}

/** @param {{of: number, done: number} | null} count */
export function showCount(count) {
  const drawing = byId("count");
  drawing.toggleAttribute("hidden", count === null);
  if (count === null || drawing.dataset["drawn"] === `${count.of}/${count.done}`) {
    return;
  }
  drawing.dataset["drawn"] = `${count.of}/${count.done}`;
  const step = 258 / count.of;
  const width = Math.min(28, step * 0.55);
  const boxes = Array.from({ length: count.of }, (_, i) =>
    svg("rect", { x: 2 + i * ((258 - width - 4) / Math.max(4, count.of - 1)), y: 2, width: width - 2, height: 60, ...(i < count.done ? { class: "done" } : {}) }),
  );
  drawing.setAttribute("aria-label", `${count.done} of ${count.of} inversions done`);
  drawing.replaceChildren(...boxes);
}

/** @param {import("./strips.js").Strip | null} strip */
export function showStrip(strip) {
  const notice = byId("notice");
  notice.hidden = strip === null;
  byId("sheet").classList.toggle("noticed", strip !== null);
  write(byId("notice-strong"), strip?.strong ?? "");
  write(byId("notice-rest"), strip?.rest ?? "");
}

/** @param {Act} act @param {string} tank @param {boolean} silent */
export function showTitle(act, tank, silent) {
  const title = `${inOneLine(act)} · ${tank}${silent ? " (silent)" : ""} · Wetside`;
  if (document.title !== title) {
    document.title = title;
  }
}
