// Rows of the same small group: add, remove, put back.
//
// A row keeps its number for good; when one is removed the values move up and the last row goes. So
// no name, id or label is ever rewritten, and the text of each row stays as Python wrote it.

import { all, button, one, say, startedAt } from "../dom/dom.js";
import { movedDown, movedUp, named, rowOf, startOf } from "./row_values.js";

/**
 * @typedef {import("./row_values.js").Held} Held
 * @typedef {import("./controls.js").Controls} Controls
 */

export class Rows {
  #form;
  #controls;
  #changed;

  /**
   * @param {HTMLFormElement} form
   * @param {Controls} controls
   * @param {AbortSignal} signal
   * @param {() => void} changed
   */
  constructor(form, controls, signal, changed) {
    this.#form = form;
    this.#controls = controls;
    this.#changed = changed;
    form.addEventListener("click", (event) => this.#click(event), { signal });
  }

  /** @returns {Record<string, number>} */
  counts() {
    return Object.fromEntries(this.#groups().map((group) => [listOf(group), rowsOf(group).length]));
  }

  /** @param {Record<string, number>} counts */
  setCounts(counts) {
    for (const group of this.#groups()) {
      const wanted = counts[listOf(group)];
      if (wanted === undefined) continue;
      while (rowsOf(group).length > wanted) rowsOf(group).at(-1)?.remove();
      while (rowsOf(group).length < wanted && this.#append(group));
      one(group, ".undo", HTMLElement)?.remove();
      say(one(group, ".said", HTMLElement), "");
    }
  }

  /** @param {Event} event */
  #click(event) {
    const pressed = startedAt(event, "[data-add], [data-remove]");
    const group = pressed?.closest("fieldset[data-rows]");
    if (!pressed || !(group instanceof HTMLElement)) return;
    if (pressed.dataset.add !== undefined) this.#add(group);
    else this.#remove(group, Number(pressed.closest(".row")?.getAttribute("data-row")));
  }

  /** @param {HTMLElement} group */
  #add(group) {
    const most = Number(group.dataset.max ?? Infinity);
    if (rowsOf(group).length >= most) {
      tell(group, `${most} at most.`);
      return;
    }
    const row = this.#append(group);
    if (!row) return;
    tell(group, "");
    one(row, "input, select, textarea", HTMLElement)?.focus();
    this.#changed();
  }

  /**
   * @param {HTMLElement} group
   * @param {number} number
   */
  #remove(group, number) {
    const least = Number(group.dataset.min ?? 0);
    const before = rowsOf(group).length;
    if (before <= least) {
      tell(group, `${least} at least.`);
      return;
    }
    const held = this.#held();
    this.#write(group, movedUp(held, listOf(group), number, before));
    rowsOf(group).at(-1)?.remove();
    this.#offerBack(group, number, rowOf(held, listOf(group), number));
    const next = rowsOf(group)[Math.min(number, before - 1) - 1];
    const focus = next && one(next, "[data-remove]", HTMLElement);
    (focus ?? one(group, "[data-add]", HTMLElement))?.focus();
    this.#changed();
  }

  /**
   * @param {HTMLElement} group
   * @param {number} number
   * @param {Held} gone
   */
  #offerBack(group, number, gone) {
    one(group, ".undo", HTMLElement)?.remove();
    const undo = button(`Put row ${number} back`, "undo");
    undo.addEventListener("click", () => {
      undo.remove();
      if (!this.#append(group)) return;
      const count = rowsOf(group).length;
      this.#write(group, movedDown(this.#held(), listOf(group), number, count, gone));
      const row = rowsOf(group)[number - 1];
      if (row) one(row, "input, select, textarea", HTMLElement)?.focus();
      tell(group, `Row ${number} is back.`);
      this.#changed();
    });
    one(group, "[data-add]", HTMLElement)?.after(undo);
    tell(group, `Row ${number} removed.`);
  }

  /** @returns {Held} */
  #held() {
    const [values, exact] = [this.#controls.values(), this.#controls.exact()];
    return { values, exact, own: this.#controls.own() };
  }

  /**
   * @param {HTMLElement} group
   * @param {[number: number, row: Held][]} rows
   */
  #write(group, rows) {
    for (const [number, row] of rows) {
      const { values, exact, own } = named(row, listOf(group), number);
      this.#controls.set(values, exact);
      for (const name of Object.keys(values)) this.#controls.keepOwn(name, own.includes(name));
    }
  }

  /**
   * A new row holds nothing of hers, whatever stood in one of its number before.
   * @param {HTMLElement} group
   */
  #append(group) {
    const row = append(group);
    const start = startOf(listOf(group), row?.dataset.row ?? "");
    for (const name of this.#controls.own())
      if (name.startsWith(start)) this.#controls.keepOwn(name, false);
    return row;
  }

  #groups() {
    return all(this.#form, "fieldset[data-rows]", HTMLElement);
  }
}

/**
 * The name of a list of rows.
 * @param {HTMLElement} group
 */
function listOf(group) {
  return group.dataset.rows ?? "";
}

/** @param {HTMLElement} group */
function rowsOf(group) {
  return all(group, ".row[data-row]", HTMLElement);
}

/**
 * One more row from the template, which has {n} wherever the number goes.
 * @param {HTMLElement} group
 * @returns {HTMLElement | null}
 */
function append(group) {
  const template = one(group, "template[data-template]", HTMLTemplateElement);
  const number = String(rowsOf(group).length + 1);
  const row = template && one(template.content, ".row", HTMLElement)?.cloneNode(true);
  if (!(row instanceof HTMLElement)) return null;
  fill(row, number);
  const last = rowsOf(group).at(-1);
  if (last) last.after(row);
  else one(group, "[data-add]", HTMLElement)?.before(row);
  return row;
}

/**
 * @param {HTMLElement} row
 * @param {string} number
 */
function fill(row, number) {
  for (const element of [row, ...row.querySelectorAll("*")]) {
    for (const attribute of element.attributes)
      attribute.value = attribute.value.replaceAll("{n}", number);
  }
  const texts = document.createTreeWalker(row, NodeFilter.SHOW_TEXT);
  while (texts.nextNode()) {
    const text = texts.currentNode;
    if (text.nodeValue?.includes("{n}")) text.nodeValue = text.nodeValue.replaceAll("{n}", number);
  }
}

/**
 * @param {HTMLElement} group
 * @param {string} text
 */
function tell(group, text) {
  let place = one(group, ".said", HTMLElement);
  if (!place) {
    place = document.createElement("p");
    place.className = "said";
    place.setAttribute("role", "status");
    group.append(place);
  }
  say(place, text);
}
