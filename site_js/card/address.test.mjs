import assert from "node:assert/strict";
import test from "node:test";
import { cardQuery, withQuery } from "./address.js";

test("a card's query is what follows the question mark", () => {
  assert.equal(cardQuery("?v=1&b=1.52m"), "v=1&b=1.52m");
  assert.equal(cardQuery(""), "");
});

test("the word marked by the site search is no card's value, but a card may have a field h", () => {
  assert.equal(cardQuery("?h=skein"), "");
  assert.equal(cardQuery("?v=1&h=3"), "v=1&h=3");
});

test("a link without a version still reaches Python, which says what is wrong with it", () => {
  assert.equal(cardQuery("?b=1.5m"), "b=1.5m");
});

test("writing a query keeps path and fragment, and default values leave a clean address", () => {
  assert.equal(
    withQuery("http://book.test/sub/yarn/skein-length/?v=1&a=5#working", "v=1&b=2m"),
    "http://book.test/sub/yarn/skein-length/?v=1&b=2m#working",
  );
  assert.equal(
    withQuery("http://book.test/yarn/skein-length/?v=1&a=5#working", ""),
    "http://book.test/yarn/skein-length/#working",
  );
});

test("a query cannot lead away from the page", () => {
  assert.equal(new URL(withQuery("http://book.test/a/", "v=1#@evil.test/")).host, "book.test");
});
