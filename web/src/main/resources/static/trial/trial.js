// The seconds of a test, from its start on the server's clock, and Space for the filled key. Without it the forms do.

import { ServerClock } from "../bench/clock.js";
import { isoSpan, span } from "../bench/times.js";

const DRAWN_EVERY_MS = 200;
const MEASURED_EVERY_MS = 60000;
const CONTROLS = "input, textarea, select, button, a[href], summary";

/** Space is the filled key, unless a control has the focus; a key that is held down is one press. */
function spaceIsNext() {
  document.addEventListener("keydown", (event) => {
    const next = document.getElementById("next");
    const other = document.activeElement?.closest(CONTROLS);
    if (event.code !== "Space" || event.ctrlKey || event.altKey || event.metaKey || other || !next) {
      return;
    }
    event.preventDefault();
    if (!event.repeat) {
      next.click();
    }
  });
}

/** A form goes once, however often a wet hand presses. */
function formsGoOnce() {
  for (const form of document.forms) {
    let sent = false;
    form.addEventListener("submit", (event) => {
      if (sent) {
        event.preventDefault();
      }
      sent = true;
    });
    addEventListener("pageshow", () => {
      sent = false;
    });
  }
}

/** @param {HTMLElement} sheet */
function showSeconds(sheet) {
  const clock = new ServerClock();
  const started = Date.parse(sheet.dataset["started"] ?? "");
  const mark = Number(sheet.dataset["markSeconds"] ?? "NaN") * 1000;
  const seconds = document.getElementById("seconds");
  const title = document.title;
  const draw = () => {
    const ran = clock.now() - started;
    if (seconds) {
      seconds.textContent = span(ran);
      seconds.setAttribute("datetime", isoSpan(ran));
    }
    document.title = `${span(ran)} · ${title}`;
    sheet.classList.toggle("past-mark", ran >= mark);
  };
  const measure = () => clock.measure().then(draw, () => draw());
  setInterval(draw, DRAWN_EVERY_MS);
  setInterval(measure, MEASURED_EVERY_MS);
  document.addEventListener("visibilitychange", draw);
  measure();
}

spaceIsNext();
formsGoOnce();
const running = document.getElementById("running");
if (running) {
  showSeconds(running);
}
