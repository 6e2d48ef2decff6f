// What the Bench shows first: the run as it stands, drawn before the rest of the page's program is fetched.

import { actAt } from "./act.js";
import { careAt } from "./care.js";
import { byId } from "./elements.js";
import { showFigures } from "./figures.js";
import { keptRun } from "./kept.js";
import { showAct, showCare, showCount, showSeconds } from "./sheet.js";
import { atTheLine, isOver, readRun } from "./snapshot.js";
import { Tape } from "./tape.js";

const LONGEST_WAIT_MS = 2000;

/** @typedef {import("./snapshot.js").Run} Run */

/** The run to begin with: what came with the page, what this device kept when the page is older, or what the server says now. @returns {Promise<Run>} */
async function firstRun() {
  const inPage = byId("first-snapshot").textContent?.trim() ?? "";
  const kept = keptRun(Number(location.pathname.split("/").pop()));
  if (inPage !== "") {
    const fresh = readRun(inPage);
    return kept !== null && kept.run.sequence > fresh.sequence ? kept.run : fresh;
  }
  const answer = await fetch(`/api/runs/${location.pathname.split("/").pop()}`, { cache: "no-store" });
  const text = await answer.text();
  if (!answer.ok) {
    throw new Error(JSON.parse(text).detail);
  }
  return readRun(text);
}

/** @param {Run} run @returns {Tape} what it is drawn on */
function draw(run) {
  const sheet = byId("sheet");
  const tape = new Tape(byId("tape"));
  const now = Date.now();
  const at = atTheLine(run, now);
  const act = actAt(run, at);
  sheet.hidden = false;
  byId("plain").hidden = true;
  sheet.classList.toggle("ready", run.phase === "ready");
  sheet.classList.toggle("printed", isOver(run));
  showAct(act, null, act.then);
  showSeconds(act.nextAt === null || run.provisional ? null : act.nextAt - at);
  showCount(act.count);
  showCare(careAt(run, at));
  showFigures(run, at, now - at);
  tape.show(run, act, at, now - at);
  return tape;
}

/** @returns {Promise<void>} when all that the first view needs is there; a face that does not come keeps nobody waiting */
function shown() {
  return new Promise((done) => {
    if (document.readyState === "complete") {
      done();
    } else {
      window.addEventListener("load", () => done(), { once: true });
      setTimeout(done, LONGEST_WAIT_MS);
    }
  });
}

async function start() {
  const run = await firstRun();
  const tape = draw(run);
  await shown();
  performance.mark("first view");
  const { begin } = await import("./bench.js");
  await begin(run, tape);
}

start().catch((/** @type {unknown} */ reason) => {
  byId("plain-words").textContent = reason instanceof Error ? reason.message : String(reason);
});
