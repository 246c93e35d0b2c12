import assert from "node:assert/strict";
import { test } from "node:test";
import { fieldOfUnit, Units } from "./units.js";

function inMeters() {
  const units = new Units();
  units.note("length", "m");
  return units;
}

test("another unit is converted from the one before", () => {
  const units = inMeters();
  assert.equal(units.choose("length", "yd"), "m");
  assert.equal(units.converted("length", "m"), true);
  assert.equal(units.choose("length", "in"), "yd");
});

test("while a number is converted it goes to Python in its old unit", () => {
  const units = inMeters();
  const shown = { length: "1", "length.unit": "yd", mass: "5", "mass.unit": "g" };
  units.choose("length", "yd");
  assert.deepEqual(units.asTheyStand(shown), { ...shown, "length.unit": "m" });
  units.converted("length", "m");
  assert.deepEqual(units.asTheyStand(shown), shown);
});

test("quick choices all start from the number that is still shown", () => {
  const units = inMeters();
  units.choose("length", "yd");
  assert.equal(units.choose("length", "in"), "m");
});

test("back to the unit that the number stands in: nothing to convert, nothing to wait for", () => {
  const units = inMeters();
  units.choose("length", "yd");
  assert.equal(units.choose("length", "m"), null);
  assert.equal(units.converted("length", "m"), false);
});

test("a number typed meanwhile is not written over by the converted one", () => {
  const units = inMeters();
  units.choose("length", "yd");
  units.typed("length");
  assert.equal(units.converted("length", "m"), false);
  assert.equal(units.choose("length", "in"), "yd");
});

test("what is put in anew waits for no conversion", () => {
  const units = inMeters();
  units.choose("length", "yd");
  units.clear();
  assert.equal(units.converted("length", "m"), false);
});

test("a unit's control names its field", () => {
  assert.equal(fieldOfUnit("dyes.2.depth.unit"), "dyes.2.depth");
  assert.equal(fieldOfUnit("unit"), null);
});
