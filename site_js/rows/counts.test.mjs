import assert from "node:assert/strict";
import test from "node:test";
import { stepped } from "./counts.js";

for (const [text, step, expected] of [
  ["280", 1, "281"],
  ["280", -1, "279"],
  ["0", -1, "-1"],
  ["-1", 1, "0"],
  ["", 1, "1"],
  ["1,200", 1, "1201"],
  ["1.200", -1, "1199"],
  ["280 +/- 3", 1, "281 +/- 3"],
  [" 12 turns", 1, "13 turns"],
]) {
  test(`"${text}" stepped by ${step} is "${expected}"`, () =>
    assert.equal(stepped(text, step), expected));
}

for (const text of ["many", "12.5", "3/4", "1,20", "."]) {
  test(`"${text}" begins with no whole number and is left alone`, () =>
    assert.equal(stepped(text, 1), null));
}
