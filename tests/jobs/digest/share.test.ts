import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { medianOf, shareOf } from "../../../src/jobs/digest/share.ts";

/** Score intervals without continuity correction as R. G. Newcombe prints them, Stat. Med. 17 (1998) 857-872, table I (from memory). */
const PRINTED = [
  [81, 263, 0.2553, 0.3662],
  [15, 148, 0.0624, 0.1605],
  [0, 20, 0, 0.1611],
  [1, 29, 0.0061, 0.1718],
] as const;

describe("a share", () => {
  test.each(PRINTED)("%i of %i lies between %f and %f", (some, all, low, high) => {
    const share = shareOf(some, all);
    expect(share?.share).toBeCloseTo(some / all, 12);
    expect(share?.low).toBeCloseTo(low, 4);
    expect(share?.high).toBeCloseTo(high, 4);
  });

  test("its ends are where the count would be 1.96 standard errors away, solved by halving", () => {
    const miss = (p: number, some: number, all: number) =>
      Math.abs(some / all - p) - 1.959964 * Math.sqrt((p * (1 - p)) / all);
    fc.assert(
      fc.property(fc.integer({ min: 20, max: 5000 }), fc.double({ min: 0.02, max: 0.98, noNaN: true }), (all, part) => {
        const some = Math.round(all * part);
        const solve = (outer: number) => {
          let [inside, outside] = [some / all, outer];
          for (let step = 0; step < 60; step++) {
            const middle = (inside + outside) / 2;
            if (miss(middle, some, all) > 0) outside = middle;
            else inside = middle;
          }
          return inside;
        };
        expect(shareOf(some, all)?.low).toBeCloseTo(solve(0), 6);
        expect(shareOf(some, all)?.high).toBeCloseTo(solve(1), 6);
      }),
      { numRuns: 100 },
    );
  });

  test.each([
    [0, 0],
    [1, 3],
    [19, 19],
    [5, 4],
    [Number.NaN, 30],
  ])("%d of %d is no share", (some, all) => expect(shareOf(some, all)).toBeUndefined());
});

test("the median is the middle one, or between the middle two", () => {
  expect([[3, 1, 2], [4, 1, 3, 2], [7], []].map(medianOf)).toEqual([2, 2.5, 7, undefined]);
});
