import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  boilingPressure_kPa,
  saturatedDensity_kg_m3,
  waterDensity_kg_m3,
  waterGrowth,
  waterHeatCapacity_J_kgK,
} from "../../src/physics/water.ts";
import { waterViscosity_Pa_s } from "../../src/physics/water-viscosity.ts";
import { fromBase, toBase } from "../../src/units/convert.ts";
import {
  AT_60_PSIG,
  AT_ONE_ATMOSPHERE,
  BOILING_CHECKS,
  densityBySr6,
  GROWTH_60_TO_140,
  RELEASE_CHECKS,
  SATURATED_VOLUMES,
  VISCOSITY,
} from "../reference/water.ts";

/** 1 ft3/lb in m3/kg, exact from foot and pound. */
const FT3_LB = 0.3048 ** 3 / 0.45359237;
/** 1 Btu/(lb °F) in J/(kg K), exact. */
const BTU_LB_F = 4186.8;
const PSIA_60 = toBase(74.696, "psi");

describe("density", () => {
  test.each(SATURATED_VOLUMES)("saturated at %f °F is %f ft3/lb within 1e-6", (at_F, expected) => {
    const actual = 1 / saturatedDensity_kg_m3(toBase(at_F, "F")) / FT3_LB;
    expect(Math.abs(actual - expected)).toBeLessThan(1e-6);
  });

  test.each(AT_ONE_ATMOSPHERE)("at one atmosphere and %f °F is %f kg/m3 within 0.02", (at_F, expected) => {
    expect(Math.abs(waterDensity_kg_m3(toBase(at_F, "F")) - expected)).toBeLessThan(0.02);
  });

  test.each(AT_60_PSIG)("at 60 psig and %f °F is %f lb/ft3 within 0.01 %", (at_F, expected) => {
    const actual = fromBase(waterDensity_kg_m3(toBase(at_F, "F"), PSIA_60), "lb_ft3");
    expect(Math.abs(actual / expected - 1)).toBeLessThan(1e-4);
  });

  test.each(RELEASE_CHECKS)("matches the release's own check at %f K and %f MPa in nine digits", (T, p, v) => {
    expect(1 / waterDensity_kg_m3(T - 273.15, p * 1000)).toBeCloseTo(v, 11);
  });

  test("agrees with the more exact SR6 within 0.002 %, five digits, from 32 to 210 °F", () => {
    for (let at_F = 32; at_F <= 210; at_F++) {
      const at_C = toBase(at_F, "F");
      expect(Math.abs(waterDensity_kg_m3(at_C, 100) / densityBySr6(at_C) - 1)).toBeLessThan(2e-5);
    }
  });

  test("is greatest near 39 °F", () => {
    const densities = [34, 36, 38, 39.2, 41, 43, 45].map((at_F) => waterDensity_kg_m3(toBase(at_F, "F")));
    expect(densities.indexOf(Math.max(...densities))).toBe(3);
  });
});

describe("growth", () => {
  test("from 60 to 140 °F is 0.0160644 within 2e-6", () => {
    expect(Math.abs(waterGrowth(toBase(60, "F"), toBase(140, "F")) - GROWTH_60_TO_140)).toBeLessThan(2e-6);
  });

  test("of water that stays as warm as it was is zero", () => {
    fc.assert(fc.property(fc.double({ min: 0, max: 100, noNaN: true }), (at_C) => waterGrowth(at_C, at_C) === 0));
  });

  test("rises with the hot temperature above 40 °F", () => {
    const hot = fc.double({ min: 5, max: 99, noNaN: true });
    fc.assert(fc.property(hot, (hot_C) => waterGrowth(4.4, hot_C + 1) > waterGrowth(4.4, hot_C)));
  });
});

describe("other properties", () => {
  test.each(BOILING_CHECKS)("boiling pressure matches the release's own check at %f K in nine digits", (T, p) => {
    expect(boilingPressure_kPa(T - 273.15)).toBeCloseTo(p * 1000, 8);
  });

  test("boils at one atmosphere at 100 °C within 0.3 %", () => {
    expect(Math.abs(boilingPressure_kPa(100) / 101.325 - 1)).toBeLessThan(0.003);
  });

  test.each(AT_60_PSIG)(
    "heat capacity at 60 psig and %f °F (%f lb/ft3) is %f Btu/lb-F within 0.01 %",
    (at_F, _, expected) => {
      const actual = waterHeatCapacity_J_kgK(toBase(at_F, "F"), PSIA_60) / BTU_LB_F;
      expect(Math.abs(actual / expected - 1)).toBeLessThan(1e-4);
    },
  );

  test.each(RELEASE_CHECKS)("heat capacity matches the release's own check at %f K and %f MPa", (T, p, _, cp) => {
    expect(waterHeatCapacity_J_kgK(T - 273.15, p * 1000)).toBeCloseTo(cp, 4);
  });

  test.each(VISCOSITY)("viscosity at %f °C is %f µPa s within 0.05 %", (at_C, expected) => {
    expect(Math.abs((waterViscosity_Pa_s(at_C) * 1e6) / expected - 1)).toBeLessThan(5e-4);
  });

  test("viscosity falls as water warms", () => {
    const at = fc.double({ min: 0, max: 99, noNaN: true });
    fc.assert(fc.property(at, (at_C) => waterViscosity_Pa_s(at_C + 1) < waterViscosity_Pa_s(at_C)));
  });
});

const OUTSIDE = [Number.NaN, -0.1, 100.1, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
test.each(OUTSIDE)("refuses water at %f °C", (at_C) => {
  expect(() => waterDensity_kg_m3(at_C)).toThrow(RangeError);
  expect(() => waterHeatCapacity_J_kgK(at_C)).toThrow(RangeError);
  expect(() => waterViscosity_Pa_s(at_C)).toThrow(RangeError);
  expect(() => boilingPressure_kPa(at_C)).toThrow(RangeError);
  expect(() => waterGrowth(10, at_C)).toThrow(RangeError);
});
test.each([Number.NaN, -1, 10_001])("refuses a pressure of %f kPa", (pressure_kPa) => {
  expect(() => waterDensity_kg_m3(20, pressure_kPa)).toThrow(RangeError);
});
