// What is kept on this device: one IndexedDB database, one store a kind. Storage may be denied
// (private window, embedded page), full, or cleared by the browser: every access answers with a
// value or with words.

import { openDB } from "./idb.js";

/** Never derived from an address: a renamed site must find its records again. */
const DATABASE = "bench-book";
/** Counts stores only; what is inside a record is versioned and migrated by Python. */
const VERSION = 3;
/** ms; an open that another tab blocks may wait for ever */
const PATIENCE = 3_000;

/**
 * @typedef {"bench" | "last" | "records" | "about" | "removed" | "drafts"} StoreName
 * @typedef {{ value: any } | { unavailable: string }} Kept
 * @typedef {import("../python/protocol.js").WorkbookRecord} WorkbookRecord
 * @typedef {{ id: string, rev: string | null, record: WorkbookRecord | null }} Change
 *   rev: the revision that the store must still hold (null: none); record: what takes its place
 *   (null: nothing)
 */

/** @type {Promise<import("idb").IDBPDatabase> | null} */
let opening = null;

/**
 * @param {StoreName} store
 * @param {string} key
 * @returns {Promise<Kept>}
 */
export function read(store, key) {
  return attempt((database) => database.get(store, key));
}

/**
 * @param {StoreName} store
 * @param {string} key
 * @param {unknown} value
 * @returns {Promise<Kept>}
 */
export function write(store, key, value) {
  return attempt(async (database) => {
    const change = database.transaction(store, "readwrite", { durability: "strict" });
    await Promise.all([change.store.put(value, key), change.done]);
    return value;
  });
}

/**
 * All values of a store.
 * @param {StoreName} store
 * @returns {Promise<Kept>}
 */
export function readAll(store) {
  return attempt((database) => database.getAll(store));
}

/**
 * Writes several records in one transaction: all of them or none. Nothing is written when another
 * tab has changed one of them meanwhile; their ids are then returned as `lost`. What is removed
 * moves to the store of removed ones; what is written leaves it.
 * @param {Change[]} changes
 * @param {(about: any) => any} note  what is remembered beside the records, from what was
 *   remembered before
 * @param {{ batch: string, removed: string }} mark  goes with what is removed: which press removed
 *   it, and when
 * @returns {Promise<Kept>}
 */
export function exchange(changes, note, mark) {
  return attempt(async (database) => {
    const change = database.transaction(["records", "about", "removed"], "readwrite", {
      durability: "strict",
    });
    const [records, about, gone] = [
      change.objectStore("records"),
      change.objectStore("about"),
      change.objectStore("removed"),
    ];
    const work = (async () => {
      const now = await Promise.all(changes.map(({ id }) => records.get(id)));
      const lost = changes
        .filter(({ rev }, at) => (now[at]?.rev ?? null) !== rev)
        .map(({ id }) => id);
      if (lost.length > 0) return { lost };
      const noted = note(await about.get("workbook"));
      const written = changes.flatMap(({ id, record }, at) => {
        if (record !== null) return [records.put(record, id), gone.delete(id)];
        return [
          records.delete(id),
          ...(now[at] ? [gone.put({ ...mark, record: now[at] }, id)] : []),
        ];
      });
      await Promise.all([...written, about.put(noted, "workbook")]);
      return { lost, about: noted };
    })();
    try {
      const [done] = await Promise.all([work, change.done]);
      return done;
    } catch (error) {
      throw change.error ?? error; // the transaction knows better why: a full disk shows there
    }
  });
}

/**
 * @param {StoreName} store
 * @param {...string} keys
 * @returns {Promise<Kept>}
 */
export function remove(store, ...keys) {
  return attempt(async (database) => {
    const change = database.transaction(store, "readwrite", { durability: "strict" });
    await Promise.all([...keys.map((key) => change.store.delete(key)), change.done]);
  });
}

/**
 * @param {(database: import("idb").IDBPDatabase) => Promise<any>} act
 * @returns {Promise<Kept>}
 */
async function attempt(act) {
  try {
    opening ??= open();
    return { value: await act(await opening) };
  } catch (error) {
    opening = null;
    return { unavailable: words(error) };
  }
}

/** @returns {Promise<import("idb").IDBPDatabase>} */
async function open() {
  if (typeof indexedDB === "undefined") throw new Error("this browser keeps nothing for this page");
  const database = openDB(DATABASE, VERSION, {
    upgrade(made, from) {
      if (from < 1) {
        made.createObjectStore("bench");
        made.createObjectStore("last");
      }
      if (from < 2) {
        made.createObjectStore("records");
        made.createObjectStore("about");
      }
      if (from < 3) {
        made.createObjectStore("removed");
        made.createObjectStore("drafts");
      }
    },
    blocking(_now, _wanted, event) {
      // a newer version of the page wants to upgrade: let go, and open again when next needed
      if (event.target instanceof IDBDatabase) event.target.close();
      opening = null;
    },
    terminated() {
      opening = null;
    },
  });
  /** @type {ReturnType<typeof setTimeout> | undefined} */
  let alarm;
  const late = new Promise((_, give) => {
    alarm = setTimeout(
      () => give(new Error("another tab with the bench book holds it; close the other tabs")),
      PATIENCE,
    );
  });
  try {
    return await Promise.race([database, /** @type {Promise<never>} */ (late)]);
  } finally {
    clearTimeout(alarm);
  }
}

/** @param {unknown} error */
function words(error) {
  const name = error instanceof DOMException ? error.name : "";
  if (name === "QuotaExceededError") return "the storage of this browser is full";
  if (name === "VersionError") return "a newer version of the book was open here; reload this page";
  if (name === "SecurityError" || name === "InvalidStateError")
    return "this browser does not let the page keep anything";
  return error instanceof Error && error.message
    ? error.message
    : "this browser does not let the page keep anything";
}
