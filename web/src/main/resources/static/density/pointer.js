// Drag on the picture draws a patch, drag on a patch moves it, its corner sizes it; or the picture itself is moved.

import { rowOf } from "./keyboard.js";

const LEAST_CSS = 4;

/** @typedef {{x: number, y: number}} Point */
/** @typedef {(now: Point) => void} Drag */

/** @param {import("./patches.js").Desk} desk @param {HTMLElement} section */
export function byPointer(desk, section) {
  const { svg } = desk.plate;
  const shifting = document.getElementById("shift");
  shifting?.addEventListener("click", () => {
    const on = section.classList.toggle("shifts");
    shifting.setAttribute("aria-pressed", String(on));
  });
  /** @type {Drag | null} */
  let drag = null;
  svg.addEventListener("pointerdown", (event) => {
    if (!event.isPrimary || event.button !== 0) {
      return;
    }
    event.preventDefault();
    svg.setPointerCapture(event.pointerId);
    drag = section.classList.contains("shifts") ? moves(desk, event) : begins(desk, event);
  });
  svg.addEventListener("pointermove", (event) => {
    if (event.isPrimary) {
      drag?.(point(event));
    }
  });
  for (const end of /** @type {const} */ (["pointerup", "pointercancel"])) {
    svg.addEventListener(end, () => {
      if (drag && section.classList.contains("shifts")) {
        desk.settled();
      }
      drag = null;
      if (desk.chosen !== null) {
        desk.plate.focus(desk.chosen);
      }
    });
  }
}

/** @param {PointerEvent} event @returns {Point} */
function point(event) {
  return { x: event.clientX, y: event.clientY };
}

/** @param {import("./patches.js").Desk} desk @param {PointerEvent} event @returns {Drag} */
function moves(desk, event) {
  let last = point(event);
  return (now) => {
    const { scale } = desk.plate;
    desk.plate.shift((last.x - now.x) * scale, (last.y - now.y) * scale);
    last = now;
  };
}

/** @param {import("./patches.js").Desk} desk @param {PointerEvent} event @returns {Drag} */
function begins(desk, event) {
  const { plate, rows } = desk;
  const from = plate.at(event);
  const row = rowOf(event.target);
  const patch = row === null ? undefined : rows.find(row);
  const where = (/** @type {Point} */ now) => plate.at({ clientX: now.x, clientY: now.y });
  if (!patch) {
    return draws(desk, from, where);
  }
  const grips = event.target instanceof Element && event.target.matches(".grip, .corner");
  desk.choose(patch.row);
  return (now) => {
    const at = where(now);
    const [dx, dy] = [at.x - from.x, at.y - from.y];
    desk.change(
      grips
        ? { ...patch, width: patch.width + dx, height: patch.height + dy }
        : { ...patch, x: patch.x + dx, y: patch.y + dy },
    );
  };
}

/**
 * A patch comes to be once the pointer has gone far enough not to be a slip.
 * @param {import("./patches.js").Desk} desk @param {Point} from @param {(now: Point) => Point} where @returns {Drag}
 */
function draws(desk, from, where) {
  /** @type {import("./rows.js").Patch | null} */
  let patch = null;
  return (now) => {
    const at = where(now);
    const place = {
      x: Math.max(0, Math.min(from.x, at.x)),
      y: Math.max(0, Math.min(from.y, at.y)),
      width: Math.max(1, Math.abs(at.x - from.x)),
      height: Math.max(1, Math.abs(at.y - from.y)),
    };
    const least = LEAST_CSS * desk.plate.scale;
    if (!patch && (place.width < least || place.height < least)) {
      return;
    }
    if (patch) {
      desk.change({ ...patch, ...place });
    } else {
      patch = desk.rows.add(place);
      desk.chosen = patch.row;
      desk.draw();
    }
  };
}
