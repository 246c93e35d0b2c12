// How values on offer stand below a form: as buttons, in a list by kind, or as a line that says why
// not. Pure.

/** @typedef {import("../python/protocol.js").Offer} Offer */

/** More records than this stand in a list to choose from. */
const MOST_BUTTONS = 4;

/**
 * What stands as a button, what in the list, and the lines below both. My bench's offers always
 * stand as buttons; what cannot be used stands in the list all the same, and says why there.
 * @param {Offer[]} offers
 */
export function laidOut(offers) {
  const known = offers.filter(({ kind }) => kind !== undefined);
  const listed = known.length > MOST_BUTTONS ? known : [];
  const single = offers.filter((offer) => !listed.includes(offer));
  return {
    buttons: single.filter(usable),
    listed,
    lines: single.flatMap(({ why }) => (why ? [why] : [])),
  };
}

/**
 * Can anything of it be put in?
 * @param {Offer} offer
 */
export function usable({ values }) {
  return Object.keys(values).length > 0;
}

/**
 * The list in groups of a kind, in the order in which kinds come; `at` is an offer's place among
 * those listed.
 * @param {Offer[]} listed
 */
export function byKind(listed) {
  /** @type {Map<string, { at: number, words: string }[]>} */
  const groups = new Map();
  listed.forEach((offer, at) => {
    const kind = offer.kind ?? "";
    if (!groups.has(kind)) groups.set(kind, []);
    groups.get(kind)?.push({ at, words: listWords(offer) });
  });
  return groups;
}

/** @param {Offer} offer */
function listWords(offer) {
  return offer.label.replace(/^Use /, "") + (usable(offer) ? "" : ": cannot be used here");
}
