// The line to the server: snapshots come in, presses go out, in order, once, for as long as it takes.

import { Outbox } from "./outbox.js";
import { screenName } from "./screen.js";
import { readRun } from "./snapshot.js";

const AGAIN_MS = 2000;
const SILENT_MS = 35000;
const ANSWER_WITHIN_MS = 6000;

/** @typedef {import("./snapshot.js").Run} Run @typedef {import("./outbox.js").Posted} Posted */
/**
 * @typedef {{snapshot: (run: Run) => void, asks: (question: string, confirm: () => void) => void, refused: (reason: string) => void,
 *   noted: (reason: string) => void, reach: (since: number | null) => void}} Listener
 */

export class Link {
  /** @param {number} run @param {Listener} listener */
  constructor(run, listener) {
    this.address = `/api/runs/${run}`;
    this.listener = listener;
    this.outbox = new Outbox(run);
    this.heardAt = Date.now();
    /** @type {number | null} */
    this.lostSince = null;
    this.sending = false;
    this.watching = 0;
    /** @type {EventSource | null} */
    this.stream = null;
    /** The other screens of this run, and whether they make no sound. @type {{screen: string, silent: boolean}[]} */
    this.others = [];
    /** What the server was last told of this page. @type {boolean | null} */
    this.toldSilent = null;
    /** The page has not followed this run for longer than since then, by the server's clock. */
    this.followedSince = Number.NEGATIVE_INFINITY;
  }

  open() {
    this.listen();
    this.watching = setInterval(() => this.watch(), AGAIN_MS);
    void this.deliver();
  }

  /** The run is over: nothing more is heard or sent. */
  close() {
    this.stream?.close();
    clearInterval(this.watching);
  }

  listen() {
    this.stream?.close();
    this.toldSilent = null; // a new line knows nothing of this screen
    const stream = new EventSource(`${this.address}/stream?screen=${encodeURIComponent(screenName())}`);
    stream.addEventListener("snapshot", (event) => {
      this.heard();
      this.listener.snapshot(readRun(event.data));
    });
    stream.addEventListener("heartbeat", () => this.heard());
    stream.addEventListener("screens", (event) => {
      this.heard();
      this.others = JSON.parse(event.data).screens.filter((/** @type {{screen: string}} */ one) => one.screen !== screenName());
    });
    stream.addEventListener("error", () => this.lost());
    this.stream = stream;
  }

  /** @param {Posted} event */
  post(event) {
    this.outbox.add(event);
    void this.deliver();
  }

  /**
   * Lets the server know since when this page has led, and the other screens whether anything can be heard here.
   * @param {boolean} silent @param {number} leadingSince by the server's clock; NaN when it does not lead
   */
  tellOfItself(silent, leadingSince) {
    if (silent === this.toldSilent || this.lostSince !== null || this.stream?.readyState !== EventSource.OPEN) {
      return;
    }
    this.toldSilent = silent;
    const since = Math.max(leadingSince, this.followedSince);
    fetch(`${this.address}/screens`, {
      method: "POST",
      headers: { "Content-Type": "application/json" },
      body: JSON.stringify({ screen: screenName(), silent, leadingSince: Number.isFinite(since) ? new Date(since).toISOString() : null }),
      signal: AbortSignal.timeout(ANSWER_WITHIN_MS),
    }).catch(() => {
      this.toldSilent = null;
    });
  }

  async deliver() {
    if (this.sending) {
      return;
    }
    this.sending = true;
    try {
      for (let event = this.outbox.first(); event !== undefined; event = this.outbox.first()) {
        await this.send(event);
      }
    } catch {
      this.lost(); // watch() tries again
    } finally {
      this.sending = false;
    }
  }

  /** @param {Posted} event */
  async send(event) {
    const answer = await fetch(`${this.address}/events`, {
      method: "POST",
      headers: { "Content-Type": "application/json" },
      body: JSON.stringify(event),
      signal: AbortSignal.timeout(ANSWER_WITHIN_MS),
    });
    const said = answerIn(answer, await answer.text());
    this.outbox.remove(event.id);
    this.heard();
    if (said.outcome === "asks") {
      this.listener.asks(said.detail, () => this.post({ ...event, confirmed: true }));
    } else if (answer.ok) {
      this.listener.snapshot(readRun(JSON.stringify(said.snapshot)));
      if (said.outcome === "noted") {
        this.listener.noted(said.reason);
      }
    } else {
      this.listener.refused(said.detail ?? "The server did not say why.");
    }
  }

  heard() {
    this.heardAt = Date.now();
    if (this.lostSince !== null) {
      this.lostSince = null;
      this.listener.reach(null);
      void this.deliver();
    }
  }

  lost() {
    if (this.lostSince === null) {
      this.lostSince = Date.now();
      this.listener.reach(this.lostSince);
    }
  }

  watch() {
    if (Date.now() - this.heardAt > SILENT_MS) {
      this.lost();
    }
    if (this.lostSince !== null && this.stream?.readyState !== EventSource.CONNECTING) {
      this.listen();
    }
    void this.deliver();
  }
}

/**
 * What the server says of a press. An answer that is not the server's own (another page of this machine, a network that asks for a
 * password, a screen that is no longer paired) is none: the press stays in the outbox.
 * @param {Response} answer @param {string} text
 */
function answerIn(answer, text) {
  const elsewhere = answer.redirected || [401, 403, 404].includes(answer.status) || answer.status >= 500;
  const said = elsewhere ? null : JSON.parse(text);
  if (said === null || typeof said !== "object") {
    throw new Error(`no answer of the server's own: ${answer.status}`);
  }
  return said;
}
