import assert from "node:assert/strict";
import { test } from "node:test";
import { Arrivals } from "./arrivals.js";

const SIZES = { "a.wasm": [100, 40], "b.zip": [10, 10] };

/** A body that comes in parts, as many bytes each; -1 breaks off. */
function parts(...lengths) {
  const left = [...lengths];
  return new ReadableStream({
    async pull(out) {
      await new Promise((turn) => setTimeout(turn));
      const length = left.shift();
      if (length === undefined) out.close();
      else if (length < 0) out.error(new Error("line is down"));
      else out.enqueue(new Uint8Array(length));
    },
  });
}

/** Arrivals from a server that gives these answers, and what they told. */
function fetched(answers) {
  globalThis.fetch = async (address) => {
    const answer = answers[String(address)];
    if (!answer) throw new TypeError("no line");
    return answer();
  };
  const told = [];
  const addresses = Object.keys(answers).filter((each) => each !== "/sizes.json");
  const arrivals = new Arrivals(addresses, "/sizes.json", (...count) => told.push(count));
  arrivals.broken.catch(() => {});
  return { arrivals, told };
}

const sizes = () => Response.json(SIZES);
const packed = { headers: { "Content-Encoding": "gzip" } };

test("the count is of what travels: packed where the host packs, raw elsewhere", async () => {
  const { arrivals, told } = fetched({
    "/sizes.json": sizes,
    "/x/a.wasm": () => new Response(parts(50, 50), packed),
    "/x/b.zip": () => new Response(parts(10)),
  });
  await Promise.all([arrivals.whole("/x/a.wasm"), arrivals.whole("/x/b.zip")]);
  assert.deepEqual(told.at(-1), [50, 50]);
  assert.ok(told.every(([loaded, total]) => loaded <= total));
});

test("sizes that come last are told all the same", async () => {
  let come = () => {};
  const { arrivals, told } = fetched({
    "/sizes.json": () => new Promise((settle) => (come = () => settle(sizes()))),
    "/b.zip": () => new Response(parts(10)),
  });
  await arrivals.bytes("/b.zip");
  assert.deepEqual(told.at(-1), [0, 0]);
  come();
  await new Promise((turn) => setTimeout(turn, 20));
  assert.deepEqual(told.at(-1), [10, 10]);
});

test("a file is handed out as it was fetched", async () => {
  const { arrivals } = fetched({ "/sizes.json": sizes, "/b.zip": () => new Response(parts(4, 6)) });
  assert.equal((await arrivals.bytes("/b.zip")).length, 10);
  assert.equal(arrivals.whole("/other"), undefined);
});

test("one that does not come breaks the whole, with its name and the host's number", async () => {
  const { arrivals } = fetched({ "/b.zip": () => new Response("", { status: 404 }) });
  await assert.rejects(arrivals.broken, /^Error: b\.zip could not be fetched \(404\)\.$/);
});

test("no line at all is told without a number", async () => {
  globalThis.fetch = async () => Promise.reject(new TypeError("no line"));
  const { broken } = new Arrivals(["/b.zip"], "/sizes.json", () => {});
  await assert.rejects(broken, /^Error: b\.zip could not be fetched\.$/);
});

test("one that breaks off says so, and is never handed out", async () => {
  const { arrivals } = fetched({
    "/sizes.json": sizes,
    "/b.zip": () => new Response(parts(4, -1)),
  });
  let handed = false;
  void arrivals.whole("/b.zip")?.then(() => (handed = true));
  await assert.rejects(arrivals.broken, /^Error: b\.zip broke off\.$/);
  await new Promise((turn) => setTimeout(turn, 20));
  assert.ok(!handed);
});

test("without the sizes the line has no numbers, and all comes all the same", async () => {
  const { arrivals, told } = fetched({ "/b.zip": () => new Response(parts(10)) });
  await arrivals.bytes("/b.zip");
  assert.deepEqual(told.at(-1), [0, 0]);
});

test("once Python runs nothing more is told", async () => {
  const { arrivals, told } = fetched({
    "/sizes.json": sizes,
    "/b.zip": () => new Response(parts(5, 5)),
  });
  arrivals.hush();
  await arrivals.bytes("/b.zip");
  assert.deepEqual(told, []);
});
