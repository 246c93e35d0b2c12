// The page's address: it always names the values that the answer on screen belongs to. What a query
// means is Python's matter; here it is only read, written and watched.

/** ms after the last change; browsers refuse addresses that change many times a second */
const PAUSE = 300;

/**
 * The card's part of a query: the word that the site search marks on the page (?h=...) is none of
 * ours.
 * @param {string} search
 */
export function cardQuery(search) {
  const query = search.replace(/^\?/, "");
  const names = query.split("&").map((part) => part.split("=")[0]);
  return names.every((name) => name === "h" || name === "") ? "" : query;
}

/**
 * The same address with another query; the fragment stays.
 * @param {string} href
 * @param {string} query
 */
export function withQuery(href, query) {
  const address = new URL(href);
  address.search = query;
  return address.href;
}

export class Address {
  #path = location.pathname;
  #known = cardQuery(location.search);
  /** @type {string | null} written soon */
  #next = null;
  /** @type {ReturnType<typeof setTimeout> | undefined} */
  #timer;
  #moved;

  /**
   * @param {AbortSignal} signal
   * @param {(query: string) => void} moved  the address changed by back, forward or a link on this
   *   page
   */
  constructor(signal, moved) {
    this.#moved = moved;
    addEventListener("popstate", () => this.#look(), { signal });
    addEventListener("pagehide", () => this.flush(), { signal });
    // instant navigation changes the address in its own click listener, without an event of its own
    document.addEventListener("click", () => this.flush(), { signal, capture: true });
    document.addEventListener("click", () => setTimeout(() => this.#look()), { signal });
    signal.addEventListener("abort", () => clearTimeout(this.#timer));
  }

  /** The newest query, written or not. */
  get query() {
    return this.#next ?? this.#known;
  }

  /** The full link to the values answered last. */
  get link() {
    return withQuery(location.href, this.query);
  }

  /** @param {string} query */
  write(query) {
    clearTimeout(this.#timer);
    this.#next = query;
    this.#timer = setTimeout(() => this.flush(), PAUSE);
  }

  flush() {
    clearTimeout(this.#timer);
    const query = this.#next;
    this.#next = null;
    if (query === null || query === this.#known || location.pathname !== this.#path) return;
    this.#known = query;
    // the theme keeps its scroll position in the state
    history.replaceState(history.state, "", withQuery(location.href, query));
  }

  #look() {
    const query = cardQuery(location.search);
    if (location.pathname !== this.#path || query === this.#known) return;
    clearTimeout(this.#timer);
    this.#next = null;
    this.#known = query;
    this.#moved(query);
  }
}
