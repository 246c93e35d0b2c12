// Values held out, never filled in silently: from My bench, and the last values of this card after a reload.

import { bench } from "./bench.js";
import { button, one } from "./dom.js";
import { python } from "./python.js";
import { read, write } from "./store.js";

/** ms */
const PAUSE = 1_000;

/** @typedef {import("./protocol.js").Offer} Offer */

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
   * @param {{ values: (values: import("./protocol.js").Texts) => void, query: (query: string) => void }} take
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
    if (!bench.record) this.#offers = [];
    else if (python.stage.stage === "ready") {
      const outcome = await python.ask({ do: "bench-offers", card: this.#card.card, record: bench.record, settings: bench.settings });
      if (outcome && "ok" in outcome) this.#offers = outcome.ok.offers;
    }
    if (!this.#signal.aborted) this.#show();
  }

  /** A person changes values here: from now on they are worth keeping. A link only looked at is not. */
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
    this.#timer = setTimeout(() => void write("last", this.#card.card, { query, at: new Date().toISOString() }), PAUSE);
  }

  #show() {
    const place = one(this.#card, '[data-slot="offers"]', HTMLElement);
    if (!place) return;
    const buttons = this.#offers.map(({ label, values }) => this.#button(label, () => this.#take.values(values)));
    if (this.#last) {
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
      buttons.push(back);
    }
    const labels = (/** @type {Iterable<Element>} */ elements) => Array.from(elements, (each) => each.textContent).join("\n");
    if (labels(place.children) !== labels(buttons)) place.replaceChildren(...buttons); // or a button in focus would be lost
    place.hidden = buttons.length === 0;
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
