// Steps up and down from a button. Limits are Python's: a step is taken on trust, and taken back
// when Python says that it went too far. Pure.

/**
 * @typedef {import("../python/protocol.js").FieldSaid} FieldSaid
 * @typedef {{ value: string, exact: string | null }} Before  what a field held before a step
 */

export class Steps {
  /** @type {Map<string, Before>} */
  #before = new Map();

  /**
   * A field is stepped: several quick steps go back to where the first began.
   * @param {string} name
   * @param {Before} before
   */
  take(name, before) {
    if (!this.#before.has(name)) this.#before.set(name, before);
  }

  /**
   * Typed over: there is nothing to go back to.
   * @param {string} name
   */
  typed(name) {
    this.#before.delete(name);
  }

  clear() {
    this.#before.clear();
  }

  /**
   * Python has said how the fields stand: those that went too far, with what they held and why they
   * go back. None is open any longer.
   * @param {Record<string, FieldSaid>} said
   */
  tooFar(said) {
    const gone = [...this.#before].flatMap(([name, before]) => {
      const why = said[name]?.why;
      return why ? [{ name, before, why }] : [];
    });
    this.#before.clear();
    return gone;
  }
}
