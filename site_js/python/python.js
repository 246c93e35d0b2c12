// The page's end of the worker that runs Python: one worker a tab, kept through instant navigation.
// It carries questions and outcomes and knows no card.

import { runtimeAddress } from "../dom/places.js";
import { Calls } from "./calls.js";

/**
 * @typedef {import("./asking.js").Stage} Stage
 * @typedef {import("./protocol.js").Replies} Replies
 */

/**
 * ms without a sign of progress before a start counts as stuck: where a policy forbids WebAssembly
 * it never ends.
 */
const STALLED = 30_000;
/** ms for one calculation; no card comes near it. */
const SLOW = 5_000;
/**
 * ms for what reads a whole workbook, which may be years of records: for any, and for each megabyte
 * of it.
 */
const SLOW_RECORDS = 60_000;
const SLOW_MEGABYTE = 10_000;

const TOO_SLOW = "The calculation took too long and was stopped.";
const CRASHED = "The calculator stopped while working on this.";

/** Fires "stage" whenever `stage` changes. */
export class Python extends EventTarget {
  #makeWorker;
  #runtime;
  #calls = new Calls();
  /** @type {Worker | null} */
  #worker = null;
  /** @type {ReturnType<typeof setTimeout> | undefined} */
  #alarm;
  /** @type {Stage} */
  #stage = { stage: "asleep" };

  /**
   * @param {() => Worker} makeWorker
   * @param {() => string} runtime  absolute address of the folder with the runtime
   */
  constructor(makeWorker, runtime) {
    super();
    this.#makeWorker = makeWorker;
    this.#runtime = runtime;
  }

  get stage() {
    return this.#stage;
  }

  /**
   * Never rejects: a problem is a value. Null means that a newer question of the same key took
   * over.
   * @template {keyof Replies} D
   * @param {import("./asking.js").Question<D>} question
   * @param {{ replaces?: string }} [options]
   * @returns {Promise<import("./asking.js").Outcome<Replies[D]> | null>}
   */
  async ask(question, { replaces } = {}) {
    if (this.#stage.stage === "failed")
      return { problem: { kind: "unavailable", text: this.#stage.text } };
    const outcome = this.#calls.add(question, replaces ?? null);
    this.start();
    this.#send();
    return outcome;
  }

  /**
   * The one who asked is gone.
   * @param {string} key
   */
  forget(key) {
    this.#calls.forget(key);
  }

  /** Starts the worker unless it runs or has failed; a failed one waits for retry(). */
  start() {
    if (this.#stage.stage !== "asleep") return;
    const missing = whatIsMissing();
    if (missing) {
      this.#fail(missing);
      return;
    }
    this.#turn({ stage: "loading", loaded: 0, total: 0 });
    this.#watch(STALLED, () => this.#fail("nothing arrived for 30 seconds."));
    try {
      const worker = this.#makeWorker();
      worker.onmessage = (event) => this.#hear(event.data);
      worker.onerror = (event) => this.#crashed(event);
      worker.onmessageerror = (event) => this.#crashed(event);
      this.#worker = worker;
      worker.postMessage({ boot: { runtime: this.#runtime() } });
    } catch (error) {
      this.#fail(`this browser does not let the page start it (${reason(error)}).`);
    }
  }

  retry() {
    if (this.#stage.stage !== "failed") return;
    this.#turn({ stage: "asleep" });
    this.start();
  }

  /**
   * The page is going away or into the back-forward cache: free the memory, keep what was asked.
   */
  rest() {
    if (this.#stage.stage === "failed" || this.#stage.stage === "asleep") return;
    this.#calls.rest();
    this.#end();
    this.#turn({ stage: "asleep" });
  }

  /** Back from the cache: what was asked before is still owed. */
  resume() {
    if (this.#calls.any) this.start();
  }

  #send() {
    if (this.#stage.stage !== "ready") return;
    const call = this.#calls.take();
    if (!call) return;
    let text;
    try {
      text = JSON.stringify({ id: call.id, ...call.question });
    } catch (error) {
      this.#calls.reply(call.id, {
        problem: {
          kind: "fault",
          text: `What was asked could not be written down (${reason(error)}).`,
        },
      });
      this.#send();
      return;
    }
    const slow = call.question.do.startsWith("workbook-")
      ? SLOW_RECORDS + (text.length / 1e6) * SLOW_MEGABYTE
      : SLOW;
    this.#watch(slow, () =>
      this.#startAgain(
        `The calculation took more than ${Math.round(slow / 1000)} seconds and was stopped.`,
      ),
    );
    this.#worker?.postMessage({ call: call.id, text });
  }

  /** @param {any} message */
  #hear(message) {
    if (message.reply !== undefined) {
      clearTimeout(this.#alarm);
      this.#calls.reply(message.reply, parsed(message.text));
      this.#send();
    } else if (message.stage === "ready") {
      clearTimeout(this.#alarm);
      this.#turn({ stage: "ready" });
      this.#send();
    } else if (message.stage === "failed") {
      this.#fail(message.text);
    } else if (message.stage === "loading" && this.#calls.running) {
      // a package that one card needs is being fetched: the call runs on a slow line, not in a loop
      this.#watch(STALLED, () => this.#startAgain(TOO_SLOW));
    } else if (message.stage === "loading") {
      this.#watch(STALLED, () => this.#fail("nothing more arrived for 30 seconds."));
      this.#turn({ stage: "loading", loaded: message.loaded, total: message.total });
    }
  }

  /** @param {Event} event */
  #crashed(event) {
    event.preventDefault();
    if (this.#stage.stage === "ready") this.#startAgain(CRASHED);
    else
      this.#fail(
        event instanceof ErrorEvent && event.message
          ? `${event.message}.`
          : "its program did not load.",
      );
  }

  /** @param {string} text */
  #startAgain(text) {
    this.#end();
    this.#calls.again(text);
    this.#turn({ stage: "asleep" });
    this.start();
  }

  /** @param {string} text */
  #fail(text) {
    this.#end();
    this.#turn({ stage: "failed", text });
    this.#calls.unavailable(text);
  }

  #end() {
    clearTimeout(this.#alarm);
    if (!this.#worker) return;
    this.#worker.onmessage = this.#worker.onerror = this.#worker.onmessageerror = null;
    this.#worker.terminate();
    this.#worker = null;
  }

  /**
   * @param {number} after
   * @param {() => void} act
   */
  #watch(after, act) {
    clearTimeout(this.#alarm);
    this.#alarm = setTimeout(act, after);
  }

  /** @param {Stage} stage */
  #turn(stage) {
    this.#stage = stage;
    this.dispatchEvent(new Event("stage"));
  }
}

/** @param {string} text */
function parsed(text) {
  try {
    const reply = JSON.parse(text);
    return reply.problem ? { problem: reply.problem } : { ok: reply.ok };
  } catch (error) {
    return {
      problem: {
        kind: /** @type {const} */ ("fault"),
        text: `The calculator's reply could not be read (${reason(error)}).`,
      },
    };
  }
}

/** @param {unknown} error */
function reason(error) {
  return error instanceof Error ? error.message : String(error);
}

function whatIsMissing() {
  if (typeof Worker !== "function") return "this browser has no web workers.";
  if (typeof WebAssembly !== "object") return "this browser has no WebAssembly.";
  return null;
}

export const python = new Python(
  () => new Worker(new URL("./worker.js", import.meta.url), { type: "module", name: "fibercalc" }),
  runtimeAddress,
);
