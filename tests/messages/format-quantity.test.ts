import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { formatDuration } from "../../src/messages/format-duration.ts";
import { formatNumber, writeNumber } from "../../src/messages/format-number.ts";
import { formatQuantity, formatRange, writeQuantity } from "../../src/messages/format-quantity.ts";
import { LANGUAGES } from "../../src/messages/language.ts";
import { toBase } from "../../src/units/convert.ts";
import { QUANTITY_KINDS, type QuantityKind, type UnitSystem } from "../../src/units/quantity-kinds.ts";
import type { UnitId } from "../../src/units/unit-table.ts";

/** kind, value, unit it is given in, what US readers and SI readers see. Conversions by NIST SP 811 appendix B. */
const SHOWN: readonly (readonly [QuantityKind, number, UnitId, us: string, si: string])[] = [
  ["volume", 80, "gal", "80 gal", "303 L"],
  ["volume", 0.8512, "gal", "0.851 gal", "3.22 L"],
  ["volume", 4.0004, "gal", "4 gal", "15.1 L"],
  ["volume", 200, "L", "52.8 gal", "200 L"],
  ["volume", 1234.5, "gal", "1,234.5 gal", "4,673 L"],
  ["room_volume", 700, "ft3", "700 ft³", "19.8 m³"],
  ["temperature", 140, "F", "140 °F", "60 °C"],
  ["temperature", 57.5, "C", "135.5 °F", "57.5 °C"],
  ["temperature", 50, "F", "50 °F", "10 °C"],
  ["temperature", 49.6, "F", "49.6 °F", "10 °C"],
  ["temperature", -40, "F", "-40 °F", "-40 °C"],
  ["temperature", -0.2, "C", "32 °F", "-0.2 °C"],
  ["temperature_difference", 90, "F_diff", "90 °F", "50 °C"],
  ["temperature_difference", 1.234, "K", "2.2 °F", "1.2 °C"],
  ["length", 60, "ft", "60 ft", "18.3 m"],
  ["dimension", 0.75, "in", "3/4 in", "19.05 mm"],
  ["dimension", 1.5, "in", "1-1/2 in", "38.1 mm"],
  ["dimension", 2, "in", "2 in", "50.8 mm"],
  ["dimension", 0.785, "in", "0.785 in", "19.9 mm"],
  ["dimension", 63.25, "in", "63.25 in", "1,607 mm"],
  ["pressure", 60, "psi", "60 psi", "414 kPa"],
  ["air_pressure", 0.12, "in_wc", "0.12 in w.c.", "29.9 Pa"],
  ["power", 4500, "W", "4,500 W", "4,500 W"],
  ["power", 3380.2514, "W", "3,380 W", "3,380 W"],
  ["heat_rate", 36_000, "Btu_h", "36,000 Btu/h", "10,551 W"],
  ["voltage", 208, "V", "208 V", "208 V"],
  ["current", 18.75, "A", "18.75 A", "18.75 A"],
  ["current", 21.634615, "A", "21.6 A", "21.6 A"],
  ["resistance", 12.8, "ohm", "12.8 Ω", "12.8 Ω"],
  ["water_flow", 2.5, "gpm", "2.5 gpm", "9.46 L/min"],
  ["money", 12.4, "usd", "$12.40", "$12.40"],
  ["money", 12, "usd", "$12", "$12"],
  ["money", 1240.6, "usd", "$1,241", "$1,241"],
  ["money", -3.5, "usd", "-$3.50", "-$3.50"],
  ["energy_price", 0.1325, "usd_kWh", "$0.1325/kWh", "$0.1325/kWh"],
  ["share", 3.14, "percent", "3.14 %", "3.14 %"],
  ["share", 0.764_706, "one", "76 %", "76 %"],
  ["ratio", 3.456_78, "one", "3.46", "3.46"],
  ["count", 4, "one", "4", "4"],
  ["sound", 49.3333, "dBA", "49 dBA", "49 dBA"],
];

test.each(SHOWN)("%s %d %s reads %s and %s", (kind, value, unit, us, si) => {
  const quantity = { kind, value: toBase(value, unit) };
  for (const language of LANGUAGES) {
    expect(formatQuantity(quantity, "us", language)).toBe(us);
    expect(formatQuantity(quantity, "si", language)).toBe(si);
  }
});

