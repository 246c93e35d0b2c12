import assert from "node:assert/strict";
import { test } from "node:test";

const kept = new Map();
globalThis.sessionStorage = /** @type {any} */ ({
  getItem: (/** @type {string} */ key) => kept.get(key) ?? null,
  setItem: (/** @type {string} */ key, /** @type {string} */ text) => kept.set(key, text),
});
const { goOn, trailTo } = await import("./trail.js");

test("the card gone on to knows the way, any other card does not", () => {
  goOn("pots", [{ card: "dye-recipe", query: "v=1&a=8" }]);
  assert.deepEqual(trailTo("pots"), [{ card: "dye-recipe", query: "v=1&a=8" }]);
  assert.deepEqual(trailTo("scald"), []);
});

test("what someone else wrote there is no way", () => {
  for (const text of ["", "3", "null", "[]", '{"to":"pots","steps":7}', "{"]) {
    kept.set("trail", text);
    assert.deepEqual(trailTo("pots"), [], text);
  }
});

test("without storage the way is known until the page is loaded anew", () => {
  globalThis.sessionStorage = /** @type {any} */ ({
    getItem: () => {
      throw new DOMException("denied", "SecurityError");
    },
    setItem: () => {
      throw new DOMException("denied", "SecurityError");
    },
  });
  goOn("pots", [{ card: "dye-recipe", query: "" }]);
  assert.deepEqual(trailTo("pots"), [{ card: "dye-recipe", query: "" }]);
});
