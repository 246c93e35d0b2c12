/**
 * Joins the modules of each page's entry into one small script, and makes worker.js small too.
 *
 *     node site_js/build/scripts.mjs <folder>
 *
 * As they are, some thirty modules weigh 41 KB compressed and are found one import after the other;
 * joined they are one request of 14 KB (measured), and a first view may weigh 200 KB. The sources
 * need none of this: they run as they are.
 */
import { writeFileSync } from "node:fs";
import { createRequire } from "node:module";
import { basename, dirname, join } from "node:path";
import { fileURLToPath } from "node:url";
import { rollup } from "rollup";
import { minify } from "terser";

const sources = join(dirname(fileURLToPath(import.meta.url)), "..");
const folder = process.argv[2];

/** The entries; each is built under its own name, in one folder. */
const ENTRIES = ["main.js", "python/worker.js", "helper/helper.js", "helper/counter.js"];

/** `./idb.js` is the database library's own module; it has no copy beside our sources. */
const library = {
  name: "library",
  resolveId: (/** @type {string} */ name) =>
    name === "./idb.js"
      ? join(dirname(createRequire(import.meta.url).resolve("idb")), "index.js")
      : null,
};

for (const name of ENTRIES) {
  const joined = await rollup({
    input: join(sources, name),
    plugins: [library],
    onwarn: ({ message }) => {
      throw new Error(`${name}: ${message}`);
    },
  });
  const { output } = await joined.generate({ format: "es" });
  const { code } = await minify(output[0].code, { module: true });
  if (output.length !== 1 || !code) throw new Error(`${name} is not one script.`);
  writeFileSync(join(folder, basename(name)), code);
}
