// Does the book work with no signal? Registers the service worker and says how far it is. It says
// "ready" only when every file of the built list was found in the caches and Python has once
// answered in this browser.

import { say } from "../dom/dom.js";
import { sparesData, whenIdle } from "../dom/idle.js";
import { runtimeAddress, siteRoot } from "../dom/places.js";
import { python } from "../python/python.js";
import { compare, offlineWords } from "./manifest.js";
import { watchForUpdate } from "./update.js";

/** ms between two looks while files arrive */
const LOOK = 700;
/** ms; a first answer is worth more than a complete cache, but not for ever */
const PYTHON_FIRST = 15_000;
/** Remembered by runtime: a new runtime has to answer once too. */
const PROOF = "bench-book.answered";

/** Fires "change" whenever what it says changed. */
export class Offline extends EventTarget {
  isReady = false;
  text = offlineWords({ kind: "needs" });
  /** @type {import("./manifest.js").OfflineManifest | null} */
  #manifest = null;
  /** A file did not come, and the browser dropped the whole set. */
  #gaveUp = false;

  /** Nothing happens before the page is at rest and Python has loaded: the line is theirs first. */
  async start() {
    this.#show();
    new MutationObserver(() => this.#show()).observe(document.body, { childList: true });
    python.addEventListener("stage", () => void this.#prove());
    const impossible = whyImpossible();
    if (impossible) {
      this.#say({ kind: "needs", why: impossible });
      return;
    }
    const known = await navigator.serviceWorker.getRegistration(siteRoot().href);
    if (!known && sparesData()) {
      this.#say({
        kind: "needs",
        why: "your browser asks to spare data, so nothing is saved unasked.",
      });
      return;
    }
    await whenIdle();
    await pythonFirst();
    await this.#register();
  }

  /** Keeps the book because a reader asked for it, on a page that never does so by itself. */
  async keep() {
    python.addEventListener("stage", () => void this.#prove());
    const impossible = whyImpossible();
    if (impossible) this.#say({ kind: "needs", why: impossible });
    else await this.#register();
  }

  /** Looks into the caches. Null when the list of files cannot be had. */
  async inspect() {
    const manifest = await this.#list();
    if (!manifest) return null;
    return {
      ...compare(manifest, await cachedAddresses(), siteRoot().href),
      version: manifest.version,
      date: manifest.date,
    };
  }

  async check() {
    const seen = await this.inspect();
    const registration = await navigator.serviceWorker.getRegistration(siteRoot().href);
    if (!seen) this.#say({ kind: "needs", why: "the list of files could not be read." });
    else if (
      !seen.complete &&
      !this.#gaveUp &&
      (registration?.installing || !registration?.active)
    ) {
      this.#say({ kind: "saving", ...seen });
      setTimeout(() => void this.check(), LOOK);
    } else if (!seen.complete) this.#say({ kind: "needs", why: "not every file could be saved." });
    else if (proved()) this.#say({ kind: "ready", ...seen });
    else {
      this.#say({
        kind: "needs",
        why: "all is saved, but the calculator has not answered here yet.",
      });
      if (!sparesData()) python.start();
    }
  }

  async #register() {
    try {
      const registration = await navigator.serviceWorker.register(new URL("sw.js", siteRoot()));
      watchForUpdate(registration);
      registration.addEventListener("updatefound", () => this.#follow(registration.installing));
      this.#follow(registration.installing);
      await this.check();
    } catch (error) {
      if (!(error instanceof Error)) throw error;
      this.#say({ kind: "needs", why: "this browser does not keep the book." });
    }
  }

  /** @param {ServiceWorker | null} worker */
  #follow(worker) {
    worker?.addEventListener("statechange", () => {
      this.#manifest = null;
      this.#gaveUp = worker.state === "redundant";
      void this.check();
    });
  }

  async #list() {
    if (!this.#manifest) {
      try {
        const response = await fetch(new URL("assets/offline-manifest.json", siteRoot()));
        this.#manifest = response.ok ? await response.json() : null;
      } catch (error) {
        if (!(error instanceof TypeError || error instanceof SyntaxError)) throw error;
      }
    }
    return this.#manifest;
  }

  /** A worker that started must also have answered before the book may call itself ready. */
  async #prove() {
    if (python.stage.stage !== "ready" || proved()) return;
    const outcome = await python.ask({ do: "hello" }, { replaces: "hello" });
    if (!outcome || "problem" in outcome) return;
    remember();
    if (!whyImpossible()) await this.check();
  }

  /** @param {Parameters<typeof offlineWords>[0]} about */
  #say(about) {
    this.isReady = about.kind === "ready";
    this.text = offlineWords(about);
    this.#show();
    this.dispatchEvent(new Event("change"));
  }

  /**
   * Instant navigation brings a new footer, hence the look at the body's children. Without script
   * there is no line.
   */
  #show() {
    const footer = document.querySelector("footer");
    if (footer && !document.querySelector("[data-offline-state]")) {
      const line = document.createElement("p");
      line.dataset.offlineState = "";
      footer.append(line);
    }
    for (const place of document.querySelectorAll("[data-offline-state]")) say(place, this.text);
  }
}

/** Where a card is about to start Python, its files come before all others. */
async function pythonFirst() {
  if (sparesData() || !document.querySelector("bench-card, bench-mine")) return;
  await new Promise((settled) => {
    const look = () => {
      if (python.stage.stage === "ready" || python.stage.stage === "failed") settled(null);
    };
    look();
    python.addEventListener("stage", look);
    setTimeout(settled, PYTHON_FIRST);
  });
}

function whyImpossible() {
  if (!location.protocol.startsWith("http"))
    return "a page opened from a file is not kept by the browser.";
  if (window.top !== window) return "inside another page nothing is kept.";
  if (!("serviceWorker" in navigator) || !("caches" in window))
    return "this browser, or this address, does not let a page keep files.";
  return "";
}

async function cachedAddresses() {
  /** @type {Set<string>} */
  const addresses = new Set();
  for (const name of await caches.keys()) {
    const cache = await caches.open(name);
    for (const request of await cache.keys()) addresses.add(request.url);
  }
  return addresses;
}

/** This page load's answer counts even where nothing can be remembered. */
let answeredNow = false;

function proved() {
  if (answeredNow) return true;
  try {
    return localStorage.getItem(PROOF) === runtimeAddress();
  } catch (error) {
    if (error instanceof DOMException) return false;
    throw error;
  }
}

function remember() {
  answeredNow = true;
  try {
    localStorage.setItem(PROOF, runtimeAddress());
  } catch (error) {
    if (!(error instanceof DOMException)) throw error;
  }
}

export const offline = new Offline();
