// What a record is given here when it is written: its id, its revision, the moment. Pure but for
// the clock and chance.

/** @typedef {import("../python/protocol.js").WorkbookRecord} WorkbookRecord */

const MOST_PAST = 30;

/**
 * The record as its next revision.
 * @param {WorkbookRecord} record
 * @param {WorkbookRecord | null} before
 * @returns {WorkbookRecord}
 */
export function stamp(record, before) {
  const number = before ? Number.parseInt(before.rev, 10) || 0 : 0;
  const past = before ? [before.rev, ...before.past].slice(0, MOST_PAST) : [];
  return { ...record, rev: `${number + 1}-${letters(8)}`, past, changed: moment() };
}

/** What goes with records that one press removes. */
export function mark() {
  return { batch: letters(8), removed: moment() };
}

/** An id that no other record has. @param {string} kind */
export function freshId(kind) {
  return `${kind}-${letters(12)}`;
}

/** So many random letters and digits. @param {number} count */
export function letters(count) {
  return Array.from(crypto.getRandomValues(new Uint8Array(count)), (each) =>
    (each % 36).toString(36),
  ).join("");
}

/** Now, to the second. */
export function moment() {
  return `${new Date().toISOString().slice(0, 19)}Z`;
}

/** Today, where she is. */
export function today() {
  const now = new Date();
  return [now.getFullYear(), now.getMonth() + 1, now.getDate()]
    .map((part) => String(part).padStart(2, "0"))
    .join("-");
}
