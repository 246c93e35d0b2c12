import assert from "node:assert/strict";
import { test } from "node:test";
import { Steps } from "./steps.js";

const FINE = { read: "", why: "" };
const OVER = { read: "", why: "60 at most." };

test("a step past a limit goes back to what stood there, with the reason", () => {
  const steps = new Steps();
  steps.take("turns", { value: "60", exact: null });
  steps.take("plies", { value: "2", exact: null });
  assert.deepEqual(steps.tooFar({ turns: OVER, plies: FINE }), [
    { name: "turns", before: { value: "60", exact: null }, why: "60 at most." },
  ]);
});

test("quick steps go back to where the first of them began", () => {
  const steps = new Steps();
  steps.take("turns", { value: "59", exact: "59" });
  steps.take("turns", { value: "60", exact: null });
  assert.deepEqual(steps.tooFar({ turns: OVER })[0].before, { value: "59", exact: "59" });
});

test("once Python has answered, a step is no longer open", () => {
  const steps = new Steps();
  steps.take("turns", { value: "59", exact: null });
  assert.deepEqual(steps.tooFar({ turns: FINE }), []);
  assert.deepEqual(steps.tooFar({ turns: OVER }), []);
});

test("a field typed over or filled anew is not taken back", () => {
  const steps = new Steps();
  steps.take("turns", { value: "59", exact: null });
  steps.typed("turns");
  assert.deepEqual(steps.tooFar({ turns: OVER }), []);
  steps.take("turns", { value: "59", exact: null });
  steps.clear();
  assert.deepEqual(steps.tooFar({ turns: OVER }), []);
});
