// <bench-card>: brings a prerendered card to life. It asks Python, puts the finished HTML in its
// place, and keeps the last good answer. It knows no trade word and formats no number.

import { holdSpeech } from "../dom/announce.js";
import { button, one, say } from "../dom/dom.js";
import { sparesData, touchOrTime } from "../dom/idle.js";
import { LivingElement, touchOf } from "../dom/life.js";
import { siteRoot } from "../dom/places.js";
import { put } from "../dom/put.js";
import { offline } from "../offline/offline.js";
import { python } from "../python/python.js";
import { keptWords, stateWords } from "../python/words.js";
import { LiveForm } from "../rows/form.js";
import { bench } from "../workbook/bench.js";
import { Offers } from "../workbook/offers.js";
import { workbook } from "../workbook/records.js";
import { actOn } from "./actions.js";
import { Address } from "./address.js";
import { keepHeadroom } from "./headroom.js";
import { goOn, trailTo } from "./trail.js";

/** @typedef {import("../python/protocol.js").Answer} Answer */

let made = 0;

export class BenchCard extends LivingElement {
  #key = `card ${(made += 1)}`;
  /** @type {LiveForm | null} */
  #form = null;
  /** @type {Address | null} the first card of a page owns the address */
  #address = null;
  /** @type {Offers | null} */
  #offers = null;
  /**
   * @type {string | null} a query whose values the page owes: it shows others until Python has read
   *   it
   */
  #owed = null;
  /** @type {Set<string>} what a person typed while the page owed a link's values; that wins */
  #edited = new Set();
  #waiting = false;
  #answered = true;
  #worked = false;
  #problem = "";
  #settings = "";
  /** @type {import("./trail.js").Step[]} the cards before on the way here */
  #trail = [];

  get card() {
    return this.dataset.card ?? "";
  }

  /** Would a reload now lose something? */
  get unsaved() {
    this.#address?.flush();
    return this.#waiting || !this.#answered;
  }

  get link() {
    return this.#address?.link ?? location.href;
  }

