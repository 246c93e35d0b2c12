// The calls waiting for Python: one runs at a time, and the newest of a key replaces the waiting
// one. Pure: no worker, no clock.

/**
 * @typedef {import("./asking.js").Outcome<any>} Outcome
 * @typedef {{ id: number, key: string | null, question: import("./asking.js").Question,
 *   tries: number, stale: boolean, settle: (outcome: Outcome | null) => void }} Call
 */

/** A call that took the worker down with it is asked once more, then given up. */
const TRIES = 2;

export class Calls {
  /** @type {Call[]} */
  #waiting = [];
  /** @type {Call | null} */
  #running = null;
  #lastId = 0;

  /** Is anything unanswered? */
  get any() {
    return this.#running !== null || this.#waiting.length > 0;
  }

  get running() {
    return this.#running !== null;
  }

  /**
   * Resolves to the outcome, or to null when a newer call with the same key took its place.
   * @param {import("./asking.js").Question} question
   * @param {string | null} key
   * @returns {Promise<Outcome | null>}
   */
  add(question, key) {
    if (key !== null) this.forget(key);
    return new Promise((settle) => {
      this.#waiting.push({ id: ++this.#lastId, key, question, tries: 0, stale: false, settle });
    });
  }

  /**
   * Nobody waits for this key any longer: drop what waits, and the reply of what runs.
   * @param {string} key
   */
  forget(key) {
    if (this.#running?.key === key) this.#running.stale = true;
    const dropped = this.#waiting.filter((call) => call.key === key);
    this.#waiting = this.#waiting.filter((call) => call.key !== key);
    for (const call of dropped) call.settle(null);
  }

  /**
   * The next call to send, or null while one runs or none waits.
   * @returns {Call | null}
   */
  take() {
    if (this.#running) return null;
    const call = this.#waiting.shift() ?? null;
    if (call) call.tries += 1;
    this.#running = call;
    return call;
  }

  /**
   * A reply with another id belongs to a call given up long ago and changes nothing.
   * @param {number} id
   * @param {Outcome} outcome
   */
  reply(id, outcome) {
    if (this.#running?.id !== id) return;
    const call = this.#running;
    this.#running = null;
    call.settle(call.stale ? null : outcome);
  }

  /**
   * The worker is gone while a call ran: ask again first thing, or give up with this text.
   * @param {string} text
   */
  again(text) {
    const call = this.#running;
    this.#running = null;
    if (!call) return;
    if (call.stale) call.settle(null);
    else if (call.tries >= TRIES) call.settle({ problem: { kind: "fault", text } });
    else this.#waiting.unshift(call);
  }

  /**
   * The page went away, through no fault of the call: it waits again as if it had never been sent.
   */
  rest() {
    if (this.#running) this.#running.tries -= 1;
    this.again("");
  }

  /** @param {string} text */
  unavailable(text) {
    const calls = [...(this.#running ? [this.#running] : []), ...this.#waiting];
    this.#running = null;
    this.#waiting = [];
    for (const call of calls)
      call.settle(call.stale ? null : { problem: { kind: "unavailable", text } });
  }
}
