// What temperatures and volumes are read in on this device. Values stay in °C and mL; only words change.

const ML_PER_US_FLUID_OUNCE = 29.5735295625;
const root = document.documentElement.dataset;
const fahrenheit = root["scale"] === "fahrenheit";
const ounces = root["measure"] === "us_fluid_ounces";

/** What stands behind a temperature. */
export const DEGREE_SIGN = fahrenheit ? "°F" : "°C";

/** On the chosen scale. @param {number} c */
export const shownFrom = (c) => (fahrenheit ? c * 1.8 + 32 : c);

/** Back to °C. @param {number} shown */
export const celsiusOf = (shown) => (fahrenheit ? (shown - 32) / 1.8 : shown);

/** On the chosen scale, one decimal, with a true minus. @param {number} c */
export const degrees = (c) => figure(shownFrom(c));

/** A number already on the chosen scale. @param {number} shown */
export function figure(shown) {
  return shown.toFixed(1).replace("-", "−");
}

/** A volume with its unit. @param {number} ml */
export function volume(ml) {
  return ounces ? `${(ml / ML_PER_US_FLUID_OUNCE).toFixed(1)} fl oz` : `${Math.round(ml)} mL`;
}

/** Words that came from the server in °C and mL, as they are read on this device. @param {string} text */
export function inChosenUnits(text) {
  const warm = fahrenheit ? text.replace(/([-−]?\d+(?:\.\d+)?)(?: to ([-−]?\d+(?:\.\d+)?))? °C/g, (_all, low, high) => `${plain(low)}${high === undefined ? "" : ` to ${plain(high)}`} °F`) : text;
  return ounces ? warm.replace(/(\d+(?:\.\d+)?) mL/g, (_all, ml) => volume(Number(ml))) : warm;
}

/** @param {string} c as written in °C */
function plain(c) {
  return figure(shownFrom(Number(c.replace("−", "-")))).replace(/\.0$/, "");
}
