// Closing the tank: the moment at which film is most often lost. Space ticks the next, a number ticks any.

import { html } from "../elements.js";
import { keyIn } from "./panel.js";

/**
 * @param {import("./panel.js").Bench} bench @param {Set<string>} ticked @returns {import("./panel.js").Panel}
 */
export function check(bench, ticked) {
  const checks = bench.run().checks.filter((c) => c.group === "closing");
  const buttons = new Map();
  const tick = (/** @type {string} */ id) => {
    if (ticked.has(id)) {
      ticked.delete(id);
    } else {
      ticked.add(id);
    }
    show();
    if (checks.every((c) => ticked.has(c.id))) {
      bench.say("The tank is closed.");
      bench.open(null);
    } else {
      bench.redraw();
    }
  };
  const keys = checks.map((c, i) => ({ label: c.text, letter: String(i + 1), press: () => tick(c.id) }));
  const show = () => {
    for (const [id, button] of buttons) {
      button.setAttribute("aria-pressed", String(ticked.has(id)));
    }
  };
  const body = html("div", { class: "b-panel words checks", role: "group", "aria-label": "Closing the tank" });
  checks.forEach((c, i) => {
    const button = keyIn(/** @type {import("./panel.js").Pressable} */ (keys[i]));
    buttons.set(c.id, button);
    body.append(button);
  });
  show();
  const next = () => checks.find((c) => !ticked.has(c.id));
  return {
    name: "check",
    lines: ["Close", "the tank"],
    then: () => `${ticked.size} of ${checks.length} looked at; light stays off until the lid is locked`,
    body: () => body,
    keys,
    slots: () => {
      const coming = next();
      return [
        { label: "Pass over", letter: "Esc", press: () => bench.open(null) },
        null,
        null,
        coming === undefined ? null : { label: `Yes: ${coming.text.charAt(0).toLowerCase()}${coming.text.slice(1)}`, letter: "Space", press: () => tick(coming.id), next: true },
      ];
    },
  };
}
