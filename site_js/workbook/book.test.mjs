import assert from "node:assert/strict";
import { beforeEach, test } from "node:test";
import { Workbook } from "./book.js";

/** The tabs of one browser: what one says, the others hear. */
class Tabs {
  static #open = /** @type {Set<Tabs>} */ (new Set());
  constructor() {
    Tabs.#open.add(this);
  }
  postMessage() {
    for (const other of Tabs.#open) if (other !== this) other.onmessage?.();
  }
  static closeAll() {
    Tabs.#open.clear();
  }
}
globalThis.BroadcastChannel = /** @type {any} */ (Tabs);
beforeEach(() => Tabs.closeAll());

/** A store in memory, with the rules of the real one: all or none, and none over another tab's. */
function store(...records) {
  const held = new Map(records.map((each) => [each.id, each]));
  const gone = new Map();
  let about;
  return {
    full: false,
    held,
    gone,
    async read() {
      return { value: about };
    },
    async readAll(name) {
      return { value: [...(name === "removed" ? gone : held).values()] };
    },
    async remove(_, ...ids) {
      for (const id of ids) gone.delete(id);
      return { value: undefined };
    },
    async exchange(changes, note, mark) {
      if (this.full) return { unavailable: "the storage of this browser is full" };
      const lost = changes.filter(({ id, rev }) => (held.get(id)?.rev ?? null) !== rev);
      if (lost.length > 0) return { value: { lost: lost.map(({ id }) => id) } };
      for (const { id, record } of changes) {
        if (!record && held.has(id)) gone.set(id, { ...mark, record: held.get(id) });
        if (record) held.set(id, record);
        else held.delete(id);
        if (record) gone.delete(id);
      }
      about = note(about);
      return { value: { lost: [], about } };
    },
  };
}

const base = (name, more = {}) => ({
  id: `base-${name}`,
  kind: "base",
  schema: 1,
  rev: "",
  past: [],
  changed: "",
  values: { name },
  rows: {},
  ...more,
});

async function opened(...records) {
  const kept = store(...records);
  const book = new Workbook(kept);
  await book.ready();
  return { kept, book };
}

test("before the store is read nothing is known, which is not the same as nothing", async () => {
  const book = new Workbook(store(base("aran", { rev: "1-a" })));
  assert.ok(!book.known);
  await book.ready();
  assert.ok(book.known);
  assert.equal(book.all.length, 1);
});

test("what is no record in the store is passed over", async () => {
  const { book } = await opened(base("aran"), { id: 7 });
  assert.deepEqual(book.all, [base("aran")]);
});

test("a saved record gets a revision, and the one after it remembers the one before", async () => {
  const { book, kept } = await opened();
  assert.equal(await book.change([{ before: null, after: base("aran") }]), "");
  const first = book.find("base-aran");
  assert.match(first.rev, /^1-[0-9a-z]{8}$/);
  await book.change([{ before: first, after: { ...first, values: { name: "Aran" } } }]);
  const second = book.find("base-aran");
  assert.match(second.rev, /^2-/);
  assert.deepEqual(second.past, [first.rev]);
  assert.deepEqual(kept.held.get("base-aran"), second);
  assert.equal(book.about.saves, 2);
});

test("a record from a file keeps the revision that it brings", async () => {
  const { book } = await opened();
  await book.change([{ before: null, after: base("aran", { rev: "9-file" }), asItIs: true }]);
  assert.equal(book.find("base-aran").rev, "9-file");
});

test("undo takes back one press after the other, and then there is nothing more", async () => {
  const { book } = await opened();
  await book.change([{ before: null, after: base("aran") }]);
  await book.change([{ before: null, after: base("dk") }]);
  assert.equal(await book.undo(), "");
  assert.equal(book.find("base-dk"), null);
  await book.undo();
  assert.deepEqual([book.all, book.canUndo], [[], false]);
  assert.equal(await book.undo(), "There is nothing to undo.");
});

test("undo of a change is a new revision with the old values", async () => {
  const { book } = await opened();
  await book.change([{ before: null, after: base("aran") }]);
  const first = book.find("base-aran");
  await book.change([{ before: first, after: { ...first, values: { name: "Other" } } }]);
  await book.undo();
  assert.equal(book.find("base-aran").values.name, "aran");
  assert.match(book.find("base-aran").rev, /^3-/);
});

test("of several records all are written or none, when another tab was there first", async () => {
  const { book, kept } = await opened(base("aran", { rev: "1-a" }));
  kept.held.set("base-aran", base("aran", { rev: "2-other", values: { name: "theirs" } }));
  const why = await book.change([
    { before: null, after: base("dk") },
    { before: book.find("base-aran"), after: base("aran") },
  ]);
  assert.match(why, /changed in another tab/);
  assert.ok(!kept.held.has("base-dk"));
  assert.equal(book.find("base-aran").values.name, "theirs"); // looked at anew
  assert.ok(!book.canUndo);
});

test("a full store says so, and what was saved before is still there", async () => {
  const { book, kept } = await opened(base("aran", { rev: "1-a" }));
  kept.full = true;
  const why = await book.change([{ before: null, after: base("dk") }]);
  assert.match(why, /^Not saved: the storage of this browser is full/);
  assert.deepEqual(
    book.all.map(({ id }) => id),
    ["base-aran"],
  );
  kept.full = false;
  assert.equal(await book.change([{ before: null, after: base("dk") }]), "");
  assert.equal(book.unavailable, "");
});

test("what one press removed comes back together, as it was", async () => {
  const { book } = await opened(base("aran", { rev: "1-a" }), base("dk", { rev: "4-d" }));
  await book.change(book.all.map((before) => ({ before, after: null })));
  const [press, ...others] = await book.removed(30);
  assert.deepEqual([press.records.length, others.length], [2, 0]);
  assert.equal(await book.bringBack(press.records), "");
  assert.equal(book.find("base-dk").rev, "4-d");
  assert.deepEqual(await book.removed(30), []);
});

test("what was removed long ago is forgotten", async () => {
  const { book, kept } = await opened();
  const day = (/** @type {number} */ ago) => new Date(Date.now() - ago * 86_400_000).toISOString();
  kept.gone.set("base-new", { batch: "n", removed: day(29), record: base("new") });
  kept.gone.set("base-old", { batch: "o", removed: day(31), record: base("old") });
  assert.deepEqual(
    (await book.removed(30)).map(({ batch }) => batch),
    ["n"],
  );
  assert.deepEqual([...kept.gone.keys()], ["base-new"]);
});

test("another tab hears of a change and reads the store anew", async () => {
  const { book, kept } = await opened();
  const other = new Workbook(kept);
  await other.ready();
  const heard = new Promise((told) => other.addEventListener("change", told, { once: true }));
  await book.change([{ before: null, after: base("aran") }]);
  await heard;
  assert.equal(other.find("base-aran").values.name, "aran");
});

test("a file holds everything: the count of what was written since begins anew", async () => {
  const { book } = await opened();
  await book.change([{ before: null, after: base("aran") }]);
  assert.equal(book.about.saves, 1);
  assert.notEqual(book.about.first, null);
  await book.exported();
  assert.deepEqual([book.about.saves, book.about.first], [0, null]);
  assert.match(book.about.exported, /^\d{4}-\d\d-\d\dT/);
});
