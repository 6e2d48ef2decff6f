// The keys of this screen: which key means what, kept on the device. Every one can be changed or turned off.

const KEPT_AS = "wetside.keys";

/** What keys mean, by the letter they are delivered with. @type {ReadonlyArray<readonly [string, string]>} */
export const MEANINGS = [
  ["Space", "The next step"],
  ["Esc", "Back, pass over"],
  ["W", "Where am I?"],
  ["R", "Reading"],
  ["M", "Mishap"],
  ["O", "The other tank"],
  ["N", "Night or day"],
  ["S", "Sound"],
  ["C", "Change the run"],
  ["U", "Undo"],
  ["Y", "Yes, really"],
  ["L", "Look at the checks"],
  ["D", "Load in the dark"],
  ["H", "Cautions of the baths"],
  ["K", "Keys of this screen"],
  ["X", "Leave the Bench"],
];

/** What is chosen from a list, and the steps of a reading. @type {ReadonlyArray<readonly [string, string]>} */
export const CHOICES = [
  ["ArrowUp", "A little more"],
  ["ArrowDown", "A little less"],
  ["ArrowRight", "More"],
  ["ArrowLeft", "Less"],
  .../** @type {[string, string][]} */ ([..."1234567890ABEFGPTZ"].map((letter) => [letter, `Choice ${letter}`])),
];

/** @typedef {{off: boolean, foot: string, bound: Record<string, string>}} Settings */
/** @type {Settings} */
let settings = kept();

/** The name of a pressed key as the sheet writes it: Space, Esc, W, ArrowUp, F13, MediaPlayPause. @param {KeyboardEvent} event */
export function nameOf(event) {
  if (event.key === " " || event.code === "Space") {
    return "Space";
  }
  if (event.key === "Escape") {
    return "Esc";
  }
  if (event.key === "Unidentified" || event.key === "") {
    return event.code === "" ? `key ${event.keyCode}` : event.code;
  }
  return event.key.length === 1 ? event.key.toUpperCase() : event.key;
}

/** What a key means here, as the letter it is delivered with; null when it means nothing. @param {string} name @returns {string | null} */
export function meaningOf(name) {
  if (name === settings.foot && name !== "") {
    return "Space";
  }
  if (settings.off) {
    return null;
  }
  const bound = Object.keys(settings.bound).find((letter) => settings.bound[letter] === name);
  return bound ?? (name in settings.bound ? null : name);
}

/** Whether it is the foot switch of this screen. @param {string} name */
export function isFoot(name) {
  return name !== "" && name === settings.foot;
}

/** What to press for a meaning; empty when nothing does. @param {string} letter */
export function shownKey(letter) {
  return settings.off ? "" : (settings.bound[letter] ?? letter);
}

/** The same for those who have keys read to them. @param {string} letter @returns {Record<string, string>} */
export function shortcut(letter) {
  const key = shownKey(letter);
  return key === "" ? {} : { "aria-keyshortcuts": key };
}

/** The foot switch as it was learned; empty when there is none. */
export function footKey() {
  return settings.foot;
}

export function areOff() {
  return settings.off;
}

/** @param {boolean} off the foot switch goes on acting: it was learned on purpose */
export function turnOff(off) {
  change({ ...settings, off });
}

/** @param {string} name empty for none */
export function learnFoot(name) {
  change({ ...settings, foot: name });
}

/** Another key for a meaning, or none; a key that meant something else until now does so no longer. @param {string} letter @param {string} name */
export function bind(letter, name) {
  /** @type {Record<string, string>} */
  const bound = { ...settings.bound };
  const before = meaningOf(name);
  if (name !== "" && before !== null && before !== letter) {
    bound[before] = "";
  }
  bound[letter] = name;
  if (name === letter) {
    delete bound[letter];
  }
  change({ ...settings, bound });
}

/** All keys as delivered, without a foot switch. */
export function asDelivered() {
  change({ off: false, foot: "", bound: {} });
}

/** @param {Settings} fresh */
function change(fresh) {
  settings = fresh;
  try {
    localStorage.setItem(KEPT_AS, JSON.stringify(fresh));
  } catch {
    // then the choice lasts as long as the page
  }
}

/** @returns {Settings} */
function kept() {
  const none = { off: false, foot: "", bound: {} };
  try {
    return { ...none, ...JSON.parse(localStorage.getItem(KEPT_AS) ?? "{}") };
  } catch {
    return none;
  }
}
