// The Bench page: one run, drawn from deadlines, led by sound and sight.

import { actAt } from "./act.js";
import { Answers } from "./answers.js";
import { careAt } from "./care.js";
import { ServerClock } from "./clock.js";
import { Companion } from "./companion.js";
import { Deck } from "./deck.js";
import { byId } from "./elements.js";
import { showFigures } from "./figures.js";
import { tellTape } from "./facts.js";
import { Keyboard } from "./keyboard.js";
import { HANDS, Lead } from "./lead.js";
import { Link } from "./link.js";
import { whatIsMissing } from "./missing.js";
import { forgetRun, keepLead, keepPage, keepRun, keptLead, keptRun } from "./kept.js";
import { freshId } from "./outbox.js";
import { check, goOn, summary } from "./panels/check.js";
import { beforeTheDark, isItLoaded } from "./panels/dark.js";
import { hearing, wasHeard } from "./panels/hearing.js";
import { keysPanel } from "./panels/keys.js";
import { ask } from "./panels/question.js";
import { startPulse } from "./pulse.js";
import { restingSlots } from "./resting.js";
import { screenName } from "./screen.js";
import { atTheLine, isOver, readRun } from "./snapshot.js";
import { showAct, showCare, showCount, showSeconds, showStrip, showTitle } from "./sheet.js";
import { stripOf } from "./strips.js";
import { Tape } from "./tape.js";
import { changeTheme } from "./theme.js";
import { Track } from "./track.js";
import { newTime } from "./panels/told.js";
import { spokenPlace, where } from "./panels/where.js";

const MESSAGE_MS = 12000;
const KEEP_EVERY_MS = 1000;
const SET_CLOCK_EVERY_MS = 120000; // crystals drift by some milliseconds in that time

/** @typedef {import("./snapshot.js").Run} Run @typedef {import("./panels/panel.js").Panel} Panel */

class Bench {
  /** @param {Run} run */
  constructor(run) {
    this.current = run;
    this.clock = new ServerClock();
    this.sheet = byId("sheet");
    this.tape = new Tape(byId("tape"));
    this.deck = new Deck(byId("keys"));
    this.lead = new Lead(this.sheet, (cues) => this.missed(cues));
    this.track = new Track({
      run: (number) => this.runOf(number ?? this.current.run),
      now: () => this.clock.now(),
      playing: (run) => {
        this.lead.handedOver = run;
      },
      moved: () => this.tell("The plan has moved. A new cue track is ready."),
      failed: (why) => this.tell(why),
    });
    this.keyboard = new Keyboard((letter) => this.press(letter));
    /** @type {Panel | null} */
    this.panel = null;
    this.panelOpenedAt = 0;
    this.answers = new Answers(run.run);
    /** @type {Set<string>} */
    this.seen = new Set();
    /** @type {string | null} */
    this.message = null;
    this.messageUntil = 0;
    /** @type {number | null} */
    this.lostSince = null;
    this.toldSequence = -1;
    this.keptAt = 0;
    this.clockSetAt = 0;
    const listener = {
      snapshot: (/** @type {Run} */ fresh) => this.take(fresh),
      asks: (/** @type {string} */ question, /** @type {() => void} */ confirm) => this.open(ask(this.face, question, confirm)),
      refused: (/** @type {string} */ reason) => this.tell(`Not done. ${reason}`),
      noted: (/** @type {string} */ reason) => this.tell(`Noted, not applied: ${reason}`),
      reach: (/** @type {number | null} */ since) => this.reach(since),
    };
    this.link = new Link(run.run, listener);
    this.companion = new Companion({ ...listener, noted: (reason) => this.tell(reason.charAt(0).toUpperCase() + reason.slice(1)) }, (run) => this.keep(run));
    this.face = this.faceForPanels();
  }

