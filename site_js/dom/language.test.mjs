import assert from "node:assert/strict";
import test from "node:test";
import { decimalStyle, knownLanguage } from "./language.js";

for (const [languages, style] of [
  [["en-GB"], "point"],
  [["de-AT"], "comma"],
  [["C", "de"], "comma"],
  [["C.UTF-8", "POSIX", "en"], "point"],
  [["en_US", "fr-FR"], "comma"],
]) {
  test(`${languages.join(", ")}: a decimal ${style}`, () =>
    assert.equal(decimalStyle(languages), style));
}

test("where no language is known the browser's own default counts, and nothing throws", () => {
  for (const languages of [[], ["C"], [""], [undefined], ["*", "x y", "\u0000"]]) {
    assert.equal(knownLanguage(languages), undefined);
    assert.ok(["point", "comma"].includes(decimalStyle(languages)));
  }
});
