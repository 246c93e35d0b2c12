import assert from "node:assert/strict";
import test from "node:test";
import { compare, kept, offlineWords } from "./manifest.js";

const ROOT = "http://book.test/sub/";
const MANIFEST = {
  version: "0.1.0",
  date: "2026-11-25",
  bytes: 1_000,
  files: [
    { url: "index.html", revision: "abc", bytes: 100 },
    { url: "yarn/wraps/index.html", revision: "def", bytes: 200 },
    { url: "assets/py/1-2/pyodide.asm.wasm", revision: null, bytes: 700 },
  ],
};
const all = new Set(MANIFEST.files.map((file) => kept(file, ROOT)));

test("the precache keeps a file under its address, its revision where the name has none", () => {
  assert.equal(
    kept(MANIFEST.files[0], ROOT),
    "http://book.test/sub/index.html?__WB_REVISION__=abc",
  );
  assert.equal(
    kept(MANIFEST.files[2], ROOT),
    "http://book.test/sub/assets/py/1-2/pyodide.asm.wasm",
  );
});

test("ready means every file, in its very version", () => {
  assert.equal(compare(MANIFEST, all, ROOT).complete, true);
  for (const gone of all) {
    const rest = new Set([...all].filter((address) => address !== gone));
    assert.equal(compare(MANIFEST, rest, ROOT).complete, false);
  }
  const older = new Set([...all].map((address) => address.replace("=abc", "=aaa")));
  assert.equal(compare(MANIFEST, older, ROOT).complete, false);
});

test("an empty list proves nothing", () => {
  assert.equal(compare({ ...MANIFEST, files: [] }, all, ROOT).complete, false);
});

test("bytes and parts count what was found", () => {
  const seen = compare(MANIFEST, new Set([kept(MANIFEST.files[0], ROOT)]), ROOT);
  assert.equal(seen.bytes, 100);
  assert.deepEqual(seen.parts, [
    { part: "Calculator", found: 0, of: 1 },
    { part: "Pages", found: 1, of: 2 },
  ]);
});

test("each file counts to the part that a reader knows", () => {
  const urls = [
    "yarn/wraps/index.html",
    "assets/app-1/main.js",
    "assets/app-1/fibercalc.zip",
    "assets/css/card.css",
    "search/search_index.json",
    "assets/icons/icon.svg",
    "sitemap.xml",
  ];
  const seen = compare(
    { ...MANIFEST, files: urls.map((url) => ({ url, revision: null })) },
    new Set(),
    ROOT,
  );
  assert.deepEqual(
    seen.parts.map(({ part, of }) => `${part} ${of}`),
    [
      "Calculator 1",
      "Icons and pictures 1",
      "Lists 1",
      "Look and letters 1",
      "Pages 1",
      "Scripts 1",
      "Search 1",
    ],
  );
});

test("the three states are said in words", () => {
  assert.equal(offlineWords({ kind: "needs" }), "Needs signal");
  assert.equal(
    offlineWords({ kind: "saving", bytes: 5_200_000, total: 14_000_000 }),
    "Saving for offline: 5.2 of 14.0 MB",
  );
  assert.equal(
    offlineWords({ kind: "ready", version: "0.1.0", date: "2026-11-25" }),
    "Ready for no signal (version 0.1.0, 2026-11-25)",
  );
});
