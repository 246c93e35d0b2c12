import assert from "node:assert/strict";
import { test } from "node:test";
import { movedDown, movedUp, named, rowOf } from "./row_values.js";

const HELD = {
  values: {
    bath: "4",
    "dyes.1.name": "Navy",
    "dyes.1.depth": "2",
    "dyes.2.name": "Black",
    "dyes.2.depth": "0.5",
    "dyes.10.name": "Tenth",
    "dyestuffs.1.name": "Madder",
  },
  exact: { "dyes.2.depth": "0.5%", bath: "4L" },
  own: ["bath", "dyes.2.depth"],
};
const NAVY = { values: { name: "Navy", depth: "2" }, exact: {}, own: [] };
const BLACK = {
  values: { name: "Black", depth: "0.5" },
  exact: { depth: "0.5%" },
  own: ["depth"],
};

test("a row is what stands under its number, and nothing of another", () => {
  assert.deepEqual(rowOf(HELD, "dyes", 1), NAVY);
  assert.deepEqual(rowOf(HELD, "dyes", 2), BLACK);
  assert.deepEqual(rowOf(HELD, "dyes", 3), { values: {}, exact: {}, own: [] });
});

test("a row written under a number is read from there again", () => {
  assert.deepEqual(named(BLACK, "dyes", 7).own, ["dyes.7.depth"]);
  assert.deepEqual(rowOf(named(BLACK, "dyes", 7), "dyes", 7), BLACK);
});

test("when a row goes, those below move up with all that is hers", () => {
  assert.deepEqual(movedUp(HELD, "dyes", 1, 2), [[1, BLACK]]);
});

test("when the last row goes, nothing moves", () => {
  assert.deepEqual(movedUp(HELD, "dyes", 2, 2), []);
});

test("a row comes back to its number and the others make room", () => {
  const red = { values: { name: "Red" }, exact: {}, own: ["name"] };
  assert.deepEqual(movedDown(HELD, "dyes", 1, 3, red), [
    [1, red],
    [2, NAVY],
    [3, BLACK],
  ]);
  assert.deepEqual(movedDown(HELD, "dyes", 3, 3, red), [[3, red]]);
});

test("gone and back again is as it was", () => {
  let held = HELD;
  const put = (rows) => {
    for (const [at, row] of rows) {
      const { values, exact, own } = named(row, "dyes", at);
      const start = `dyes.${at}.`;
      const rest = held.own.filter((name) => !name.startsWith(start));
      held = {
        values: { ...held.values, ...values },
        exact: { ...held.exact, ...exact },
        own: [...rest, ...own],
      };
    }
  };
  const gone = rowOf(held, "dyes", 1);
  put(movedUp(held, "dyes", 1, 2));
  assert.deepEqual(rowOf(held, "dyes", 1), BLACK);
  put(movedDown(held, "dyes", 1, 2, gone));
  assert.deepEqual(rowOf(held, "dyes", 1).values, NAVY.values);
  assert.deepEqual(rowOf(held, "dyes", 2), BLACK);
});
