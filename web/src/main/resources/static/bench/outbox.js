// What was pressed and has not been answered: kept in order, across a reload, sent again until the server has it.

/** @typedef {Record<string, unknown> & {id: string}} Posted */

export class Outbox {
  /** @param {number} run */
  constructor(run) {
    this.name = `wetside.pressed.${run}`;
    /** @type {Posted[]} */
    this.waiting = read(this.name) ?? [];
  }

  /** @param {Posted} event */
  add(event) {
    this.change((kept) => [...kept.filter((one) => one.id !== event.id), event]);
  }

  /** @returns {Posted | undefined} */
  first() {
    return this.waiting[0];
  }

  /** The server has answered it. @param {string} id */
  remove(id) {
    this.change((kept) => kept.filter((event) => event.id !== id));
  }

  get length() {
    return this.waiting.length;
  }

  /** Two tabs of one device share what is kept: each changes what stands there now. @param {(kept: Posted[]) => Posted[]} how */
  change(how) {
    const kept = read(this.name);
    this.waiting = how(kept ?? this.waiting);
    try {
      localStorage.setItem(this.name, JSON.stringify(this.waiting));
    } catch {
      // a browser that keeps nothing still keeps it while the page lives
    }
  }
}

/** Null where nothing can be kept. @param {string} name @returns {Posted[] | null} */
function read(name) {
  try {
    return JSON.parse(localStorage.getItem(name) ?? "[]");
  } catch {
    return null;
  }
}

/** An id nobody else makes; plain HTTP over Wi-Fi has no randomUUID. */
export function freshId() {
  const bytes = crypto.getRandomValues(new Uint8Array(16));
  return Array.from(bytes, (b) => b.toString(16).padStart(2, "0")).join("");
}
