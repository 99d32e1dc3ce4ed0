import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { elementResistance_ohm, powerAtVoltage_W, powerBehindWire_W } from "../../src/physics/heating-element.ts";
import { BEHIND_WIRE, ELEMENTS } from "../reference/electrical.ts";

describe.each(ELEMENTS)("$rated_W W at $rated_V V", ({ rated_W, rated_V, supply_V, ohm, power_W }) => {
  test(`is ${ohm} ohm`, () => expect(Math.abs(elementResistance_ohm(rated_W, rated_V) - ohm)).toBeLessThan(1e-4));
  test(`makes ${power_W} W at ${supply_V} V`, () =>
    expect(Math.abs(powerAtVoltage_W(rated_W, rated_V, supply_V) - power_W)).toBeLessThan(0.01));
});

test("behind 0.248 ohm of wire a 12.8 ohm element makes 4330.56 W", () => {
  const { ohm, supply_V, wire_ohm, power_W } = BEHIND_WIRE;
  expect(Math.abs(powerBehindWire_W(ohm, supply_V, wire_ohm) - power_W)).toBeLessThan(0.1);
});

test("at its own voltage an element makes its rating, and without wire nothing is lost", () => {
  const power = fc.double({ min: 100, max: 12_000, noNaN: true });
  const volts = fc.double({ min: 100, max: 300, noNaN: true });
  fc.assert(
    fc.property(power, volts, (rated_W, rated_V) => {
      expect(powerAtVoltage_W(rated_W, rated_V, rated_V)).toBeCloseTo(rated_W, 6);
      expect(powerBehindWire_W(elementResistance_ohm(rated_W, rated_V), rated_V, 0)).toBeCloseTo(rated_W, 6);
    }),
  );
});

test("no voltage or no element makes no power", () => {
  expect(powerAtVoltage_W(4500, 240, 0)).toBe(0);
  expect(powerAtVoltage_W(0, 240, 240)).toBe(0);
});

const REFUSED = [
  ["an element of 0 W, which has no resistance", () => elementResistance_ohm(0, 240)],
  ["a NaN rating", () => elementResistance_ohm(Number.NaN, 240)],
  ["a rating of 0 V", () => powerAtVoltage_W(4500, 0, 240)],
  ["a NaN supply", () => powerAtVoltage_W(4500, 240, Number.NaN)],
  ["a wire of less than nothing", () => powerBehindWire_W(12.8, 240, -0.1)],
] as const;
test.each(REFUSED)("refuses %s", (_, run) => {
  expect(run).toThrow(RangeError);
});
