// What a person does to a form: typing, units, steppers, swatches, rows. It says "something
// changed" and answers "what does it say now"; what the texts mean is Python's matter.

import { startedAt } from "../dom/dom.js";
import { pressOver } from "../dom/press.js";
import { python } from "../python/python.js";
import { Controls, isControl } from "./controls.js";
import { stepped } from "./counts.js";
import { Echoes } from "./echoes.js";
import { Rows } from "./rows.js";

/** ms after the last key before half a number counts as a mistake */
const PAUSE = 400;

/**
 * @typedef {import("../python/protocol.js").Settings} Settings
 * @typedef {import("../python/protocol.js").Texts} Texts
 */

export class LiveForm {
  /** @readonly */ controls;
  /** @readonly */ echoes;
  /** @readonly */ rows;
  #card;
  #settings;
  #changed;
  /** @type {string | null} the field being typed in */
  #typing = null;
  /** @type {ReturnType<typeof setTimeout> | undefined} */
  #pause;
  /** @type {Map<string, string>} the unit last chosen for each field */
  #units = new Map();
  /**
   * @type {Map<string, string>} fields whose number still stands in this unit, while Python
   *   converts it
   */
  #converting = new Map();
  /**
   * @type {Map<string, { value: string, exact: string | null }>} fields just stepped, and what they
   *   held before
   */
  #steps = new Map();

