// The controls of one form by name, as texts; and the exact values behind numbers that the page
// wrote itself.

/**
 * @typedef {import("../python/protocol.js").Texts} Texts
 * @typedef {HTMLInputElement | HTMLSelectElement | HTMLTextAreaElement} Control
 */

const HEX_COLOR = /^#[0-9a-f]{6}$/i;

export class Controls {
  #form;
  /**
   * @type {Map<string, string>} canonical text of a field that a unit switch, a link or an offer
   *   filled
   */
  #exact = new Map();
  /** @type {Set<string>} what a person typed or took, and not the example */
  #own = new Set();

  /** @param {HTMLFormElement} form */
  constructor(form) {
    this.#form = form;
  }

  /** @returns {Control[]} */
  list() {
    return /** @type {Control[]} */ (
      [...this.#form.elements].filter((element) => isControl(element) && element.name !== "")
    );
  }

  /**
   * @param {string} name
   * @returns {Control | null}
   */
  find(name) {
    const found = this.#form.elements.namedItem(name);
    return isControl(found) ? found : null;
  }

  /** @returns {Texts} */
  values() {
    return Object.fromEntries(this.list().map((control) => [control.name, control.value]));
  }

  /** @returns {Texts} */
  exact() {
    return Object.fromEntries(this.#exact);
  }

  /** The names of what is hers. */
  own() {
    return [...this.#own];
  }

  /**
   * @param {string} name
   * @param {boolean} hers
   */
  keepOwn(name, hers) {
    if (hers) this.#own.add(name);
    else this.#own.delete(name);
  }

  /**
   * @param {Texts} values
   * @param {Texts} [exact]
   * @param {ReadonlySet<string>} [except]  names that a person has typed in meanwhile
   */
  set(values, exact = {}, except = new Set()) {
    for (const control of this.list()) {
      const value = values[control.name];
      if (value === undefined || except.has(control.name)) continue;
      if (control.value !== value) control.value = value;
      this.keepExact(control.name, exact[control.name] || null);
      this.showColor(control.name);
    }
  }

  /**
   * @param {string} name
   * @param {string | null} text  null: what is typed counts
   */
  keepExact(name, text) {
    if (text === null) this.#exact.delete(name);
    else this.#exact.set(name, text);
  }

  /**
   * The swatch beside a color field shows what is typed, once that is a color.
   * @param {string} name
   */
  showColor(name) {
    const text = this.find(name)?.value.trim() ?? "";
    for (const swatch of this.#form.querySelectorAll("input.swatch")) {
      if (swatch instanceof HTMLInputElement && swatch.dataset.for === name && HEX_COLOR.test(text))
        swatch.value = text.toLowerCase();
    }
  }
}

/**
 * @param {unknown} element
 * @returns {element is Control}
 */
export function isControl(element) {
  return (
    element instanceof HTMLInputElement ||
    element instanceof HTMLSelectElement ||
    element instanceof HTMLTextAreaElement
  );
}
