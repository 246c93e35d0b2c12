// The units of a form's numbers. The quantity stays when another unit is chosen, and Python
// converts its number; until that has come, the number on the page still stands in its old unit.
// Pure.

/** @typedef {import("../python/protocol.js").Texts} Texts */

const UNIT = ".unit";

export class Units {
  /** @type {Map<string, string>} the unit last chosen for each field */
  #chosen = new Map();
  /** @type {Map<string, string>} the unit that a number still stands in, while it is converted */
  #old = new Map();

  /**
   * A field's unit as the page shows it, its number with it.
   * @param {string} name
   * @param {string} unit
   */
  note(name, unit) {
    this.#chosen.set(name, unit);
  }

  /**
   * Another unit is chosen: the one to convert from, or null where the number stands in it already.
   * Several quick choices start from the number that is still shown.
   * @param {string} name
   * @param {string} unit
   */
  choose(name, unit) {
    const from = this.#old.get(name) ?? this.#chosen.get(name) ?? unit;
    this.#chosen.set(name, unit);
    if (from === unit) this.#old.delete(name);
    else this.#old.set(name, from);
    return from === unit ? null : from;
  }

  /**
   * The converted number has come; false when it is wanted no longer.
   * @param {string} name
   * @param {string} from
   */
  converted(name, from) {
    return this.#old.get(name) === from && this.#old.delete(name);
  }

  /**
   * A number is typed anew: it stands in the unit that is shown.
   * @param {string} name
   */
  typed(name) {
    this.#old.delete(name);
  }

  /** All numbers are put in anew. */
  clear() {
    this.#old.clear();
  }

  /**
   * What a form says, with each number in the unit that it stands in.
   * @param {Texts} values
   * @returns {Texts}
   */
  asTheyStand(values) {
    const old = [...this.#old].map(([name, unit]) => [name + UNIT, unit]);
    return { ...values, ...Object.fromEntries(old) };
  }
}

/**
 * The field that a control chooses the unit of; null for any other control.
 * @param {string} control
 */
export function fieldOfUnit(control) {
  return control.endsWith(UNIT) ? control.slice(0, -UNIT.length) : null;
}
