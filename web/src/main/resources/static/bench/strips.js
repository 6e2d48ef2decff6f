// The solid strip above the sheet: what was missed, that the server is away, that nothing can be heard.

import { survivesReload } from "./kept.js";
import { clock, minute } from "./times.js";

/** @typedef {{strong: string, rest: string}} Strip */

/**
 * The one strip that matters most now.
 * @param {{lostSince: number | null, kept: number, message: string | null, strips: import("./snapshot.js").Strip[],
 *   seen: Set<string>, silent: boolean, deaf: string[], over: boolean}} state
 * @returns {Strip | null}
 */
export function stripOf(state) {
  if (state.lostSince !== null) {
    const kept = state.kept === 0 ? "" : ` ${state.kept} ${state.kept === 1 ? "press" : "presses"} kept.`;
    return { strong: `No server since ${minute(state.lostSince)}.`, rest: ` Going on by the plan.${kept}${survivesReload() ? "" : " Do not reload this page."}${state.silent && !state.over ? " Silent until you press a key." : ""}` };
  }
  if (state.message !== null) {
    return { strong: state.message, rest: "" };
  }
  const gap = state.strips.find((strip) => !state.seen.has(strip.id));
  if (gap !== undefined) {
    const words = gap.from !== null && gap.to !== null ? `Away from ${clock(gap.from)} to ${clock(gap.to)}.` : gap.text;
    return { strong: words, rest: ` ${gap.detail}` };
  }
  if (state.over) {
    return null;
  }
  if (state.silent) {
    return { strong: "Silent until you press a key.", rest: "" };
  }
  return state.deaf.length > 0 ? { strong: `${state.deaf.join(", ")}: no sound there.`, rest: " Press a key on it." } : null;
}
