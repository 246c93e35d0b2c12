// What was typed into a record's form and not saved yet: kept with every key, so that no click on
// another page drops it, and offered back on the workbook's page. Saving, removing and leaving the
// form on purpose end it.

import { readAll, remove, write } from "./store.js";

/**
 * @typedef {import("../python/protocol.js").Texts} Texts
 * @typedef {{ id: string, kind: string, title: string, seen: string | null, typed: string,
 *   values: Texts, exact: Texts, rows: Record<string, number> }} Draft
 *   seen: the revision that it was typed over; null for a record that is new
 */

const MOST = 20;

class Drafts {
  /** @type {Map<string, Draft | null>} what is to be written next; null: nothing stays */
  #next = new Map();
  /** @type {Promise<void> | null} */
  #writing = null;

  /** @param {Draft} draft */
  keep(draft) {
    this.#put(draft.id, draft);
  }

  /** @param {string} id */
  drop(id) {
    this.#put(id, null);
  }

  /** Newest first; the oldest beyond MOST go. @returns {Promise<Draft[]>} */
  async all() {
    await this.#writing;
    const kept = await readAll("drafts");
    /** @type {Draft[]} */
    const found = "value" in kept ? kept.value.filter(isDraft) : [];
    found.sort((a, b) => (a.typed < b.typed ? 1 : -1));
    for (const { id } of found.slice(MOST)) this.drop(id);
    return found.slice(0, MOST);
  }

  /** @param {string} id */
  async find(id) {
    return (await this.all()).find((each) => each.id === id) ?? null;
  }

  /**
   * @param {string} id
   * @param {Draft | null} draft
   */
  #put(id, draft) {
    this.#next.set(id, draft);
    this.#writing ??= this.#write();
  }

  /** One write at a time; of what is typed meanwhile, only the newest is written. */
  async #write() {
    for (let [first] = this.#next; first; [first] = this.#next) {
      const [id, draft] = first;
      this.#next.delete(id);
      // where nothing can be kept the page says so already
      await (draft ? write("drafts", id, draft) : remove("drafts", id));
    }
    this.#writing = null;
  }
}

/**
 * @param {any} value
 * @returns {value is Draft}
 */
function isDraft(value) {
  return (
    typeof value?.id === "string" &&
    typeof value.kind === "string" &&
    typeof value.typed === "string" &&
    typeof value.values === "object"
  );
}

export const drafts = new Drafts();
