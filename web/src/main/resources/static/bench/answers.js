// What was answered before the first pour on this screen; kept across a reload.

/** @typedef {import("./snapshot.js").Check} Check */

export class Answers {
  /** @param {number} run */
  constructor(run) {
    this.keptAs = `wetside.checks.${run}`;
    /** @type {Set<string>} */
    this.ticked = new Set();
    /** @type {Set<string>} */
    this.passed = new Set();
    /** Baths whose reading was just sent and is not in the snapshot yet. @type {Set<number>} */
    this.sent = new Set();
    this.reason = "";
    this.loaded = false;
    this.recall();
  }

  recall() {
    try {
      const kept = JSON.parse(sessionStorage.getItem(this.keptAs) ?? "{}");
      this.ticked = new Set(kept.ticked ?? []);
      this.passed = new Set(kept.passed ?? []);
      this.reason = kept.reason ?? "";
      this.loaded = kept.loaded === true;
    } catch {
      // then they last as long as the page
    }
  }

  keep() {
    try {
      const kept = { ticked: [...this.ticked], passed: [...this.passed], reason: this.reason, loaded: this.loaded };
      sessionStorage.setItem(this.keptAs, JSON.stringify(kept));
    } catch {
      // as above
    }
  }

  /** The film is in the tank, as far as anybody said. @param {string[]} [felt] what was gone through in the dark */
  isLoaded(felt = []) {
    this.loaded = true;
    felt.forEach((id) => this.tick(id));
    this.keep();
  }

  /** @param {string} id */
  tick(id) {
    this.ticked.add(id);
    this.passed.delete(id);
    this.keep();
  }

  /** @param {Check[]} checks */
  pass(checks) {
    checks.filter((check) => this.isOpen(check)).forEach((check) => this.passed.add(check.id));
    this.keep();
  }

  /** @param {string} reason why a precious roll goes in all the same */
  excuse(reason) {
    this.reason = reason;
    this.keep();
  }

  again() {
    this.ticked.clear();
    this.passed.clear();
    this.reason = "";
    this.keep();
  }

  /** Hands on to another run what was answered of these. @param {number} run @param {string[]} ids */
  handTo(run, ids) {
    const other = new Answers(run);
    other.loaded = this.loaded;
    ids.filter((id) => this.ticked.has(id)).forEach((id) => other.ticked.add(id));
    ids.filter((id) => this.passed.has(id)).forEach((id) => other.passed.add(id));
    other.keep();
  }

  /** Whether something is still to be said of it. @param {Check} check */
  isOpen(check) {
    const excused = check.group === "precious" && this.reason !== "";
    return check.state !== "done by data" && !excused && !this.ticked.has(check.id) && !this.passed.has(check.id);
  }

  /** How it was answered, in a word or two. @param {Check} check */
  word(check) {
    if (this.ticked.has(check.id)) {
      return check.group === "closing" ? "yes" : "seen";
    }
    if (check.state === "done by data") {
      return check.group === "handling" ? "on file" : "good";
    }
    return this.passed.has(check.id) ? "passed over" : check.state;
  }

  /** What goes into the event of the first pour. */
  forEvent() {
    return { ticked: [...this.ticked], passedOver: [...this.passed], ...(this.reason === "" ? {} : { reason: this.reason }) };
  }
}
