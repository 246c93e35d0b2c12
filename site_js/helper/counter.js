// The counter view: her bases, three presses to an answer with its price, from the table that
// customers get. Python reads My bench and the workbook and writes the prices; what it said is
// kept, so that the next opening at the stall needs no start.

import { button, one, say } from "../dom/dom.js";
import { siteRoot } from "../dom/places.js";
import { put } from "../dom/put.js";
import { python } from "../python/python.js";
import { stateWords } from "../python/words.js";
import { bench } from "../workbook/bench.js";
import { workbook } from "../workbook/records.js";
import { read, write } from "../workbook/store.js";
import { answered, fill } from "./yardage.js";

/**
 * @typedef {import("../python/protocol.js").YardageTable} Table
 * @typedef {import("../python/protocol.js").CounterBase} Base
 */

siteRoot();
const KEPT = "counter";
/** @param {string} name */
const slot = (name) => one(document, `[data-slot="${name}"]`, HTMLElement);

class Counter {
  #table;
  /** @type {Base[]} */
  #bases = [];
  #notes = "";
  /** @type {Base | null} */
  #base = null;
  #project = "";
  #size = "";
  #sure;
  /** The customer is shown the code. */
  #shows = false;

  /** @param {Table} table */
  constructor(table) {
    this.#table = table;
    this.#sure = table.first_sure;
  }

  async start() {
    python.addEventListener("stage", () => this.#tellStage());
    for (const own of [bench, workbook]) own.addEventListener("change", () => void this.#load());
    await Promise.all([bench.ready(), workbook.ready()]);
    await this.#load();
  }

  /** Where her bases stand, for Python. */
  get #own() {
    return {
      record: bench.record,
      records: workbook.all.filter(({ kind }) => kind === "base"),
      settings: bench.settings,
    };
  }

  async #load() {
    const own = this.#own;
    if (!own.record && own.records.length === 0) {
      this.#take([], "");
      return;
    }
    const { words } = this.#table;
    const record = JSON.stringify(own);
    const kept = await read("last", KEPT);
    if ("value" in kept && kept.value?.record === record && kept.value.words === words.skein)
      this.#take(kept.value.bases, kept.value.notes);
    else {
      const outcome = await python.ask({ do: "counter", ...own }, { replaces: KEPT });
      if (!outcome) return;
      if ("problem" in outcome) {
        say(slot("step"), outcome.problem.text);
        return;
      }
      this.#take(outcome.ok.bases, outcome.ok.notes.join(" "));
      await write("last", KEPT, {
        record,
        words: words.skein,
        bases: outcome.ok.bases,
        notes: outcome.ok.notes.join(" "),
      });
    }
  }

