// <bench-workbook>: the page of all records. Python makes the list and the forms and checks what is typed; a record is kept on a press
// of Save, on this device alone, and every change can be taken back.

import { bench } from "./bench.js";
import { button, one, say, startedAt } from "./dom.js";
import { saveBlob } from "./files.js";
import { sparesData, whenIdle } from "./idle.js";
import { printAlone } from "./print.js";
import { put } from "./put.js";
import { python } from "./python.js";
import { RecordForm } from "./record_form.js";
import { moment, today, workbook } from "./records.js";
import { Taking } from "./taking.js";
import { keptWords } from "./words_kept.js";
import { stateWords } from "./words.js";

/** @typedef {import("./protocol.js").Replies} Replies */

const KEY = "workbook";

export class BenchWorkbook extends HTMLElement {
  /** @type {AbortController | null} */
  #life = null;
  /** @type {RecordForm | null} */
  #form = null;
  /** @type {Taking | null} */
  #taking = null;
  /** @type {import("./protocol.js").WorkbookView | null} */
  #view = null;
  /** What was traced last, for paper. */
  #traced = "";
  /** @type {string | null} the record whose line takes the focus as soon as it stands in the list */
  #next = null;

  get unsaved() {
    return this.#form?.unsaved ?? false;
  }

  connectedCallback() {
    this.#life = new AbortController();
    const { signal } = this.#life;
    const record = one(this, '[data-part="record"]', HTMLElement);
    const place = one(this, '[data-part="import"]', HTMLElement);
    if (record) this.#form = new RecordForm(record, signal, { ask: (question) => this.#ask(question), said: (text) => this.#say(text), closed: (id) => this.#closed(id), persist: () => askToLast() });
    if (place) this.#taking = new Taking(place, { ask: (question) => this.#ask(question), said: (text) => this.#say(text), persist: () => askToLast() });
    this.addEventListener("click", (event) => void this.#pressed(event), { signal });
    one(this, '[data-part="asked"]', HTMLFormElement)?.addEventListener("submit", (event) => void this.#trace(event), { signal });
    addEventListener("hashchange", () => this.#openNamed(), { signal });
    python.addEventListener("stage", () => this.#tell(), { signal });
    for (const kept of [workbook, bench]) kept.addEventListener("change", () => void this.#show(), { signal });
    void this.#wake(signal);
  }

  disconnectedCallback() {
    this.#life?.abort();
    this.#form?.end();
    python.forget(KEY);
    this.#form = this.#taking = null;
  }

  /** @param {AbortSignal} signal */
  async #wake(signal) {
    const touched = new Promise((touch) => {
      for (const type of ["pointerdown", "focusin"]) this.addEventListener(type, touch, { once: true, signal });
    });
    await Promise.all([workbook.ready(), bench.ready()]);
    this.#tell();
    await Promise.race([touched, sparesData() && workbook.all.length === 0 ? new Promise(() => {}) : whenIdle()]);
    if (signal.aborted) return;
    python.start();
    await this.#show();
    this.#openNamed();
  }

  /**
   * A question about all records; null when it could not be answered, which is then said.
   * @template {keyof Replies} D
   * @param {import("./protocol.js").Question<D>} question
   * @param {{ replaces?: string }} [options]
   * @returns {Promise<Replies[D] | null>}
   */
  async #ask(question, options) {
    const whole = { settings: bench.settings, records: workbook.all, bench: bench.record, today: today(), now: moment(), ...question };
    const outcome = await python.ask(/** @type {import("./protocol.js").Question<D>} */ (whole), options);
    if (!outcome || this.#life?.signal.aborted) return null;
    if ("ok" in outcome) return outcome.ok;
    this.#say(outcome.problem.text);
    return null;
  }

  async #show() {
    const view = await this.#ask({ do: "workbook-view", about: workbook.about }, { replaces: KEY });
    if (!view) return;
    this.#view = view;
    const list = one(this, '[data-slot="list"]', HTMLElement);
    if (list) put(list, view.html);
    this.#focusNext();
    const empty = one(this, ".empty", HTMLElement);
    if (empty) empty.hidden = view.count > 0 || !one(this, '[data-part="record"]', HTMLElement)?.hidden;
    say(one(this, ".reminder", HTMLElement), view.reminder);
    this.#reveal("from-bench", view.bench > 0);
    this.#reveal("drop-demo", view.demo.length > 0);
    this.#reveal("demo", view.demo.length === 0);
    this.#reveal("undo", workbook.canUndo);
    this.#form?.changedElsewhere();
    this.#tell();
  }

  /**
   * @param {string} what
   * @param {boolean} shown
   */
  #reveal(what, shown) {
    const pressed = one(this, `[data-do="${what}"]`, HTMLElement);
    if (pressed) pressed.hidden = !shown;
  }

  /** @param {Event} event */
  async #pressed(event) {
    const pressed = startedAt(event, "button");
    if (!pressed) return;
    if (pressed.matches(".state .again")) python.retry();
    const { do: what, open, new: kind, table } = pressed.dataset;
    if (open || kind) this.#open({ record: open, kind });
    else if (table) await this.#save(await this.#ask({ do: "workbook-table", kind: table }), "text/csv");
    else if (what && what in this.#acts) await this.#acts[what]?.();
  }

  /** @type {Record<string, () => Promise<void> | void>} */
  #acts = {
    demo: () => this.#taking?.offer("workbook-demo", "the demo workbook", true),
    "from-bench": () => this.#taking?.offer("workbook-bench", "My bench", true),
    "drop-demo": async () => this.#done(await workbook.change(this.#edits(this.#view?.demo ?? [])), "The demo is removed."),
    import: () => this.#taking?.choose(),
    export: async () => {
      if (await this.#save(await this.#ask({ do: "workbook-export" }), "application/json")) await workbook.exported();
    },
    undo: async () => this.#done(await workbook.undo(), "As it was before."),
    "print-trace": () => printAlone(this.#traced, "alone"),
  };

  /** @param {string[]} ids */
  #edits(ids) {
    return ids.map((id) => ({ before: workbook.find(id), after: null }));
  }

  /**
   * @param {string} why
   * @param {string} text
   */
  #done(why, text) {
    this.#say(why || text);
  }

  /**
   * @param {import("./protocol.js").MadeFile | null} made
   * @param {string} type
   */
  async #save(made, type) {
    if (!made) return false;
    saveBlob(new Blob([made.text], { type: `${type};charset=utf-8` }), made.name);
    this.#say(`${made.name} is in your downloads.`);
    return true;
  }