  /**
   * @param {HTMLFormElement} form
   * @param {{ card: string, signal: AbortSignal, settings: () => Settings, changed: (name: string |
   *   null) => void }} options
   */
  constructor(form, { card, signal, settings, changed }) {
    this.#card = card;
    this.#settings = settings;
    this.#changed = changed;
    this.controls = new Controls(form);
    this.echoes = new Echoes(form);
    this.rows = new Rows(form, this.controls, signal, () => {
      this.#noteUnits();
      this.#changed(null);
    });
    this.#noteUnits();
    form.addEventListener("submit", (event) => this.#enter(event), { signal });
    form.addEventListener("input", (event) => this.#input(event), { signal });
    form.addEventListener("click", (event) => this.#step(event), { signal });
    form.addEventListener("focusout", () => void pressOver().then(() => this.#settle()), {
      signal,
    });
    signal.addEventListener("abort", () => clearTimeout(this.#pause));
  }

  /**
   * Everything typed, as Python should read it: a number still being converted goes with its old
   * unit.
   */
  state() {
    const values = this.controls.values();
    for (const [name, unit] of this.#converting) values[`${name}.unit`] = unit;
    return {
      values,
      exact: this.controls.exact(),
      rows: this.rows.counts(),
      own: this.controls.own(),
    };
  }

  /**
   * Puts texts into the controls as if the page had been made with them.
   * own: the names of all that is hers from now on, beside what is excepted.
   * @param {{ values?: Texts, exact?: Texts, rows?: Record<string, number> | undefined, own?:
   *   string[] | undefined }} state
   * @param {ReadonlySet<string>} [except]
   */
  fill({ values = {}, exact = {}, rows = {}, own }, except) {
    this.#converting.clear();
    this.#steps.clear();
    this.rows.setCounts(rows);
    this.controls.set(values, exact, except);
    if (own) {
      for (const name of this.controls.own())
        this.controls.keepOwn(name, except?.has(name) ?? false);
      for (const name of own) this.controls.keepOwn(name, true);
    }
    this.#noteUnits();
  }

  /**
   * Values offered and taken: those named are hers, the rest of them is as the example has it.
   * @param {import("../python/protocol.js").Offer} offer
   */
  take({ values, rows, own = Object.keys(values) }) {
    this.fill({
      values,
      rows,
      own: [...this.controls.own().filter((name) => !(name in values)), ...own],
    });
  }

  /**
   * What the example had only lent is gone from the form as it is from the answer: what is read and
   * what is seen agree.
   * @param {import("../python/protocol.js").Answer["taken_back"]} state
   */
  takeBack({ values, rows }) {
    const counts = this.rows.counts();
    this.rows.setCounts(
      Object.fromEntries(Object.entries(rows).filter(([name, count]) => counts[name] !== count)),
    );
    this.controls.set(values, {}, new Set(this.controls.own()));
  }

  /**
   * Shows what Python said. True when a step went past a limit and was taken back: then ask again.
   * @param {Record<string, import("../python/protocol.js").FieldSaid>} said
   */
  echo(said) {
    let takenBack = false;
    for (const [name, before] of this.#steps) {
      const why = said[name]?.why;
      if (!why) continue;
      // limits are Python's: it has said so, and the field goes back to the last value allowed
      this.controls.set(
        { [name]: before.value },
        before.exact === null ? {} : { [name]: before.exact },
      );
      this.echoes.remark(name, why);
      takenBack = true;
    }
    this.#steps.clear();
    if (!takenBack) this.echoes.show(said, this.#typing);
    return takenBack;
  }

  /**
   * Enter ends a field; there is nothing to submit.
   * @param {Event} event
   */
  #enter(event) {
    event.preventDefault();
    this.#settle();
  }

  /** @param {Event} event */
  #input(event) {
    const control = event.target;
    if (!isControl(control)) return;
    if (control.classList.contains("swatch")) this.#pickColor(control);
    else if (control instanceof HTMLSelectElement && control.name.endsWith(".unit"))
      this.#switchUnit(control);
    else if (control.name) {
      this.#converting.delete(control.name);
      this.#steps.delete(control.name);
      this.echoes.remark(control.name, "");
      this.controls.keepExact(control.name, null);
      this.controls.showColor(control.name);
      this.controls.keepOwn(control.name, true);
      this.#typing = control instanceof HTMLSelectElement ? null : control.name;
      clearTimeout(this.#pause);
      this.#pause = setTimeout(() => this.#settle(), PAUSE);
      this.#changed(control.name);
    }
  }

  #settle() {
    clearTimeout(this.#pause);
    this.#typing = null;
    this.echoes.settle();
  }

  /** @param {HTMLInputElement | HTMLSelectElement | HTMLTextAreaElement} swatch */
  #pickColor(swatch) {
    const name = swatch.dataset.for ?? "";
    this.controls.set({ [name]: swatch.value });
    this.controls.keepOwn(name, true);
    this.#changed(name);
  }

  /**
   * The quantity stays, its number changes. Several quick switches start from the number that is
   * still shown.
   * @param {HTMLSelectElement} select
   */
  async #switchUnit(select) {
    const name = unitOf(select);
    const control = this.controls.find(name);
    const from = this.#converting.get(name) ?? this.#units.get(name) ?? select.value;
    const to = select.value;
    this.#units.set(name, to);
    if (!control || from === to) {
      this.#converting.delete(name);
      this.#changed(`${name}.unit`);
      return;
    }
    this.#converting.set(name, from);
    const exact = this.controls.exact()[name];
    const outcome = await python.ask(
      {
        do: "convert",
        card: this.#card,
        name,
        text: control.value,
        ...(exact === undefined ? {} : { exact }),
        from,
        to,
        settings: this.#settings(),
      },
      { replaces: `unit of ${name} in ${this.#card}` },
    );
    if (outcome === null || this.#converting.get(name) !== from) return;
    this.#converting.delete(name);
    if ("ok" in outcome)
      this.controls.set({ [name]: outcome.ok.text }, { [name]: outcome.ok.exact });
    else if (outcome.problem.kind === "unavailable") {
      // no one can convert it: better the old unit than another quantity
      select.value = from;
      this.#units.set(name, from);
    }
    this.#changed(`${name}.unit`);
  }

  #noteUnits() {
    for (const control of this.controls.list()) {
      if (control instanceof HTMLSelectElement && control.name.endsWith(".unit"))
        this.#units.set(unitOf(control), control.value);
    }
  }

  /** @param {Event} event */
  #step(event) {
    const pressed = startedAt(event, "button[data-step]");
    const name = pressed?.closest(".field")?.getAttribute("data-name");
    const control = name && this.controls.find(name);
    if (!pressed || !name || !control) return;
    const text = stepped(control.value, Number(pressed.dataset.step));
    if (text === null) {
      this.echoes.settle();
      return;
    }
    if (!this.#steps.has(name) && !this.echoes.isBad(name)) {
      this.#steps.set(name, { value: control.value, exact: this.controls.exact()[name] ?? null });
    }
    this.echoes.remark(name, "");
    this.controls.set({ [name]: text });
    this.controls.keepOwn(name, true);
    this.#changed(name);
  }
}

/**
 * The field that a unit belongs to.
 * @param {HTMLSelectElement} select
 */
function unitOf(select) {
  return select.name.slice(0, -".unit".length);
}
