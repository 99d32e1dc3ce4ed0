import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { condensatePerHeat_kg_J } from "../../src/physics/cooling-coil.ts";
import {
  askMap,
  evaluateBiquadratic,
  isClamped,
  type PerformanceData,
  prepareMap,
  setAir,
} from "../../src/physics/heat-pump.ts";
import {
  enthalpy_kJ_kg,
  humidityRatioFromRelativeHumidity,
  specificVolume_m3_kg,
} from "../../src/physics/moist-air.ts";
import { CARNOT, fitBiquadratic, relativeCop, relativeHeat } from "../fixtures/carnot-map.ts";
import { FITTED_COP, FITTED_HEAT, INTEGRATED_50, INTEGRATED_80, PLUG_IN_50 } from "../fixtures/water-heaters.ts";
import { A_VALUES, FIRST_LAW, SET_A, SET_B, UNIT_RANGES } from "../reference/heat-pump.ts";

const SET_A_UNIT: PerformanceData = {
  ratedHeat_W: 1500,
  ratedCop: 3,
  ratingPoint: { wetBulb_C: 13.5556, water_C: 50 },
  heatCurve: SET_A.heat,
  copCurve: SET_A.cop,
  fitted: { wetBulb_C: [0, 25], water_C: [20, 60] },
};

function at(data: PerformanceData, wetBulb_C: number, water_C: number) {
  const map = prepareMap(data);
  setAir(map, wetBulb_C);
  map.water_C = water_C;
  askMap(map);
  return { heat_W: map.heat_W, cop: map.heat_W / map.compressor_W, isClamped: isClamped(map) };
}

describe("published curves", () => {
  test.each(A_VALUES)("set A at %d C wet bulb and %d C water: heat x %d, COP x %d within 1e-3", (x, y, heat, cop) => {
    expect(Math.abs(evaluateBiquadratic(SET_A.heat, x, y) - heat)).toBeLessThan(1e-3);
    expect(Math.abs(evaluateBiquadratic(SET_A.cop, x, y) - cop)).toBeLessThan(1e-3);
  });

  test("set B is 0.992 and 0.968 at its own rating point", () => {
    const { wetBulb_C, water_C } = SET_B.rating;
    expect(Math.abs(evaluateBiquadratic(SET_B.heat, wetBulb_C, water_C) - SET_B.atRating.heat)).toBeLessThan(1e-3);
    expect(Math.abs(evaluateBiquadratic(SET_B.cop, wetBulb_C, water_C) - SET_B.atRating.cop)).toBeLessThan(1e-3);
  });

  test("set B scaled gives its rated 4000 W, 1250 W of power and 2750 W from the air exactly", () => {
    const map = prepareMap({
      ratedHeat_W: FIRST_LAW.heat_W,
      ratedCop: FIRST_LAW.cop,
      ratingPoint: SET_B.rating,
      heatCurve: SET_B.heat,
      copCurve: SET_B.cop,
      fitted: { wetBulb_C: [0, 40], water_C: [20, 90] },
    });
    expect(map.heat_W).toBeCloseTo(FIRST_LAW.heat_W, 9);
    expect(map.compressor_W).toBeCloseTo(FIRST_LAW.power_W, 9);
    expect(map.heat_W - map.compressor_W).toBeCloseTo(FIRST_LAW.fromAir_W, 9);
  });

  test("set A's COP rises with wet bulb and falls with water temperature at every degree from 0/20 to 25/60 C", () => {
    for (let x = 0; x < 25; x += 1)
      for (let y = 20; y < 60; y += 1) {
        expect(at(SET_A_UNIT, x + 1, y).cop).toBeGreaterThan(at(SET_A_UNIT, x, y).cop);
        expect(at(SET_A_UNIT, x, y + 1).cop).toBeLessThan(at(SET_A_UNIT, x, y).cop);
      }
  });
});

describe("the map", () => {
  test("the folded quadratics equal the biquadratic", () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 25, noNaN: true }), fc.double({ min: 20, max: 60, noNaN: true }), (x, y) => {
        const scale = SET_A_UNIT.ratedHeat_W / evaluateBiquadratic(SET_A.heat, 13.5556, 50);
        expect(at(SET_A_UNIT, x, y).heat_W).toBeCloseTo(scale * evaluateBiquadratic(SET_A.heat, x, y), 6);
      }),
    );
  });

  test.each([
    ["air colder than fitted", -10, 40, 0, 40],
    ["air warmer than fitted", 31, 40, 25, 40],
    ["water colder than fitted", 10, 5, 10, 20],
    ["water hotter than fitted", 10, 75, 10, 60],
  ])("%s counts as the nearest edge and says so", (_, x, y, edgeX, edgeY) => {
    expect(at(SET_A_UNIT, x, y)).toMatchObject({ heat_W: at(SET_A_UNIT, edgeX, edgeY).heat_W, isClamped: true });
    expect(at(SET_A_UNIT, edgeX, edgeY).isClamped).toBe(false);
  });

  test("a curve that falls below zero gives no heat, and COP stops at 1", () => {
    const bad: PerformanceData = {
      ...SET_A_UNIT,
      heatCurve: [1, 0, 0, -0.02, 0, 0.001],
      copCurve: [1, 0, 0, -0.018, 0, 0],
    };
    expect(at(bad, 0, 60).heat_W).toBe(0);
    const cold: PerformanceData = { ...SET_A_UNIT, copCurve: [1, 0, 0, -0.016, 0, 0], ratedCop: 1.2 };
    expect(at(cold, 10, 60).cop).toBeCloseTo(1, 12);
  });

  test("refuses a wet bulb of NaN", () => {
    expect(() => setAir(prepareMap(SET_A_UNIT), Number.NaN)).toThrow(RangeError);
  });
});

