import assert from "node:assert/strict";
import test from "node:test";
import { deeperThan, readJson, sorted } from "./files.js";

test("an exported record has its keys in order, at every depth, and lists as they are", () => {
  assert.equal(
    JSON.stringify(sorted({ b: [{ z: 1, y: null }, 2], a: "x" })),
    '{"a":"x","b":[{"y":null,"z":1},2]}',
  );
});

test("a file that is no JSON, or too large, is refused in words", async () => {
  assert.match((await readJson(new File(["{nope"], "x.json"))).problem, /holds no JSON/);
  assert.match((await readJson(new File(["1".repeat(1_000_001)], "x.json"))).problem, /too large/);
  assert.deepEqual(await readJson(new File(['{"a":1}'], "x.json")), { content: { a: 1 } });
});

const DEEP = "[".repeat(200_000) + "]".repeat(200_000); // 400 kB

test("a file that is nested too deep is refused in words before it is parsed", async () => {
  for (const text of [DEEP, `{"values": ${DEEP}}`, "[".repeat(200_000)])
    assert.match((await readJson(new File([text], "x.json"))).problem, /nested more than 8 deep/);
});

test("brackets in a text are no nesting", () => {
  for (const content of [{ a: "[".repeat(99) }, ["\\", '"[[[[[[', '\\"{{{{{{'], [[[]], [[]]]])
    assert.equal(deeperThan(JSON.stringify(content), 3), false);
  assert.equal(deeperThan('["\\\\", [[[]]]]', 3), true);
});
