// Speech for a live region that changes with every key: the text is always current for the eye, but
// a screen reader is told to wait (aria-busy) so that it speaks at most once a second.

/** ms */
const PAUSE = 1_000;

/** @type {WeakMap<Element, ReturnType<typeof setTimeout>>} */
const waiting = new WeakMap();

/**
 * Call before changing the region.
 * @param {Element} region
 */
export function holdSpeech(region) {
  if (waiting.has(region)) return;
  region.setAttribute("aria-busy", "true");
  const speak = () => {
    waiting.delete(region);
    region.removeAttribute("aria-busy");
  };
  waiting.set(region, setTimeout(speak, PAUSE));
}
