// The server's clock as this page knows it: the offset of the shortest of five round trips.

const TRIPS = 5;

export class ServerClock {
  constructor() {
    this.offset = 0;
    this.shortest = Number.POSITIVE_INFINITY;
  }

  /** The moment on the server, in ms; steady between measurements, whatever the device's own clock is set to. */
  now() {
    return performance.timeOrigin + performance.now() + this.offset;
  }

  /**
   * Measures anew; keeps what it knew when the server cannot be reached, and when what is new lies within what the round trip leaves
   * open: a cue is not moved by noise.
   */
  async measure() {
    const before = this.shortest < Number.POSITIVE_INFINITY ? this.offset : null;
    let measured = this.offset;
    let best = Number.POSITIVE_INFINITY;
    for (let trip = 0; trip < TRIPS; trip++) {
      const sent = performance.now();
      const answer = await fetch("/api/now", { cache: "no-store" });
      const got = performance.now();
      const said = Date.parse((await answer.json()).now);
      if (got - sent < best) {
        best = got - sent;
        measured = said - (performance.timeOrigin + (sent + got) / 2);
      }
    }
    if (before === null || best < this.shortest || Math.abs(measured - before) > best / 2) {
      this.offset = measured;
      this.shortest = best;
    }
  }
}
