// The same facts as the tape, in words, for those who do not see it.

import { named } from "./baths.js";
import { write } from "./elements.js";
import { clock } from "./times.js";
import { DEGREE_SIGN, degrees } from "./units.js";

/** @param {Element} where @param {import("./snapshot.js").Run} run */
export function tellTape(where, run) {
  const words = [`Tape of tank ${run.tank}.`];
  if (run.provisional) {
    words.push("Nothing has happened yet.");
  }
  for (const step of run.steps) {
    const missed = step.agitation.filter((bout) => bout.missed).length;
    const when = run.provisional ? "" : ` from ${clock(step.beginAt)} to ${clock(step.endAt)}`;
    words.push(`${step.done ? "Done" : "To come or going on"}: ${named(step)}${when}${missed > 0 ? `, ${missed} agitations missed` : ""}.`);
  }
  for (const reading of run.readings) {
    words.push(`Bath read ${degrees(reading.correctedC)} ${DEGREE_SIGN} at ${clock(reading.at)}.`);
  }
  for (const gap of run.gaps) {
    words.push(`Nobody watched from ${clock(gap.from)} to ${clock(gap.to)}.`);
  }
  const dark = run.steps.filter((step) => step.lidStaysOn);
  const last = dark[dark.length - 1];
  words.push(last === undefined ? "The lid may be off." : `The lid stays on until ${named(last)} is over.`);
  write(where, words.join(" "));
}
