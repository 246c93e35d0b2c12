/**
 * Writes the service worker that keeps the whole book, and the list by which a page checks that it
 * is all there.
 *
 *     node site_js/build/offline.mjs <built site> <version> <date>
 *
 * The library serves every address from the cache first, the whole set or nothing, and takes an
 * update only when asked.
 */
import { statSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { generateSW, getManifest } from "workbox-build";

const [site, version, date] = process.argv.slice(2);
const LIST = "assets/offline-manifest.json";

const settings = {
  globDirectory: site,
  globPatterns: ["**/*"],
  // The page for lost addresses is left out because a host may refuse to give it out as a file, and
  // one refused file would undo the whole set; the other two are the host's and the browser's own.
  globIgnores: ["404.html", "_headers", "sw.js"],
  // Names that carry a hash of their content need no revision; the theme's do not count, since the
  // build amends one.
  dontCacheBustURLsMatching: /assets\/(py\/|app-)/,
  // The default of 2 MB would leave out the runtime with no more than a warning.
  maximumFileSizeToCacheInBytes: 20_000_000,
};

/** @template {{warnings: string[]}} T @param {T} result */
function withoutWarnings(result) {
  if (result.warnings.length) throw new Error(`service worker: ${result.warnings.join("; ")}`);
  return result;
}

// The list is kept too, but cannot name its own version, so it does not list itself.
const { manifestEntries, size } = withoutWarnings(
  await getManifest({ ...settings, globIgnores: [...settings.globIgnores, LIST] }),
);
const files = manifestEntries.map(({ url, revision }) => ({
  url,
  revision,
  bytes: statSync(join(site, url)).size,
}));
writeFileSync(join(site, LIST), JSON.stringify({ version, date, bytes: size, files }));

withoutWarnings(
  await generateSW({
    ...settings,
    swDest: join(site, "sw.js"),
    cacheId: "bench-book",
    // the runtime would otherwise be a file of its own to fetch at the worst moment
    inlineWorkboxRuntime: true,
    sourcemap: false,
    mode: "production",
    skipWaiting: false, // an update waits until it is asked for: never in the middle of work
    clientsClaim: false,
    cleanupOutdatedCaches: true,
    ignoreURLParametersMatching: [/.*/], // a shared link has parameters, and is the same page
  }),
);
