// The form of one record: made by Python, filled, checked with every key, kept on a press of Save;
// until then a draft.

import { button, one, say, startedAt } from "../dom/dom.js";
import { Life } from "../dom/life.js";
import { put } from "../dom/put.js";
import { LiveForm } from "../rows/form.js";
import { bench } from "./bench.js";
import { drafts } from "./drafts.js";
import { workbook } from "./records.js";
import { freshId, moment } from "./revisions.js";

/**
 * @typedef {import("../python/protocol.js").WorkbookRecord} WorkbookRecord
 * @typedef {import("./drafts.js").Draft} Draft
 * @typedef {{ ask: import("../python/asking.js").AskAll, said: (text: string) => void,
 *   closed: (id: string | null) => void, persist: () => void }} Around
 */

const KEY = "record form";

export class RecordForm {
  #place;
  #signal;
  #around;
  /** @type {LiveForm | null} */
  #live = null;
  #life = new Life();
  #kind = "";
  #id = "";
  #namedBy = 0;
  #title = "";
  /** The field that names the record. */
  #name = "";
  /**
   * @type {WorkbookRecord | null} the record as it was when the form was opened; null for a new one
   */
  #before = null;
  /**
   * @type {string | null} the revision that she knows of: what she saves may take its place and no
   *   other's
   */
  #seen = null;
  #unsaved = false;

  /**
   * @param {HTMLElement} place
   * @param {AbortSignal} signal
   * @param {Around} around
   */
  constructor(place, signal, around) {
    this.#place = place;
    this.#signal = signal;
    this.#around = around;
    place.addEventListener(
      "click",
      (event) => void this.#pressed(startedAt(event, "[data-record]")?.dataset.record),
      { signal },
    );
  }

  get unsaved() {
    return this.#unsaved;
  }

  end() {
    this.#life.end();
    this.#live = null;
  }

