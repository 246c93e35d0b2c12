// Where the records are kept, in words.

/** @param {number} count */
export function heldWords(count) {
  const held = `${records(count)} ${count === 1 ? "is" : "are"} written down here.`;
  return `${held} The list needs the calculator, a copy as a file does not.`;
}

/**
 * Why there is no list, and what can be had all the same.
 * @param {string} why
 * @param {number} count
 */
export function withoutPython(why, count) {
  const held =
    count > 0
      ? ` ${records(count)} ${count === 1 ? "is" : "are"} kept on this device all the same;` +
        " “Save a copy as a file” works without the calculator."
      : "";
  return `The calculator could not start: ${why}${held}`;
}

/** @param {import("./drafts.js").Draft} draft */
export function draftWords({ typed, seen }) {
  return `${seen === null ? "typed" : "changed"} ${typed.slice(0, 10)}`;
}

/** @param {number} count */
function records(count) {
  return `${count} ${count === 1 ? "record" : "records"}`;
}

/**
 * @param {string} unavailable
 * @param {import("./book.js").About} about
 * @param {number} count
 */
export async function keptWords(unavailable, about, count) {
  if (unavailable)
    return `Nothing can be kept here: ${unavailable}. A file can still be read and looked at.`;
  if (count === 0)
    return "What you save is kept in this browser on this device only. Nothing is sent anywhere.";
  const lasting = await navigator.storage?.persisted?.().catch(() => false);
  const exported = about.exported
    ? `Last copy as a file: ${about.exported.slice(0, 10)}.`
    : "There is no copy as a file yet.";
  const kept = `Kept in this browser on this device only: ${records(count)}.`;
  return `${kept} ${clearedWords(lasting)} ${exported}`;
}

/**
 * Whether the browser may clear what is kept.
 * @param {boolean | undefined} lasting
 */
export function clearedWords(lasting) {
  return lasting
    ? "The browser has agreed not to clear it by itself."
    : "A phone may clear it: on an iPhone after seven days of use without a visit, unless the" +
        " book is on the Home Screen; elsewhere when room runs out.";
}
