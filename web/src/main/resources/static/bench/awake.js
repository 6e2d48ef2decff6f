// Keeps the screen from sleeping while a run goes on, where the browser allows it (not over plain HTTP).

export class Awake {
  constructor() {
    this.wanted = false;
    this.held = false;
    document.addEventListener("visibilitychange", () => {
      this.held = false; // the browser lets go when the page is hidden
      this.hold();
    });
  }

  /** @param {boolean} wanted */
  want(wanted) {
    if (wanted !== this.wanted) {
      this.wanted = wanted;
      this.hold();
    }
  }

  hold() {
    if (this.wanted && !this.held && "wakeLock" in navigator && document.visibilityState === "visible") {
      this.held = true;
      navigator.wakeLock.request("screen").catch(() => {
        this.held = false;
      });
    }
  }
}
