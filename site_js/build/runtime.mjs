/**
 * Builds what the browser's Python is made of, in runtime/ of the work folder (.build):
 *
 *     <pyodide version>-<hash>/   Pyodide with its standard library as bytecode; the hash is of all
 *                                 its content
 *     ours/                       our package as bytecode, the lazy packages, their lock file, the
 *                                 sizes of everything
 *
 *     node site_js/build/runtime.mjs <the virtual environment's packages> [lazy package ...]
 *
 * Prints the first folder's name. Compiled parts are kept in compiled/ under the hash of what they
 * were made from, so only what changed is made again. Two folders, since Pyodide changes once a
 * year and ours at every release: an update fetches some hundred kilobytes and not the runtime.
 */
import { createHash } from "node:crypto";
import {
  existsSync,
  mkdirSync,
  readdirSync,
  readFileSync,
  renameSync,
  rmSync,
  writeFileSync,
} from "node:fs";
import { createRequire } from "node:module";
import { dirname, join, relative, sep } from "node:path";
import { fileURLToPath } from "node:url";
import { gzipSync } from "node:zlib";

const here = dirname(fileURLToPath(import.meta.url));
const root = join(here, "..", "..");
const pyodideFolder = dirname(createRequire(import.meta.url).resolve("pyodide/package.json"));
const pyodideVersion = JSON.parse(
  readFileSync(join(pyodideFolder, "package.json"), "utf8"),
).version;
// a test builds into a folder of its own
const work = process.env.BENCH_WORK ?? join(root, ".build");
const compiledFolder = join(work, "compiled");
const runtimeFolder = join(work, "runtime");

/** Files and folders of our package that only a build or a terminal needs. */
const NOT_IN_BROWSER = [
  "fibercalc/__main__.py",
  "fibercalc/amount.py",
  "fibercalc/answered.py",
  "fibercalc/ask/",
  "fibercalc/cli.py",
  "fibercalc/completion.py",
  "fibercalc/meant.py",
  "fibercalc/site/build.py",
  "fibercalc/site/helper_page.py",
  "fibercalc/site/library.py",
  "fibercalc/site/protocol/",
  "fibercalc/site/serve.py",
  "fibercalc/site/sheets.py",
  "fibercalc/worked.py",
];

const sha256 = (/** @type {Uint8Array | string} */ content) =>
  createHash("sha256").update(content).digest("hex");

/** Every file below a folder, sorted, as [name with forward slashes, path]. */
function filesBelow(/** @type {string} */ folder) {
  if (!existsSync(folder)) return [];
  return readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile() && !/__pycache__/.test(entry.parentPath ?? entry.path))
    .map((entry) => join(entry.parentPath ?? entry.path, entry.name))
    .map(
      (path) =>
        /** @type {[string, string]} */ ([relative(folder, path).split(sep).join("/"), path]),
    )
    .sort(([a], [b]) => (a < b ? -1 : 1));
}

/**
 * Our package as the browser needs it: code, tables, and the check rows and demo that tests and
 * pages read.
 */
function ourPackage() {
  /** @type {Record<string, Uint8Array>} */
  const files = {};
  for (const [name, path] of filesBelow(join(root, "fibercalc"))) {
    const inPackage = `fibercalc/${name}`;
    const needed = !NOT_IN_BROWSER.some((each) => inPackage.startsWith(each));
    if (/\.(py|csv)$/.test(name) && needed) files[inPackage] = readFileSync(path);
  }
  for (const [name, path] of filesBelow(join(root, "shared", "demo")))
    files[`fibercalc/_shared/demo/${name}`] = readFileSync(path);
  return files;
}

/**
 * A lazy package's Python files, from the virtual environment, without what only its command line
 * needs.
 */
function lazyPackage(/** @type {string} */ sitePackages, /** @type {string} */ name) {
  const folder = join(sitePackages, name.replaceAll("-", "_"));
  /** @type {Record<string, Uint8Array>} */
  const files = {};
  for (const [file, path] of filesBelow(folder)) {
    if (/\.py$/.test(file) && file !== "cli.py" && file !== "__main__.py")
      files[`${name}/${file}`] = readFileSync(path);
  }
  if (!Object.keys(files).length) throw new Error(`${name}: no Python files in ${folder}`);
  return files;
}

/**
 * How that Python compiles. A fixed hash seed: sets in the bytecode keep one order. No columns in
 * the line tables: nobody reads a traceback by column in the browser, and without them the standard
 * library is 0.9 MB smaller.
 */
const COMPILER = { PYTHONHASHSEED: "0", PYTHONNODEBUGRANGES: "1", HOME: "/home/pyodide" };

/** Pyodide's Python in Node, started at most once and only when something must be compiled. */
let started;
function python() {
  started ??= (async () => {
    const { loadPyodide } = await import("pyodide");
    const pyodide = await loadPyodide({ env: COMPILER });
    pyodide.FS.writeFile("/home/pyodide/compile_to_zip.py", readFileSync(join(here, "compile.py")));
    return { pyodide, compiler: pyodide.pyimport("compile_to_zip") };
  })();
  return started;
}

/**
 * One compiled zip, from the store of compiled parts when its sources are unchanged.
 * @param {string} name
 * @param {Record<string, Uint8Array> | Uint8Array} sources  files by name, or a zip of them
 * @param {number} optimize  2 drops docstrings and asserts: ours has no assert, and reads no
 *   docstring
 * @param {string} place  the folder that tracebacks show
 */
