import fc from "fast-check";
import psychrolib from "psychrolib";
import { beforeAll, describe, expect, test } from "vitest";
import {
  dewPoint_C,
  enhancementFactor,
  enthalpy_kJ_kg,
  humidityRatioFromRelativeHumidity,
  humidityRatioFromWetBulb,
  relativeHumidityFromHumidityRatio,
  saturatedAirTemperature_C,
  saturationHumidityRatio,
  saturationPressure_kPa,
  specificVolume_m3_kg,
  standardPressure_kPa,
  wetBulb_C,
} from "../../src/physics/moist-air.ts";
import { boilingPressure_kPa } from "../../src/physics/water.ts";
import { toBase } from "../../src/units/convert.ts";
import { PRESSURES, RATING_AIR, SATURATION, VAPOUR_PRESSURES, WET_BULBS } from "../reference/moist-air.ts";

const SEA_LEVEL_kPa = 101.325;
const PASCALS = 1000;
const off = (actual: number, expected: number) => Math.abs(actual / expected - 1);

beforeAll(() => psychrolib.SetUnitSystem(psychrolib.SI));

describe("against ASHRAE Fundamentals 2017, chapter 1", () => {
  test.each(SATURATION)("saturated air at $t_C C: humidity ratio $W within $tolerance", ({ t_C, W, tolerance }) => {
    expect(off(saturationHumidityRatio(t_C, SEA_LEVEL_kPa), W)).toBeLessThan(tolerance);
  });

  test.each(SATURATION)("saturated air at $t_C C: enthalpy $h_kJ_kg kJ/kg within $tolerance", (row) => {
    const h_kJ_kg = enthalpy_kJ_kg(row.t_C, saturationHumidityRatio(row.t_C, SEA_LEVEL_kPa));
    expect(off(h_kJ_kg, row.h_kJ_kg)).toBeLessThan(row.tolerance);
  });

  test("at 85 C, near boiling, the equations run 0.8 % from the table, as the file says", () => {
    expect(off(saturationHumidityRatio(85, SEA_LEVEL_kPa), 0.838105)).toBeGreaterThan(0.005);
  });

  test.each(VAPOUR_PRESSURES)("vapour pressure at $t_C C is $p_Pa Pa within 0.03 %", ({ t_C, p_Pa }) => {
    expect(off(saturationPressure_kPa(t_C) * PASCALS, p_Pa)).toBeLessThan(3e-4);
  });

  test.each(PRESSURES)("the standard atmosphere at $altitude_m m is $p_Pa Pa within 1 Pa", ({ altitude_m, p_Pa }) => {
    expect(Math.abs(standardPressure_kPa(altitude_m) * PASCALS - p_Pa)).toBeLessThan(1);
  });

  test("dry air at 25 C takes 0.8443 m3/kg, within 0.1 %", () => {
    expect(off(specificVolume_m3_kg(25, 0, SEA_LEVEL_kPa), 0.8443)).toBeLessThan(1e-3);
  });
});

test("the published rating air, 67.5 F with 56.4 F wet bulb, is 50 % humid within 0.2 points", () => {
  const dryBulb_C = toBase(RATING_AIR.dryBulb_F, "F");
  const W = humidityRatioFromWetBulb(dryBulb_C, toBase(RATING_AIR.wetBulb_F, "F"), SEA_LEVEL_kPa);
  const rh = relativeHumidityFromHumidityRatio(dryBulb_C, W, SEA_LEVEL_kPa);
  expect(Math.abs(rh - RATING_AIR.relativeHumidity)).toBeLessThan(0.002);
});

test("from 0.01 to 90 C the vapour pressure agrees with the steam formulation of IAPWS within 0.05 %", () => {
  for (let t_C = 0.02; t_C <= 90; t_C += 1.7)
    expect(off(saturationPressure_kPa(t_C), boilingPressure_kPa(t_C))).toBeLessThan(5e-4);
});

