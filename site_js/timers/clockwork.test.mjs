import assert from "node:assert/strict";
import test from "node:test";
import {
  changed,
  extended,
  isOver,
  isRunning,
  readTimers,
  REGRET,
  tidied,
  untilNextLook,
  withTimer,
  written,
} from "./clockwork.js";

const NOON = 1_800_000_000_000;
const MINUTE = 60_000;
const HOUR = 60 * MINUTE;
const hold = () => withTimer([], { label: "Hold", minutes: 45 }, NOON);

test("a timer ends by the wall clock, however long the page slept", () => {
  const [timer] = hold();
  assert.equal(timer.ends, NOON + 45 * MINUTE);
  assert.equal(isRunning(timer, NOON + 45 * MINUTE - 1), true);
  assert.equal(isOver(timer, NOON + 45 * MINUTE), true);
  assert.equal(isOver(timer, NOON + 8 * HOUR), true);
});

for (const [left, text] of [
  [45 * MINUTE, "45:00"],
  [45 * MINUTE - 1, "45:00"],
  [45 * MINUTE - 1_000, "44:59"],
  [999, "0:01"],
  [0, "0:00"],
  [-999, "0:00"],
  [-65_000, "1:05"],
  [62 * MINUTE + 3_000, "1:02:03"],
]) {
  test(`${left} ms before its end it reads ${text}`, () =>
    assert.equal(written({ ...hold()[0], ends: NOON + left }, NOON), text));
}

test("several run at once, each with a name of its own", () => {
  const two = withTimer(hold(), { label: "Cool", minutes: 30 }, NOON);
  assert.equal(two.length, 2);
  assert.notEqual(two[0].id, two[1].id);
});

test("what is no time is not started, nor a thirteenth", () => {
  for (const minutes of [0, -5, Number.NaN, Infinity, 1441])
    assert.deepEqual(withTimer([], { label: "Hold", minutes }, NOON), []);
  let many = [];
  for (let count = 0; count < 13; count += 1)
    many = withTimer(many, { label: `Hold ${count}`, minutes: 5 }, NOON);
  assert.equal(many.length, 12);
});

test("kept timers come back as they were", () => {
  const both = withTimer(hold(), { label: "Cool", minutes: 30 }, NOON + 5);
  assert.deepEqual(readTimers(JSON.stringify(both), NOON + 10 * MINUTE), both);
});

test("what was kept and is no timer is left out", () => {
  const [good] = hold();
  const bad = [
    null,
    7,
    "x",
    {},
    { ...good, ends: "soon" },
    { ...good, length: -1 },
    { ...good, label: "x".repeat(200) },
    { ...good, stopped: "no" },
  ];
  assert.deepEqual(readTimers(JSON.stringify([...bad, good]), NOON), [good]);
  for (const text of [null, "", "{", "{}", "null", "[]", '"x"'])
    assert.deepEqual(readTimers(text, NOON), []);
});

test("one that is over stays until it is dismissed, for half a day", () => {
  const [timer] = hold();
  assert.equal(tidied([timer], timer.ends + 11 * HOUR).length, 1);
  assert.equal(tidied([timer], timer.ends + 12 * HOUR).length, 0);
});

test("a stopped timer can be put back for a while, and its time has gone on", () => {
  const stopped = changed(hold(), hold()[0].id, (timer) => ({ ...timer, stopped: NOON + MINUTE }));
  assert.equal(written(stopped[0], NOON + 9 * MINUTE), "44:00");
  assert.equal(tidied(stopped, NOON + MINUTE + REGRET - 1).length, 1);
  assert.equal(tidied(stopped, NOON + MINUTE + REGRET).length, 0);
  assert.equal(isRunning(stopped[0], NOON + 2 * MINUTE), false);
});

test("a clock set back does not make a timer longer than it was", () => {
  const [timer] = tidied(hold(), NOON - 3 * HOUR);
  assert.equal(timer.ends, NOON - 3 * HOUR + 45 * MINUTE);
});

test("more time is counted from the end, or from now when it is over", () => {
  const [timer] = hold();
  assert.equal(extended(timer, 5, NOON).ends, NOON + 50 * MINUTE);
  const later = extended({ ...timer, told: true }, 5, timer.ends + 2 * MINUTE);
  assert.equal(later.ends, timer.ends + 7 * MINUTE);
  assert.equal(later.told, false);
  assert.deepEqual(
    tidied([extended(timer, 5, NOON)], NOON),
    [extended(timer, 5, NOON)],
    "it may now be longer than it was started with",
  );
});

test("the next look comes when a figure changes", () => {
  const [timer] = hold();
  assert.equal(untilNextLook([timer], NOON), 1_000);
  assert.equal(untilNextLook([timer], NOON + 300), 700);
  assert.equal(untilNextLook([timer], timer.ends + 250), 750);
  assert.equal(untilNextLook([{ ...timer, stopped: NOON }], NOON + REGRET - 40), 40);
});

test("a change of one leaves the others", () => {
  const two = withTimer(hold(), { label: "Cool", minutes: 30 }, NOON);
  assert.deepEqual(
    changed(two, two[0].id, () => null),
    [two[1]],
  );
  assert.deepEqual(
    changed(two, "unknown", () => null),
    two,
  );
});
