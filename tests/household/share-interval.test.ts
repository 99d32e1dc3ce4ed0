import fc from "fast-check";
import { expect, test } from "vitest";
import { shareInterval } from "../../src/household/share-interval.ts";

/** Score intervals as textbooks print them, 95 % (from memory); the second is z² / (n + z²) by arithmetic. */
test.each([
  [10, 100, 0.0552, 0.1744],
  [0, 10, 0, 0.2775],
  [10, 10, 0.7225, 1],
])("%i of %i lies between %f and %f within 0.0001", (count, of, low, high) => {
  const interval = shareInterval(count, of);
  expect(Math.abs(interval.low - low)).toBeLessThan(1e-4);
  expect(Math.abs(interval.high - high)).toBeLessThan(1e-4);
});

test("holds the share that was seen, and narrows with more samples", () => {
  fc.assert(
    fc.property(fc.integer({ min: 1, max: 500 }), fc.double({ min: 0, max: 1, noNaN: true }), (of, part) => {
      const count = Math.round(part * of);
      const few = shareInterval(count, of);
      const many = shareInterval(count * 4, of * 4);
      expect(few.low).toBeLessThanOrEqual(count / of + 1e-12);
      expect(few.high).toBeGreaterThanOrEqual(count / of - 1e-12);
      expect(many.high - many.low).toBeLessThan(few.high - few.low);
    }),
  );
});

test.each([
  [-1, 10],
  [11, 10],
  [0, 0],
  [Number.NaN, 10],
])("refuses %f of %f", (count, of) => {
  expect(() => shareInterval(count, of)).toThrow(RangeError);
});