async function compiled(name, sources, optimize, place) {
  const key = createHash("sha256")
    .update(`${pyodideVersion} ${JSON.stringify(COMPILER)} ${optimize} ${place}`)
    .update(readFileSync(join(here, "compile.py")));
  if (sources instanceof Uint8Array) key.update(sources);
  else
    for (const file of Object.keys(sources).sort())
      key.update(`${file}\0${sha256(sources[file])}\n`);
  const kept = join(compiledFolder, `${name}-${key.digest("hex").slice(0, 16)}.zip`);
  if (!existsSync(kept)) {
    const { pyodide, compiler } = await python();
    if (sources instanceof Uint8Array) {
      pyodide.FS.writeFile("/sources.zip", sources);
      compiler.compile_zip("/sources.zip", "/compiled.zip", optimize, place);
    } else {
      for (const [file, content] of Object.entries(sources)) {
        const path = `/sources/${name}/${file}`;
        pyodide.FS.mkdirTree(dirname(path));
        pyodide.FS.writeFile(path, content);
      }
      compiler.compile_folder(`/sources/${name}`, "/compiled.zip", optimize, place);
    }
    const made = pyodide.FS.readFile("/compiled.zip");
    mkdirSync(compiledFolder, { recursive: true });
    for (const old of readdirSync(compiledFolder))
      if (old.startsWith(`${name}-`)) rmSync(join(compiledFolder, old));
    writeFileSync(`${kept}.part`, made);
    // a build that was stopped half way leaves no half file under the real name
    renameSync(`${kept}.part`, kept);
  }
  return readFileSync(kept);
}

/** Write files into a folder that appears only when it is whole. */
function writeFolder(
  /** @type {string} */ target,
  /** @type {Record<string, Uint8Array>} */ files,
) {
  rmSync(`${target}.part`, { recursive: true, force: true });
  mkdirSync(`${target}.part`, { recursive: true });
  for (const [name, content] of Object.entries(files))
    writeFileSync(join(`${target}.part`, name), content);
  rmSync(target, { recursive: true, force: true });
  renameSync(`${target}.part`, target);
}

/** Pyodide itself, with the standard library as bytecode. */
async function pyodideFiles() {
  /** @type {Record<string, Uint8Array>} */
  const files = {};
  for (const name of ["pyodide.mjs", "pyodide.asm.mjs", "pyodide.asm.wasm"])
    files[name] = readFileSync(join(pyodideFolder, name));
  // The source map is not shipped; a pointer to it would make developer tools ask for it in vain.
  files["pyodide.mjs"] = Buffer.from(
    files["pyodide.mjs"].toString().replace(/\n\/\/# sourceMappingURL=.*\s*$/, "\n"),
  );
  files["python_stdlib.zip"] = await compiled(
    "stdlib",
    readFileSync(join(pyodideFolder, "python_stdlib.zip")),
    2,
    "/lib/python314.zip",
  );
  return files;
}

/** Our package, the lazy packages, and the lock file that lists those with their hashes. */
async function ourFiles(/** @type {string} */ sitePackages, /** @type {string[]} */ lazy) {
  /** @type {Record<string, Uint8Array>} */
  const files = { "fibercalc.zip": await compiled("fibercalc", ourPackage(), 2, "/bench") };
  const { info } = JSON.parse(readFileSync(join(pyodideFolder, "pyodide-lock.json"), "utf8"));
  /** @type {Record<string, object>} */
  const packages = {};
  for (const name of lazy) {
    const zip = await compiled(name, lazyPackage(sitePackages, name), 2, "/lazy");
    files[`${name}.zip`] = zip;
    packages[name] = {
      name,
      version: "0",
      file_name: `${name}.zip`,
      install_dir: "site",
      package_type: "package",
      sha256: sha256(zip),
      imports: [name.replaceAll("-", "_")],
      depends: [],
      unvendored_tests: false,
    };
  }
  files["pyodide-lock.json"] = Buffer.from(JSON.stringify({ info, packages }));
  return files;
}

async function main() {
  const [sitePackages, ...lazy] = process.argv.slice(2);
  const runtime = await pyodideFiles();
  const whole = createHash("sha256");
  for (const name of Object.keys(runtime).sort())
    whole.update(`${name}\0${sha256(runtime[name])}\n`);
  const folder = `${pyodideVersion}-${whole.digest("hex").slice(0, 12)}`;
  if (!existsSync(join(runtimeFolder, folder))) {
    rmSync(runtimeFolder, { recursive: true, force: true });
    writeFolder(join(runtimeFolder, folder), runtime);
  }
  const ours = await ourFiles(sitePackages, lazy);
  // Sizes, for a progress line that knows how much there is: raw, and as a host that compresses
  // would send it.
  const sizes = Object.entries({ ...runtime, ...ours }).map(([name, content]) => [
    name,
    [content.length, gzipSync(content).length],
  ]);
  ours["sizes.json"] = Buffer.from(JSON.stringify(Object.fromEntries(sizes)));
  writeFolder(join(runtimeFolder, "ours"), ours);
  process.stdout.write(`${folder}\n`);
}

await main();