  async start() {
    this.sheet.hidden = false;
    byId("plain").hidden = true;
    for (const touch of ["pointerdown", "pointerup", "click"]) {
      document.addEventListener(touch, () => this.lead.wake()); // which of them wakes the sound differs from browser to browser
    }
    byId("other").addEventListener("click", () => {
      this.changeTank();
      byId("other").blur(); // Space goes on meaning the next step
    });
    document.addEventListener("visibilitychange", () => {
      this.draw();
      if (document.visibilityState === "visible") {
        this.setClock(); // a device that slept may have stopped its own
      }
    });
    window.addEventListener("resize", () => this.draw());
    if (this.current.phase === "ready") {
      if (wasHeard(Date.now())) {
        this.beforePour();
      } else {
        this.open(hearing(this.face, () => this.beforePour()));
      }
    }
    this.draw();
    const kept = keptRun(this.current.run);
    if (kept !== null) {
      this.clock.offset = kept.offset; // until the server can be asked
    }
    const led = keptLead(this.current.run);
    if (led !== null) {
      this.lead.resume(led, this.current.cues, this.clock.now());
    }
    await this.clock.measure().catch(() => this.link.lost());
    this.keep(this.current);
    this.link.open();
    const frame = () => {
      this.draw();
      requestAnimationFrame(frame);
    };
    requestAnimationFrame(frame);
    startPulse(() => this.beat());
    if (this.lead.isSilent && !isOver(this.current)) {
      navigator.vibrate?.([300, 150, 300]); // silent after a load: felt where the browser allows it
    }
  }

  /** The run of that number among those that are led here. @param {number} number @returns {Run | null} */
  runOf(number) {
    return [this.current, this.companion.other?.run].find((run) => run?.run === number) ?? null;
  }

  setClock() {
    this.clockSetAt = performance.now();
    void this.clock.measure().catch(() => undefined);
  }

  /** @param {Run} run */
  take(run) {
    if (this.companion.take(run) || run.run !== this.current.run) {
      return;
    }
    if (run.sequence < this.current.sequence) {
      return;
    }
    const gaveWay = run.events.find((one) => one.kind === "lengthened" && one.screen === "conductor" && one.sequence > this.current.sequence);
    if (gaveWay !== undefined) {
      this.tell(gaveWay.words);
    }
    const moved = newTime(run, this.current.sequence);
    if (moved !== null) {
      this.tell(moved);
    }
    if (run.gaps.length > this.current.gaps.length) {
      this.link.toldSilent = null; // the server was away: it asks who led meanwhile
    }
    this.current = run;
    this.keep(run);
    if (this.panel?.again !== undefined) {
      this.open(run.phase === "ready" ? this.panel.again() : null);
    }
    this.beat();
  }

  /** First whether the film is in the tank, then what is still open. */
  beforePour() {
    this.open(this.answers.loaded ? check(this.face, this.answers) : isItLoaded(this.face, (felt) => this.loaded(felt)));
  }

  loadInTheDark() {
    this.open(beforeTheDark(this.face, (felt) => this.loaded(felt)));
  }

  /** @param {string[]} felt what hands have answered in the dark */
  loaded(felt) {
    this.answers.isLoaded(felt);
    goOn(this.face, this.answers);
  }

  /** The keys go to the other tank. */
  changeTank() {
    const other = this.companion.change(this.current, this.link);
    if (other !== null) {
      this.current = other.run;
      this.link = other.link;
      this.toldSequence = -1;
      this.open(null);
      this.lead.say(spokenPlace(this.face));
    }
  }

  /** The run anew, after something beside it has changed. */
  refresh() {
    fetch(`/api/runs/${this.current.run}`, { cache: "no-store" })
      .then((answer) => answer.text())
      .then((text) => this.take(readRun(text)))
      .catch(() => undefined);
  }

  /** The load was opened anew as another run: what was felt of the closed tank holds there as well. @param {number} run @param {string[]} felt */
  goTo(run, felt) {
    this.answers.handTo(run, felt);
    location.assign(`/bench/${run}`);
  }

