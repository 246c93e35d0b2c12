// The state line of a card, in words. Pure.

/**
 * @param {import("./asking.js").Stage} stage
 * @param {{ offline: boolean, waiting: boolean, worked: boolean, spares?: boolean }} about
 *   offline: everything is kept for no signal; waiting: the values on the page differ from what the
 *   answer is for;
 *   worked: an answer has come in on this page; spares: the reader's browser asks to spare data
 * @returns {{ state: "reading" | "starting" | "live" | "ready" | "failed", text: string, retry:
 *   boolean }}
 */
export function stateWords(stage, { offline, waiting, worked, spares = false }) {
  switch (stage.stage) {
    case "loading":
      return {
        state: "starting",
        text: `Starting the calculator…${progress(stage.loaded, stage.total)}`,
        retry: false,
      };
    case "ready":
      return offline
        ? { state: "ready", text: "Live · ready for no signal", retry: false }
        : { state: "live", text: "Live", retry: false };
    case "failed":
      return {
        state: "failed",
        text: `The calculator could not start: ${stage.text} The page stays a complete reference.`,
        retry: true,
      };
    case "asleep":
      return { state: "reading", text: asleepWords(waiting, worked, spares), retry: false };
  }
}

/**
 * @param {boolean} waiting
 * @param {boolean} worked
 * @param {boolean} spares
 */
function asleepWords(waiting, worked, spares) {
  const whenTouched = "starts when a field is touched.";
  if (spares) return `Reading page: to spare data, the calculator (about 8 MB) ${whenTouched}`;
  if (waiting) return "Reading page: the calculator starts in a moment.";
  if (worked) return "Resting: the calculator starts again when a field is touched.";
  return "Reading page: the example answer is complete.";
}

/**
 * Why the answer on screen is not for the values on screen; "" when it is.
 * @param {import("./asking.js").Stage} stage
 * @param {{ waiting: boolean, answered: boolean, worked: boolean, problem: string }} about
 *   answered: the values asked last had an answer; problem: why there was none, when it lies in no
 *   field
 */
export function keptWords(stage, { waiting, answered, worked, problem }) {
  if (answered && !waiting) return "";
  if (waiting && stage.stage === "ready") return "";
  const now = worked
    ? "This answer is still for your last good values"
    : "This answer is still the example";
  if (stage.stage === "failed") return `${now}: the calculator is not running.`;
  if (waiting) return `${now}; yours are answered as soon as the calculator has started.`;
  return problem ? `${now}: ${problem}` : `${now}.`;
}

/**
 * @param {number} loaded
 * @param {number} total
 */
function progress(loaded, total) {
  return total > 0 ? ` (${megabytes(loaded)} of ${megabytes(total)} MB)` : "";
}

/** @param {number} bytes */
export function megabytes(bytes) {
  return (bytes / 1e6).toFixed(1);
}
