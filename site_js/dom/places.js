// Where things are: every address is relative to the site's root, which may be a sub-path.

/**
 * @type {URL | undefined} kept from the first page: instant navigation changes the location, not
 *   the root
 */
let root;

/** The site's root, with a slash at the end. Ask once at start, before any navigation. */
export function siteRoot() {
  if (!root) {
    const base = named("bench-base") ?? ".";
    root = new URL(base.endsWith("/") ? base : `${base}/`, location.href);
    root.search = root.hash = "";
  }
  return root;
}

/** The folder of the Python runtime; its name carries the content's hash. */
export function runtimeAddress() {
  return new URL(named("bench-runtime") ?? "assets/py/", siteRoot()).href;
}

/** @param {string} name */
function named(name) {
  return document.querySelector(`meta[name="${name}"]`)?.getAttribute("content");
}
