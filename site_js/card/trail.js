// The way come from card to card, so that the next one gets what an earlier one knows. Kept for
// this tab only; what it means is Python's matter.

const KEY = "trail";

/** @typedef {{ card: string, query: string }} Step */

/** Where storage is denied the way is known until the page is loaded anew. @type {string | null} */
let kept = null;

/**
 * The cards before this one, oldest first; none where it was not come to by a way on.
 * @param {string} card
 * @returns {Step[]}
 */
export function trailTo(card) {
  try {
    const way = JSON.parse(stored() ?? "{}");
    return way?.to === card && Array.isArray(way.steps) ? way.steps : [];
  } catch (error) {
    if (!(error instanceof SyntaxError)) throw error;
    return []; // whoever wrote that, it was not this script
  }
}

/**
 * A person goes on from one card to another.
 * @param {string} to
 * @param {Step[]} steps  the cards before, and the one left
 */
export function goOn(to, steps) {
  kept = JSON.stringify({ to, steps });
  try {
    sessionStorage.setItem(KEY, kept);
  } catch (error) {
    if (!(error instanceof DOMException)) throw error;
  }
}

function stored() {
  try {
    return sessionStorage.getItem(KEY) ?? kept;
  } catch (error) {
    if (!(error instanceof DOMException)) throw error;
    return kept;
  }
}
