/**
 * The worker in which Python runs. It knows no card: text goes in, text comes out.
 *
 * In:  {boot: {runtime: "<absolute address of the runtime folder>/"}}   once
 *      {call: <id>, text: "<JSON>"}                                     any time; calls before
 *      "ready" wait
 * Out: {stage: "loading", loaded, total}   bytes as they travel; both are 0 until the sizes are
 * known
 *      {stage: "ready", ms} | {stage: "failed", text}
 *      {reply: <id>, text: "<JSON>"}
 */

import { Arrivals } from "./arrivals.js";

/** Our own Python stands beside this file: both are of one build. */
const OURS = new URL(".", import.meta.url).href;

/** @type {((text: string) => Promise<string>) | undefined} */
let ask;
/** @type {Array<{call: number, text: string}>} */
const waiting = [];
/**
 * Calls are answered in the order in which they came, also when one of them has to fetch a package
 * first.
 */
let last = Promise.resolve();

self.onmessage = ({ data }) => {
  if (data.boot)
    boot(data.boot.runtime).catch((problem) =>
      self.postMessage({ stage: "failed", text: sentence(said(problem)) }),
    );
  else if (ask) answer(data);
  else waiting.push(data);
};

/** @param {{call: number, text: string}} request */
function answer({ call, text }) {
  last = last.then(async () => {
    let reply;
    try {
      reply = await /** @type {NonNullable<typeof ask>} */ (ask)(text);
    } catch (problem) {
      reply = JSON.stringify({ id: null, problem: { kind: "fault", text: said(problem) } });
    }
    self.postMessage({ reply: call, text: reply });
  });
}

/** @param {string} runtime */
async function boot(runtime) {
  const began = performance.now();
  // All at once, not one after the other as the loader would.
  const files = new Arrivals(
    [
      `${runtime}pyodide.asm.wasm`,
      `${runtime}python_stdlib.zip`,
      `${OURS}fibercalc.zip`,
      `${OURS}pyodide-lock.json`,
    ],
    `${OURS}sizes.json`,
    (loaded, total) => self.postMessage({ stage: "loading", loaded, total }),
  );
  // Pyodide waits for ever when a file fails (it only logs), so our own fetches say so.
  const { pyodide, boundary } = await Promise.race([start(runtime, files), files.broken]);
  ask = async (text) => {
    const reply = boundary.handle(text);
    const packages = needed(reply);
    if (!packages) return reply;
    // a package on a slow line is not a calculation that hangs
    self.postMessage({ stage: "loading", loaded: 0, total: 0 });
    await pyodide.loadPackage(packages, { messageCallback: () => {}, errorCallback: () => {} });
    return boundary.handle(text);
  };
  files.hush();
  self.postMessage({ stage: "ready", ms: Math.round(performance.now() - began) });
  for (const request of waiting.splice(0)) answer(request);
}

/**
 * Our package stays zipped and Python imports from the zip, which lies in place before Python
 * starts. Measured in Chromium, 14 starts each on a busy machine, median to the first answer: so
 * 1.68 s; named in the lock file 1.81 s, since the zip is then unpacked after the start, every card
 * of it, and most starts need one.
 * @param {string} runtime
 * @param {Arrivals} files
 */
async function start(runtime, files) {
  const loader = import(`${runtime}pyodide.mjs`);
  const compiled = import(`${runtime}pyodide.asm.mjs`);
  const ours = files.bytes(`${OURS}fibercalc.zip`);
  const lock = files
    .bytes(`${OURS}pyodide-lock.json`)
    .then((bytes) => new TextDecoder().decode(bytes));
  // The loader would begin to compile the interpreter only after it has read its own script; and it
  // would wait for ever where compiling fails or is forbidden. So it is compiled from here, and
  // what the loader asks for is handed over.
  const interpreter = WebAssembly.compileStreaming(files.take(`${runtime}pyodide.asm.wasm`));
  interpreter.catch((problem) =>
    files.fail(new Error(`pyodide.asm.wasm could not be used: ${said(problem)}`)),
  );
  const { fetch: fetchAnew } = self;
  const { instantiateStreaming } = WebAssembly;
  self.fetch = async (input, options) => {
    if (String(input).endsWith("/pyodide.asm.wasm")) return new Response();
    return files.whole(String(input)) ?? fetchAnew(input, options);
  };
  WebAssembly.instantiateStreaming = async (_, imports) => {
    const module = await interpreter;
    return { module, instance: await WebAssembly.instantiate(module, imports) };
  };
  const { loadPyodide } = await loader;
  const pyodide = await loadPyodide({
    indexURL: runtime,
    stdLibURL: `${runtime}python_stdlib.zip`,
    lockFileContents: lock,
    packageBaseUrl: OURS,
    createPyodideModule: (await compiled).default,
    env: { PYTHONPATH: "/fibercalc.zip" },
    fsInit: async (/** @type {any} */ disk) => disk.writeFile("/fibercalc.zip", await ours),
  });
  self.fetch = fetchAnew;
  WebAssembly.instantiateStreaming = instantiateStreaming;
  return { pyodide, boundary: pyodide.pyimport("fibercalc.site.boundary") };
}

/**
 * The packages that an answer asks for, or null. Most answers ask for none and are not parsed.
 * @param {string} reply
 */
function needed(reply) {
  if (!reply.includes('"needs"')) return null;
  const { problem } = JSON.parse(reply);
  return problem?.kind === "needs" ? problem.packages : null;
}

/** @param {unknown} problem */
function said(problem) {
  return problem instanceof Error
    ? (problem.message.trim().split("\n").at(-1) ?? problem.name)
    : String(problem);
}

/**
 * The page says more after it; a browser's own words often end without a period.
 * @param {string} text
 */
function sentence(text) {
  return /[.!?]$/.test(text) ? text : `${text}.`;
}