  /** @param {number | null} since */
  reach(since) {
    const was = this.lostSince;
    this.lostSince = since;
    if (since === null) {
      this.setClock();
    }
    if ((was === null) !== (since === null) && !isOver(this.current)) {
      this.lead.say(since === null ? "The server is back." : "No server. Going on by the plan.");
    }
  }

  /** For a reload while the server is away. @param {Run} run */
  keep(run) {
    if (isOver(run)) {
      forgetRun(run.run);
    } else {
      keepRun(run.run, this.clock.offset, run);
      this.keptAt = performance.now();
    }
  }

  /** What sounds, is said or flashes now; apart from drawing, so that it works unseen. */
  beat() {
    this.companion.look(this.current.run, this.current.phase === "ready", this.clock.now());
    this.lead.follow(this.companion.both(this.current), this.clock.now());
    this.track.beat();
    if (performance.now() - this.keptAt > KEEP_EVERY_MS && !isOver(this.current)) {
      this.keptAt = performance.now();
      const { unbrokenSince, upTo } = this.lead;
      keepLead(this.current.run, { since: Math.max(unbrokenSince, this.link.followedSince), upTo });
      this.companion.keepLead({ since: unbrokenSince, upTo });
    }
    this.link.tellOfItself(this.lead.isSilent && !isOver(this.current), this.lead.unbrokenSince);
    this.companion.tellOfItself(this.lead.isSilent, this.lead.unbrokenSince);
    if (this.lostSince === null && performance.now() - this.clockSetAt > SET_CLOCK_EVERY_MS) {
      this.setClock();
    }
    const closes = this.panel?.closesAfterMs;
    if (closes !== undefined && performance.now() - this.panelOpenedAt > closes) {
      this.open(null);
    }
  }

  /** The page was frozen when these were due; if no other screen told of them, nobody did. @param {import("./snapshot.js").Cue[]} cues */
  missed(cues) {
    const other = this.companion.other;
    for (const led of [{ run: this.current, link: this.link }, ...(other === null ? [] : [other])]) {
      if (led.link.others.some((one) => !one.silent)) {
        continue;
      }
      const own = led.run.cues.filter((one) => HANDS.has(one.act));
      for (const cue of own.filter((one) => cues.some((gone) => gone.id === `${led.run.run}:${one.id}` || (gone.id === one.id && led.run === this.current)))) {
        led.link.post(this.stamped({ kind: "cue missed", step: cue.step, cue: cue.id }));
      }
    }
  }

  draw() {
    const run = this.current;
    const now = this.clock.now();
    const at = atTheLine(run, now);
    const act = actAt(run, at);
    this.sheet.classList.toggle("ready", run.phase === "ready");
    this.sheet.classList.toggle("printed", isOver(run));
    showAct(act, this.panel?.lines ?? null, this.panel === null ? act.then : this.panel.then());
    showSeconds(act.nextAt === null || run.provisional ? null : act.nextAt - at);
    showCount(this.panel === null ? act.count : null);
    showCare(careAt(run, at));
    showFigures(run, at, now - at);
    showStrip(stripOf({ lostSince: this.lostSince, kept: this.link.outbox.length, message: this.messageNow(), strips: run.strips, seen: this.seen, silent: this.lead.isSilent, deaf: this.link.others.filter((other) => other.silent).map((other) => other.screen), over: isOver(run) }));
    showTitle(act, run.tank, this.lead.isSilent && !isOver(run));
    this.tape.show(run, act, at, now - at);
    this.companion.draw(now);
    this.deck.show(this.panel === null ? restingSlots(this.face, this.restingActions(), this.lead.pressed) : this.panel.slots());
    if (run.sequence !== this.toldSequence) {
      this.toldSequence = run.sequence;
      tellTape(byId("tape-facts"), run);
    }
  }

  messageNow() {
    return performance.now() < this.messageUntil ? this.message : null;
  }

  /** @param {string} message */
  tell(message) {
    this.message = message;
    this.messageUntil = performance.now() + MESSAGE_MS;
    this.lead.say(message);
  }

