// What lives and dies with its place on the page: instant navigation takes elements out of it at
// any moment. What one listens to ends with it, and an answer that comes late finds nobody.

/** One life after another, each with a signal that ends what belongs to it. */
export class Life {
  /** @type {AbortController | null} */
  #now = null;

  get alive() {
    return this.#now !== null;
  }

  /** A new life; the one before it is over. @returns {AbortSignal} */
  begin() {
    this.end();
    this.#now = new AbortController();
    return this.#now.signal;
  }

  end() {
    this.#now?.abort();
    this.#now = null;
  }

  /**
   * What a promise comes to; null when the life that waited for it is over by then.
   * @template T
   * @param {Promise<T>} promise
   * @returns {Promise<T | null>}
   */
  async late(promise) {
    const waiting = this.#now;
    const value = await promise;
    return waiting !== null && waiting === this.#now ? value : null;
  }
}

/** An element that lives while it is in the page. */
export class LivingElement extends HTMLElement {
  #life = new Life();

  get alive() {
    return this.#life.alive;
  }

  connectedCallback() {
    this.enter(this.#life.begin());
  }

  disconnectedCallback() {
    this.#life.end();
    this.leave();
  }

  /**
   * It is in the page now.
   * @param {AbortSignal} _signal  for all that it listens to
   */
  enter(_signal) {}

  /** It is in the page no longer. */
  leave() {}

  /**
   * What a promise comes to; null when this element has left the page meanwhile.
   * @template T
   * @param {Promise<T>} promise
   * @returns {Promise<T | null>}
   */
  late(promise) {
    return this.#life.late(promise);
  }
}

/**
 * The first touch of a place, as it is known before any key or button has done its work.
 * @param {EventTarget} place
 * @param {AbortSignal} signal
 * @param {string[]} [types]
 * @returns {Promise<unknown>}
 */
export function touchOf(place, signal, types = ["pointerdown", "focusin", "input"]) {
  return new Promise((touch) => {
    for (const type of types) place.addEventListener(type, touch, { once: true, signal });
  });
}
