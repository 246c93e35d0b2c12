// A new version of the book is offered, never forced: not in the middle of work, and values go to
// the address first.

import { button } from "../dom/dom.js";

/** ms between two looks at whether the work in hand is done */
const LOOK = 1_000;

let reloading = false;

/** @param {ServiceWorkerRegistration} registration */
export function watchForUpdate(registration) {
  const controlled = navigator.serviceWorker.controller !== null;
  navigator.serviceWorker.addEventListener("controllerchange", () => {
    if (controlled) renew();
  });
  const offer = () => {
    if (registration.waiting) void offerUpdate(registration.waiting);
  };
  offer();
  registration.addEventListener("updatefound", () => {
    const worker = registration.installing;
    worker?.addEventListener("statechange", () => {
      // the very first version has nothing to replace and never waits
      if (worker.state === "installed" && registration.active) offer();
    });
  });
}

/** @param {ServiceWorker} worker */
async function offerUpdate(worker) {
  await workIsSaved();
  show("A new version is ready.", "Update now", () => {
    if (!isSaved()) return false;
    worker.addEventListener("statechange", () => {
      // a page on its first visit is not controlled yet and hears no controllerchange
      if (worker.state === "activated") renew();
    });
    worker.postMessage({ type: "SKIP_WAITING" });
    return true;
  });
}

/** Another tab may have asked for the new version: this one reloads when nothing is lost by it. */
function renew() {
  if (reloading) return;
  if (isSaved()) reload();
  else {
    show("The book was updated in another tab.", "Reload this one", () => {
      if (!isSaved()) return false;
      reload();
      return true;
    });
  }
}

function reload() {
  reloading = true;
  location.reload();
}

function isSaved() {
  return [
    ...document.querySelectorAll("bench-card, bench-mine, bench-timers, bench-workbook"),
  ].every((element) => Reflect.get(element, "unsaved") !== true);
}

async function workIsSaved() {
  while (!isSaved()) await new Promise((later) => setTimeout(later, LOOK));
}

/**
 * @param {string} text
 * @param {string} label
 * @param {() => boolean} act  false: not now, something is unsaved
 */
function show(text, label, act) {
  document.querySelector(".update-bar")?.remove();
  const bar = document.createElement("div");
  bar.className = "update-bar";
  bar.setAttribute("role", "region");
  bar.setAttribute("aria-label", "New version");
  const words = document.createElement("p");
  words.setAttribute("role", "status");
  const now = button(label, "first");
  const later = button("Later");
  now.addEventListener("click", () => {
    words.textContent = act()
      ? "Updating…"
      : `${text} A value here is not saved yet, or a timer runs: finish that first.`;
  });
  later.addEventListener("click", () => bar.remove());
  bar.append(words, now, later);
  document.body.append(bar);
  words.textContent = text;
}
