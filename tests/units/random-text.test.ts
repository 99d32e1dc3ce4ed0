import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { normaliseText } from "../../src/units/normalise-text.ts";
import { parseQuantity } from "../../src/units/parse-quantity.ts";
import { QUANTITY_KINDS, type QuantityKind } from "../../src/units/quantity-kinds.ts";
import { readQuantities } from "../../src/units/read-quantity.ts";
import { LONG_TEXTS, randomText } from "../support/random-text.ts";

const KINDS = Object.keys(QUANTITY_KINDS).filter((kind): kind is QuantityKind => kind in QUANTITY_KINDS);

test("100,000 random texts are read or refused, never thrown at, and never give NaN or infinity", () => {
  fc.assert(
    fc.property(
      randomText,
      fc.constantFrom(...KINDS),
      fc.constantFrom("us", "si"),
      fc.boolean(),
      (text, kind, units, isEs) => {
        const parsed = parseQuantity(text, kind, { units, decimal: isEs ? "comma" : "point" });
        if (parsed.ok && !Number.isFinite(parsed.value)) throw new Error(`${text} as ${kind} is ${parsed.value}`);
      },
    ),
    { numRuns: 100_000 },
  );
}, 120_000);

test("every token of a random text is a piece of it, and they do not overlap", () => {
  fc.assert(
    fc.property(randomText, (random) => {
      const text = normaliseText(random);
      let last = 0;
      for (const token of readQuantities(text, { decimal: "point", isAlone: false })) {
        expect(token.start).toBeGreaterThanOrEqual(last);
        expect(token.end).toBeGreaterThan(token.start);
        expect(text.slice(token.start, token.end).startsWith(token.text)).toBe(true);
        last = token.end;
      }
      expect(last).toBeLessThanOrEqual(text.length);
    }),
    { numRuns: 5000 },
  );
});

// Each of these would take minutes if any pattern backtracked or any search began anew at every character.
describe("100,000 characters of one kind are read before the test times out", () => {
  test.each(LONG_TEXTS)("$name", ({ text }) => {
    const plain = normaliseText(text);
    expect(Math.max(text.length, plain.length)).toBeGreaterThanOrEqual(100_000);
    expect(readQuantities(plain, { decimal: "comma", isAlone: false })).toBeInstanceOf(Array);
    expect(parseQuantity(text, "length", { units: "us", decimal: "point" }).ok).toBe(false);
  });
});
