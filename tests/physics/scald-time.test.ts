import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { SCALD_FROM_C, scaldTime_s } from "../../src/physics/scald-time.ts";
import { toBase } from "../../src/units/convert.ts";
import { SCALD_ROWS } from "../reference/scald.ts";

/** Rounding of a temperature from °F and back. */
const HAIR = 1e-9;

const at = (at_F: number) => scaldTime_s(toBase(at_F, "F")) ?? { shortest_s: Number.NaN, longest_s: Number.NaN };

test.each(SCALD_ROWS)("$time_s s at $at_F °F ($by, $limit) lies inside the range", ({ at_F, time_s, limit }) => {
  const { shortest_s, longest_s } = at(at_F);
  if (limit === "over") expect(longest_s).toBeGreaterThan(time_s);
  else if (limit === "under") expect(shortest_s).toBeLessThan(time_s);
  else {
    expect(time_s).toBeGreaterThanOrEqual(shortest_s * (1 - HAIR));
    expect(time_s).toBeLessThanOrEqual(longest_s * (1 + HAIR));
  }
});

describe("the ends of the range are printed numbers, not wider than the sources", () => {
  const nodes = [
    [120, 300, 600],
    [140, 3, 6],
    [150, 1.5, 2],
  ] as const;
  test.each(nodes)("at %f °F: %f to %f s", (at_F, shortest_s, longest_s) => {
    expect(at(at_F).shortest_s).toBeCloseTo(shortest_s, 9);
    expect(at(at_F).longest_s).toBeCloseTo(longest_s, 9);
  });
});

test("hotter water burns sooner, by every source", () => {
  const water = fc.double({ min: 113, max: 154.8, noNaN: true });
  fc.assert(
    fc.property(water, (at_F) => {
      const cooler = at(at_F);
      const hotter = at(at_F + 0.2);
      expect(hotter.shortest_s).toBeLessThan(cooler.shortest_s);
      expect(hotter.longest_s).toBeLessThan(cooler.longest_s);
    }),
  );
});

test("the shortest time is never over the longest, from 113 to 210 °F", () => {
  for (let at_F = 113; at_F <= 210; at_F += 0.25) {
    const { shortest_s, longest_s } = at(at_F);
    expect(shortest_s).toBeLessThanOrEqual(longest_s);
  }
});

test("no time is given below 113 °F, where the sources stop", () => {
  expect(scaldTime_s(toBase(112.9, "F"))).toBeUndefined();
  expect(SCALD_FROM_C).toBeCloseTo(45, 9);
  expect(scaldTime_s(SCALD_FROM_C)).toEqual({ shortest_s: 7200, longest_s: 10_800 });
});

test("above 156 °F all that is said is under a second", () => {
  expect(at(157)).toEqual({ shortest_s: 0, longest_s: 1 });
});

test.each([Number.NaN, -1, 101])("refuses water at %f °C", (water_C) => {
  expect(() => scaldTime_s(water_C)).toThrow(RangeError);
});