  /**
   * @param {Base[]} bases
   * @param {string} notes
   */
  #take(bases, notes) {
    this.#bases = bases;
    this.#notes = notes;
    this.#base = null;
    this.#step();
  }

  #step() {
    this.#answer();
    say(slot("notes"), this.#base ? "" : this.#notes);
    const { asks, picks } = this.#next();
    this.#offer(asks, picks);
  }

  /** What is asked next, and what can be pressed. */
  #next() {
    const { words, projects } = this.#table;
    const project = projects.find(({ key }) => key === this.#project);
    if (this.#bases.length === 0) return { asks: words.no_bases, picks: [] };
    if (!this.#base) {
      const take = (/** @type {Base} */ base) => () => void (this.#base = base);
      const picks = this.#bases.map((base) => this.#pick(base.label, base.put_up, take(base)));
      return { asks: words.which_base, picks };
    }
    if (!project) {
      const take = (/** @type {string} */ key) => () => void (this.#project = key);
      const picks = projects.map(({ key, label }) => this.#pick(label, "", take(key)));
      return { asks: words.which_project, picks: [...picks, this.#back()] };
    }
    if (!this.#size) {
      const take = (/** @type {string} */ key) => () => void (this.#size = key);
      const picks = project.sizes.map(({ key, label, measure }) =>
        this.#pick(label, measure, take(key)),
      );
      return { asks: words.which_size, picks: [...picks, this.#back()] };
    }
    if (!this.#shows) return { asks: words.how_sure, picks: this.#lastPicks() };
    const done = this.#pick(words.done, "", () => void (this.#shows = false));
    return { asks: words.scan, picks: [done] };
  }

  /** With the answer there: how sure, and the ways on. */
  #lastPicks() {
    const { words } = this.#table;
    const sure = this.#table.sure.map(({ key, label }) => {
      const made = this.#pick(label, "", () => void (this.#sure = key));
      made.setAttribute("aria-pressed", String(key === this.#sure));
      return made;
    });
    const other = this.#pick(words.other_size, "", () => void (this.#size = ""));
    const again = this.#pick(words.start_again, "", () => this.#forget());
    return [...sure, other, this.#codeButton(), again];
  }

  #answer() {
    const { words, projects } = this.#table;
    const project = projects.find(({ key }) => key === this.#project);
    const size = project?.sizes.find(({ key }) => key === this.#size);
    const base = this.#base;
    say(slot("path"), [base?.label, project?.label, size?.label].filter(Boolean).join(" · "));
    const said =
      base && size
        ? answered(this.#table, {
            grams: base.grams,
            meters: base.meters,
            project: this.#project,
            size: this.#size,
            sure: this.#sure,
          })
        : null;
    const cost = (said && base?.costs[said.count]) ?? "";
    say(slot("say"), said?.say ?? "");
    say(slot("cost"), said?.count ? cost : "");
    say(slot("fewer"), said?.fewer ?? "");
    say(slot("need"), said?.need ?? "");
    say(
      slot("lot"),
      said ? ((base?.lot ? fill(words.this_lot, { lot: base.lot }) : words.lot) ?? "") : "",
    );
    say(slot("basis"), said ? `${project?.assumes ?? ""} ${words.table}` : "");
    slot("code")?.toggleAttribute("hidden", !this.#shows);
  }

  /**
   * @param {string | undefined} asks
   * @param {HTMLButtonElement[]} picks
   */
  #offer(asks, picks) {
    say(slot("step"), asks ?? "");
    const focused = document.activeElement instanceof HTMLButtonElement;
    slot("picks")?.replaceChildren(...picks);
    if (focused) picks[0]?.focus({ preventScroll: true });
  }

  /**
   * @param {string | undefined} label
   * @param {string} more
   * @param {() => void} act
   */
  #pick(label, more, act) {
    const made = button(label ?? "");
    if (more) made.append(Object.assign(document.createElement("small"), { textContent: more }));
    made.addEventListener("click", () => {
      act();
      this.#step();
    });
    return made;
  }

  #back() {
    const made = this.#pick(this.#table.words.back, "", () => {
      if (this.#project) this.#project = "";
      else this.#base = null;
    });
    made.className = "back";
    return made;
  }

  #forget() {
    this.#base = null;
    this.#project = this.#size = "";
    this.#shows = false;
  }

  /** The customer takes the base home by its code. */
  #codeButton() {
    const made = button(this.#table.words.show_code ?? "");
    made.addEventListener("click", async () => {
      const outcome = await python.ask(
        { do: "counter-code", ...this.#own, number: this.#base?.number, here: siteRoot().href },
        { replaces: "code" },
      );
      const place = slot("code");
      if (!outcome || "problem" in outcome || !place) return;
      put(place, outcome.ok.svg);
      this.#shows = true;
      this.#step();
      place.scrollIntoView({ block: "center" });
    });
    return made;
  }

  #tellStage() {
    const { text } = stateWords(python.stage, { offline: false, waiting: true, worked: true });
    const { stage } = python.stage;
    say(
      one(document, ".state", HTMLElement),
      stage === "loading" || stage === "failed" ? text : "",
    );
  }
}

async function start() {
  try {
    const response = await fetch(new URL("./helper.json", import.meta.url));
    await new Counter(await response.json()).start();
  } catch (error) {
    if (!(error instanceof TypeError || error instanceof SyntaxError)) throw error;
    say(slot("step"), document.querySelector("main")?.dataset.late ?? "");
  }
}

addEventListener("pagehide", () => python.rest());
addEventListener("pageshow", (event) => {
  if (event.persisted) python.resume();
});
void start();
