import assert from "node:assert/strict";
import test from "node:test";
import { notACopy, rescueText } from "./rescue.js";

const record = (id, rev = "1-aaaa") => ({ id, rev, kind: "base", values: { name: id } });

test("a file made without Python has the format's frame, and each record as it is", () => {
  const text = rescueText(
    [record("base-b"), { id: "strange", schema: 9 }],
    { format: "x" },
    "2027-01-13",
    { format: "bench-book", schema: 1 },
  );
  assert.deepEqual(JSON.parse(text), {
    bench: { format: "x" },
    format: "bench-book",
    made: "2027-01-13",
    records: [],
    schema: 1,
    unread: [record("base-b"), { id: "strange", schema: 9 }],
  });
  assert.equal(
    JSON.parse(rescueText([], null, "2027-01-13", { format: "bench-book", schema: 1 })).bench,
    undefined,
  );
});

test("a copy holds each record as it was saved last, and no other", () => {
  const text = JSON.stringify({
    records: [record("a"), record("b", "2-bbbb")],
    unread: [{ id: "strange", schema: 9 }],
  });
  assert.equal(
    notACopy(text, [record("b", "2-bbbb"), { id: "strange", schema: 9 }, record("a")]),
    "",
  );
  assert.match(
    notACopy(text, [record("a"), record("b", "3-cccc"), { id: "strange" }]),
    /^one record is not in it/,
  );
  assert.match(
    notACopy(text, [
      record("a"),
      record("b", "2-bbbb"),
      { id: "strange" },
      record("c"),
      record("d"),
    ]),
    /^2 records are not in it/,
  );
  assert.match(notACopy(text, [record("a"), { id: "strange" }]), /no longer here/);
  for (const broken of [text.slice(0, -1), "", "{}", "[]"])
    assert.equal(notACopy(broken, [record("a")]), "it does not read back");
});
