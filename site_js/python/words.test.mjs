import assert from "node:assert/strict";
import test from "node:test";
import { keptWords, stateWords } from "./words.js";

const STAGES = [
  { stage: "asleep" },
  { stage: "loading", loaded: 1e6, total: 6e6 },
  { stage: "ready" },
  { stage: "failed", text: "no WebAssembly." },
];
const quiet = { offline: false, waiting: false, worked: false, answered: true, problem: "" };

test("each stage has its words, and only a failed start can be tried again", () => {
  const words = STAGES.map((stage) => stateWords(stage, quiet));
  assert.deepEqual(
    words.map((each) => each.state),
    ["reading", "starting", "live", "failed"],
  );
  assert.equal(words[1].text, "Starting the calculator… (1.0 of 6.0 MB)");
  assert.match(words[3].text, /no WebAssembly\. The page stays a complete reference\./);
  assert.deepEqual(
    words.map((each) => each.retry),
    [false, false, false, true],
  );
});

test("a reader who spares data is told what a touch would cost", () => {
  assert.match(
    stateWords({ stage: "asleep" }, { ...quiet, spares: true }).text,
    /8 MB\) starts when a field is touched/,
  );
});

test("ready for no signal is said only when it is", () => {
  assert.equal(stateWords({ stage: "ready" }, quiet).text, "Live");
  assert.equal(
    stateWords({ stage: "ready" }, { ...quiet, offline: true }).text,
    "Live · ready for no signal",
  );
});

test("an answer for the values on screen needs no words", () => {
  for (const stage of STAGES) assert.equal(keptWords(stage, quiet), "");
});

test("values without an answer are never passed off as answered", () => {
  for (const stage of STAGES)
    assert.match(keptWords(stage, { ...quiet, answered: false }), /^This answer is still/);
  const waiting = { ...quiet, waiting: true };
  assert.match(keptWords(STAGES[0], waiting), /as soon as the calculator has started/);
  assert.match(keptWords(STAGES[1], waiting), /as soon as the calculator has started/);
  assert.equal(keptWords(STAGES[2], waiting), "", "a running calculation takes milliseconds");
});
