import assert from "node:assert/strict";
import test from "node:test";
import { Python } from "./python.js";

globalThis.Worker ??= class {};

/** A worker that does what a test tells it. */
class Puppet {
  sent = [];
  ended = false;
  postMessage(message) {
    this.sent.push(message);
  }
  terminate() {
    this.ended = true;
  }
  say(data) {
    this.onmessage({ data });
  }
}

function started() {
  const workers = [];
  const python = new Python(
    () => workers[workers.push(new Puppet()) - 1],
    () => "http://book.test/assets/py/x/",
  );
  return { python, workers };
}

const reply = (worker, value) => {
  const { call } = worker.sent.at(-1);
  worker.say({ reply: call, text: JSON.stringify({ id: call, ok: value }) });
};

test("asking starts the worker, and what was asked before it was ready is answered", async () => {
  const { python, workers } = started();
  const asked = python.ask({ do: "hello" });
  assert.deepEqual(workers[0].sent, [{ boot: { runtime: "http://book.test/assets/py/x/" } }]);
  workers[0].say({ stage: "loading", loaded: 1, total: 2 });
  assert.deepEqual(python.stage, { stage: "loading", loaded: 1, total: 2 });
  workers[0].say({ stage: "ready", ms: 1 });
  assert.deepEqual(JSON.parse(workers[0].sent[1].text), { id: 1, do: "hello" });
  reply(workers[0], "here");
  assert.deepEqual(await asked, { ok: "here" });
});

test("30 seconds without progress end the start, with a reason and a way on", async (t) => {
  t.mock.timers.enable({ apis: ["setTimeout"] });
  const { python, workers } = started();
  const asked = python.ask({ do: "hello" });
  t.mock.timers.tick(29_000);
  workers[0].say({ stage: "loading", loaded: 1, total: 2 });
  t.mock.timers.tick(29_000);
  assert.equal(python.stage.stage, "loading");
  t.mock.timers.tick(1_000);
  assert.equal(python.stage.stage, "failed");
  assert.equal(workers[0].ended, true);
  assert.equal((await asked).problem.kind, "unavailable");
  assert.equal((await python.ask({ do: "hello" })).problem.kind, "unavailable");
  python.retry();
  assert.equal(workers.length, 2);
  workers[1].say({ stage: "ready", ms: 1 });
  assert.equal(python.stage.stage, "ready");
});

test("a calculation over 5 seconds is stopped, asked once more, then given up", async (t) => {
  t.mock.timers.enable({ apis: ["setTimeout"] });
  const { python, workers } = started();
  const asked = python.ask({ do: "work" });
  workers[0].say({ stage: "ready", ms: 1 });
  t.mock.timers.tick(5_000);
  assert.equal(workers[0].ended, true);
  workers[1].say({ stage: "ready", ms: 1 });
  assert.equal(JSON.parse(workers[1].sent[1].text).do, "work");
  t.mock.timers.tick(5_000);
  assert.match((await asked).problem.text, /more than 5 seconds/);
  workers[2].say({ stage: "ready", ms: 1 });
  const next = python.ask({ do: "hello" });
  reply(workers[2], "well again");
  assert.deepEqual(await next, { ok: "well again" });
});

test("a worker that crashes at work is started again", async () => {
  const { python, workers } = started();
  const asked = python.ask({ do: "work" });
  workers[0].say({ stage: "ready", ms: 1 });
  workers[0].onerror(new Event("error", { cancelable: true }));
  workers[1].say({ stage: "ready", ms: 1 });
  reply(workers[1], "second time");
  assert.deepEqual(await asked, { ok: "second time" });
});

test("a page put to rest frees the worker and answers after it is back", async () => {
  const { python, workers } = started();
  const asked = python.ask({ do: "work" });
  workers[0].say({ stage: "ready", ms: 1 });
  python.rest();
  assert.equal(workers[0].ended, true);
  python.resume();
  workers[1].say({ stage: "ready", ms: 1 });
  reply(workers[1], "late");
  assert.deepEqual(await asked, { ok: "late" });
});

test("a reply that is no JSON is a problem, not an exception", async () => {
  const { python, workers } = started();
  const asked = python.ask({ do: "work" });
  workers[0].say({ stage: "ready", ms: 1 });
  workers[0].say({ reply: 1, text: "{" });
  assert.equal((await asked).problem.kind, "fault");
});

test("a question that cannot be written down is a problem, the next one is answered", async () => {
  const { python, workers } = started();
  python.start();
  workers[0].say({ stage: "ready", ms: 1 });
  const deep = JSON.parse("[".repeat(200_000) + "]".repeat(200_000));
  const problem = await python.ask({ do: "bench-read", record: deep });
  assert.match(problem.problem.text, /^What was asked could not be written down/);
  const next = python.ask({ do: "hello" });
  reply(workers[0], { version: "1" });
  assert.deepEqual(await next, { ok: { version: "1" } });
});
