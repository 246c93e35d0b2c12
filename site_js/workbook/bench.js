// My bench as the other files see it: the saved record, and the settings that go with every
// question.

import { decimalStyle } from "../dom/language.js";
import { read, remove, write } from "./store.js";

/**
 * @typedef {import("../python/protocol.js").Settings} Settings
 * @typedef {import("../python/protocol.js").BenchRecord} BenchRecord
 */

/** What the answers in the pages as built were made with. @type {Settings} */
const AS_BUILT = { style: "point", system: "both", money: "€" };

const KEY = "mine";

/** Fires "change" when the saved record changed, here or in another tab. */
export class Bench extends EventTarget {
  /** @type {BenchRecord | null} */
  record = null;
  /** Why nothing can be kept, in words; "" when it can. */
  unavailable = "";
  /** @type {Promise<void> | undefined} */
  #loaded;
  /** @type {BroadcastChannel | undefined} */
  #tabs;

  /** Resolves when the saved record is known. */
  ready() {
    if (!this.#loaded) {
      this.#loaded = this.#load();
      if (typeof BroadcastChannel === "function") {
        this.#tabs = new BroadcastChannel("bench-book");
        this.#tabs.onmessage = () => void this.#load().then(() => this.#tell());
      }
    }
    return this.#loaded;
  }

  /** @returns {Settings} */
  get settings() {
    const guessed = {
      ...AS_BUILT,
      style: decimalStyle([navigator.language, ...(navigator.languages ?? [])]),
    };
    const saved = Object.entries(this.record?.values ?? {}).filter(([name]) => name in AS_BUILT);
    return { ...guessed, ...Object.fromEntries(saved) };
  }

  /** Would a page as built read otherwise with these settings? */
  get differs() {
    const { style, system, money } = this.settings;
    return style !== AS_BUILT.style || system !== AS_BUILT.system || money !== AS_BUILT.money;
  }

  /**
   * Keeps a record that Python has checked, or none. Returns "" or why it could not be kept.
   * @param {BenchRecord | null} record
   */
  async keep(record) {
    const kept = record === null ? await remove("bench", KEY) : await write("bench", KEY, record);
    this.unavailable = "unavailable" in kept ? kept.unavailable : "";
    if (this.unavailable) return this.unavailable;
    this.record = record;
    this.#tabs?.postMessage("bench");
    this.#tell();
    return "";
  }

  async #load() {
    const kept = await read("bench", KEY);
    this.unavailable = "unavailable" in kept ? kept.unavailable : "";
    this.record = "value" in kept && isRecord(kept.value) ? kept.value : null;
  }

  #tell() {
    this.dispatchEvent(new Event("change"));
  }
}

/**
 * @param {unknown} value
 * @returns {value is BenchRecord}
 */
function isRecord(value) {
  return typeof value === "object" && value !== null && !Array.isArray(value);
}

export const bench = new Bench();