describe("against psychrolib, which leaves the enhancement factor out", () => {
  const grid = [-30, -10, -0.5, 0, 0.005, 0.5, 10, 19.7, 35, 50].flatMap((t_C) =>
    [0.05, 0.3, 0.5, 0.8, 1].map((rh) => ({ t_C, rh })),
  );

  test.each(grid)("$t_C C, humidity $rh: same equations, given the same vapour pressure", ({ t_C, rh }) => {
    const vapour_Pa = psychrolib.GetVapPresFromRelHum(t_C, rh) * enhancementFactor(t_C, SEA_LEVEL_kPa);
    const W = humidityRatioFromRelativeHumidity(t_C, rh, SEA_LEVEL_kPa);
    const theirs = psychrolib.GetHumRatioFromVapPres(vapour_Pa, SEA_LEVEL_kPa * PASCALS);
    expect(off(W, theirs)).toBeLessThan(1e-9);
    expect(Math.abs(enthalpy_kJ_kg(t_C, W) * PASCALS - psychrolib.GetMoistAirEnthalpy(t_C, W))).toBeLessThan(1e-6);
    const volume = psychrolib.GetMoistAirVolume(t_C, W, SEA_LEVEL_kPa * PASCALS);
    expect(off(specificVolume_m3_kg(t_C, W, SEA_LEVEL_kPa), volume)).toBeLessThan(2e-6);
  });

  test.each(grid.filter(({ rh }) => rh < 1))(
    "$t_C C, humidity $rh: wet bulb within 0.05 K, dew point within 0.02 K",
    ({ t_C, rh }) => {
      const W = humidityRatioFromRelativeHumidity(t_C, rh, SEA_LEVEL_kPa);
      const wet_C = wetBulb_C(t_C, W, SEA_LEVEL_kPa);
      expect(Math.abs(wet_C - psychrolib.GetTWetBulbFromRelHum(t_C, rh, SEA_LEVEL_kPa * PASCALS))).toBeLessThan(0.05);
      if (W > 1e-5)
        expect(Math.abs(dewPoint_C(W, SEA_LEVEL_kPa) - psychrolib.GetTDewPointFromRelHum(t_C, rh))).toBeLessThan(0.02);
    },
  );

  test.each(WET_BULBS)("$t_C C with $wetBulb_C C wet bulb: $W kg/kg but for the factor, within 1 %", (row) => {
    const W = humidityRatioFromWetBulb(row.t_C, row.wetBulb_C, row.p_kPa);
    // The factor raises the saturation value by 0.4 % and the small difference that remains by more.
    expect(W).toBeGreaterThan(row.W);
    expect(off(W, row.W)).toBeLessThan(0.01);
  });
});

describe("for any air", () => {
  const air = fc.record({
    t_C: fc.double({ min: -25, max: 55, noNaN: true }),
    rh: fc.double({ min: 0.02, max: 0.999, noNaN: true }),
    p_kPa: fc.double({ min: 70, max: 105, noNaN: true }),
  });

  test("dew point <= wet bulb <= dry bulb", () => {
    fc.assert(
      fc.property(air, ({ t_C, rh, p_kPa }) => {
        const W = humidityRatioFromRelativeHumidity(t_C, rh, p_kPa);
        fc.pre(W > 2e-6);
        const wet_C = wetBulb_C(t_C, W, p_kPa);
        expect(wet_C).toBeLessThanOrEqual(t_C + 1e-6);
        // Ice on the wick lets the wet bulb differ from the smooth curve by a few hundredths around 0 C.
        expect(dewPoint_C(W, p_kPa)).toBeLessThanOrEqual(wet_C + 0.06);
      }),
    );
  });

  test("humidity ratio to wet bulb and back is the same, but for the jump between water and ice at 0 C", () => {
    fc.assert(
      fc.property(air, ({ t_C, rh, p_kPa }) => {
        const W = humidityRatioFromRelativeHumidity(t_C, rh, p_kPa);
        const wet_C = wetBulb_C(t_C, W, p_kPa);
        fc.pre(Math.abs(wet_C) > 1e-5);
        expect(Math.abs(humidityRatioFromWetBulb(t_C, wet_C, p_kPa) - W)).toBeLessThan(1e-9);
      }),
    );
  });

  test("relative humidity to humidity ratio and back is the same", () => {
    fc.assert(
      fc.property(air, ({ t_C, rh, p_kPa }) => {
        const W = humidityRatioFromRelativeHumidity(t_C, rh, p_kPa);
        expect(off(relativeHumidityFromHumidityRatio(t_C, W, p_kPa), rh)).toBeLessThan(1e-9);
      }),
    );
  });

  test("saturated air of an enthalpy has that enthalpy", () => {
    fc.assert(
      fc.property(fc.double({ min: -40, max: 250, noNaN: true }), (h_kJ_kg) => {
        const t_C = saturatedAirTemperature_C(h_kJ_kg, SEA_LEVEL_kPa);
        fc.pre(Math.abs(t_C) > 0.05);
        expect(Math.abs(enthalpy_kJ_kg(t_C, saturationHumidityRatio(t_C, SEA_LEVEL_kPa)) - h_kJ_kg)).toBeLessThan(1e-4);
      }),
    );
  });
});

describe("refuses", () => {
  const refused: readonly (readonly [string, () => number])[] = [
    ["NaN as temperature", () => saturationPressure_kPa(Number.NaN)],
    ["201 C", () => saturationPressure_kPa(201)],
    ["humidity 1.01", () => humidityRatioFromRelativeHumidity(20, 1.01, SEA_LEVEL_kPa)],
    ["a wet bulb above the dry bulb", () => humidityRatioFromWetBulb(20, 20.5, SEA_LEVEL_kPa)],
    ["more water than saturation holds", () => wetBulb_C(20, 0.02, SEA_LEVEL_kPa)],
    ["49 kPa", () => specificVolume_m3_kg(20, 0.01, 49)],
    ["saturation above boiling", () => saturationHumidityRatio(101, SEA_LEVEL_kPa)],
    ["6000 m", () => standardPressure_kPa(6000)],
    ["a dew point of bone-dry air", () => dewPoint_C(0, SEA_LEVEL_kPa)],
  ];
  test.each(refused)("%s", (_, call) => expect(call).toThrow(RangeError));
});
