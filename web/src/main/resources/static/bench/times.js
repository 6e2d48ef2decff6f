// How moments and spans are written on the Bench. Moments are milliseconds since 1970, corrected by the clock.

/** @param {number} n */
const two = (n) => String(n).padStart(2, "0");

/** The wall clock of the reader, to the second. @param {number} at */
export function clock(at) {
  const d = new Date(Math.round(at / 1000) * 1000);
  return `${two(d.getHours())}:${two(d.getMinutes())}:${two(d.getSeconds())}`;
}

/** The wall clock, to the minute. @param {number} at */
export function minute(at) {
  const d = new Date(at);
  return `${two(d.getHours())}:${two(d.getMinutes())}`;
}

/** A span as 0:06, 9:02 or 1:04:00; never negative. @param {number} ms @param {"up" | "down"} rounding */
export function span(ms, rounding = "down") {
  const exact = Math.max(0, ms) / 1000;
  const s = rounding === "up" ? Math.ceil(exact - 0.001) : Math.floor(exact + 0.001);
  const h = Math.floor(s / 3600);
  return h > 0 ? `${h}:${two(Math.floor(s / 60) % 60)}:${two(s % 60)}` : `${Math.floor(s / 60)}:${two(s % 60)}`;
}

/** A difference as +0:25 or −0:10. @param {number} ms */
export function moved(ms) {
  return (ms < 0 ? "−" : "+") + span(Math.abs(ms));
}

/** For attributes that machines read. @param {number} ms */
export function isoSpan(ms) {
  return `PT${Math.max(0, Math.round(ms / 1000))}S`;
}
