import { describe, expect, test } from "vitest";
import { plainElectricTank } from "../../src/equipment/plain-tank.ts";
import { POLICIES } from "../../src/equipment/policies.ts";
import { mainsTemperature_C } from "../../src/household/mains-temperature.ts";
import { burnOldGas_kWh, simulateOldElectric, wantedHeat_kWh } from "../../src/household/old-heater.ts";
import { dailyAir_C, dailyMains_C, sampleYear, simulateYear } from "../../src/household/year.ts";
import { storageDay_kWh } from "../../src/physics/gas-tank.ts";
import { toBase } from "../../src/units/convert.ts";
import { seedBooks } from "../support/ask-with-seeds.ts";

const [OSTROWICK, SALTMERE] = seedBooks.places;
const UNIT = seedBooks.catalogue.find(({ id }) => id === "hollin-80")?.heater;
if (OSTROWICK === undefined || SALTMERE === undefined || UNIT === undefined) throw new Error("the seeds changed");
const unit = UNIT;

const YEAR = sampleYear({ people: 3, bathrooms: 2 }, toBase(105, "F"));
const SETPOINT_C = toBase(125, "F");
const run = (place = OSTROWICK, mode: keyof typeof POLICIES = "heat_pump_first") =>
  simulateYear(
    { unit, place, supply_V: 240, plan: [{ from_s: 0, policy: POLICIES[mode], setpoint_C: SETPOINT_C }] },
    YEAR,
  );
const cold = run();
const sumOf = (values: Float64Array) => values.reduce((sum, value) => sum + value, 0);

describe("a simulated year", () => {
  test("has 8760 hours whose electricity adds up to the year's", () => {
    expect(cold.hourly_kWh).toHaveLength(8760);
    expect(Math.abs(sumOf(cold.hourly_kWh) / cold.summary.electricity_kWh - 1)).toBeLessThan(1e-9);
  });
  test("is the same each time", () => {
    expect(run().hourly_kWh).toEqual(cold.hourly_kWh);
  });
  test("takes more energy in the cold town than on the mild coast, and more from January than from July", () => {
    expect(run(SALTMERE).summary.electricity_kWh).toBeLessThan(0.85 * cold.summary.electricity_kWh);
    const month = (from: number) => sumOf(cold.hourly_kWh.subarray(from * 24, (from + 31) * 24));
    expect(month(0)).toBeGreaterThan(1.2 * month(181));
  });
  test("with elements alone gives out less heat than it takes", () => {
    expect(run(OSTROWICK, "elements_only").summary.systemCop).toBeLessThan(1);
    expect(cold.summary.systemCop).toBeGreaterThan(2);
  });
  test("meets the mains of the correlation on each day and the heater room's air of each month", () => {
    const mains_C = dailyMains_C(OSTROWICK);
    for (const day of [0, 50, 180, 364]) expect(mains_C[day]).toBe(mainsTemperature_C(OSTROWICK, day + 1));
    const air_C = dailyAir_C(OSTROWICK);
    expect([air_C[0], air_C[180], air_C[364]]).toEqual([0, 5, 11].map((month) => OSTROWICK.heaterRoom_C[month]));
  });
  test("keeps mains water from freezing in a very cold place", () => {
    const north = { ...OSTROWICK, yearMean_C: -20, monthlySpan_K: 40 };
    expect(Math.min(...dailyMains_C(north))).toBe(0.5);
  });
});

describe("a plain electric tank", () => {
  // The closed form of Lutz and others (1996) beside the simulation: both must say the same of a tank of one temperature.
  test.each([
    [0.9, 120],
    [0.92, 125],
    [0.95, 135],
  ])("rated %f at %f °F takes what the daily equation says, to 2 %", (efficiency, setpoint_F) => {
    const setpoint_C = toBase(setpoint_F, "F");
    const tank_L = toBase(80, "gal");
    const simulated = simulateOldElectric({ efficiency, setpoint_C, place: OSTROWICK, tank_L }, YEAR);
    const { heatLoss_W_K: loss_W_K } = plainElectricTank(tank_L, efficiency).tank;
    const heat_kWh = wantedHeat_kWh(YEAR, setpoint_C, dailyMains_C(OSTROWICK));
    const air_C = dailyAir_C(OSTROWICK);
    const heater = { recovery: 1, input_W: 4500, loss_W_K };
    const closed = heat_kWh.map((day_kWh, day) => storageDay_kWh(heater, day_kWh, setpoint_C, air_C[day] ?? 0));
    expect(Math.abs(simulated.summary.electricity_kWh / sumOf(closed) - 1)).toBeLessThan(0.02);
  });
});

describe("a gas tank's year", () => {
  const gas = (efficiency: number) =>
    sumOf(burnOldGas_kWh({ efficiency, setpoint_C: SETPOINT_C, place: OSTROWICK }, YEAR));
  test("burns less the better it is rated, and never less than the heat over its recovery", () => {
    const heat_kWh = sumOf(wantedHeat_kWh(YEAR, SETPOINT_C, dailyMains_C(OSTROWICK)));
    expect(gas(0.62)).toBeLessThan(gas(0.58));
    expect(gas(0.7)).toBeGreaterThan(heat_kWh / 0.78);
  });
});
