// Taking records in from a file, the demo or My bench: what would change is told first, and written
// in one go on a press.

import { button } from "../dom/dom.js";
import { chooseJson } from "../dom/files.js";
import { bench } from "./bench.js";
import { workbook } from "./records.js";

/** @typedef {import("../python/protocol.js").WorkbookFile} WorkbookFile */

export class Taking {
  #place;
  #around;

  /**
   * @param {HTMLElement} place
   * @param {{ ask: import("../python/asking.js").AskAll, said: (text: string) => void,
   *   persist: () => void, largest: number }} around
   *   largest: bytes of a file; said again by Python, which reads it
   */
  constructor(place, around) {
    this.#place = place;
    this.#around = around;
  }

  close() {
    this.#place.hidden = true;
    this.#place.replaceChildren();
  }

  choose() {
    chooseJson((file) => void this.#read(file));
  }

  /** @param {File} file */
  async #read(file) {
    const { largest } = this.#around;
    if (file.size > largest) {
      this.#around.said(
        `This file was not read: it is larger than ${largest / 1e6} MB. Nothing was changed.`,
      );
      return;
    }
    const text = await file.text().catch(() => null);
    if (text === null) this.#around.said("This file could not be read. Nothing was changed.");
    else await this.offer("workbook-file", file.name, false, text);
  }

  /**
   * @param {"workbook-file" | "workbook-demo" | "workbook-bench"} what
   * @param {string} from
   * @param {boolean} atOnce  nothing needs to be asked when all of it is new
   * @param {string} [text]
   */
  async offer(what, from, atOnce, text) {
    this.close();
    if (atOnce) this.#around.persist();
    const found = await this.#around.ask({ do: what, text });
    if (!found) return;
    if ("refused" in found) {
      this.#around.said(found.refused);
      return;
    }
    const news = found.new.length + found.newer.length;
    if (news + found.settled.length === 0 && !found.bench)
      this.#around.said(`${found.words}. There is nothing to bring in from ${from}.`);
    else if (atOnce && found.clashes.length === 0) await this.#take(found, from, false);
    else this.#preview(found, from);
  }

  /**
   * @param {WorkbookFile} found
   * @param {string} from
   */
  #preview(found, from) {
    const head = Object.assign(document.createElement("h2"), {
      textContent: `From ${from}`,
      tabIndex: -1,
    });
    const words = Object.assign(document.createElement("p"), {
      textContent: `${found.words}. Nothing is written yet.`,
    });
    const list = document.createElement("ul");
    list.append(
      ...found.clashes.map((line) =>
        Object.assign(document.createElement("li"), { textContent: line }),
      ),
    );
    const choices = document.createElement("p");
    choices.className = "do";
    const clash = found.clashes.length > 0;
    choices.append(
      this.#choice(
        clash ? "Bring it in, keep mine where they clash" : "Bring it in",
        () => this.#take(found, from, false),
        "first",
      ),
    );
    if (clash)
      choices.append(
        this.#choice("Bring it in, take the file’s where they clash", () =>
          this.#take(found, from, true),
        ),
      );
    choices.append(
      this.#choice("Leave everything as it is", () => this.#around.said("Nothing was changed.")),
    );
    this.#place.replaceChildren(head, words, ...(clash ? [list] : []), choices);
    this.#place.hidden = false;
    this.#around.said("");
    head.focus();
  }

  /**
   * @param {string} text
   * @param {() => void | Promise<void>} act
   * @param {string} [look]
   */
  #choice(text, act, look = "") {
    const made = button(text, look);
    made.addEventListener("click", async () => {
      this.#around.persist();
      await act();
      this.close();
    });
    return made;
  }

  /**
   * @param {WorkbookFile} found
   * @param {string} from
   * @param {boolean} theirs  take the file's where both sides changed
   */
  async #take(found, from, theirs) {
    const taken = [...found.new, ...found.newer, ...(theirs ? found.settled : [])];
    const why =
      taken.length > 0
        ? await workbook.change(
            taken.map((after) => ({ before: workbook.find(after.id), after, asItIs: true })),
          )
        : "";
    if (why) {
      this.#around.said(why);
      return;
    }
    const notBench =
      found.bench && (!found.bench_clash || theirs) ? await bench.keep(found.bench) : "";
    const records = `${taken.length} ${taken.length === 1 ? "record" : "records"}`;
    this.#around.said(
      notBench
        ? `My bench could not be kept: ${notBench}.`
        : `${records} brought in from ${from}. Undo takes them out again.`,
    );
  }
}
