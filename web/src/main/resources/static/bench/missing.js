// What this page cannot do where it is shown, in words for the person at the sink. Browsers give
// some things to pages of a secure connection only: see docs/phone-at-the-sink.md.

/**
 * What is asked of the browser; the window of the page has all of it.
 *
 * @typedef {{isSecureContext: boolean, navigator: {wakeLock?: unknown, serviceWorker?: unknown}}} Surroundings
 */

/**
 * What is missing here, one sentence each; nothing when all is there.
 *
 * @param {Surroundings} [here]
 * @returns {string[]}
 */
export function whatIsMissing(here = window) {
  const missing = [];
  if (!here.isSecureContext || !here.navigator.wakeLock) {
    missing.push("This page cannot hold the screen awake: set the device to stay on.");
  }
  if (!here.isSecureContext || !here.navigator.serviceWorker) {
    missing.push("Do not reload this page while the server is out of reach: it would be gone.");
  }
  if (missing.length > 0) {
    missing.push("The cue track goes on with the screen locked.");
  }
  if (!here.isSecureContext) {
    missing.push("Started with serve --lan --tls, the program has a connection that mends this.");
  }
  return missing;
}
