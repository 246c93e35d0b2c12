// What Python says about each field: how it was read, what is wrong, and which fields apply at all.

import { all, one, say } from "../dom/dom.js";
import { isControl } from "./controls.js";

/** @typedef {import("../python/protocol.js").FieldSaid} FieldSaid */

export class Echoes {
  #form;
  /** @type {Record<string, FieldSaid>} */
  #said = {};
  /** @type {Map<string, string>} words about fields that are good, such as a limit just met */
  #remarks = new Map();

  /** @param {HTMLFormElement} form */
  constructor(form) {
    this.#form = form;
  }

  /**
   * Readings and good news at once. An error waits while its field is being typed in: half a number
   * is no mistake.
   * @param {Record<string, FieldSaid>} said
   * @param {string | null} typing
   */
  show(said, typing) {
    this.#said = said;
    for (const field of this.#fields()) {
      const name = field.dataset.name ?? "";
      const about = said[name];
      say(one(field, ".read", HTMLElement), about?.read ?? "");
      if (!about?.why) mark(field, "", this.#remarks.get(name));
      else if (name !== typing) mark(field, about.why);
    }
  }

  /** Typing has stopped, or the field was left: the errors held back are shown now. */
  settle() {
    for (const field of this.#fields()) {
      const why = this.#said[field.dataset.name ?? ""]?.why;
      if (why) mark(field, why);
    }
  }

  /** @param {string} name */
  isBad(name) {
    return Boolean(this.#said[name]?.why);
  }

  /**
   * A word about a field that is good; an empty one takes it back.
   * @param {string} name
   * @param {string} text
   */
  remark(name, text) {
    if (text) this.#remarks.set(name, text);
    else this.#remarks.delete(name);
  }

  /**
   * Hides the fields that do not apply. A group of rows goes with its name or with all its fields.
   * @param {string[]} names
   */
  reveal(names) {
    const shown = new Set(names);
    for (const field of this.#fields()) field.hidden = !shown.has(field.dataset.name ?? "");
    for (const group of all(this.#form, "fieldset[data-rows]", HTMLElement)) {
      const rows = group.dataset.rows ?? "";
      group.hidden = !shown.has(rows) && !names.some((name) => name.startsWith(`${rows}.`));
    }
  }

  #fields() {
    return all(this.#form, ".field[data-name]", HTMLElement);
  }
}

/**
 * @param {HTMLElement} field
 * @param {string} why
 * @param {string} [remark]
 */
function mark(field, why, remark = "") {
  field.classList.toggle("bad", why !== "");
  say(one(field, ".why", HTMLElement), why || remark);
  for (const control of field.querySelectorAll("input, select, textarea")) {
    if (!isControl(control) || control.name !== field.dataset.name) continue;
    if (why) control.setAttribute("aria-invalid", "true");
    else control.removeAttribute("aria-invalid");
  }
}
