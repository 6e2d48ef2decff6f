// What may be said more of a mishap once it was told: how the developer was really mixed, or into which bottle it went.

import { clock, span } from "../times.js";
import { html } from "../elements.js";
import { keyIn } from "./panel.js";

const ANSWER_WITHIN_MS = 6000;

/** @typedef {import("./panel.js").Bench} Bench @typedef {import("./panel.js").Pressable} Pressable @typedef {import("../snapshot.js").Mishap} Mishap @typedef {import("../snapshot.js").Run} Run */
/**
 * @typedef {{dilution: string, seconds: number, standing: string, source: string, apart: {film: string, seconds: number}[], refused: string | null}} Other
 * @typedef {{step: number | null, planned: string, others: Other[], why: string}} Dilutions
 */

/**
 * Keys under the advice, and what stands beside them. Without the server there are none for a dilution: the advice is enough.
 * @param {Bench} bench @param {Mishap} m @param {import("../snapshot.js").Step} step the bath it was told of
 * @returns {{place: HTMLElement, keys: Pressable[]}}
 */
export function more(bench, m, step) {
  /** @type {Pressable[]} */
  const keys = [];
  const place = html("div", { class: "more" });
  if (m.asks === "dilution") {
    dilutions(bench.run().run).then(
      (known) => showDilutions(bench, m, known, keys, place),
      () => place.replaceChildren(),
    );
  } else if (m.asks === "bottle") {
    showBottles(bench, m, step, keys, place);
  }
  return { place, keys };
}

/** @param {number} run @returns {Promise<Dilutions>} */
async function dilutions(run) {
  const answer = await fetch(`/api/runs/${run}/dilutions`, { cache: "no-store", signal: AbortSignal.timeout(ANSWER_WITHIN_MS) });
  if (!answer.ok) {
    throw new Error(`the server answered ${answer.status}`);
  }
  return answer.json();
}

/** @param {Bench} bench @param {Mishap} m @param {Dilutions} known @param {Pressable[]} keys @param {HTMLElement} place */
function showDilutions(bench, m, known, keys, place) {
  if (known.others.length === 0) {
    place.replaceChildren(html("p", {}, known.why));
    return;
  }
  known.others.filter((other) => other.refused === null).forEach((other) => {
    keys.push({
      label: `${other.dilution}: ${minutes(other.seconds)}, ${other.standing}${apart(other)}`,
      letter: String((keys.length + 1) % 10),
      press: () => {
        bench.post({ kind: "mishap", step: known.step, what: m.what, newSeconds: other.seconds, about: other.dilution });
        bench.open(null);
      },
    });
  });
  const gone = known.others.filter((other) => other.refused !== null).map((other) => html("p", {}, `${other.dilution} would be ${minutes(other.seconds)}: ${other.refused}.`));
  place.replaceChildren(html("p", {}, `Planned ${known.planned}. Mixed as:`), row(keys), ...gone);
}

/** One key per bottle of the load; that of the bath is marked already. @param {Bench} bench @param {Mishap} m @param {import("../snapshot.js").Step} step @param {Pressable[]} keys @param {HTMLElement} place */
function showBottles(bench, m, step, keys, place) {
  const others = new Map(bench.run().steps.filter((one) => one.bottle !== null && one.bottle !== step.bottle).map((one) => [one.bottle, one.word]));
  others.forEach((word, bottle) => {
    keys.push({
      label: `${bottle}, ${word.toLowerCase()}`,
      letter: String((keys.length + 1) % 10),
      press: () => {
        bench.post({ kind: "mishap", step: step.index, what: m.what, about: bottle });
        const marked = `Do not use until decided: ${step.bottle === null ? "" : `${step.bottle} and `}${bottle}.`;
        keys.length = 0;
        place.replaceChildren(html("p", { role: "status" }, marked));
        bench.say(marked);
        bench.redraw();
      },
    });
  });
  if (keys.length > 0) {
    place.replaceChildren(html("p", {}, "Into which bottle?"), row(keys));
  }
}

/** @param {Pressable[]} keys */
function row(keys) {
  return html("div", { class: "words-row" }, ...keys.map((key) => keyIn(key)));
}

/** @param {number} seconds */
function minutes(seconds) {
  return span(seconds * 1000);
}

/** @param {Other} other */
function apart(other) {
  return other.apart.map((film) => `; ${film.film} would want ${minutes(film.seconds)}`).join("");
}

/** What there is to say of a new time that came with a snapshot. @param {Run} run @param {number} since sequence told so far @returns {string | null} */
export function newTime(run, since) {
  const told = run.events.find((one) => one.kind === "mishap" && one.sequence > since && one.words.includes("; new time "));
  const step = run.steps.find((one) => one.developing && !one.done);
  if (told === undefined || step === undefined) {
    return null;
  }
  return `New time ${told.words.split("; new time ")[1]}. Drain at ${clock(step.drainAt)}.`;
}
