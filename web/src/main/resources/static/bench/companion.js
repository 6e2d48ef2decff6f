// The other tank of the evening, shown under the one that is led: its strip, its act, its cues. One pair of hands serves both.

import { actAt, inOneLine } from "./act.js";
import { byId, write } from "./elements.js";
import { mergedCues } from "./hands.js";
import { keepLead, keptLead, keptRuns } from "./kept.js";
import { goesOn } from "./lead.js";
import { Link } from "./link.js";
import { atTheLine, isOver, readRun } from "./snapshot.js";
import { Tape } from "./tape.js";
import { clock, span } from "./times.js";

const LOOK_EVERY_MS = 10000;

/** @typedef {import("./snapshot.js").Run} Run */

export class Companion {
  /**
   * @param {import("./link.js").Listener} listener for what the other run's line says
   * @param {(run: Run) => void} keep for a reload while the server is away
   */
  constructor(listener, keep) {
    this.listener = listener;
    this.keep = keep;
    this.tape = new Tape(byId("other-tape"));
    /** @type {{run: Run, link: Link} | null} */
    this.other = null;
    this.lookedAt = Number.NEGATIVE_INFINITY;
  }

  /**
   * Looks for another run that goes on; while the server is away, among those kept here.
   * @param {number} ownRun @param {boolean} ready whether the own run is still to begin @param {number} now by the server's clock
   */
  look(ownRun, ready, now) {
    const { other } = this;
    if (other !== null && isOver(other.run)) {
      other.link.close();
      this.other = null;
    }
    if (this.other !== null || performance.now() - this.lookedAt < LOOK_EVERY_MS) {
      return;
    }
    this.lookedAt = performance.now();
    fetch("/api/runs", { cache: "no-store" })
      .then((answer) => answer.json())
      .then((said) => said.runs.find((/** @type {{run: number, phase: string}} */ one) => one.run !== ownRun && (one.phase === "running" || one.phase === "waiting")))
      .then((found) => (found === undefined ? undefined : this.join(found.run, now)))
      .then(() => (ready && this.other !== null ? this.advise(ownRun) : undefined))
      .catch(() => this.joinKept(ownRun, now));
  }

  /** Says when the own run is best begun, so that hands are never wanted twice. @param {number} ownRun */
  async advise(ownRun) {
    const said = readRun(await (await fetch(`/api/runs/${ownRun}/start`, { cache: "no-store" })).text());
    const { from } = /** @type {{from?: number | null}} */ (/** @type {unknown} */ (said));
    if (from !== undefined && from !== null) {
      this.listener.noted(`begin this tank at ${clock(from)} or soon after: hands are then never wanted twice.`);
    }
  }

  /** @param {number} number @param {number} now */
  async join(number, now) {
    const answer = await fetch(`/api/runs/${number}`, { cache: "no-store" });
    this.follow(readRun(await answer.text()), now);
  }

  /** @param {number} ownRun @param {number} now */
  joinKept(ownRun, now) {
    const kept = keptRuns(performance.timeOrigin + performance.now()).find(({ run }) => run.run !== ownRun);
    if (this.other === null && kept !== undefined) {
      const led = keptLead(kept.run.run);
      this.follow(kept.run, led !== null && goesOn(led, kept.run.cues, now) ? led.since : now);
    }
  }

  /** @param {Run} run @param {number} since when this page has led it, by the server's clock */
  follow(run, since) {
    const link = new Link(run.run, this.listener);
    link.followedSince = since;
    this.other = { run, link };
    this.keep(run);
    link.open();
  }

  /** For a reload: since when both are led, and up to when. @param {{since: number, upTo: number}} lead */
  keepLead(lead) {
    if (this.other !== null && !isOver(this.other.run)) {
      keepLead(this.other.run.run, { since: Math.max(lead.since, this.other.link.followedSince), upTo: lead.upTo });
    }
  }

  /** The other run's record asks too who led while the server was away. @param {boolean} silent @param {number} leadingSince */
  tellOfItself(silent, leadingSince) {
    this.other?.link.tellOfItself(silent && !isOver(this.other.run), leadingSince);
  }

  /** @param {Run} run tells whether it was the other's */
  take(run) {
    if (this.other === null || run.run !== this.other.run.run) {
      return false;
    }
    if (run.sequence >= this.other.run.sequence) {
      if (run.gaps.length > this.other.run.gaps.length) {
        this.other.link.toldSilent = null; // the server was away: it asks who led meanwhile
      }
      this.other.run = run;
      this.keep(run);
    }
    return true;
  }

  /** The other becomes the one that is led, and the other way round. @param {Run} run @param {Link} link @returns {{run: Run, link: Link} | null} */
  change(run, link) {
    const now = this.other;
    if (now !== null) {
      this.other = { run, link };
    }
    return now;
  }

  /** The run to lead by ear and eye: both tanks' cues in one order. @param {Run} own @returns {Run} */
  both(own) {
    if (this.other === null) {
      return own;
    }
    const other = this.other.run;
    const base = own.provisional || isOver(own) ? other : own;
    return { ...base, cues: mergedCues([own, other].filter((run) => !run.provisional && run.phase !== "abandoned")) };
  }

  /** @param {number} now */
  draw(now) {
    const figure = byId("other");
    figure.hidden = this.other === null;
    if (this.other === null) {
      return;
    }
    const run = this.other.run;
    const at = atTheLine(run, now);
    const act = actAt(run, at);
    const left = act.nextAt === null ? "" : `, ${span(act.nextAt - at, "up")}`;
    write(byId("other-act"), `${run.tank}: ${inOneLine(act)}${left}`);
    this.tape.show(run, act, at, now - at);
  }
}
