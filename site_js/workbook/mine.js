// <bench-mine>: the My bench page. Its form is made and checked by Python like any card's; a record
// is kept only on a press of Save, and on this device alone.

import { button, one, say, startedAt } from "../dom/dom.js";
import { chooseJson, readJson, saveAs } from "../dom/files.js";
import { touchOrTime } from "../dom/idle.js";
import { LivingElement, touchOf } from "../dom/life.js";
import { python } from "../python/python.js";
import { stateWords } from "../python/words.js";
import { LiveForm } from "../rows/form.js";
import { bench } from "./bench.js";
import { clearedWords } from "./words_kept.js";

/** @typedef {import("../python/protocol.js").BenchRecord} BenchRecord */

const CARD = "my-bench";

export class BenchMine extends LivingElement {
  /** @type {LiveForm | null} */
  #form = null;
  /** Typed and not saved. */
  #unsaved = false;

  get unsaved() {
    return this.#unsaved;
  }

  /**
   * @override
   * @param {AbortSignal} signal
   */
  enter(signal) {
    const form = one(this, "form.given", HTMLFormElement);
    if (!form) return;
    this.#form = new LiveForm(form, {
      card: CARD,
      signal,
      settings: () => bench.settings,
      changed: () => void this.#check(),
    });
    form.addEventListener("focusin", () => python.start(), { once: true, signal });
    this.addEventListener("click", (event) => this.#pressed(event), { signal });
    python.addEventListener("stage", () => this.#tell(), { signal });
    bench.addEventListener("change", () => this.#benchChanged(), { signal });
    void this.#wake(signal);
  }

  /** @override */
  leave() {
    python.forget(CARD);
    this.#form = null;
  }

  /** @param {AbortSignal} signal */
  async #wake(signal) {
    const touched = touchOf(this, signal);
    this.#tell();
    await bench.ready();
    if (bench.record) this.#say("My bench is kept in this browser on this device.");
    if (bench.unavailable)
      this.#say(
        `Nothing can be kept here: ${bench.unavailable}. You can still export what you typed to` +
          " a file.",
      );
    await touchOrTime(touched);
    if (signal.aborted) return;
    python.start();
    if (bench.record && !this.#unsaved) await this.#show(bench.record);
  }

  /** @param {BenchRecord} record */
  async #show(record) {
    const asked = { do: /** @type {const} */ ("bench-read"), record, settings: bench.settings };
    const outcome = await this.late(python.ask(asked, { replaces: CARD }));
    if (!outcome) return;
    if ("problem" in outcome) {
      this.#say(outcome.problem.text);
      return;
    }
    this.#form?.fill(outcome.ok);
    this.#unsaved = false;
    const checked = await this.#ask();
    if (checked) this.#form?.echo(checked.fields);
  }

  async #check() {
    this.#unsaved = true;
    const checked = await this.#ask();
    if (checked && this.#form?.echo(checked.fields)) await this.#check();
  }

  async #ask() {
    const outcome = await this.late(
      python.ask(
        { do: "bench-check", ...this.#form?.state(), settings: bench.settings },
        { replaces: CARD },
      ),
    );
    if (!outcome) return null;
    if ("problem" in outcome) {
      this.#say(outcome.problem.text);
      return null;
    }
    this.#form?.echoes.reveal(outcome.ok.shown);
    return outcome.ok;
  }

  /**
   * What the form says now, if every field is good; otherwise the first bad field takes the focus.
   */
  async #checked() {
    const checked = await this.#ask();
    if (!checked) return null;
    this.#form?.echo(checked.fields);
    this.#form?.echoes.settle();
    if (checked.record) return { record: checked.record, text: checked.saved_text };
    const bad = Object.keys(checked.fields).filter((name) => checked.fields[name]?.why);
    this.#say(
      bad.length === 1
        ? "Not done: one field needs another value."
        : `Not done: ${bad.length} fields need other values.`,
    );
    this.#form?.controls.find(bad[0] ?? "")?.focus();
    return null;
  }

  /** @param {Event} event */
  #pressed(event) {
    if (startedAt(event, ".kept .again")) python.retry();
    switch (startedAt(event, "[data-do]")?.dataset.do) {
      case "save":
        void this.#save();
        break;
      case "export":
        void this.#export();
        break;
      case "import":
        chooseJson((file) => void this.#take(file));
        break;
      case "erase":
        void this.#keep(null, "Everything of My bench is removed from this device.");
        break;
    }
  }

  async #save() {
    // browsers want a press for this; it is asked for once, not again after a no
    const lasting = bench.record
      ? navigator.storage?.persisted?.()
      : navigator.storage?.persist?.();
    const checked = await this.#checked();
    if (!checked) return;
    await this.#keep(checked.record, `Saved. ${checked.text} ${keptWhere(await lasting)}`);
  }

  async #export() {
    const checked = await this.#checked();
    if (!checked) return;
    saveAs(checked.record, `my-bench-${new Date().toISOString().slice(0, 10)}.json`);
    this.#say(
      "The file is in your downloads. It holds all of My bench; import it on another device, or" +
        " after a phone has cleared this one.",
    );
  }

  /** @param {File} file */
  async #take(file) {
    const read = await readJson(file);
    if ("problem" in read) {
      this.#say(`${read.problem} Nothing was changed.`);
      return;
    }
    const outcome = await python.ask({
      do: "bench-read",
      record: read.content,
      settings: bench.settings,
    });
    if (!outcome) return;
    if ("problem" in outcome) this.#say(`${outcome.problem.text} Nothing was changed.`);
    else if (!isLike(read.content, outcome.ok.record))
      this.#say([...outcome.ok.notes, "Nothing was changed."].join(" "));
    else
      await this.#keep(
        outcome.ok.record,
        [`Imported from ${file.name}.`, ...outcome.ok.notes].join(" "),
      );
  }

  /**
   * Keeps a record, or none, and holds out the way back.
   * @param {BenchRecord | null} record
   * @param {string} text
   */
  async #keep(record, text) {
    const before = bench.record;
    const typed = this.#form?.state();
    this.#unsaved = false;
    const problem = await bench.keep(record);
    if (problem) {
      this.#unsaved = true;
      this.#say(`Not kept: ${problem}. Export to a file instead.`);
      return;
    }
    this.#say(text);
    one(this, ".do .undo", HTMLElement)?.remove();
    const undo = button("Undo", "undo");
    undo.addEventListener("click", async () => {
      undo.remove();
      await bench.keep(before);
      if (!before && typed) {
        this.#form?.fill(typed);
        void this.#check();
      }
      this.#say("As it was before.");
      one(this, '[data-do="save"]', HTMLElement)?.focus();
    });
    one(this, ".do", HTMLElement)?.append(undo);
  }

  /** Saved, imported or removed, here or in another tab. */
  #benchChanged() {
    if (this.#unsaved) return;
    if (bench.record) void this.#show(bench.record);
    else void this.#showEmpty();
  }

  async #showEmpty() {
    const asked = { do: /** @type {const} */ ("open"), card: CARD, query: "" };
    const outcome = await this.late(
      python.ask({ ...asked, settings: bench.settings }, { replaces: CARD }),
    );
    if (!outcome || "problem" in outcome) return;
    this.#form?.fill(outcome.ok);
    this.#form?.echo(outcome.ok.fields);
  }

  /**
   * Without the calculator nothing can be checked, so nothing can be saved; while it starts there
   * is nothing to say.
   */
  #tell() {
    const line = one(this, ".kept", HTMLElement);
    if (!line) return;
    const { state, text, retry } = stateWords(python.stage, {
      offline: false,
      waiting: true,
      worked: false,
    });
    line.hidden = state !== "failed";
    line.replaceChildren(text, ...(retry ? [" ", button("Try again", "again")] : []));
  }

  /** @param {string} text */
  #say(text) {
    say(one(this, ".state", HTMLElement), text);
  }
}

/** @param {boolean} [lasting] */
function keptWhere(lasting) {
  const kept = `It is kept in this browser on this device only. ${clearedWords(lasting)}`;
  return `${kept} Save a copy as a file to be sure.`;
}

/**
 * Was the file a record that Python could read? From anything else it makes an empty one.
 * @param {unknown} content
 * @param {BenchRecord} record
 */
function isLike(content, record) {
  const { format, schema } = /** @type {Partial<BenchRecord>} */ (content ?? {});
  return format === record.format && typeof schema === "number" && schema <= record.schema;
}
