import assert from "node:assert/strict";
import test from "node:test";
import { readJson, sorted } from "../files.js";

test("an exported record has its keys in order, at every depth, and lists as they are", () => {
  assert.equal(JSON.stringify(sorted({ b: [{ z: 1, y: null }, 2], a: "x" })), '{"a":"x","b":[{"y":null,"z":1},2]}');
});

test("a file that is no JSON, or too large, is refused in words", async () => {
  assert.match((await readJson(new File(["{nope"], "x.json"))).problem, /holds no JSON/);
  assert.match((await readJson(new File(["1".repeat(1_000_001)], "x.json"))).problem, /too large/);
  assert.deepEqual(await readJson(new File(['{"a":1}'], "x.json")), { content: { a: 1 } });
});
