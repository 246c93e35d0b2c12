// <bench-workbook>: the page of all records. Python makes the list and the forms and checks what is
// typed; a record is kept on a press of Save, on this device alone, and every change can be taken
// back. How many there are, and a copy of them, need no Python.

import { button, one, say, startedAt } from "../dom/dom.js";
import { saveBlob } from "../dom/files.js";
import { sparesData, touchOrTime } from "../dom/idle.js";
import { LivingElement, touchOf } from "../dom/life.js";
import { printAlone } from "../dom/print.js";
import { put } from "../dom/put.js";
import { python } from "../python/python.js";
import { stateWords } from "../python/words.js";
import { bench } from "./bench.js";
import { drafts } from "./drafts.js";
import { RecordForm } from "./record_form.js";
import { workbook } from "./records.js";
import { notACopy, rescueText } from "./rescue.js";
import { moment, today } from "./revisions.js";
import { Taking } from "./taking.js";
import { draftWords, heldWords, keptWords, withoutPython } from "./words_kept.js";

/** @typedef {import("../python/protocol.js").Replies} Replies */

const KEY = "workbook";
const MOST_SHOWN = 30; // presses that removed something
const MOST_NAMED = 3; // records named of each

export class BenchWorkbook extends LivingElement {
  /** @type {RecordForm | null} */
  #form = null;
  /** @type {Taking | null} */
  #taking = null;
  /** @type {import("../python/protocol.js").WorkbookView | null} */
  #view = null;
  /** What was traced last, for paper. */
  #traced = "";
  /** @type {import("./book.js").Removed[]} */
  #removed = [];
  /** @type {import("./drafts.js").Draft[]} */
  #drafts = [];
  /** "Remove for good" was pressed once. */
  #sure = false;
  /**
   * @type {string | null} the record whose line takes the focus as soon as it stands in the list
   */
  #next = null;

  get unsaved() {
    return this.#form?.unsaved ?? false;
  }