  /** @param {{ record?: string | undefined, kind?: string | undefined, copy?: boolean }} what */
  #open(what) {
    this.#taking?.close();
    this.#say("");
    this.#only("record");
    void this.#form?.open(what);
  }

  /** A record that a link on another page names: /workbook/#base-x3k9. */
  #openNamed() {
    const id = location.hash.slice(1);
    if (id && workbook.find(id)) this.#open({ record: id });
  }

  /** The form is closed: the list again, with the focus where it was left. @param {string | null} id */
  #closed(id) {
    if (location.hash) history.replaceState(history.state, "", location.pathname + location.search);
    this.#only("list");
    this.#next = id;
    one(this, "[data-open], [data-new]", HTMLElement)?.focus();
    this.#focusNext();
  }

  #focusNext() {
    const line = this.#next && one(this, `[data-open="${CSS.escape(this.#next)}"]`, HTMLElement);
    if (!line) return;
    this.#next = null;
    const group = line.closest("details");
    if (group) group.open = true;
    line.focus();
  }

  /** @param {"list" | "record"} part */
  #only(part) {
    for (const each of this.querySelectorAll(":scope > [data-part]")) {
      const name = each.getAttribute("data-part");
      if (each instanceof HTMLElement && name !== "import") each.hidden = (name === "record") !== (part === "record");
    }
  }

  /** @param {Event} event */
  async #trace(event) {
    event.preventDefault();
    const asked = one(this, "#workbook-asked", HTMLInputElement)?.value ?? "";
    const found = await this.#ask({ do: "workbook-trace", asked });
    const place = one(this, '[data-slot="trace"]', HTMLElement);
    if (!found || !place) return;
    this.#traced = found.sheet;
    put(place, found.html);
    this.#reveal("print-trace", found.found > 0);
  }

  /** How the page stands: the calculator where it is missing, else where the records are. */
  #tell() {
    const line = one(this, ":scope > .state", HTMLElement);
    if (!line) return;
    const { state, text, retry } = stateWords(python.stage, { offline: false, waiting: true, worked: false });
    if (state === "failed") line.replaceChildren(text, ...(retry ? [" ", button("Try again", "again")] : []));
    else void keptWords(workbook.unavailable, workbook.about, workbook.all.length).then((words) => say(line, words));
    line.dataset.state = state === "failed" ? state : "";
  }

  /** @param {string} text */
  #say(text) {
    say(one(this, ":scope > .said", HTMLElement), text);
  }
}

/** Browsers want a press for this; it is asked for with the first save, not again after a no. */
function askToLast() {
  if (workbook.all.length === 0) void navigator.storage?.persist?.();
}
