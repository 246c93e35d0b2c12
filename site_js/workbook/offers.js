// Values held out, never filled in silently: from My bench, from records, and the last values of
// this card after a reload.

import { button, one, say } from "../dom/dom.js";
import { python } from "../python/python.js";
import { bench } from "./bench.js";
import { byKind, laidOut, usable } from "./offered.js";
import { workbook } from "./records.js";
import { read, write } from "./store.js";

/** ms */
const PAUSE = 1_000;

/** @typedef {import("../python/protocol.js").Offer} Offer */

export class Offers {
  #card;
  #signal;
  #take;
  /** @type {string} the query of the last visit; "" for none */
  #last = "";
  /** @type {Offer[]} */
  #offers = [];
  #mayKeep = false;
  /** @type {ReturnType<typeof setTimeout> | undefined} */
  #timer;

  /**
   * @param {HTMLElement & { card: string }} card
   * @param {AbortSignal} signal
   * @param {{ values: (offer: Offer) => void, query: (query: string) => void }} take
   */
  constructor(card, signal, take) {
    this.#card = card;
    this.#signal = signal;
    this.#take = take;
  }

  /**
   * Python is asked only when it runs already: an offer is no reason to start it.
   * @param {boolean} withLast
   */
  async load(withLast) {
    if (withLast) {
      const kept = await read("last", this.#card.card);
      const query = "value" in kept ? kept.value?.query : "";
      this.#last = typeof query === "string" ? query : "";
    }
    await workbook.ready();
    const records = workbook.all;
    if (!bench.record && records.length === 0) this.#offers = [];
    else if (python.stage.stage === "ready") {
      const outcome = await python.ask({
        do: "bench-offers",
        card: this.#card.card,
        record: bench.record,
        records,
        settings: bench.settings,
      });
      if (outcome && "ok" in outcome) this.#offers = outcome.ok.offers;
    }
    if (!this.#signal.aborted) this.#show();
  }

  /**
   * A person changes values here: from now on they are worth keeping. A link only looked at is not.
   */
  remember() {
    this.#mayKeep = true;
  }

  /**
   * The example is no one's work: after "Back to the example" the values before it stay on offer.
   * @param {string} query
   */
  keep(query) {
    clearTimeout(this.#timer);
    if (!this.#mayKeep || query === "") return;
    this.#timer = setTimeout(
      () => void write("last", this.#card.card, { query, at: new Date().toISOString() }),
      PAUSE,
    );
  }

  #show() {
    const place = one(this.#card, '[data-slot="offers"]', HTMLElement);
    if (!place) return;
    const { buttons, listed, lines } = laidOut(this.#offers);
    const shown = [
      ...buttons.map((offer) => this.#button(offer.label, () => this.#take.values(offer))),
      ...(listed.length > 0 ? [this.#chooser(listed)] : []),
      ...(this.#last ? [this.#backButton(place)] : []),
      ...lines.map(line),
    ];
    const labels = (/** @type {Iterable<Element>} */ elements) =>
      Array.from(elements, (each) => each.textContent).join("\n");
    // or a button in focus would be lost
    if (labels(place.children) !== labels(shown)) place.replaceChildren(...shown);
    place.hidden = shown.length === 0;
  }

  /** @param {HTMLElement} place */
  #backButton(place) {
    const back = this.#button("Put my last values back", () => {
      const query = this.#last;
      this.#last = "";
      this.remember();
      this.#take.query(query);
      const form = back.form;
      back.remove();
      place.hidden = place.childElementCount === 0;
      if (form) one(form, "input, select", HTMLElement)?.focus();
    });
    return back;
  }

  /**
   * Many records in one list, by kind.
   * @param {Offer[]} offers
   */
  #chooser(offers) {
    const list = choices(offers);
    const chosen = () => (list.value === "" ? undefined : offers[Number(list.value)]);
    const use = this.#button("Use it", () => {
      const offer = chosen();
      if (offer && usable(offer)) this.#take.values(offer);
      else list.focus();
    });
    const why = line("");
    why.setAttribute("role", "status");
    list.addEventListener("change", () => say(why, chosen()?.why ?? ""));
    const both = document.createElement("span");
    both.className = "chooser";
    both.append(list, use, why);
    return both;
  }

  /**
   * @param {string} label
   * @param {() => void} act
   */
  #button(label, act) {
    const made = button(label);
    made.addEventListener("click", act);
    return made;
  }
}

/**
 * The list itself; an entry's value is its offer's place.
 * @param {Offer[]} offers
 */
function choices(offers) {
  const list = document.createElement("select");
  list.setAttribute("aria-label", "From the workbook");
  list.append(option("", "From the workbook…"));
  for (const [kind, entries] of byKind(offers)) {
    const group = Object.assign(document.createElement("optgroup"), { label: kind });
    group.append(...entries.map(({ at, words }) => option(String(at), words)));
    list.append(group);
  }
  return list;
}

/**
 * @param {string} value
 * @param {string} textContent
 */
function option(value, textContent) {
  return Object.assign(document.createElement("option"), { value, textContent });
}

/** @param {string} text */
function line(text) {
  const made = document.createElement("p");
  made.className = "why-not";
  say(made, text);
  return made;
}
