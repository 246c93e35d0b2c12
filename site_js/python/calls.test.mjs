import assert from "node:assert/strict";
import test from "node:test";
import { Calls } from "./calls.js";

const question = (n) => ({ do: "work", n });
const ok = (value) => ({ ok: value });

test("one call runs at a time, in the order asked", async () => {
  const calls = new Calls();
  const first = calls.add(question(1), null);
  const second = calls.add(question(2), null);
  const sent = calls.take();
  assert.equal(sent.question.n, 1);
  assert.equal(calls.take(), null);
  calls.reply(sent.id, ok("one"));
  assert.equal(calls.take().question.n, 2);
  calls.reply(2, ok("two"));
  assert.deepEqual(await Promise.all([first, second]), [ok("one"), ok("two")]);
  assert.equal(calls.any, false);
});

test("the newest question replaces the waiting one and drops the running one's reply", async () => {
  const calls = new Calls();
  const asked = [1, 2, 3].map((n) => {
    const reply = calls.add(question(n), "card");
    if (n === 1) calls.take();
    return reply;
  });
  const other = calls.add(question(9), "other card");
  calls.reply(1, ok("stale"));
  const newest = calls.take();
  assert.equal(newest.question.n, 3);
  calls.reply(newest.id, ok("newest"));
  assert.equal(calls.take().question.n, 9);
  calls.reply(4, ok("other"));
  assert.deepEqual(await Promise.all([...asked, other]), [null, null, ok("newest"), ok("other")]);
});

test("a reply that nobody waits for changes nothing", () => {
  const calls = new Calls();
  calls.add(question(1), null);
  calls.take();
  calls.reply(99, ok("from a worker of before"));
  assert.equal(calls.running, true);
});

test("a call that takes the worker down is asked once more, then is a problem", async () => {
  const calls = new Calls();
  const asked = calls.add(question(1), null);
  const later = calls.add(question(2), null);
  calls.take();
  calls.again("stopped");
  assert.equal(calls.take().question.n, 1);
  calls.again("stopped");
  assert.deepEqual(await asked, { problem: { kind: "fault", text: "stopped" } });
  assert.equal(calls.take().question.n, 2);
  calls.reply(2, ok("two"));
  assert.deepEqual(await later, ok("two"));
});

test("a page put to rest owes its call as if it had never been sent", () => {
  const calls = new Calls();
  calls.add(question(1), null);
  for (let times = 0; times < 5; times += 1) {
    calls.take();
    calls.rest();
  }
  assert.equal(calls.any, true);
  assert.equal(calls.take().tries, 1);
});

test("without Python every call gets the reason", async () => {
  const calls = new Calls();
  const asked = [calls.add(question(1), "card"), calls.add(question(2), null)];
  calls.take();
  calls.unavailable("no WebAssembly");
  const problem = { problem: { kind: "unavailable", text: "no WebAssembly" } };
  assert.deepEqual(await Promise.all(asked), [problem, problem]);
  assert.equal(calls.any, false);
});
