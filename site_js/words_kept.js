// Where the records are kept, in words.

/**
 * @param {string} unavailable
 * @param {import("./records.js").About} about
 * @param {number} count
 */
export async function keptWords(unavailable, about, count) {
  if (unavailable) return `Nothing can be kept here: ${unavailable}. A file can still be read and looked at.`;
  if (count === 0) return "What you save is kept in this browser on this device only. Nothing is sent anywhere.";
  const lasting = await navigator.storage?.persisted?.().catch(() => false);
  const cleared = lasting
    ? "The browser has agreed not to clear it by itself."
    : "A phone may clear it: on an iPhone after seven days of use without a visit, unless the book is on the Home Screen; elsewhere when room runs out.";
  const exported = about.exported ? `Last copy as a file: ${about.exported.slice(0, 10)}.` : "There is no copy as a file yet.";
  return `Kept in this browser on this device only: ${count} ${count === 1 ? "record" : "records"}. ${cleared} ${exported}`;
}
