import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  acceptanceShare,
  expandedVolume_L,
  nextStockSize_L,
  tankForAcceptance_L,
  vesselGrowth_L,
} from "../../src/physics/expansion-tank.ts";
import { fromBase, toBase } from "../../src/units/convert.ts";
import { ACCEPTANCE, FULL_FORMULA, GROWTH_50 } from "../reference/expansion.ts";

const gal = (value_L: number) => fromBase(value_L, "gal");
const pressure = fc.double({ min: 0, max: 900, noNaN: true });

describe.each(FULL_FORMULA)("the full formula, case $name", (row) => {
  const system_L = toBase(row.system_gal, "gal");
  const [cold_C, hot_C] = [toBase(row.cold_F, "F"), toBase(row.hot_F, "F")];
  const [line_kPa, ceiling_kPa] = [toBase(row.line_psi, "psi"), toBase(row.ceiling_psi, "psi")];
  const expanded_L = expandedVolume_L(system_L, cold_C, hot_C);
  const lessMetal_L = expanded_L - vesselGrowth_L(system_L, hot_C - cold_C, "steel");
  const found = [
    [gal(expanded_L), row.expanded_gal, "water grows by"],
    [gal(lessMetal_L), row.lessMetal_gal, "water less metal grows by"],
    [gal(tankForAcceptance_L(expanded_L, line_kPa, ceiling_kPa)), row.tank_gal, "tank without metal is"],
    [gal(tankForAcceptance_L(lessMetal_L, line_kPa, ceiling_kPa)), row.tankLessMetal_gal, "tank with steel is"],
  ] as const;

  test.each(found)("%f gal is %f gal within 0.1 % (%s)", (actual, expected) => {
    expect(Math.abs(actual / expected - 1)).toBeLessThan(1e-3);
  });
});

test("two gallons between 80 and 135 psi take a tank of 5.44 gal (published example)", () => {
  const { acceptance_gal, line_psia, ceiling_psia, atmosphere_psi, tank_gal } = ACCEPTANCE;
  const [line_kPa, ceiling_kPa] = [line_psia, ceiling_psia].map((psia) => toBase(psia - atmosphere_psi, "psi"));
  const actual = gal(tankForAcceptance_L(toBase(acceptance_gal, "gal"), line_kPa ?? 0, ceiling_kPa ?? 0));
  expect(Math.abs(actual - tank_gal)).toBeLessThan(0.01);
});

test("50 gal from 50 to 140 °F grow by 0.84 gal (published)", () => {
  const { system_gal, cold_F, hot_F, expanded_gal } = GROWTH_50;
  const actual = gal(expandedVolume_L(toBase(system_gal, "gal"), toBase(cold_F, "F"), toBase(hot_F, "F")));
  expect(Math.abs(actual - expanded_gal)).toBeLessThan(0.005);
});

describe("expansion", () => {
  test("of no water, or of water that is not heated, is zero", () => {
    expect(expandedVolume_L(0, 10, 60)).toBe(0);
    expect(expandedVolume_L(200, 60, 60)).toBe(0);
    expect(vesselGrowth_L(200, 0, "steel")).toBe(0);
    expect(vesselGrowth_L(200, 50, "none")).toBe(0);
    expect(tankForAcceptance_L(0, 400, 900)).toBe(0);
  });

  test("is never below zero where water shrinks on warming, 32 to 39 °F", () => {
    expect(expandedVolume_L(200, 0, 4)).toBe(0);
  });

  test("grows in step with the volume", () => {
    const volume = fc.double({ min: 1, max: 5000, noNaN: true });
    fc.assert(
      fc.property(volume, (system_L) => {
        const twice = expandedVolume_L(2 * system_L, 10, 60);
        expect(twice / expandedVolume_L(system_L, 10, 60)).toBeCloseTo(2, 9);
      }),
    );
  });
});

describe("acceptance", () => {
  test("equals the air squeezed out: tank times share is what Boyle leaves", () => {
    fc.assert(
      fc.property(pressure, pressure, pressure, (precharge_kPa, line_kPa, climb_kPa) => {
        const ceiling_kPa = line_kPa + climb_kPa;
        const share = acceptanceShare(precharge_kPa, line_kPa, ceiling_kPa);
        const air = (at_kPa: number) => Math.min(1, (precharge_kPa + 101.325) / (at_kPa + 101.325));
        expect(share).toBeCloseTo(air(line_kPa) - air(ceiling_kPa), 12);
      }),
    );
  });

  test("is best when the precharge is the line pressure", () => {
    const best = acceptanceShare(400, 400, 900);
    for (const precharge_kPa of [0, 200, 399, 401, 600, 899])
      expect(acceptanceShare(precharge_kPa, 400, 900)).toBeLessThan(best);
  });

  test("is zero when the precharge is at or above the ceiling", () => {
    expect(acceptanceShare(900, 400, 900)).toBe(0);
    expect(acceptanceShare(1200, 400, 900)).toBe(0);
  });

  test("asks for a larger tank the nearer the line is to the ceiling", () => {
    const sizes = [100, 300, 500, 700, 850].map((line_kPa) => tankForAcceptance_L(5, line_kPa, 900));
    expect(sizes).toEqual([...sizes].sort((a, b) => a - b));
    expect(new Set(sizes).size).toBe(5);
  });
});

describe("stock sizes", () => {
  const cases = [
    [0, 2],
    [2, 2],
    [2.001, 4.4],
    [4.4, 4.4],
    [4.5, 8],
    [80, 80],
  ] as const;
  test.each(cases)("after %f gal comes %f gal", (minimum_gal, size_gal) => {
    expect(gal(nextStockSize_L(toBase(minimum_gal, "gal")) ?? 0)).toBeCloseTo(size_gal, 9);
  });

  test("none is beyond 80 gal", () => {
    expect(nextStockSize_L(toBase(80.1, "gal"))).toBeUndefined();
  });
});

const REFUSED = [
  ["NaN water", () => expandedVolume_L(Number.NaN, 10, 60)],
  ["a negative tank", () => expandedVolume_L(-1, 10, 60)],
  ["hot below cold", () => expandedVolume_L(100, 60, 10)],
  ["a NaN rise", () => vesselGrowth_L(100, Number.NaN, "steel")],
  ["a ceiling below the line", () => tankForAcceptance_L(5, 900, 400)],
  ["a NaN line", () => tankForAcceptance_L(5, Number.NaN, 400)],
  ["a NaN precharge", () => acceptanceShare(Number.NaN, 400, 900)],
  ["a pressure below none", () => acceptanceShare(-1, 400, 900)],
  ["a NaN minimum", () => nextStockSize_L(Number.NaN)],
] as const;
test.each(REFUSED)("refuses %s", (_, run) => {
  expect(run).toThrow(RangeError);
});
