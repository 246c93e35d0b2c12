// Is everything that the book needs without signal really kept? Compares the built list of files
// with what the caches hold. Pure.

/**
 * @typedef {{ version: string, date: string, bytes: number,
 *   files: { url: string, revision: string | null, bytes?: number }[] }} OfflineManifest
 *   assets/offline-manifest.json
 * @typedef {OfflineManifest["files"][number]} File
 * @typedef {{ part: string, found: number, of: number }} Part
 */

/** How the precache marks the version of a file whose name does not change. */
const REVISION = "__WB_REVISION__";

/**
 * The address under which the precache keeps a file.
 * @param {File} file
 * @param {string} root
 */
export function kept(file, root) {
  const address = new URL(file.url, root);
  if (file.revision) address.searchParams.set(REVISION, file.revision);
  return address.href;
}

/**
 * @param {OfflineManifest} manifest
 * @param {ReadonlySet<string>} cached  addresses in the caches
 * @param {string} root
 */
export function compare(manifest, cached, root) {
  const found = manifest.files.filter((file) => cached.has(kept(file, root)));
  const complete = manifest.files.length > 0 && found.length === manifest.files.length;
  const bytes = complete ? manifest.bytes : Math.round(weight(manifest, found));
  return { complete, bytes, total: manifest.bytes, parts: parts(manifest.files, new Set(found)) };
}

/**
 * @param {OfflineManifest} manifest
 * @param {File[]} found
 */
function weight(manifest, found) {
  const each = manifest.bytes / Math.max(manifest.files.length, 1);
  return found.reduce((sum, file) => sum + (file.bytes ?? each), 0);
}

/**
 * @param {File[]} files
 * @param {ReadonlySet<File>} found
 * @returns {Part[]}
 */
function parts(files, found) {
  /** @type {Map<string, Part>} */
  const made = new Map();
  for (const file of files) {
    const part = partOf(file.url);
    const count = made.get(part) ?? { part, found: 0, of: 0 };
    count.of += 1;
    if (found.has(file)) count.found += 1;
    made.set(part, count);
  }
  return [...made.values()].sort((a, b) => a.part.localeCompare(b.part));
}

/** @param {string} url */
function partOf(url) {
  if (/(^|\/)assets\/py\/|\.zip$/.test(url)) return "Calculator";
  if (/(^|\/)search\//.test(url) || /\/workers\/search\./.test(url)) return "Search";
  if (/(\.html|\/|^)$/.test(url)) return "Pages";
  if (/\.(css|woff2?)$/.test(url)) return "Look and letters";
  if (/\.m?js$/.test(url)) return "Scripts";
  if (/\.(png|svg|ico|webp|webmanifest)$/.test(url)) return "Icons and pictures";
  return "Lists";
}

/**
 * @param {{ kind: "needs" | "saving" | "ready", why?: string, bytes?: number, total?: number,
 *   version?: string, date?: string }} about
 */
export function offlineWords({ kind, why = "", bytes = 0, total = 0, version = "", date = "" }) {
  if (kind === "ready") return `Ready for no signal (version ${version}, ${date})`;
  if (kind === "saving")
    return `Saving for offline: ${(bytes / 1e6).toFixed(1)} of ${(total / 1e6).toFixed(1)} MB`;
  return why ? `Needs signal: ${why}` : "Needs signal";
}
