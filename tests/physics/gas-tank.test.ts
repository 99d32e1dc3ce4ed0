import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { gasTank, lossFromRating_W_K, storageDay_kWh } from "../../src/physics/gas-tank.ts";

/** Medium draw pattern: 55 gal raised by 67 °F, 30,696 Btu at 8.33 Btu/gal-°F: arithmetic on the published totals. */
const RATED = { tank_C: 51.667, air_C: 19.722, delivered_kWh: 8.9961 };
const GAS_W = 11_723;

describe("rating", () => {
  test.each([0.45, 0.58, 0.62, 0.7, 0.8, 0.9])(
    "a gas tank rated %f uses its rated energy in the rated day",
    (rated) => {
      const used_kWh = storageDay_kWh(gasTank(rated, RATED), RATED.delivered_kWh, RATED.tank_C, RATED.air_C);
      expect(Math.abs(used_kWh - RATED.delivered_kWh / rated)).toBeLessThan(1e-9);
    },
  );
  test("any storage heater does, whatever its recovery and input", () => {
    const cases = fc.tuple(
      fc.double({ min: 0.5, max: 1, noNaN: true }),
      fc.double({ min: 0.5, max: 1, noNaN: true }),
      fc.double({ min: 2000, max: 30_000, noNaN: true }),
    );
    fc.assert(
      fc.property(cases, ([recovery, part, input_W]) => {
        const efficiency = Math.max(0.2, recovery * part);
        const loss_W_K = lossFromRating_W_K(efficiency, recovery, input_W, RATED);
        const heater = { recovery, input_W, loss_W_K };
        const used_kWh = storageDay_kWh(heater, RATED.delivered_kWh, RATED.tank_C, RATED.air_C);
        expect(Math.abs(used_kWh * efficiency - RATED.delivered_kWh)).toBeLessThan(1e-9);
      }),
      { seed: 7 },
    );
  });
  test("a heater as good as its recovery loses nothing while it stands", () => {
    expect(lossFromRating_W_K(0.8, 0.8, GAS_W, RATED)).toBe(0);
  });
});

describe("a day", () => {
  const heater = gasTank(0.58, RATED);
  test("without draws takes the standing loss alone: 24 h of UA dT", () => {
    expect(storageDay_kWh(heater, 0, 50, 20)).toBeCloseTo((24 * heater.loss_W_K * 30) / 1000, 12);
  });
  test("in air as warm as the tank takes the drawn heat over the recovery efficiency", () => {
    expect(storageDay_kWh(heater, 10, 50, 50)).toBeCloseTo(10 / 0.78, 12);
  });
  test("takes more for more water and for a hotter tank", () => {
    expect(storageDay_kWh(heater, 11, 50, 20)).toBeGreaterThan(storageDay_kWh(heater, 10, 50, 20));
    expect(storageDay_kWh(heater, 10, 60, 20)).toBeGreaterThan(storageDay_kWh(heater, 10, 50, 20));
  });
  test("is better for a better rating at every size of draw", () => {
    const better = gasTank(0.66, RATED);
    for (const heat_kWh of [0, 5, 10, 20])
      expect(storageDay_kWh(better, heat_kWh, 52, 18)).toBeLessThan(storageDay_kWh(heater, heat_kWh, 52, 18));
  });
});

test.each([Number.NaN, 0.1, 0.79, 1.2])("refuses a rated efficiency of %f at a recovery of 0.78", (efficiency) => {
  expect(() => lossFromRating_W_K(efficiency, 0.78, GAS_W, RATED)).toThrow(RangeError);
});
test.each([Number.NaN, -1])("refuses a day of %f kWh", (heat_kWh) => {
  expect(() => storageDay_kWh(gasTank(0.58, RATED), heat_kWh, 50, 20)).toThrow(RangeError);
});
