// <bench-link>: the maker types a base, Python makes the link, the code and the lines for a shop's
// page. Nothing is kept.

import { copied } from "../dom/copy.js";
import { one, say, startedAt } from "../dom/dom.js";
import { saveBlob } from "../dom/files.js";
import { sparesData, touchOrTime } from "../dom/idle.js";
import { LivingElement, touchOf } from "../dom/life.js";
import { siteRoot } from "../dom/places.js";
import { printAlone } from "../dom/print.js";
import { put } from "../dom/put.js";
import { python } from "../python/python.js";
import { stateWords } from "../python/words.js";
import { LiveForm } from "../rows/form.js";
import { bench } from "../workbook/bench.js";
import { Offers } from "../workbook/offers.js";
import { workbook } from "../workbook/records.js";

/** @typedef {import("../python/protocol.js").LinkMade} LinkMade */

const CARD = "helper-link";

export class BenchLink extends LivingElement {
  card = CARD;
  /** @type {LiveForm | null} */
  #form = null;
  /** @type {Offers | null} */
  #offers = null;
  /** @type {LinkMade | null} */
  #made = null;

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
      changed: () => void this.#ask(),
    });
    this.#offers = new Offers(this, signal, {
      values: ({ values, rows }) => {
        this.#form?.fill({ values, rows });
        void this.#ask();
      },
      query: () => {},
    });
    form.addEventListener("focusin", () => python.start(), { once: true, signal });
    this.addEventListener(
      "click",
      (event) => void this.#pressed(startedAt(event, "[data-do]")?.dataset.do),
      { signal },
    );
    python.addEventListener("stage", () => this.#tell(), { signal });
    for (const kept of [bench, workbook])
      kept.addEventListener("change", () => void this.#offers?.load(false), { signal });
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
    await touchOrTime(touched);
    if (signal.aborted) return;
    await this.#ask();
    await this.#offers?.load(false);
  }

  async #ask() {
    const asked = {
      do: /** @type {const} */ ("base-link"),
      ...this.#form?.state(),
      settings: bench.settings,
      here: siteRoot().href,
    };
    const outcome = await this.late(python.ask(asked, { replaces: CARD }));
    if (!outcome) return;
    const kept = one(this, "section > .kept", HTMLElement);
    if ("problem" in outcome) {
      say(kept, outcome.problem.text);
      return;
    }
    const made = outcome.ok;
    this.#form?.echoes.reveal(made.shown);
    if (this.#form?.echo(made.fields)) {
      await this.#ask();
      return;
    }
    const now = this.#made ? "The link is still the last good one." : "There is no link yet.";
    say(kept, made.answered ? "" : `${made.refused} ${now}`.trim());
    if (made.answered) this.#show(made);
  }

  /** @param {LinkMade} made */
  #show(made) {
    this.#made = made;
    for (const name of /** @type {const} */ (["link", "about", "snippet", "listener"]))
      say(one(this, `[data-slot="${name}"]`, HTMLElement), made[name]);
    const code = one(this, '[data-slot="code"]', HTMLElement);
    if (code) put(code, made.svg);
  }

  /** @param {string | undefined} what */
  async #pressed(what) {
    const made = this.#made;
    if (!what) return;
    if (!made) {
      this.#said("There is no link yet.");
      return;
    }
    switch (what) {
      case "copy-link":
        this.#said((await copied(made.link)) ? "Link copied." : "Mark the link above and copy it.");
        break;
      case "copy-snippet":
      case "copy-listener":
        this.#said(
          (await copied(what === "copy-snippet" ? made.snippet : made.listener))
            ? "Copied."
            : "Open the lines below, mark them and copy them.",
        );
        break;
      case "save-svg":
        saveBlob(new Blob([made.svg], { type: "image/svg+xml" }), "helper-code.svg");
        break;
      case "save-png":
        saveBlob(
          new Blob([Uint8Array.from(atob(made.png), (each) => each.charCodeAt(0))], {
            type: "image/png",
          }),
          "helper-code.png",
        );
        break;
      case "print-booth":
        printAlone(made.booth, "booth");
        break;
      case "print-stand":
        await this.#printStand();
        break;
    }
  }

  /** The stand works out every project and size, so it is asked for only when it is wanted. */
  async #printStand() {
    this.#said("Working out every project and size.");
    const asked = { ...this.#form?.state(), settings: bench.settings, here: siteRoot().href };
    const outcome = await this.late(python.ask({ do: "stand", ...asked }));
    if (!outcome || "problem" in outcome)
      this.#said(outcome?.problem.text ?? "The calculator is busy: press again.");
    else if (!outcome.ok.html) this.#said(outcome.ok.refused);
    else {
      this.#said("");
      printAlone(outcome.ok.html, "booth");
    }
  }

  /** @param {string} text */
  #said(text) {
    say(one(this, ".said", HTMLElement), text);
  }

  #tell() {
    const { state, text } = stateWords(python.stage, {
      offline: false,
      waiting: !this.#made,
      worked: this.#made !== null,
      spares: sparesData(),
    });
    const place = one(this, ".state", HTMLElement);
    say(place, text);
    if (place) place.dataset.state = state;
  }
}