describe("the invented units' maps", () => {
  test("their coefficients are the fit of the stated share of Carnot, to the printed five figures", () => {
    fitBiquadratic(relativeCop).forEach((c, i) => {
      expect(Math.abs(c - (FITTED_COP[i] ?? 0))).toBeLessThan(1e-4 * Math.abs(c) + 1e-15);
    });
    fitBiquadratic(relativeHeat).forEach((c, i) => {
      expect(Math.abs(c - (FITTED_HEAT[i] ?? 0))).toBeLessThan(1e-4 * Math.abs(c) + 1e-15);
    });
  });

  test("the fit keeps within 6 % of that share where air is at most 20 C wet bulb", () => {
    for (let x = 0; x <= 20; x += 2.5)
      for (let y = 10; y <= 65; y += 5)
        expect(Math.abs(evaluateBiquadratic(FITTED_COP, x, y) / relativeCop(x, y) - 1)).toBeLessThan(0.06);
  });

  test.each([INTEGRATED_50, INTEGRATED_80, PLUG_IN_50])(
    "$id: power, cooling and airflow are of the size of lab reports",
    ({ heatPump }) => {
      if (!heatPump) throw new Error("no heat pump on the sheet");
      const power_W = heatPump.ratedHeat_W / heatPump.ratedCop;
      const [lowest_W, highest_W] = UNIT_RANGES.power_W;
      expect(power_W).toBeGreaterThan(lowest_W);
      expect(power_W).toBeLessThan(highest_W);
      expect(heatPump.ratedHeat_W - power_W).toBeLessThan(UNIT_RANGES.cooling_W[1]);
      expect(heatPump.airflow_m3_s).toBeGreaterThan(UNIT_RANGES.airflow_m3_s[0]);
      expect(heatPump.airflow_m3_s).toBeLessThan(UNIT_RANGES.airflow_m3_s[1]);
    },
  );

  test("their COP rises with wet bulb and falls with water temperature over the fitted range", () => {
    const data = INTEGRATED_50.heatPump;
    if (!data) throw new Error("no heat pump on the sheet");
    for (let x = CARNOT.grid.wetBulb_C[0]; x < CARNOT.grid.wetBulb_C[1]; x += 2.5)
      for (let y: number = CARNOT.grid.water_C[0]; y < CARNOT.grid.water_C[1]; y += 2.5) {
        expect(at(data, x + 2.5, y).cop).toBeGreaterThan(at(data, x, y).cop);
        expect(at(data, x, y + 2.5).cop).toBeLessThan(at(data, x, y).cop);
      }
  });
});

describe("condensate", () => {
  const room = (dryBulb_C: number, rh: number) => ({
    dryBulb_C,
    humidityRatio: humidityRatioFromRelativeHumidity(dryBulb_C, rh, 101.325),
    pressure_kPa: 101.325,
  });

  test("a coil that stays above the dew point stays dry: 40 C at 10 % humidity, 900 W", () => {
    expect(condensatePerHeat_kg_J(room(40, 0.1), 900, 0.1, 0.2)).toBe(0);
  });

  test("no cooling, no water", () => {
    expect(condensatePerHeat_kg_J(room(25, 0.7), 0, 0.1, 0.2)).toBe(0);
  });

  test("more humid air gives more water, and latent heat never passes the heat taken", () => {
    const air = fc.record({
      t_C: fc.double({ min: 8, max: 35, noNaN: true }),
      rh: fc.double({ min: 0.2, max: 0.9, noNaN: true }),
      cooling_W: fc.double({ min: 300, max: 1500, noNaN: true }),
    });
    fc.assert(
      fc.property(air, ({ t_C, rh, cooling_W }) => {
        const drier = condensatePerHeat_kg_J(room(t_C, rh), cooling_W, 0.1, 0.2);
        const wetter = condensatePerHeat_kg_J(room(t_C, rh + 0.08), cooling_W, 0.1, 0.2);
        expect(wetter).toBeGreaterThanOrEqual(drier);
        const vaporisation_J_kg = 2_400_000;
        expect(wetter * vaporisation_J_kg).toBeLessThan(1);
      }),
    );
  });

  test("25 C at 65 %, 900 W: the air's heat balance closes with the water that left, within 1 %", () => {
    const air = room(25, 0.65);
    const perHeat = condensatePerHeat_kg_J(air, 900, 0.1, 0.2);
    const air_kg_s = 0.1 / specificVolume_m3_kg(25, air.humidityRatio, 101.325);
    const outRatio = air.humidityRatio - (perHeat * 900) / air_kg_s;
    const out_kJ_kg = enthalpy_kJ_kg(25, air.humidityRatio) - 0.9 / air_kg_s;
    // Leaving air between the entering state and the coil surface: cooler, drier, not below freezing here.
    const out_C = (out_kJ_kg - outRatio * 2501) / (1.006 + 1.86 * outRatio);
    expect(perHeat).toBeGreaterThan(0);
    expect(out_C).toBeGreaterThan(5);
    expect(out_C).toBeLessThan(25);
    const sensible_W = air_kg_s * (1006 + 1860 * air.humidityRatio) * (25 - out_C);
    const latent_W = perHeat * 900 * (2_501_000 + 1860 * out_C);
    expect(Math.abs(sensible_W + latent_W - 900)).toBeLessThan(9);
  });
});
