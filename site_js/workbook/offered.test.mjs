import assert from "node:assert/strict";
import { test } from "node:test";
import { byKind, laidOut, usable } from "./offered.js";

const bench = { label: "Use my bench (1.5 m)", values: { circumference: "1.5m" } };
const record = (/** @type {string} */ name, kind = "Bases") => ({
  label: `Use ${name}`,
  kind,
  values: { mass: "100g" },
});
const refused = {
  label: "Long list",
  kind: "Colorways",
  values: {},
  why: "“Long list” cannot be used here: 50 dyes.",
};
const four = ["A", "B", "C", "D"].map((name) => record(name));

test("a few records stand as buttons, after My bench's", () => {
  const { buttons, listed, lines } = laidOut([bench, ...four]);
  assert.deepEqual(buttons, [bench, ...four]);
  assert.deepEqual([listed, lines], [[], []]);
});

test("from the fifth record on they stand in a list, and My bench's beside it", () => {
  const five = [...four, record("E")];
  const { buttons, listed } = laidOut([bench, ...five]);
  assert.deepEqual(buttons, [bench]);
  assert.deepEqual(listed, five);
});

test("what cannot be used is no button, and a line says why", () => {
  const { buttons, lines } = laidOut([record("A"), refused]);
  assert.deepEqual(buttons, [record("A")]);
  assert.deepEqual(lines, [refused.why]);
});

test("a record that leaves something out is a button and has a line", () => {
  const partly = { ...record("A"), why: "“A” leaves out: its lot." };
  const { buttons, lines } = laidOut([partly]);
  assert.deepEqual([buttons, lines], [[partly], [partly.why]]);
});

test("in a list the line is shown there, when the record is chosen", () => {
  const { listed, lines } = laidOut([...four, refused]);
  assert.ok(listed.includes(refused));
  assert.deepEqual(lines, []);
});

test("the list is grouped by kind, and each line leads to its own offer", () => {
  const listed = [record("A"), refused, record("B")];
  assert.deepEqual(
    [...byKind(listed)],
    [
      [
        "Bases",
        [
          { at: 0, words: "A" },
          { at: 2, words: "B" },
        ],
      ],
      ["Colorways", [{ at: 1, words: "Long list: cannot be used here" }]],
    ],
  );
});

test("an offer without values cannot be used", () => {
  assert.ok(usable(bench) && !usable(refused));
});
