// The name of this screen, by which others know who pressed; kept on this device.

import { freshId } from "./outbox.js";

const KEPT_AS = "wetside.screen";
let known = "";

/** For example "phone 3f2a". */
export function screenName() {
  if (known === "") {
    known = kept() ?? made();
  }
  return known;
}

function kept() {
  try {
    return localStorage.getItem(KEPT_AS);
  } catch {
    return null;
  }
}

function made() {
  const kind = Math.min(screen.width, screen.height) < 500 ? "phone" : "laptop";
  const name = `${kind} ${freshId().slice(0, 4)}`;
  try {
    localStorage.setItem(KEPT_AS, name);
  } catch {
    // then it is new with every page
  }
  return name;
}
