// What the rows of a list hold, as texts, and what each holds when one of them goes or comes back.
// Pure.

/**
 * @typedef {import("../python/protocol.js").Texts} Texts
 * @typedef {{ values: Texts, exact: Texts, own: string[] }} Held
 *   what controls hold, by their names; of one row, by the part of the name after its number
 */

/**
 * What every control of a row's name begins with.
 * @param {string} list
 * @param {number | string} number
 */
export function startOf(list, number) {
  return `${list}.${number}.`;
}

/**
 * One row of what a form holds.
 * @param {Held} held
 * @param {string} list
 * @param {number} number
 * @returns {Held}
 */
export function rowOf({ values, exact, own }, list, number) {
  const start = startOf(list, number);
  const inside = (/** @type {string} */ name) => name.startsWith(start);
  const short = (/** @type {string} */ name) => name.slice(start.length);
  const part = (/** @type {Texts} */ texts) =>
    Object.fromEntries(
      Object.entries(texts)
        .filter(([name]) => inside(name))
        .map(([name, text]) => [short(name), text]),
    );
  return { values: part(values), exact: part(exact), own: own.filter(inside).map(short) };
}

/**
 * A row under its full names.
 * @param {Held} row
 * @param {string} list
 * @param {number} number
 * @returns {Held}
 */
export function named({ values, exact, own }, list, number) {
  const start = startOf(list, number);
  const full = (/** @type {Texts} */ texts) =>
    Object.fromEntries(Object.entries(texts).map(([name, text]) => [start + name, text]));
  return { values: full(values), exact: full(exact), own: own.map((name) => start + name) };
}

/**
 * A row goes and those below move up: what the numbers hold then, as far as it changes.
 * @param {Held} held
 * @param {string} list
 * @param {number} number  the row that goes
 * @param {number} count  rows before
 * @returns {[number: number, row: Held][]}
 */
export function movedUp(held, list, number, count) {
  return between(number, count - 1).map((at) => [at, rowOf(held, list, at + 1)]);
}

/**
 * A row comes back and those from its number on move down.
 * @param {Held} held
 * @param {string} list
 * @param {number} number  where it comes back
 * @param {number} count  rows with it
 * @param {Held} row
 * @returns {[number: number, row: Held][]}
 */
export function movedDown(held, list, number, count, row) {
  const below = between(number + 1, count).map((at) => rowOf(held, list, at - 1));
  return [row, ...below].map((each, at) => [number + at, each]);
}

/**
 * Whole numbers from one to another, none where the second is smaller.
 * @param {number} first
 * @param {number} last
 */
function between(first, last) {
  return Array.from({ length: Math.max(last - first + 1, 0) }, (_, at) => first + at);
}
