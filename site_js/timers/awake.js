// Keeps the screen on while a timer runs, where the browser allows it. A lock is let go whenever
// the page is hidden, so it is asked for again when the page comes back.

export class Awake extends EventTarget {
  #wanted = false;
  /** @type {{ release(): Promise<void> } | null} */
  #lock = null;
  #asking = false;
  /** @type {"off" | "on" | "refused"} */
  state = "off";

  constructor() {
    super();
    document.addEventListener("visibilitychange", () => void this.#hold());
  }

  /** @param {boolean} wanted */
  want(wanted) {
    if (wanted === this.#wanted) return;
    this.#wanted = wanted;
    if (wanted) void this.#hold();
    else {
      void this.#lock?.release();
      this.#lock = null;
      this.#be("off");
    }
  }

  async #hold() {
    if (!this.#wanted || this.#lock || this.#asking || document.visibilityState !== "visible")
      return;
    this.#asking = true;
    try {
      const lock = await navigator.wakeLock.request("screen");
      this.#lock = lock;
      lock.addEventListener("release", () => {
        if (this.#lock !== lock) return;
        this.#lock = null;
        // taken away, as by a low battery
        if (document.visibilityState === "visible") this.#be("refused");
      });
      this.#be("on");
      if (!this.#wanted) {
        this.#lock = null;
        void lock.release();
        this.#be("off");
      }
    } catch {
      // no such thing here, or not now (a low battery, a hidden page): either way the screen may go
      // off, and that is said
      this.#be("refused");
    } finally {
      this.#asking = false;
    }
  }

  /** @param {"off" | "on" | "refused"} state */
  #be(state) {
    if (state === this.state) return;
    this.state = state;
    this.dispatchEvent(new Event("change"));
  }
}
