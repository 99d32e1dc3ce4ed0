import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  condensateVolume_L,
  drainCapacity_L_s,
  drainFall_m,
  drainSize_m,
  LEAST_SLOPE,
  PREFERRED_SLOPE,
  pumpHead_m,
  trapDepth,
} from "../../../src/physics/air/condensate-drain.ts";
import { fromBase, toBase } from "../../../src/units/convert.ts";
import { CONDENSATE, DRAINS, SLOPE_in_per_ft } from "../../reference/air.ts";

test.each(DRAINS)("$tons tons of cooling drain through $inside_in in (IPC Table 314.2.2)", ({ tons, inside_in }) => {
  expect(fromBase(drainSize_m(toBase(tons, "ton")), "in")).toBeCloseTo(inside_in, 9);
});

test("10 ft of drain fall 1-1/4 in at least (1/8 in per foot), twice that as the trade prefers", () => {
  expect(fromBase(drainFall_m(toBase(10, "ft")), "in")).toBeCloseTo(10 * SLOPE_in_per_ft, 9);
  expect(PREFERRED_SLOPE / LEAST_SLOPE).toBe(2);
});

test("0.9 lb of condensate are 0.11 gal", () => {
  const volume_gal = fromBase(condensateVolume_L(toBase(CONDENSATE.mass_lb, "lb")), "gal");
  expect(Math.abs(volume_gal - CONDENSATE.volume_gal)).toBeLessThan(0.005);
});

describe("a 3/4 in drain at the least slope", () => {
  const capacity_L_s = drainCapacity_L_s(toBase(0.75, "in"), LEAST_SLOPE);
  test("carries hundreds of times what a heat pump's coil gives: slime and sags stop it, not size", () => {
    const coil_L_s = condensateVolume_L(toBase(CONDENSATE.mass_lb, "lb")) / 3600;
    expect(capacity_L_s / coil_L_s).toBeGreaterThan(100);
  });
  test("carries by Manning with the diameter to 8/3 and the root of the slope", () => {
    expect(drainCapacity_L_s(toBase(1.5, "in"), LEAST_SLOPE) / capacity_L_s).toBeCloseTo(2 ** (8 / 3), 9);
    expect(drainCapacity_L_s(toBase(0.75, "in"), 4 * LEAST_SLOPE) / capacity_L_s).toBeCloseTo(2, 9);
    expect(drainCapacity_L_s(0.02, 0)).toBe(0);
  });
});

describe("a trap", () => {
  test("under 1/2 in w.c. of suction drops 1-1/2 in and seals 3/4 in", () => {
    const { drop_m, seal_m } = trapDepth(toBase(0.5, "in_wc"));
    expect(fromBase(drop_m, "in")).toBeCloseTo(1.5, 6);
    expect(fromBase(seal_m, "in")).toBeCloseTo(0.75, 6);
  });
  test("seals more than the suction as long as this is below 1 in w.c.", () => {
    const suction = fc.double({ min: 0, max: 0.99, noNaN: true });
    fc.assert(
      fc.property(suction, (suction_in_wc) => {
        const { seal_m } = trapDepth(toBase(suction_in_wc, "in_wc"));
        expect(fromBase(seal_m, "in")).toBeGreaterThan(suction_in_wc);
      }),
    );
  });
});

test("a pump lifts at least the rise, and more through a longer or thinner tube", () => {
  expect(pumpHead_m(2, 6, 0.0095, 0)).toBe(2);
  const head_m = pumpHead_m(2, 6, 0.0095, 0.05);
  expect(head_m).toBeGreaterThan(2);
  expect(pumpHead_m(2, 12, 0.0095, 0.05)).toBeGreaterThan(head_m);
  expect(pumpHead_m(2, 6, 0.0063, 0.05)).toBeGreaterThan(head_m);
});

const REFUSED = [
  ["NaN cooling", () => drainSize_m(Number.NaN)],
  ["more cooling than the table has", () => drainSize_m(toBase(251, "ton"))],
  ["condensate below zero", () => condensateVolume_L(-1)],
  ["a NaN slope", () => drainFall_m(3, Number.NaN)],
  ["a drain without width", () => drainCapacity_L_s(0, 0.01)],
  ["a NaN suction", () => trapDepth(Number.NaN)],
  ["a NaN rise", () => pumpHead_m(Number.NaN, 5, 0.01, 0.05)],
] as const;
test.each(REFUSED)("refuses %s", (_, run) => {
  expect(run).toThrow(RangeError);
});
