// When the browser has time: after the page has loaded and been painted, and only while it is
// looked at.

/** ms; where the browser has no idle callback, and the longest wait where it has one */
const PATIENCE = 1_500;

/** @returns {Promise<void>} */
export async function whenIdle() {
  if (document.readyState !== "complete") await once(window, "load");
  while (document.visibilityState === "hidden") await once(document, "visibilitychange");
  await new Promise((painted) => requestAnimationFrame(painted));
  await new Promise((idle) => {
    if ("requestIdleCallback" in window) window.requestIdleCallback(idle, { timeout: PATIENCE });
    else setTimeout(idle, PATIENCE);
  });
}

/**
 * Resolves with a touch, or as soon as the browser has time; where data is spared a touch alone
 * counts.
 * @param {Promise<unknown>} touch
 * @param {boolean} [spares]
 */
export async function touchOrTime(touch, spares = sparesData()) {
  await Promise.race([touch, spares ? new Promise(() => {}) : whenIdle()]);
}

/** Has the reader asked to spare the line? Then megabytes wait for a touch. */
export function sparesData() {
  const connection = /** @type {{ saveData?: boolean } | undefined} */ (
    Reflect.get(navigator, "connection")
  );
  return connection?.saveData === true;
}

/**
 * @param {EventTarget} target
 * @param {string} type
 */
function once(target, type) {
  return new Promise((heard) => target.addEventListener(type, heard, { once: true }));
}
