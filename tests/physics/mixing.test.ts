import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { hotShare, mixedVolume_L } from "../../src/physics/mixing.ts";
import { waterDensity_kg_m3, waterHeatCapacity_J_kgK } from "../../src/physics/water.ts";
import { toBase } from "../../src/units/convert.ts";

const cold = fc.double({ min: 0, max: 30, noNaN: true });
const rise = fc.double({ min: 1, max: 69, noNaN: true });
const part = fc.double({ min: 0.01, max: 1, noNaN: true });

/** Energy balance, worked example with 70 % of a 50 gal tank drawn hot: V_hot (Th - Tc) / (Tm - Tc), exact. */
const EXAMPLE = { hot_gal: 35, hot_F: 140, cold_F: 50, mixed_F: 120, mixed_gal: 45 };

test("35 gal at 140 °F with 50 °F water make exactly 45 gal at 120 °F", () => {
  const { hot_gal, hot_F, cold_F, mixed_F, mixed_gal } = EXAMPLE;
  const mixed_L = mixedVolume_L(toBase(hot_gal, "gal"), toBase(hot_F, "F"), toBase(cold_F, "F"), toBase(mixed_F, "F"));
  expect(mixed_L).toBeCloseTo(toBase(mixed_gal, "gal"), 9);
});

describe("the energy balance closes", () => {
  test("hot share times hot plus the rest times cold is the mix", () => {
    fc.assert(
      fc.property(cold, rise, part, (cold_C, rise_K, of) => {
        const [hot_C, mixed_C] = [cold_C + rise_K, cold_C + rise_K * of];
        const f = hotShare(hot_C, cold_C, mixed_C);
        expect(f * hot_C + (1 - f) * cold_C).toBeCloseTo(mixed_C, 9);
      }),
    );
  });

  const shrinks = [
    [140, 50, 120, 0.995],
    [180, 50, 105, 0.978],
  ] as const;
  test.each(shrinks)(
    "by weight and with real water, %f and %f to %f °F give %f of the volume",
    (hot_F, cold_F, mixed_F, of) => {
      const [hot_C, cold_C, mixed_C] = [toBase(hot_F, "F"), toBase(cold_F, "F"), toBase(mixed_F, "F")];
      const byWeight = heatBetween(cold_C, mixed_C) / heatBetween(cold_C, hot_C);
      expect(Math.abs(byWeight / hotShare(hot_C, cold_C, mixed_C) - 1)).toBeLessThan(1e-3);
      const real_L = (100 * waterDensity_kg_m3(hot_C)) / byWeight / waterDensity_kg_m3(mixed_C);
      expect(Math.abs(real_L / mixedVolume_L(100, hot_C, cold_C, mixed_C) - of)).toBeLessThan(1e-3);
    },
  );
});

/** Heat to warm a kilogram of water [J], heat capacity summed in small steps. */
function heatBetween(from_C: number, to_C: number): number {
  const steps = 500;
  const step_K = (to_C - from_C) / steps;
  let heat_J = 0;
  for (let i = 0; i < steps; i++) heat_J += waterHeatCapacity_J_kgK(from_C + (i + 0.5) * step_K) * step_K;
  return heat_J;
}

describe("limits", () => {
  test("no hot water mixes to no water", () => expect(mixedVolume_L(0, 60, 10, 40)).toBe(0));
  test("a mix as hot as the tank is all hot", () => expect(hotShare(60, 10, 60)).toBe(1));
  test("a mix as cold as the cold is none of it", () => expect(hotShare(60, 10, 10)).toBe(0));
  test("a cooler mix or a hotter tank gives more", () => {
    expect(mixedVolume_L(100, 60, 10, 40)).toBeGreaterThan(mixedVolume_L(100, 60, 10, 45));
    expect(mixedVolume_L(100, 65, 10, 45)).toBeGreaterThan(mixedVolume_L(100, 60, 10, 45));
  });
});

const REFUSED = [
  ["a mix above the hot water", () => hotShare(60, 10, 61)],
  ["a mix below the cold water", () => hotShare(60, 10, 9)],
  ["hot no warmer than cold", () => hotShare(10, 10, 10)],
  ["a mix as cold as the cold water, which is endless", () => mixedVolume_L(100, 60, 10, 10)],
  ["NaN", () => hotShare(Number.NaN, 10, 40)],
  ["a NaN mix", () => hotShare(60, 10, Number.NaN)],
  ["a negative volume", () => mixedVolume_L(-1, 60, 10, 40)],
] as const;
test.each(REFUSED)("refuses %s", (_, run) => {
  expect(run).toThrow(RangeError);
});
