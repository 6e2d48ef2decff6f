// Arrows move a patch, with Shift they size it, with Alt by one pixel; Delete takes it away; + and − zoom.

const STEPS_ACROSS = 200;

/** @type {Record<string, [number, number]>} */
const ARROWS = { ArrowLeft: [-1, 0], ArrowRight: [1, 0], ArrowUp: [0, -1], ArrowDown: [0, 1] };

/** @param {import("./patches.js").Desk} desk */
export function byKeyboard(desk) {
  const { svg } = desk.plate;
  svg.addEventListener("focusin", (event) => desk.choose(rowOf(event.target)));
  svg.addEventListener("keydown", (event) => {
    const row = rowOf(event.target);
    const patch = row === null ? undefined : desk.rows.find(row);
    if (!patch || event.ctrlKey || event.metaKey) {
      return;
    }
    const arrow = ARROWS[event.key];
    if (arrow) {
      const step = event.altKey ? 1 : Math.max(1, Math.round(desk.plate.view.width / STEPS_ACROSS));
      const [dx, dy] = [arrow[0] * step, arrow[1] * step];
      desk.change(
        event.shiftKey
          ? { ...patch, width: patch.width + dx, height: patch.height + dy }
          : { ...patch, x: patch.x + dx, y: patch.y + dy },
      );
    } else if (event.key === "Delete" || event.key === "Backspace") {
      desk.remove(patch.row);
    } else if (event.key === "+" || event.key === "=") {
      desk.zoom(0.5);
    } else if (event.key === "-" || event.key === "−") {
      desk.zoom(2);
    } else {
      return;
    }
    event.preventDefault();
  });
}

/** @param {EventTarget | null} target */
export function rowOf(target) {
  const element = target instanceof Element ? target.closest("[data-patch]") : null;
  return element ? Number(element.getAttribute("data-patch")) : null;
}
