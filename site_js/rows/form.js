// What a person does to a form: typing, units, steppers, swatches, rows. It says "something
// changed" and answers "what does it say now"; what the texts mean is Python's matter.

import { startedAt } from "../dom/dom.js";
import { pressOver } from "../dom/press.js";
import { python } from "../python/python.js";
import { Controls, isControl } from "./controls.js";
import { stepped } from "./counts.js";
import { Echoes } from "./echoes.js";
import { Rows } from "./rows.js";
import { Steps } from "./steps.js";
import { fieldOfUnit, Units } from "./units.js";

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
  #signal;
  /** @type {string | null} the field being typed in */
  #typing = null;
  /** @type {ReturnType<typeof setTimeout> | undefined} */
  #pause;
  #units = new Units();
  #steps = new Steps();

  /**
   * @param {HTMLFormElement} form
   * @param {{ card: string, signal: AbortSignal, settings: () => Settings, changed: (name: string |
   *   null) => void }} options
   */
  constructor(form, { card, signal, settings, changed }) {
    this.#card = card;
    this.#settings = settings;
    this.#changed = changed;
    this.#signal = signal;
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
    return {
      values: this.#units.asTheyStand(this.controls.values()),
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
    this.#units.clear();
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
    const tooFar = this.#steps.tooFar(said);
    for (const { name, before, why } of tooFar) {
      const { value, exact } = before;
      this.controls.set({ [name]: value }, exact === null ? {} : { [name]: exact });
      this.echoes.remark(name, why);
    }
    const takenBack = tooFar.length > 0;
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
    else if (control instanceof HTMLSelectElement && fieldOfUnit(control.name) !== null)
      void this.#switchUnit(control);
    else if (control.name) {
      this.#units.typed(control.name);
      this.#steps.typed(control.name);
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

  /** @param {HTMLSelectElement} select */
  async #switchUnit(select) {
    const name = fieldOfUnit(select.name) ?? "";
    const control = this.controls.find(name);
    const from = control && this.#units.choose(name, select.value);
    const wanted =
      !control || from === null || (await this.#convert(name, control.value, from, select));
    if (wanted) this.#changed(`${name}.unit`);
  }

  /**
   * The quantity stays, its number changes. False when that is wanted no longer.
   * @param {string} name
   * @param {string} text
   * @param {string} from
   * @param {HTMLSelectElement} select
   */
  async #convert(name, text, from, select) {
    const exact = this.controls.exact()[name];
    const asked = {
      ...{ card: this.#card, name, text, from, to: select.value, settings: this.#settings() },
      ...(exact === undefined ? {} : { exact }),
    };
    const replaces = `unit of ${name} in ${this.#card}`;
    const outcome = await python.ask({ do: "convert", ...asked }, { replaces });
    if (outcome === null || this.#signal.aborted) return false;
    if (!this.#units.converted(name, from)) return false;
    if ("ok" in outcome)
      this.controls.set({ [name]: outcome.ok.text }, { [name]: outcome.ok.exact });
    else if (outcome.problem.kind === "unavailable") {
      // no one can convert it: better the old unit than another quantity
      select.value = from;
      this.#units.note(name, from);
    }
    return true;
  }

  #noteUnits() {
    for (const control of this.controls.list()) {
      const name = fieldOfUnit(control.name);
      if (control instanceof HTMLSelectElement && name !== null)
        this.#units.note(name, control.value);
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
    if (!this.echoes.isBad(name)) {
      this.#steps.take(name, { value: control.value, exact: this.controls.exact()[name] ?? null });
    }
    this.echoes.remark(name, "");
    this.controls.set({ [name]: text });
    this.controls.keepOwn(name, true);
    this.#changed(name);
  }
}
