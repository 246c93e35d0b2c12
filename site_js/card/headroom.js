// The answer stays at the top of a phone's screen: what is focused must scroll to below it.

import { one } from "../dom/dom.js";

/**
 * Keeps the answer's height in the style sheet's --head.
 * @param {HTMLElement} card
 * @param {AbortSignal} signal
 */
export function keepHeadroom(card, signal) {
  const head = one(card, ".head", HTMLElement);
  if (!head || typeof ResizeObserver !== "function") return;
  const observer = new ResizeObserver(() =>
    document.documentElement.style.setProperty("--head", `${head.offsetHeight}px`),
  );
  observer.observe(head);
  signal.addEventListener("abort", () => {
    observer.disconnect();
    document.documentElement.style.removeProperty("--head");
  });
}