  /**
   * @override
   * @param {AbortSignal} signal
   */
  enter(signal) {
    const form = one(this, "form.given", HTMLFormElement);
    if (!form) return;
    this.#form = new LiveForm(form, {
      card: this.card,
      signal,
      settings: () => bench.settings,
      changed: (name) => this.#changed(name),
    });
    if (document.querySelector("bench-card") === this) {
      this.#address = new Address(signal, (query) => this.#moved(query));
      this.#trail = trailTo(this.card);
    }
    this.#offers = new Offers(this, signal, {
      values: (offer) => this.#take(offer),
      query: (query) => this.#restore(query),
    });
    actOn(this, signal);
    keepHeadroom(this, signal);
    this.addEventListener("click", (event) => this.#retry(event), { signal });
    // before the theme follows the link
    this.addEventListener("click", (event) => this.#goOn(event), { signal, capture: true });
    python.addEventListener("stage", () => this.#staged(), { signal });
    offline.addEventListener("change", () => this.#tell(), { signal });
    bench.addEventListener("change", () => this.#benchChanged(), { signal });
    workbook.addEventListener("change", () => void this.#offers?.load(false), { signal });
    void this.#wake(form, signal);
  }

  /** @override */
  leave() {
    python.forget(this.#key);
    this.#form = this.#address = this.#offers = null;
  }

  /**
   * The page as built is complete: only a link, other settings, or a field already changed ask for
   * more.
   * @param {HTMLFormElement} form
   * @param {AbortSignal} signal
   */
  async #wake(form, signal) {
    const touched = touchOf(form, signal);
    void touched.then(() => python.start());
    const query = this.#address?.query ?? "";
    if (query) this.#owed = query;
    const changed = [...form.elements].some(isChanged);
    this.#waiting = query !== "" || changed;
    this.#tell();
    await bench.ready();
    if (signal.aborted) return;
    this.#settings = JSON.stringify(bench.settings);
    if (!query && (bench.differs || this.#trail.length > 0)) this.#owed = "";
    void this.#offers?.load(query === "");
    if (changed && this.#owed === null) void this.#work();
    await touchOrTime(touched);
    if (signal.aborted) return;
    python.start();
    if (this.#owed !== null) void this.#open(this.#owed);
  }

  /** @param {string | null} name */
  #changed(name) {
    this.#offers?.remember();
    if (this.#owed === null) void this.#work();
    else if (name) this.#edited.add(name);
  }

  async #work() {
    const outcome = await this.#ask({
      do: "work",
      card: this.card,
      ...this.#form?.state(),
      settings: bench.settings,
      trail: this.#trail,
    });
    if (!outcome) return;
    this.#form?.takeBack(outcome.taken_back);
    if (this.#form?.echo(outcome.fields)) void this.#work();
    else this.#show(outcome);
  }

  /** @param {string} query  "" for the example */
  async #open(query) {
    this.#owed = query;
    const outcome = await this.#ask({
      do: "open",
      card: this.card,
      query,
      settings: bench.settings,
      trail: this.#trail,
    });
    if (!outcome) return;
    this.#owed = null;
    this.#form?.fill(outcome, this.#edited);
    this.#note(outcome.link_notes ?? []);
    if (this.#edited.size > 0) {
      this.#edited.clear();
      void this.#work();
      return;
    }
    this.#form?.echo(outcome.fields);
    this.#show(outcome);
  }

  /**
   * Null when there is nothing to show: a newer question took over, the card is gone, or there was
   * a problem.
   * @param {import("../python/asking.js").Question<"work" | "open">} question
   * @returns {Promise<Answer | null>}
   */
  async #ask(question) {
    this.#waiting = true;
    this.#tell();
    const outcome = await this.late(python.ask(question, { replaces: this.#key }));
    if (outcome === null) return null;
    this.#waiting = false;
    this.#problem = "problem" in outcome ? outcome.problem.text : "";
    if ("ok" in outcome) return outcome.ok;
    this.#answered = false;
    this.#tell();
    return null;
  }

  /** @param {Answer} answer */
  #show(answer) {
    this.#form?.echoes.reveal(answer.shown);
    this.#answered = answer.answered;
    this.#problem = answer.refused;
    if (answer.answered) {
      this.#worked = true;
      for (const [name, html] of Object.entries(answer.slots)) {
        const slot = this.querySelector(`[data-slot="${CSS.escape(name)}"]`);
        if (!slot) continue;
        if (slot.matches("[aria-live]")) holdSpeech(slot);
        put(slot, html);
      }
      this.#address?.write(answer.query ?? "");
      this.#offers?.keep(answer.query ?? "");
    }
    this.#tell();
  }

  /** Back, forward, or a link on this page. @param {string} query */
  #moved(query) {
    this.#edited.clear();
    void this.#open(query);
  }

  /** Values offered and taken. @param {import("../python/protocol.js").Offer} offer */
  #take(offer) {
    this.#form?.take(offer);
    for (const name of Object.keys(offer.values)) this.#changed(name);
  }

  /** What the form says now, as a question about this card needs it. */
  get asked() {
    return { card: this.card, ...this.#form?.state(), settings: bench.settings };
  }

  /** @param {string} query */
  #restore(query) {
    this.#edited.clear();
    this.#address?.write(query);
    void this.#open(query);
  }

  /** Back to the example; returns the way back to the values of before. */
  startOver() {
    const before = this.#form?.state();
    this.#restore("");
    return () => {
      if (!before) return;
      this.#form?.fill(before);
      this.#changed(null);
    };
  }

  /** This card alone on half a page, or one of its own papers, as HTML. */
  sheet(paper = /** @type {number | null} */ (null)) {
    return python.ask({
      do: "sheet",
      paper,
      ...this.asked,
      address: this.link,
      here: siteRoot().href,
    });
  }

  #benchChanged() {
    void this.#offers?.load(false);
    const settings = JSON.stringify(bench.settings);
    if (settings === this.#settings) return;
    this.#settings = settings;
    if (this.#answered && !this.#waiting) void this.#open(this.#address?.query ?? "");
    else this.#changed(null);
  }

  /** @param {Event} event */
  #retry(event) {
    if (!(event.target instanceof Element && event.target.matches(".state .again"))) return;
    python.retry();
    if (this.#owed !== null) void this.#open(this.#owed);
    else if (!this.#answered) void this.#work();
  }

  /**
   * On to the next card: it may ask for what this one, or one before, knows.
   * @param {Event} event
   */
  #goOn(event) {
    const to =
      event.target instanceof Element
        ? event.target.closest("a[data-carry]")?.getAttribute("data-carry")
        : null;
    if (to)
      goOn(to, [
        ...this.#trail.filter(({ card }) => card !== this.card),
        { card: this.card, query: this.#address?.query ?? "" },
      ]);
  }

  #staged() {
    if (python.stage.stage === "ready") void this.#offers?.load(false);
    this.#tell();
  }

  /** The lines that say how things stand. */
  #tell() {
    const about = {
      offline: offline.isReady,
      waiting: this.#waiting,
      worked: this.#worked,
      answered: this.#answered,
      problem: this.#problem,
      spares: sparesData(),
    };
    const { state, text, retry } = stateWords(python.stage, about);
    const line = one(this, ".state", HTMLElement);
    if (line && (line.dataset.state !== state || line.dataset.text !== text)) {
      line.dataset.state = state;
      line.dataset.text = text;
      line.replaceChildren(text, ...(retry ? [" ", button("Try again", "again")] : []));
    }
    say(one(this, ".kept", HTMLElement), keptWords(python.stage, about));
    if (this.#waiting) this.setAttribute("aria-busy", "true");
    else this.removeAttribute("aria-busy");
  }

  /** What could not be taken over from a link. @param {string[]} notes */
  #note(notes) {
    this.querySelector(".link-notes")?.remove();
    if (notes.length === 0) return;
    const list = document.createElement("ul");
    list.className = "link-notes";
    list.setAttribute("role", "status");
    list.append(
      ...notes.map((note) => Object.assign(document.createElement("li"), { textContent: note })),
    );
    one(this, "form.given h2", HTMLElement)?.after(list);
  }
}

/**
 * Typed in before the script came, or filled in again by the browser after a reload.
 * @param {Element} control
 */
function isChanged(control) {
  if (control instanceof HTMLSelectElement) {
    const standing = [...control.options].findIndex((option) => option.defaultSelected);
    return control.selectedIndex !== Math.max(standing, 0);
  }
  return (
    control instanceof HTMLInputElement &&
    control.name !== "" &&
    control.value !== control.defaultValue
  );
}
