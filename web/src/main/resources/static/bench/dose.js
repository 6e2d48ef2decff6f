// How far a developer has come and how warm it is: read off the points of the snapshot, straight between them. Pure.

/** @typedef {import("./snapshot.js").Step} Step */

/** Share of the development at a moment, 0 to 1 and beyond; null when no reading says. @param {Step} step @param {number} at */
export function shareAt(step, at) {
  return between(step.dose?.reached.map((point) => [point.at, point.share]) ?? [], at);
}

/** The bath's temperature at a moment, as read and drifted, °C; null when no reading says. @param {Step} step @param {number} at */
export function celsiusAt(step, at) {
  return between(step.dose?.temperatures.map((point) => [point.at, point.celsius]) ?? [], at);
}

/** @param {number[][]} points @param {number} at */
function between(points, at) {
  const next = points.findIndex((point) => (point[0] ?? 0) >= at);
  const after = points[next < 0 ? points.length - 1 : next];
  const before = points[next <= 0 ? 0 : next - 1];
  if (after === undefined || before === undefined) {
    return null;
  }
  const [t0 = 0, v0 = 0] = before;
  const [t1 = 0, v1 = 0] = after;
  return next < 0 || t1 === t0 ? v1 : v0 + ((v1 - v0) * Math.max(0, at - t0)) / (t1 - t0);
}
