import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { fromBase, toBase, toBaseOf } from "../../src/units/convert.ts";
import { UNIT_IDS, type UnitId } from "../../src/units/unit-table.ts";

/**
 * NIST Special Publication 811 (2008), appendix B.8, "Factors for units listed alphabetically": each factor as printed
 * there, read in a copy of that table; `si` turns our base unit into the table's SI unit. Factors that the
 * table marks as exact must agree fully, the others to their last printed digit.
 */
const NIST: readonly {
  readonly unit: UnitId;
  readonly name: string;
  readonly printed: string;
  readonly si: number;
  readonly isExact?: true;
}[] = [
  { unit: "gal", name: "gallon (US) to m3", printed: "3.785412E-03", si: 1e-3 },
  { unit: "qt", name: "quart (US liquid) to m3", printed: "9.463529E-04", si: 1e-3 },
  { unit: "ft3", name: "cubic foot to m3", printed: "2.831685E-02", si: 1 },
  { unit: "ft", name: "foot to m", printed: "3.048E-01", si: 1, isExact: true },
  { unit: "in", name: "inch to m", printed: "2.54E-02", si: 1, isExact: true },
  { unit: "yd", name: "yard to m", printed: "9.144E-01", si: 1, isExact: true },
  { unit: "ft2", name: "square foot to m2", printed: "9.290304E-02", si: 1, isExact: true },
  { unit: "in2", name: "square inch to m2", printed: "6.4516E-04", si: 1, isExact: true },
  { unit: "psi", name: "pound-force per square inch to Pa", printed: "6.894757E+03", si: 1e3 },
  { unit: "lb_ft2", name: "pound-force per square foot to Pa", printed: "4.788026E+01", si: 1e3 },
  { unit: "bar", name: "bar to Pa", printed: "1.0E+05", si: 1e3, isExact: true },
  { unit: "ft_wc", name: "foot of water, conventional, to Pa", printed: "2.989067E+03", si: 1e3 },
  { unit: "in_wc", name: "inch of water, conventional, to Pa", printed: "2.490889E+02", si: 1 },
  { unit: "Btu_h", name: "Btu(IT) per hour to W", printed: "2.930711E-01", si: 1 },
  { unit: "ton", name: "ton of refrigeration to W", printed: "3.516853E+03", si: 1 },
  { unit: "Btu", name: "Btu(IT) to J", printed: "1.055056E+03", si: 3.6e6 },
  { unit: "therm", name: "therm (EC) to J", printed: "1.05506E+08", si: 3.6e6 },
  { unit: "MJ", name: "megajoule to J, by 1 kWh = 3.6 MJ", printed: "1.0E+06", si: 3.6e6, isExact: true },
  { unit: "gpm", name: "gallon (US) per minute to m3/s", printed: "6.309020E-05", si: 1e-3 },
  { unit: "gpd", name: "gallon (US) per day to m3/s", printed: "4.381264E-08", si: 1e-3 },
  { unit: "cfm", name: "cubic foot per minute to m3/s", printed: "4.719474E-04", si: 1 },
  { unit: "ft_min", name: "foot per minute to m/s", printed: "5.08E-03", si: 1, isExact: true },
  { unit: "ft_s", name: "foot per second to m/s", printed: "3.048E-01", si: 1, isExact: true },
  { unit: "lb", name: "pound to kg", printed: "4.535924E-01", si: 1 },
  { unit: "oz", name: "ounce to kg", printed: "2.834952E-02", si: 1 },
  { unit: "lb_ft3", name: "pound per cubic foot to kg/m3", printed: "1.601846E+01", si: 1 },
];

describe("factors agree with NIST SP 811", () => {
  test.each(NIST)("$name is $printed", ({ unit, printed, si, isExact }) => {
    const actual = toBase(1, unit) * si;
    const digits = isExact ? 14 : printed.replace(/E.*$/, "").replace(".", "").length;
    expect(actual.toExponential(digits - 1)).toBe(Number(printed).toExponential(digits - 1));
  });
});

test.each([
  { fahrenheit: 32, celsius: 0, name: "ice point" },
  { fahrenheit: 212, celsius: 100, name: "boiling point" },
  { fahrenheit: -40, celsius: -40, name: "where both scales meet" },
  { fahrenheit: 120, celsius: 48.888888888888886, name: "a tap limit" },
])("$fahrenheit °F is $celsius °C: $name", ({ fahrenheit, celsius }) => {
  expect(toBase(fahrenheit, "F")).toBeCloseTo(celsius, 12);
  expect(fromBase(celsius, "F")).toBeCloseTo(fahrenheit, 12);
});

test("70 percent is exactly 0.7", () => {
  expect(toBase(70, "percent")).toBe(0.7);
  expect(fromBase(0.7, "percent")).toBe(70);
});

test("every unit comes back to itself", () => {
  fc.assert(
    fc.property(fc.constantFrom(...UNIT_IDS), fc.double({ min: -1e6, max: 1e6, noNaN: true }), (unit, value) => {
      expect(Math.abs(fromBase(toBase(value, unit), unit) - value)).toBeLessThanOrEqual(1e-9 * (Math.abs(value) + 100));
    }),
  );
});

test("more of a unit is more of its base", () => {
  fc.assert(
    fc.property(fc.constantFrom(...UNIT_IDS), fc.double({ min: -1e6, max: 1e6, noNaN: true }), (unit, value) => {
      expect(toBase(value + 1, unit)).toBeGreaterThan(toBase(value, unit));
    }),
  );
});

describe("one measure in two base units", () => {
  test.each([
    { name: "100 gal of room is 0.3785 m3", kind: "room_volume", value: 100, unit: "gal", base: 0.3785411784 },
    { name: "1 ft3 of water is 28.317 L", kind: "volume", value: 1, unit: "ft3", base: 28.316846592 },
    { name: "1 in w.c. of pressure is 0.249 kPa", kind: "pressure", value: 1, unit: "in_wc", base: 0.24908891 },
    { name: "1 psi of air is 6894.8 Pa", kind: "air_pressure", value: 1, unit: "psi", base: 6894.757293168 },
    { name: "100 L/s of air is 0.1 m3/s", kind: "airflow", value: 100, unit: "L_s", base: 0.1 },
  ] as const)("$name", ({ kind, value, unit, base }) => {
    expect(toBaseOf(kind, value, unit)).toBeCloseTo(base, 8);
  });

  test.each([
    { name: "feet are no temperature", kind: "temperature", unit: "ft" },
    { name: "a temperature is no difference", kind: "temperature_difference", unit: "F" },
    { name: "people are not counted in percent", kind: "count", unit: "percent" },
    { name: "volts are no amperes", kind: "current", unit: "V" },
  ] as const)("$name", ({ kind, unit }) => {
    expect(toBaseOf(kind, 1, unit)).toBeUndefined();
  });
});
