import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { formatQuantity, writeQuantity } from "../../src/messages/format-quantity.ts";
import { LANGUAGES, type Language } from "../../src/messages/language.ts";
import { fromBase, toBaseOf } from "../../src/units/convert.ts";
import { parseQuantity } from "../../src/units/parse-quantity.ts";
import { QUANTITY_KINDS, type QuantityKind, type UnitSystem } from "../../src/units/quantity-kinds.ts";
import { readersUnit, UNIT_IDS } from "../../src/units/unit-table.ts";

const SYSTEMS: readonly UnitSystem[] = ["us", "si"];
const KINDS = Object.keys(QUANTITY_KINDS).filter((kind): kind is QuantityKind => kind in QUANTITY_KINDS);
const COMBINATIONS = KINDS.flatMap((kind) =>
  SYSTEMS.flatMap((units) => LANGUAGES.map((language) => ({ kind, units, language }))),
);
const decimalOf = (language: Language) => (language === "es" ? "comma" : "point");
const SIGNED: readonly QuantityKind[] = ["temperature", "temperature_difference", "money"];

/** Values over every size that a job meets, in the reader's unit; negative where that makes sense. */
function shown(kind: QuantityKind): fc.Arbitrary<number> {
  const size = fc.oneof(
    fc.integer({ min: 0, max: 9999 }),
    fc.double({ min: 0, max: 2000, noNaN: true }),
    fc.double({ min: 0, max: 1, noNaN: true }),
    fc.integer({ min: 0, max: 12 * 16 }).map((sixteenths) => sixteenths / 16),
    fc.double({ min: 1000, max: 1e8, noNaN: true }),
  );
  if (kind === "count") return fc.integer({ min: 0, max: 100_000 });
  if (!SIGNED.includes(kind)) return size;
  return fc.tuple(size, fc.boolean()).map(([value, isNegative]) => (isNegative ? -value : value));
}

/** A decimal point with exactly three digits behind one to three: readers of the comma may mean thousands. */
const OPEN_IN_SPANISH = /(?<![\d.,])[1-9]\d{0,2}\.\d{3}(?![\d.,])/;

describe.each(COMBINATIONS)("$kind for $units in $language", ({ kind, units, language }) => {
  const options = { units, decimal: decimalOf(language) } as const;
  const toBase = (value: number) => toBaseOf(kind, value, readersUnit(kind, units)) ?? Number.NaN;

  test("what is printed is read as what it says", () => {
    fc.assert(
      fc.property(shown(kind), (value) => {
        const printed = formatQuantity({ kind, value: toBase(value) }, units, language);
        const parsed = parseQuantity(printed, kind, options);
        if (language === "es" && OPEN_IN_SPANISH.test(printed)) {
          expect(parsed).toEqual({ ok: false, problem: "two-readings" });
          return;
        }
        expect(parsed).toMatchObject({ ok: true });
        if (parsed.ok) expect(formatQuantity({ kind, value: parsed.value }, units, language)).toBe(printed);
      }),
    );
  });

  test("what is written for a button is read back to five digits", () => {
    fc.assert(
      fc.property(shown(kind), (value) => {
        const base = toBase(value);
        const parsed = parseQuantity(writeQuantity({ kind, value: base }, units), kind, {
          ...options,
          range: { min: base - Math.abs(base) * 0.01 - 0.01, max: base + Math.abs(base) * 0.01 + 0.01 },
        });
        expect(parsed).toMatchObject({ ok: true });
        // In the reader's unit: buttons carry six digits, and whole sixteenths of an inch to a millionth.
        const back = parsed.ok ? fromBase(parsed.value, readersUnit(kind, units)) : Number.NaN;
        expect(Math.abs(back - value)).toBeLessThanOrEqual(1e-5 * Math.abs(value) + 2e-6);
      }),
    );
  });
});

test("every unit is read back from its number and its id", () => {
  const kinds = UNIT_IDS.flatMap((unit) =>
    KINDS.flatMap((kind) => (toBaseOf(kind, 1, unit) === undefined ? [] : [{ unit, kind }])),
  );
  const written = kinds.filter(({ unit }) => unit !== "one" && unit !== "time");
  expect(written.length).toBeGreaterThan(UNIT_IDS.length);
  fc.assert(
    fc.property(fc.constantFrom(...written), fc.integer({ min: 0, max: 99_999 }), ({ unit, kind }, hundredths) => {
      const value = hundredths / 100;
      const parsed = parseQuantity(`${value} ${unit}`, kind, { units: "us", decimal: "point" });
      expect(parsed).toEqual({ ok: true, value: toBaseOf(kind, value, unit) });
    }),
    { numRuns: 2000 },
  );
});
