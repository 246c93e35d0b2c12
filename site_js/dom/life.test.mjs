import assert from "node:assert/strict";
import { test } from "node:test";

globalThis.HTMLElement ??= /** @type {any} */ (class extends EventTarget {});
const { Life, LivingElement, touchOf } = await import("./life.js");

/** A promise and its end in one's hand. */
function later() {
  const held = {};
  held.promise = new Promise((settle) => (held.settle = settle));
  return held;
}

test("what comes in time is handed on, whatever it is", async () => {
  const life = new Life();
  life.begin();
  assert.equal(await life.late(Promise.resolve("answer")), "answer");
  assert.equal(await life.late(Promise.resolve(0)), 0);
});

test("what comes after the end is dropped", async () => {
  const life = new Life();
  const signal = life.begin();
  const answer = later();
  const heard = life.late(answer.promise);
  life.end();
  answer.settle("answer");
  assert.equal(await heard, null);
  assert.ok(signal.aborted);
  assert.ok(!life.alive);
});

test("a new life does not get what the one before it asked for", async () => {
  const life = new Life();
  const first = life.begin();
  const answer = later();
  const heard = life.late(answer.promise);
  const second = life.begin();
  answer.settle("answer");
  assert.equal(await heard, null);
  assert.ok(first.aborted && !second.aborted && life.alive);
});

test("nobody waits before the first life", async () => {
  assert.equal(await new Life().late(Promise.resolve("answer")), null);
});

test("an element enters and leaves, and listens only in between", () => {
  const told = [];
  const around = new EventTarget();
  class Told extends LivingElement {
    enter(signal) {
      told.push(`in ${this.alive}`);
      around.addEventListener("ring", () => told.push("ring"), { signal });
    }
    leave() {
      told.push(`out ${this.alive}`);
    }
  }
  const element = new Told();
  const ring = () => around.dispatchEvent(new Event("ring"));
  ring();
  element.connectedCallback();
  ring();
  element.disconnectedCallback();
  ring();
  element.connectedCallback(); // moved to another place: heard once, not twice
  ring();
  assert.deepEqual(told, ["in true", "ring", "out false", "in true", "ring"]);
});

test("an element's own late answer is dropped", async () => {
  const element = new LivingElement();
  element.connectedCallback();
  const answer = later();
  const heard = element.late(answer.promise);
  element.disconnectedCallback();
  answer.settle("answer");
  assert.equal(await heard, null);
});

test("a touch is heard once, of any kind that counts", async () => {
  const place = new EventTarget();
  const touched = touchOf(place, new AbortController().signal);
  place.dispatchEvent(new Event("focusin"));
  assert.equal((await touched).type, "focusin");
});
