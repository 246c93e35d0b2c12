// The workbook as the other files see it: all records, one way to change them, and the way back.
// What is in a record is Python's matter; here it gets its revision, is written, and is told to the
// other tabs.

import { mark, moment, stamp } from "./revisions.js";

/**
 * @typedef {import("../python/protocol.js").WorkbookRecord} WorkbookRecord
 * @typedef {{ before: WorkbookRecord | null, after: WorkbookRecord | null, asItIs?: boolean }} Edit
 *   asItIs: the record brings its own revision along, from a file
 * @typedef {{ saves: number, first: string | null, exported: string | null }} About
 * @typedef {{ batch: string, removed: string, records: WorkbookRecord[] }} Removed  what one press
 *   removed, and when
 * @typedef {Pick<typeof import("./store.js"), "exchange" | "read" | "readAll" | "remove">} Store
 */

const MOST_UNDO = 20;
const DAY = 86_400_000; // ms
/** @type {About} */
const NOTHING = { saves: 0, first: null, exported: null };

/** Fires "change" when records changed, here or in another tab. */
export class Workbook extends EventTarget {
  #store;
  /** @type {Map<string, WorkbookRecord>} */
  #records = new Map();
  /** @type {About} */
  about = NOTHING;
  /** Why nothing can be kept, in words; "" when it can. */
  unavailable = "";
  /** @type {Promise<void> | undefined} */
  #loaded;
  /** @type {BroadcastChannel | undefined} */
  #tabs;
  /** @type {Edit[][]} what can be taken back, newest last */
  #done = [];
  /** Have the records been read? Before that none is known, which is not the same as none. */
  known = false;

  /** @param {Store} store */
  constructor(store) {
    super();
    this.#store = store;
  }

  /** Resolves when the records are known. */
  ready() {
    if (!this.#loaded) {
      this.#loaded = this.#load();
      if (typeof BroadcastChannel === "function") {
        this.#tabs = new BroadcastChannel("bench-book records");
        this.#tabs.onmessage = () => void this.#load().then(() => this.#tell());
      }
    }
    return this.#loaded;
  }

  /** Every record, for Python. */
  get all() {
    return [...this.#records.values()];
  }

  /** @param {string} id */
  find(id) {
    return this.#records.get(id) ?? null;
  }

  get canUndo() {
    return this.#done.length > 0;
  }

  /**
   * Changes records, all of them or none. Returns "" or, in words, why nothing was changed.
   * @param {Edit[]} edits
   */
  async change(edits) {
    const stamped = edits.map((edit) =>
      edit.after && !edit.asItIs ? { ...edit, after: stamp(edit.after, edit.before) } : edit,
    );
    const why = await this.#write(stamped);
    if (!why) this.#done = [...this.#done, stamped].slice(-MOST_UNDO);
    return why;
  }

  /** Takes the last change back. Returns "" or why it could not be. */
  async undo() {
    const last = this.#done.at(-1);
    if (!last) return "There is nothing to undo.";
    const why = await this.#write(
      last.map(({ before, after }) => ({
        before: after,
        after: before && after ? stamp(before, after) : before,
      })),
    );
    if (!why) this.#done.pop();
    return why;
  }

  /**
   * What was removed in the last so many days, newest first; what was removed before is forgotten.
   * @param {number} days
   */
  async removed(days) {
    const kept = await this.#store.readAll("removed");
    /** @type {Map<string, Removed>} */
    const found = new Map();
    const old = [];
    for (const { batch, removed, record } of "value" in kept ? kept.value : []) {
      if (Date.now() - Date.parse(removed) > days * DAY) old.push(record.id);
      else if (!found.get(batch)?.records.push(record))
        found.set(batch, { batch, removed, records: [record] });
    }
    if (old.length > 0) await this.#store.remove("removed", ...old);
    return [...found.values()].sort((a, b) => (a.removed < b.removed ? 1 : -1));
  }

  /**
   * Brings back what was removed, as it was. Returns "" or why not.
   * @param {WorkbookRecord[]} records
   */
  async bringBack(records) {
    return this.change(
      records
        .filter(({ id }) => !this.#records.has(id))
        .map((after) => ({ before: null, after, asItIs: true })),
    );
  }

  /** Removed ones go for good. @param {WorkbookRecord[]} records */
  async forget(records) {
    const kept = await this.#store.remove("removed", ...records.map(({ id }) => id));
    this.#tell();
    return "unavailable" in kept ? kept.unavailable : "";
  }

  /** A file holds everything now. */
  async exported() {
    const noted = () => ({ saves: 0, first: null, exported: moment() });
    const kept = await this.#store.exchange([], noted, mark());
    if ("value" in kept) this.about = kept.value.about;
    this.#tabs?.postMessage("records");
    this.#tell();
  }

  /** @param {Edit[]} edits */
  async #write(edits) {
    const changes = edits.map(({ before, after }) => ({
      id: (after ?? before)?.id ?? "",
      rev: before?.rev ?? null,
      record: after,
    }));
    const kept = await this.#store.exchange(
      changes,
      (about) => ({
        ...NOTHING,
        ...about,
        saves: (about?.saves ?? 0) + 1,
        first: about?.first ?? moment(),
      }),
      mark(),
    );
    if ("unavailable" in kept) {
      this.unavailable = kept.unavailable;
      return `Not saved: ${kept.unavailable}. What was saved before is still there.`;
    }
    if (kept.value.lost.length > 0) {
      await this.#load();
      return "Not saved: it was changed in another tab meanwhile.";
    }
    this.unavailable = "";
    this.about = kept.value.about;
    for (const { id, record } of changes) {
      if (record) this.#records.set(id, record);
      else this.#records.delete(id);
    }
    this.#tabs?.postMessage("records");
    this.#tell();
    return "";
  }

  async #load() {
    const kept = await this.#store.readAll("records");
    const about = await this.#store.read("about", "workbook");
    this.unavailable = "unavailable" in kept ? kept.unavailable : "";
    this.known = "value" in kept;
    if ("value" in kept)
      this.#records = new Map(
        kept.value
          .filter(isRecord)
          .map((/** @type {WorkbookRecord} */ record) => [record.id, record]),
      );
    this.about = { ...NOTHING, ...("value" in about ? about.value : {}) };
  }

  #tell() {
    this.dispatchEvent(new Event("change"));
  }
}

/**
 * @param {unknown} value
 * @returns {value is WorkbookRecord}
 */
function isRecord(value) {
  return (
    typeof value === "object" && value !== null && typeof Reflect.get(value, "id") === "string"
  );
}
