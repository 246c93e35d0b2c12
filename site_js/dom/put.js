// The one place where finished HTML enters the page.
//
// Only HTML made by fibercalc.site comes here; it escapes every text in its own builder. Nothing
// from a link, a field, a record or an imported file may be passed in directly: those go by
// textContent.

/** @type {WeakMap<Element, string>} what was last put, since innerHTML reads back differently */
const lastPut = new WeakMap();

/**
 * Replaces the content of a slot if it changed. Open and closed details stay as the reader left
 * them, and focus inside the slot is given back.
 * @param {Element} slot
 * @param {string} html
 */
export function put(slot, html) {
  if ((lastPut.get(slot) ?? slot.innerHTML) === html) return;
  const open = [...slot.querySelectorAll("details")].map((details) => details.open);
  const focused = reachable(slot).indexOf(/** @type {Element} */ (document.activeElement));
  slot.innerHTML = html;
  lastPut.set(slot, html);
  slot.querySelectorAll("details").forEach((details, at) => {
    if (at < open.length) details.open = open[at] ?? false;
  });
  const again = focused < 0 ? undefined : reachable(slot)[focused];
  if (again instanceof HTMLElement) again.focus({ preventScroll: true });
}

/** @param {Element} slot */
function reachable(slot) {
  return [...slot.querySelectorAll("a[href], button, summary, [tabindex]")];
}
