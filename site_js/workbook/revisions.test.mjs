import assert from "node:assert/strict";
import { test } from "node:test";
import { freshId, letters, moment, stamp, today } from "./revisions.js";

const record = { id: "base-a", kind: "base", schema: 1, values: {}, rows: {}, changed: "" };

test("no more than 30 revisions are remembered, the newest of them", () => {
  let now = { ...record, rev: "", past: [] };
  for (let at = 0; at < 40; at += 1) now = stamp(now, at === 0 ? null : now);
  assert.match(now.rev, /^40-/);
  assert.equal(now.past.length, 30);
  assert.match(now.past[0], /^39-/);
});

test("a revision that is no number counts from the beginning", () => {
  const before = { ...record, rev: "demo", past: [] };
  const now = stamp(before, before);
  assert.match(now.rev, /^1-/);
  assert.deepEqual(now.past, ["demo"]);
});

test("ids and marks are of letters and digits, and no two are alike", () => {
  assert.match(freshId("base"), /^base-[0-9a-z]{12}$/);
  assert.equal(new Set(Array.from({ length: 200 }, () => letters(12))).size, 200);
});

test("a moment is written to the second, a day as where she is", (t) => {
  t.mock.timers.enable({ apis: ["Date"], now: new Date(2027, 0, 3, 23, 59, 58, 700) });
  assert.match(moment(), /^\d{4}-\d\d-\d\dT\d\d:\d\d:58Z$/);
  assert.equal(today(), "2027-01-03");
});
