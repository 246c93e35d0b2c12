import assert from "node:assert/strict";
import test from "node:test";
import { answered, between, fill, inRange, readLink } from "./yardage.js";

const RULES = {
  version: "1",
  longest: 60,
  number: "[0-9]{1,5}(\\.[0-9]{1,2})?",
  hidden: "[\u0000-\u0008\u202a-\u202e]",
  space: "[ \\n]+",
  classes: ["3"],
  texts: { n: 5, l: 5, p: 5 },
  grams: [5, 5000],
  meters: [5, 20000],
  grist: [40, 1500],
};
// Need 100 m at 100 m in 100 g, 200 m at 400: half a power of the count. Even odds at what is
// needed, e : 1 at twice as much.
const TABLE = {
  rules: RULES,
  words: {
    say: "{count}, {odds}, {next}",
    fewer: "{fewer}: {odds}",
    need: "{meters} {low_meters} {high_meters}",
    none: "over {most}",
  },
  odds: [
    [0.5, "many"],
    [0, "few"],
  ],
  most: 3,
  counts: ["0", "1", "2", "3", "4"],
  nexts: ["1st", "2nd", "3rd", "4th"],
  lengths: [
    [150, "low", ""],
    [1e9, "high", ""],
  ],
  sure: [
    { key: "49", label: "" },
    { key: "73", label: "" },
  ],
  grists: [100, 400],
  ratios: [0.5, 1, 2],
  curves: [[-1000, 0, 1000]],
  projects: [{ key: "p", sizes: [{ key: "s", need: [100, 200], curve: 0 }] }],
};
const ask = (more) =>
  answered(TABLE, { grams: 100, meters: 100, project: "p", size: "s", sure: "49", ...more });

test("between points it is linear, outside it keeps the end", () => {
  assert.equal(between([1, 2, 4], [10, 20, 0], 3), 10);
  assert.equal(between([1, 2, 4], [10, 20, 0], 2), 20);
  assert.equal(between([1, 2, 4], [10, 20, 0], 0), 10);
  assert.equal(between([1, 2, 4], [10, 20, 0], 9), 0);
});

test("a text goes into a sentence as it is, braces and all", () => {
  assert.equal(fill("{a} and {b}", { a: "{b}", b: "$&<b>" }), "{b} and $&<b>");
  assert.equal(fill("{__proto__}{missing}", {}).includes("undefined"), false);
});

test("the smallest count that is sure enough is bought", () => {
  assert.equal(ask().count, 1);
  assert.equal(ask({ sure: "73" }).count, 2);
  assert.deepEqual(ask({ sure: "73" }), {
    say: "2, few, 3rd",
    fewer: "1: many",
    need: "low low high",
    count: 2,
  });
});

test("finer yarn needs more length: half a power of the count between the points", () => {
  assert.equal(ask({ grams: 50, meters: 100 }).count, 2, "141 m");
  assert.equal(ask({ grams: 25, meters: 100, sure: "73" }).say, "over 3");
});

test("what the table does not hold has no answer", () => {
  for (const more of [{ project: "q" }, { size: "t" }, { sure: "50" }, { project: "__proto__" }])
    assert.equal(ask(more), null);
});

test("a number is digits in a range and nothing else", () => {
  for (const text of [
    "",
    "1e2",
    "-5",
    "0x10",
    "Infinity",
    "5 ",
    "５",
    "123456",
    "1.234",
    undefined,
  ])
    assert.equal(inRange(text, RULES.number, [5, 500]), null, text);
  assert.equal(inRange("5.25", RULES.number, [5, 500]), 5.25);
});

test("a link is a base, broken or nothing, and never more than text", () => {
  assert.equal(readLink(RULES, "?utm=1", "#n=x").kind, "none");
  assert.equal(readLink(RULES, "?v=1&g=100&m=100&g=100", "").kind, "broken");
  assert.equal(readLink(RULES, `?v=1&g=100&m=100&${"x".repeat(60)}`, "").kind, "broken");
  assert.deepEqual(readLink(RULES, "?v=1&g=100&m=100&c=3", "#n=%E2%80%AEab+%0Acdefg&l=%3Cb%3E"), {
    kind: "base",
    grams: 100,
    meters: 100,
    weight_class: "3",
    name: "ab cd",
    lot: "<b>",
    price: "",
  });
});