  /** @param {Panel | null} panel */
  open(panel) {
    if (this.panel?.name === "where") {
      this.current.strips.forEach((strip) => this.seen.add(strip.id));
    }
    this.panel = panel;
    if (panel?.name !== "learning") {
      this.keyboard.learn(null);
    }
    this.panelOpenedAt = performance.now();
    const place = byId("panel");
    place.hidden = panel === null;
    byId("lower").hidden = panel !== null;
    place.replaceChildren(...(panel === null ? [] : [panel.body()]));
    place.querySelector("[aria-current]")?.scrollIntoView({ block: "nearest" });
    this.keyboard.quick = new Set((panel?.keys ?? []).filter((key) => key.quick === true).map((key) => key.letter));
    this.sheet.focus({ preventScroll: true });
    this.draw();
  }

  /** @param {string} letter */
  press(letter) {
    this.lead.wake();
    if (letter === "Esc" && this.panel === null) {
      this.current.strips.forEach((strip) => this.seen.add(strip.id));
      this.messageUntil = 0;
      return true;
    }
    const key = this.deck.find(letter) ?? this.panel?.keys?.find((k) => k.letter === letter) ?? this.anywhere(letter);
    if (key === undefined) {
      return false;
    }
    this.panelOpenedAt = performance.now();
    key.press();
    return true;
  }

  /** Keys that act whatever is open. @param {string} letter */
  anywhere(letter) {
    const actions = this.face.actions;
    /** @type {Record<string, () => void>} */
    const always = { N: actions.night, U: actions.undo, O: () => this.changeTank() };
    const press = always[letter];
    return press === undefined ? undefined : { label: letter, letter, press };
  }

  /** @param {Record<string, unknown>} event */
  post(event) {
    this.link.post(this.stamped(event));
  }

  /** @param {Record<string, unknown>} event */
  stamped(event) {
    return { id: freshId(), occurredAt: new Date(this.clock.now()).toISOString(), screen: screenName(), ...event };
  }

  restingActions() {
    return {
      whereAmI: () => {
        this.open(where(this.face));
        this.lead.say(spokenPlace(this.face));
      },
      answered: () => this.answers.forEvent(),
      check: () => (this.answers.loaded ? this.open(check(this.face, this.answers) ?? summary(this.face, this.answers)) : this.beforePour()),
      putAway: () => location.assign("/bench"),
    };
  }

  /** @returns {import("./panels/panel.js").Bench} */
  faceForPanels() {
    return {
      run: () => this.current,
      at: () => atTheLine(this.current, this.clock.now()),
      post: (event) => this.post(event),
      open: (panel) => this.open(panel),
      say: (words) => this.lead.say(words),
      alarm: (words) => this.lead.alarm(words),
      ear: { voice: this.lead.voice, sound: this.lead.sound, track: this.track, missing: whatIsMissing() },
      redraw: () => this.draw(),
      goTo: (run, felt) => this.goTo(run, felt),
      refresh: () => this.refresh(),
      actions: {
        dark: () => this.loadInTheDark(),
        learn: (take) => this.keyboard.learn(take),
        keys: () => this.open(keysPanel(this.face)),
        night: () => changeTheme(),
        canUndo: () => this.undoable() !== undefined,
        undo: () => {
          const last = this.undoable();
          if (last !== undefined) {
            this.post({ kind: "undone", undoes: last.id });
          }
        },
        leave: () => location.assign("/bench"),
      },
    };
  }

  undoable() {
    const now = this.clock.now();
    const own = this.current.events.filter((e) => e.screen === screenName() && e.mayUndoUntil !== null && e.mayUndoUntil > now);
    return own[own.length - 1];
  }
}

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

firstRun().then(
  (run) => new Bench(run).start().then(keepPage),
  (/** @type {unknown} */ reason) => {
    byId("plain-words").textContent = reason instanceof Error ? reason.message : String(reason);
  },
);