  /**
   * @override
   * @param {AbortSignal} signal
   */
  enter(signal) {
    const record = one(this, '[data-part="record"]', HTMLElement);
    const place = one(this, '[data-part="import"]', HTMLElement);
    if (record)
      this.#form = new RecordForm(record, signal, {
        ask: (question) => this.#ask(question),
        said: (text) => this.#say(text),
        closed: (id) => this.#closed(id),
        persist: () => askToLast(),
      });
    if (place)
      this.#taking = new Taking(place, {
        ask: (question) => this.#ask(question),
        said: (text) => this.#say(text),
        persist: () => askToLast(),
        largest: Number(this.dataset.largest),
      });
    this.addEventListener("click", (event) => void this.#pressed(event), { signal });
    one(this, '[data-part="asked"]', HTMLFormElement)?.addEventListener(
      "submit",
      (event) => void this.#trace(event),
      { signal },
    );
    addEventListener("hashchange", () => this.#openNamed(), { signal });
    python.addEventListener("stage", () => this.#staged(), { signal });
    for (const kept of [workbook, bench])
      kept.addEventListener("change", () => void this.#show(), { signal });
    void this.#wake(signal);
  }

  /** @override */
  leave() {
    this.#form?.end();
    python.forget(KEY);
    this.#form = this.#taking = null;
  }

  /** @param {AbortSignal} signal */
  async #wake(signal) {
    const touched = touchOf(this, signal, ["pointerdown", "focusin"]);
    await Promise.all([workbook.ready(), bench.ready()]);
    this.#tell();
    await this.#showDrafts();
    await touchOrTime(touched, sparesData() && workbook.all.length === 0);
    if (signal.aborted) return;
    python.start();
    await this.#show();
    this.#openNamed();
  }

  /**
   * A question about all records; null when it could not be answered, which is then said.
   * @template {keyof Replies} D
   * @param {import("../python/asking.js").PartOfQuestion<D>} question
   * @param {{ replaces?: string }} [options]
   * @returns {Promise<Replies[D] | null>}
   */
  async #ask(question, options) {
    const whole = {
      settings: bench.settings,
      records: workbook.all,
      bench: bench.record,
      today: today(),
      now: moment(),
      ...question,
    };
    const asked = /** @type {import("../python/asking.js").Question<D>} */ (
      /** @type {unknown} */ (whole)
    );
    const outcome = await this.late(python.ask(asked, options));
    if (!outcome) return null;
    if ("ok" in outcome) return outcome.ok;
    // that there is no calculator is said already, below all; here it is news only where something
    // was pressed
    if (outcome.problem.kind !== "unavailable" || question.do !== "workbook-view")
      this.#say(outcome.problem.text);
    return null;
  }

  async #show() {
    this.#tell();
    await this.#showDrafts();
    this.#removed = await workbook.removed(Number(this.dataset.keeps));
    const removed = this.#removed.slice(0, MOST_SHOWN).map((each) => ({
      ...each,
      count: each.records.length,
      records: each.records.slice(0, MOST_NAMED),
    }));
    const view = await this.#ask(
      { do: "workbook-view", about: workbook.about, removed },
      { replaces: KEY },
    );
    if (!view) return;
    this.#view = view;
    this.#sure = false;
    for (const [name, html] of [
      ["list", view.html],
      ["removed", view.removed],
    ]) {
      const slot = one(this, `[data-slot="${name}"]`, HTMLElement);
      if (slot) put(slot, html ?? "");
    }
    this.#focusNext();
    say(one(this, ".reminder", HTMLElement), view.reminder);
    this.#reveal("from-bench", view.bench > 0);
    this.#reveal("drop-demo", view.demo.length > 0);
    this.#reveal("demo", view.demo.length === 0);
    this.#reveal("undo", workbook.canUndo);
    this.#form?.changedElsewhere();
    this.#tell();
  }

  /** What was typed and not saved, to go on with. */
  async #showDrafts() {
    this.#drafts = await drafts.all();
    const place = one(this, '[data-slot="drafts"]', HTMLElement);
    if (!place) return;
    const lines = this.#drafts.map((draft) => {
      const made = document.createElement("li");
      const on = button(draft.title);
      on.dataset.draft = draft.id;
      const about = Object.assign(document.createElement("span"), {
        textContent: draftWords(draft),
      });
      const off = button("Drop it");
      off.dataset.drop = draft.id;
      off.setAttribute("aria-label", `Drop it: ${draft.title}`);
      about.append(" ", off);
      made.append(on, about);
      return made;
    });
    const list = Object.assign(document.createElement("ul"), { className: "records" });
    list.append(...lines);
    const head = Object.assign(document.createElement("h2"), { textContent: "Not saved yet" });
    place.replaceChildren(...(lines.length > 0 ? [head, list] : []));
  }

  /**
   * The calculator has started, or cannot: after a second try nobody has asked for the list yet.
   */
  #staged() {
    this.#tell();
    if (python.stage.stage === "ready" && !this.#view && workbook.known)
      void this.#show().then(() => this.#openNamed());
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
    const { do: what, open, new: kind, table, draft, drop, back } = pressed.dataset;
    if (draft) this.#open({ draft: this.#drafts.find(({ id }) => id === draft) });
    else if (drop) {
      drafts.drop(drop);
      await this.#showDrafts();
      this.#say("Dropped.");
    } else if (back) {
      const found = this.#removed.find(({ batch }) => batch === back);
      if (found) this.#done(await workbook.bringBack(found.records), "Brought back.");
    } else if (open || kind) this.#open({ record: open, kind });
    else if (table)
      await this.#save(await this.#ask({ do: "workbook-table", kind: table }), "text/csv");
    else if (what && what in this.#acts) await this.#acts[what]?.();
  }

  /** @type {Record<string, () => Promise<void> | void>} */
  #acts = {
    demo: () => this.#taking?.offer("workbook-demo", "the demo workbook", true),
    "from-bench": () => this.#taking?.offer("workbook-bench", "My bench", true),
    "drop-demo": async () =>
      this.#done(
        await workbook.change(this.#edits(this.#view?.demo ?? [])),
        "The demo is removed.",
      ),
    import: () => this.#taking?.choose(),
    export: () => this.#export(),
    "forget-removed": async () => {
      if (this.#sure)
        this.#done(
          await workbook.forget(this.#removed.flatMap(({ records }) => records)),
          "They are gone for good.",
        );
      else this.#say("This cannot be undone. Press “Remove them for good” once more to do it.");
      this.#sure = !this.#sure;
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
   * @param {import("../python/protocol.js").MadeFile | null} made
   * @param {string} type
   */
  #save(made, type) {
    if (!made) return null;
    const file = new Blob([made.text], { type: `${type};charset=utf-8` });
    saveBlob(file, made.name);
    this.#say(`${made.name} is in your downloads.`);
    return file;
  }

  /**
   * Everything as a file. It counts as a copy when it reads back with every record that is here: as
   * Python reads it, and as its bytes are.
   */
  async #export() {
    await workbook.ready();
    if (!workbook.known) {
      this.#say(`No file was made: ${workbook.unavailable}.`);
      return;
    }
    if (python.stage.stage === "loading")
      this.#say("The file is made as soon as the calculator has started…");
    const made = await this.#wholeFile();
    const file = this.#save(made, "application/json");
    if (!made || !file) return;
    const why = made.unproven || notACopy(await file.text(), workbook.all);
    if (why) this.#say(`${made.name} is in your downloads, but does not count as a copy: ${why}.`);
    else await workbook.exported();
  }

  /**
   * Python's file; where it cannot make one, ours, which is read in the same way.
   * @returns {Promise<import("../python/protocol.js").MadeFile | null>}
   */
  async #wholeFile() {
    const asked = {
      do: /** @type {const} */ ("workbook-export"),
      records: workbook.all,
      bench: bench.record,
      settings: bench.settings,
      today: today(),
    };
    const outcome = await this.late(python.ask(asked));
    if (!outcome) return null;
    if ("ok" in outcome) return outcome.ok;
    const about = { format: this.dataset.format ?? "", schema: Number(this.dataset.schema) };
    return {
      text: rescueText(workbook.all, bench.record, today(), about),
      name: `workbook-${today()}.json`,
    };
  }

  /**
   * @param {{ record?: string | undefined, kind?: string | undefined, copy?: boolean, draft?:
   *   import("./drafts.js").Draft | undefined }} what
   */
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

  /**
   * The form is closed: the list again, with the focus where it was left.
   * @param {string | null} id
   */
  #closed(id) {
    if (location.hash) history.replaceState(history.state, "", location.pathname + location.search);
    this.#only("list");
    void this.#showDrafts();
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
      if (each instanceof HTMLElement && name !== "import")
        each.hidden = (name === "record") !== (part === "record");
    }
    this.#tellHeld();
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
    this.#tellHeld();
    const { state } = stateWords(python.stage, { offline: false, waiting: true, worked: false });
    if (python.stage.stage === "failed") {
      line.replaceChildren(
        withoutPython(python.stage.text, workbook.known ? workbook.all.length : 0),
        " ",
        button("Try again", "again"),
      );
      line.hidden = false;
    } else
      void keptWords(workbook.unavailable, workbook.about, workbook.all.length).then((words) =>
        say(line, words),
      );
    line.dataset.state = state === "failed" ? state : "";
  }

  /**
   * Nothing written down, or so many records whose list is still to come: said as soon as the store
   * was read, and of it alone.
   */
  #tellHeld() {
    const count = workbook.all.length;
    const open = !one(this, '[data-part="record"]', HTMLElement)?.hidden;
    this.toggleAttribute("data-known", workbook.known || workbook.unavailable !== "");
    one(this, ".empty", HTMLElement)?.toggleAttribute(
      "hidden",
      !workbook.known ? workbook.unavailable !== "" : count > 0 || open,
    );
    say(one(this, ".held", HTMLElement), count === 0 || this.#view || open ? "" : heldWords(count));
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