  /**
   * A record that was typed at and not saved opens as it was left.
   * @param {{ record?: string | undefined, kind?: string | undefined, copy?: boolean, draft?: Draft
   *   | undefined }} what
   */
  async open(what) {
    const { kind, copy = false } = what;
    const draft = what.draft ?? (what.record && !copy ? await drafts.find(what.record) : null);
    const record = draft ? workbook.find(draft.id)?.id : what.record;
    const made = await this.#around.ask(
      { do: "workbook-form", record: record ?? null, kind: draft?.kind ?? kind ?? null, copy },
      { replaces: KEY },
    );
    if (!made || this.#signal.aborted) {
      if (!made) this.#around.closed(record ?? null);
      return;
    }
    this.end();
    const signal = this.#life.begin();
    this.#kind = made.kind;
    this.#before = record && !copy ? workbook.find(record) : null;
    this.#id = this.#before?.id ?? draft?.id ?? freshId(made.kind);
    this.#seen = this.#before?.rev ?? null;
    this.#namedBy = copy ? 0 : made.named_by;
    this.#title = made.title;
    this.#name = made.name;
    this.#unsaved = copy || draft !== null;
    const form = this.#lay(made.html);
    if (!form) return;
    this.#live = new LiveForm(form, {
      card: `record-${made.kind}`,
      signal,
      settings: () => bench.settings,
      changed: () => void this.#changed(),
    });
    this.#live.fill(made);
    if (draft) this.#recall(draft);
    const checked = await this.#check();
    if (checked && (record || draft)) this.#live?.echo(checked.fields);
    one(form, "input, select", HTMLElement)?.focus();
  }

  /**
   * The form on the page, with its buttons.
   * @param {string} html
   */
  #lay(html) {
    put(this.#place, "");
    put(this.#place, html);
    const form = one(this.#place, "form.given", HTMLFormElement);
    if (!form) return null;
    // in reach however long the form is, and once more where it ends
    form.before(line("hold", ["save", "Save", "first"], ["back", "Back to the list"]), said());
    this.#place.append(
      this.#before
        ? line("", ["save", "Save", "first"], ["copy", "Make a copy"], ["remove", "Remove"])
        : line("", ["save", "Save", "first"]),
    );
    return form;
  }

  /** @param {Draft} draft */
  #recall(draft) {
    this.#live?.fill(draft);
    const left = `As you left it on ${draft.typed.slice(0, 10)}: not saved yet.`;
    if (draft.seen === this.#seen) this.#say(left);
    else if (this.#before)
      this.#say(`${left} The record was changed since; Save writes yours over it.`);
    else this.#say(`${left} The record was removed since; Save keeps yours as a new one.`);
  }

  #draft() {
    if (!this.#live) return;
    const held = this.#live.state();
    const typed = held.values[this.#name]?.trim().slice(0, 60);
    const title = this.#before || !typed ? this.#title : `${this.#title} “${typed}”`;
    drafts.keep({
      id: this.#id,
      kind: this.#kind,
      title,
      seen: this.#seen,
      typed: moment(),
      ...held,
    });
  }

  /** Saved, removed or undone in another tab while it stands open here. */
  changedElsewhere() {
    if (!this.#before || this.#place.hidden) return;
    const now = workbook.find(this.#id);
    if ((now?.rev ?? null) === this.#seen) return;
    this.#seen = now?.rev ?? null;
    if (!this.#unsaved && now) void this.open({ record: now.id });
    else if (!this.#unsaved) this.#close();
    else
      this.#say(
        now
          ? "This record was changed in another tab. Save writes yours over it; Back leaves the" +
              " other."
          : "This record was removed in another tab. Save keeps yours as a new one.",
      );
  }

  async #changed() {
    this.#unsaved = true;
    this.#draft();
    const checked = await this.#check();
    if (checked && this.#live?.echo(checked.fields)) await this.#changed();
  }

  /**
   * A later edit takes the place of a check that waits, never of a save.
   * @param {{ replaces?: string }} [options]
   */
  async #check(options = { replaces: KEY }) {
    const checked = await this.#around.ask(
      {
        do: "workbook-check",
        kind: this.#kind,
        id: this.#id,
        records: [],
        bench: null,
        ...this.#live?.state(),
      },
      options,
    );
    if (checked) this.#live?.echoes.reveal(checked.shown);
    return checked;
  }

  /** @param {string | undefined} what */
  async #pressed(what) {
    if (what === "save") await this.#save();
    else if (what === "copy" && this.#before)
      await this.open({ record: this.#before.id, copy: true });
    else if (what === "remove" && this.#before) await this.#remove(this.#before);
    else if (what === "back") this.#back();
  }

  async #save() {
    this.#around.persist();
    const checked = await this.#check({});
    if (!checked) return;
    this.#live?.echo(checked.fields);
    this.#live?.echoes.settle();
    if (!checked.record) {
      const bad = Object.keys(checked.fields).filter((name) => checked.fields[name].why);
      this.#say(
        checked.refused ||
          (bad.length === 1
            ? "Not saved: one field needs another value."
            : `Not saved: ${bad.length} fields need other values.`),
      );
      this.#live?.controls.find(bad[0] ?? "")?.focus();
      return;
    }
    const before = workbook.find(this.#id);
    if ((before?.rev ?? null) !== this.#seen) {
      this.changedElsewhere(); // told first; the next press writes over it, and that can be undone
      return;
    }
    const why = await workbook.change([{ before, after: checked.record }]);
    if (why) {
      this.#say(why);
      return;
    }
    this.#unsaved = false;
    this.#close();
    this.#around.said("Saved.");
  }

  /** @param {WorkbookRecord} record */
  async #remove(record) {
    const why = await workbook.change([
      { before: workbook.find(record.id) ?? record, after: null },
    ]);
    if (why) {
      this.#say(why);
      return;
    }
    this.#unsaved = false;
    const others =
      this.#namedBy === 1 ? "One other record names it" : `${this.#namedBy} other records name it`;
    const left = this.#namedBy > 0 ? ` ${others} and will say that it is not here.` : "";
    this.#close();
    this.#around.said(`Removed. Undo brings it back.${left}`);
  }

  #back() {
    if (!this.#unsaved) {
      this.#close();
      return;
    }
    this.#say("What you typed is not saved. Press Save, or Back once more to drop it.");
    this.#unsaved = false;
  }

  #close() {
    const id = this.#before?.id ?? this.#id;
    drafts.drop(this.#id);
    this.end();
    this.#before = null;
    this.#place.replaceChildren();
    this.#around.closed(id);
  }

  /** @param {string} text */
  #say(text) {
    say(one(this.#place, ":scope > .said", HTMLElement), text);
  }
}

function said() {
  const made = document.createElement("p");
  made.className = "said";
  made.setAttribute("role", "status");
  made.hidden = true;
  return made;
}

/**
 * @param {string} look
 * @param {[what: string, words: string, look?: string][]} buttons
 */
function line(look, ...buttons) {
  const made = document.createElement("p");
  made.className = `do ${look}`.trim();
  made.append(...buttons.map(([, words, kind = ""]) => button(words, kind)));
  buttons.forEach(([what], at) => made.children[at]?.setAttribute("data-record", what));
  return made;
}