const TIMES: readonly (readonly [number, string, string])[] = [
  [0, "0 s", "0 s"],
  [0.42, "0.42 s", "0.42 s"],
  [3.4444, "3.4 s", "3.4 s"],
  [9.9666, "10 s", "10 s"],
  [42.4, "42 s", "42 s"],
  [59.6, "1 min", "1 min"],
  [72, "1 min 12 s", "1 min 12 s"],
  [3599.7, "1 h", "1 h"],
  [7500, "2 h 5 min", "2 h 5 min"],
  [172_799, "2 days", "2 días"],
  [86_400, "24 h", "24 h"],
  [273_600, "3 days 4 h", "3 días 4 h"],
  [-72, "-1 min 12 s", "-1 min 12 s"],
];
test.each(TIMES)("%d s is said as %s", (time_s, en, es) => {
  expect(formatDuration(time_s, "en")).toBe(en);
  expect(formatDuration(time_s, "es")).toBe(es);
});

const RANGES: readonly (readonly [QuantityKind, number, number, en: string, es: string])[] = [
  ["time", 8, 30, "8 to 30 s", "8 a 30 s"],
  ["time", 45, 120, "45 s to 2 min", "45 s a 2 min"],
  ["time", 30, 30, "30 s", "30 s"],
  ["money", 8, 30, "$8 to $30", "$8 a $30"],
  ["pressure", 100, 200, "14.5 to 29 psi", "14.5 a 29 psi"],
  ["dimension", 0.01905, 0.0254, "3/4 to 1 in", "3/4 a 1 in"],
  ["count", 2, 4, "2 to 4", "2 a 4"],
];
test.each(RANGES)("a %s from %d up to %d reads %s", (kind, value, upTo, en, es) => {
  expect(formatRange({ kind, value }, upTo, "us", "en")).toBe(en);
  expect(formatRange({ kind, value }, upTo, "us", "es")).toBe(es);
});

const WRITTEN: readonly (readonly [QuantityKind, number, UnitId, UnitSystem, string])[] = [
  ["volume", 1234.5, "gal", "us", "1234.5 gal"],
  ["time", 72, "s", "us", "72 s"],
  ["length", 1.125, "m", "si", "1.1250 m"],
  ["volume", 0.125, "gal", "us", "0.125 gal"],
  ["dimension", 0.75, "in", "us", "3/4 in"],
  ["share", 0.5, "one", "us", "50 %"],
  ["money", 1240.6, "usd", "us", "$1240.6"],
];
test.each(WRITTEN)("%s of %d %s is sent back in %s as %s", (kind, value, unit, units, text) => {
  expect(writeQuantity({ kind, value: toBase(value, unit) }, units)).toBe(text);
});

describe("numbers", () => {
  test("rounding that carries does not add a digit: 9.996 is 10", () =>
    expect(formatNumber(9.996, { significant: 3 })).toBe("10"));
  test("a tiny negative is 0, not -0", () => expect(formatNumber(-1e-12, { significant: 3 })).toBe("0"));
  test("refuses NaN", () => expect(() => formatNumber(Number.NaN, {})).toThrow("cannot show NaN"));
  test("refuses infinity", () => expect(() => writeNumber(Number.POSITIVE_INFINITY)).toThrow("cannot show"));
  test("three significant digits are never off by more than half a unit in the third", () =>
    fc.assert(
      fc.property(fc.double({ min: 1e-4, max: 1e9, noNaN: true }), (value) => {
        const shown = Number(formatNumber(value, { significant: 3 }).replaceAll(",", ""));
        expect(Math.abs(shown - value) / value).toBeLessThanOrEqual(0.005 + 1e-9);
      }),
    ));
});

const kinds = fc.constantFrom<QuantityKind>(...Object.keys(QUANTITY_KINDS).filter(isKind));
function isKind(name: string): name is QuantityKind {
  return Object.hasOwn(QUANTITY_KINDS, name);
}

test("every kind is written in both systems without an exponent, NaN or a bare unit", () =>
  fc.assert(
    fc.property(
      kinds,
      fc.double({ min: -1e6, max: 1e6, noNaN: true }),
      fc.constantFrom<UnitSystem>("us", "si"),
      fc.constantFrom(...LANGUAGES),
      (kind, value, units, language) => {
        expect(formatQuantity({ kind, value }, units, language)).toMatch(/^-?\$?\d[\d,./-]*( [^\d\s].*|\/kWh)?$/);
        expect(writeQuantity({ kind, value }, units)).toMatch(/^-?\$?\d[\d./-]*( \D.*|\/kWh)?$/);
      },
    ),
  ));
