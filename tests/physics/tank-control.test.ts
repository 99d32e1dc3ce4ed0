import { describe, expect, test } from "vitest";
import { POLICIES, type PolicyId } from "../../src/equipment/policies.ts";
import type { WaterHeater } from "../../src/equipment/water-heater.ts";
import { listDraws } from "../../src/physics/tank/draw-list.ts";
import { airSeries, type RoomAir, steadyAir } from "../../src/physics/tank/room-air.ts";
import { type PlanStep, type RunOptions, simulate } from "../../src/physics/tank/simulate.ts";
import { makeTrace, type Trace } from "../../src/physics/tank/trace.ts";
import { plainDraw } from "../fixtures/bare-tank.ts";
import { INTEGRATED_50, INTEGRATED_80, PLUG_IN_50, RESISTANCE_50 } from "../fixtures/water-heaters.ts";

const HOUR_s = 3600;
const MILD = steadyAir(20, 0.5);

/** One unit for some hours, minute by minute; `changed` replaces parts of the heat pump's sheet. */
function watch(
  unit: WaterHeater,
  policy: PolicyId,
  hours: number,
  more: Partial<RunOptions> & {
    air?: RoomAir;
    draw_L?: number;
    setpoint_C?: number;
    plan?: readonly [PlanStep, ...PlanStep[]];
  } = {},
) {
  const { air = MILD, draw_L = 0, setpoint_C = 52, plan, ...options } = more;
  const duration_s = hours * HOUR_s;
  const trace = makeTrace(duration_s, 60, 12);
  const draws = listDraws(draw_L > 0 ? [plainDraw(draw_L, 600)] : []);
  const steps = plan ?? ([{ from_s: 0, policy: POLICIES[policy], setpoint_C }] as const);
  const site = { supply_V: 240, inlet_C: 10, air };
  const result = simulate(unit, site, { duration_s, draws, plan: steps }, { ...options, trace });
  return { ...result, trace };
}

/** Long traces do not fit into the arguments of a call. */
const lowestOf = (values: Float64Array) => values.reduce((least, value) => Math.min(least, value));
const highestOf = (values: Float64Array) => values.reduce((most, value) => Math.max(most, value));

/** What the lower sensor read at the end of minute `i`: on a straight line between the centres of the layers next to it. */
function lowerSensor_C(unit: WaterHeater, trace: Trace, i: number): number {
  const place = (unit.controls.sensors.lower_m / unit.tank.height_m) * 12 - 0.5;
  const low = Math.floor(place);
  const at = (layer: number) => trace.layers_C[i * 12 + layer] ?? Number.NaN;
  return at(low) + (place - low) * (at(low + 1) - at(low));
}

const overlaps = (a: Float64Array, b: Float64Array) => a.some((share, i) => share > 0.99 && (b[i] ?? 0) > 0.99);

function withHeatPump(unit: WaterHeater, changes: Partial<NonNullable<WaterHeater["heatPump"]>>): WaterHeater {
  if (!unit.heatPump) throw new Error("no heat pump on the sheet");
  return { ...unit, heatPump: { ...unit.heatPump, ...changes } };
}

describe("thermostats", () => {
  test("a cooling tank calls for heat when the lower sensor is its 5 K dead band under 52 C, within 0.02 K", () => {
    const { trace } = watch(RESISTANCE_50, "elements_only", 60, {
      pace: { idle_s: 1800, heating_s: 60, drawing_s: 60, exchange_s: 0 },
    });
    const i = trace.lowerOn.findIndex((share) => share > 0);
    expect(i).toBeGreaterThan(600);
    expect(Math.abs(lowerSensor_C(RESISTANCE_50, trace, i - 1) - 47)).toBeLessThan(0.02);
  });

  test("heating stops with the sensor at 52 C, within 0.02 K, however long the steps", () => {
    for (const heating_s of [60, 600, 3600]) {
      const { trace } = watch(RESISTANCE_50, "elements_only", 3, {
        start_C: 12,
        pace: { idle_s: 60, heating_s, drawing_s: 60, exchange_s: 0 },
      });
      const highest_C = highestOf(trace.lowerOn.map((_, i) => lowerSensor_C(RESISTANCE_50, trace, i)));
      expect(Math.abs(highest_C - 52)).toBeLessThan(0.02);
    }
  });

  test("a longer step does not move the switching point: running time differs by less than 5 s", () => {
    const ran = (heating_s: number) =>
      watch(RESISTANCE_50, "elements_only", 3, {
        start_C: 12,
        pace: { idle_s: 60, heating_s, drawing_s: 60, exchange_s: 0 },
      }).summary.lowerRan_s;
    expect(Math.abs(ran(3600) - ran(60))).toBeLessThan(5);
  });

  test("from cold the upper element heats the top first, then gives way to the lower", () => {
    const { trace } = watch(RESISTANCE_50, "elements_only", 3, { start_C: 12 });
    const firstLower = trace.lowerOn.findIndex((share) => share > 0);
    expect(trace.upperOn[0]).toBe(1);
    expect(trace.upperOn.findLastIndex((share) => share > 0)).toBeLessThanOrEqual(firstLower);
    expect(overlaps(trace.upperOn, trace.lowerOn)).toBe(false);
  });
});

describe("modes", () => {
  test("heat_pump_only never uses an element", () => {
    const { summary } = watch(INTEGRATED_50, "heat_pump_only", 24, { draw_L: 160 });
    expect(summary.elementHeat_kWh).toBe(0);
    expect(summary.heatPumpHeat_kWh).toBeGreaterThan(3);
  });

  test("heat_pump_first leaves a draw of 40 L to the heat pump, and calls the upper element for 150 L", () => {
    expect(watch(INTEGRATED_50, "heat_pump_first", 12, { draw_L: 40 }).summary.upperRan_s).toBe(0);
    const { summary, trace } = watch(INTEGRATED_50, "heat_pump_first", 12, { draw_L: 150 });
    expect(summary.upperRan_s).toBeGreaterThan(300);
    expect(overlaps(trace.upperOn, trace.heatPumpOn)).toBe(true);
  });

  test("both_together recovers 150 L at least twice as fast as heat_pump_only", () => {
    const recovered = (policy: PolicyId) => {
      const { trace } = watch(INTEGRATED_50, policy, 24, { draw_L: 150 });
      const isOff = (i: number) => (trace.heatPumpOn[i] ?? 0) + (trace.upperOn[i] ?? 0) + (trace.lowerOn[i] ?? 0) === 0;
      return trace.heatPumpOn.findIndex((_, i) => i > 10 && isOff(i));
    };
    expect(recovered("both_together") * 2).toBeLessThan(recovered("heat_pump_only"));
  });

  test("elements_only leaves the compressor off", () => {
    expect(watch(INTEGRATED_50, "elements_only", 12, { draw_L: 150 }).summary.heatPumpRan_s).toBe(0);
  });

  test("both_together calls the lower element only after ten minutes of want", () => {
    const { trace } = watch(INTEGRATED_80, "both_together", 12, { start_C: 30 });
    const first = trace.lowerOn.findIndex((share) => share > 0);
    expect(first).toBeGreaterThanOrEqual(10);
  });

  test("away_hold keeps an empty house's tank between 17 and 25.1 C", () => {
    const { trace, summary } = watch(INTEGRATED_50, "away_hold", 14 * 24, {
      setpoint_C: 25,
      start_C: 25,
      air: steadyAir(10, 0.5),
    });
    expect(lowestOf(trace.layers_C.filter((_, i) => i % 12 > 3))).toBeGreaterThan(17 - 0.5);
    expect(highestOf(trace.outlet_C.subarray(60))).toBeLessThan(25.1);
    expect(summary.heatPumpRan_s).toBeGreaterThan(0);
  });

  test("in -12 C air every mode of every unit with an element keeps the tank above 4 C for three weeks", () => {
    const cold = steadyAir(-12, 0.6);
    const cases = [INTEGRATED_50, RESISTANCE_50].flatMap((unit) =>
      unit.controls.policies.map((policy) => ({ unit, policy })),
    );
    for (const { unit, policy } of cases) {
      const setpoint_C = policy === "away_hold" ? 12 : 52;
      const { trace } = watch(unit, policy, 21 * 24, { air: cold, setpoint_C, start_C: 20 });
      expect(lowestOf(trace.layers_C.filter((_, i) => i % 12 > 2))).toBeGreaterThan(4);
    }
  });

  test("switched off, the same tank freezes in the cold garage, so the guard above is what holds it", () => {
    const plan = [{ from_s: 0, policy: POLICIES.switched_off, setpoint_C: 52 }] as const;
    const { layersAtEnd_C } = watch(INTEGRATED_50, "heat_pump_only", 21 * 24, {
      air: steadyAir(-12, 0.6),
      plan,
      start_C: 20,
    });
    expect(Math.max(...layersAtEnd_C)).toBeLessThan(0);
  });

  test("a change of mode and setpoint takes hold at its minute, and what runs goes on", () => {
    const plan = [
      { from_s: 0, policy: POLICIES.heat_pump_only, setpoint_C: 48 },
      { from_s: HOUR_s, policy: POLICIES.heat_pump_only, setpoint_C: 62 },
      { from_s: 2 * HOUR_s, policy: POLICIES.elements_only, setpoint_C: 62 },
    ] as const;
    const { trace } = watch(INTEGRATED_50, "heat_pump_only", 6, { plan, start_C: 48 });
    expect(trace.heatPumpOn.subarray(0, 60).every((share) => share === 0)).toBe(true);
    expect(trace.heatPumpOn.subarray(60, 120).every((share) => share === 1)).toBe(true);
    expect(trace.heatPumpOn.subarray(121).every((share) => share === 0)).toBe(true);
    expect((trace.upperOn[121] ?? 0) + (trace.lowerOn[121] ?? 0)).toBeGreaterThan(0);
  });
});

describe("the compressor", () => {
  test("once started runs its shortest time, once stopped rests", () => {
    const unit = withHeatPump(
      { ...INTEGRATED_50, controls: { ...INTEGRATED_50.controls, deadBand_K: { upper: 0.5, lower: 0.5 } } },
      { shortestRun_s: 1800, shortestRest_s: 1200 },
    );
    const { trace, summary } = watch(unit, "heat_pump_only", 48, { draw_L: 30 });
    const runs: number[] = [];
    const rests: number[] = [];
    let length = 0;
    trace.heatPumpOn.forEach((share, i) => {
      const wasOn = (trace.heatPumpOn[i - 1] ?? 0) > 0.5;
      if (share > 0.5 === wasOn) length += 1;
      else {
        (wasOn ? runs : rests).push(length);
        length = 1;
      }
    });
    expect(summary.heatPumpStarts).toBeGreaterThan(2);
    expect(Math.min(...runs)).toBeGreaterThanOrEqual(29);
    expect(Math.min(...rests.slice(1))).toBeGreaterThanOrEqual(19);
  });

  test("is barred under 3 C air and let go only from 5 C on", () => {
    const air = airSeries({
      every_s: HOUR_s,
      dryBulb_C: [2.9, 4.9, 5.1, 4.9, 2.9, 2.9],
      relativeHumidity: [0.6, 0.6, 0.6, 0.6, 0.6, 0.6],
    });
    const { trace, summary } = watch(PLUG_IN_50, "heat_pump_only", 6, { start_C: 15, air });
    const on = (hour: number) => trace.heatPumpOn[hour * 60 + 30];
    expect([0, 1, 2, 3, 4].map(on)).toEqual([0, 0, 1, 1, 0]);
    expect(summary.barredByCold_s).toBe(4 * HOUR_s);
  });

  test("is barred over 49 C air", () => {
    const { summary } = watch(PLUG_IN_50, "heat_pump_only", 2, { start_C: 15, air: steadyAir(49.5, 0.1) });
    expect(summary).toMatchObject({ heatPumpRan_s: 0, barredByHot_s: 2 * HOUR_s });
  });

  test("while it is barred the elements stand in, in heat_pump_first but not in heat_pump_only", () => {
    const cold = { start_C: 20, air: steadyAir(0, 0.6) };
    expect(watch(INTEGRATED_50, "heat_pump_first", 6, cold).summary).toMatchObject({ heatPumpRan_s: 0 });
    expect(watch(INTEGRATED_50, "heat_pump_first", 6, cold).summary.meanAtEnd_C).toBeGreaterThan(45);
    expect(watch(INTEGRATED_50, "heat_pump_only", 6, cold).summary.elementHeat_kWh).toBe(0);
  });

  test("stops where its water limit is under the setpoint, and an element finishes", () => {
    const unit = withHeatPump(INTEGRATED_50, { waterLimit: { highest_C: 50, comeBack_K: 4 } });
    const { summary, trace } = watch(unit, "heat_pump_first", 10, { start_C: 40, setpoint_C: 60 });
    const last = trace.heatPumpOn.findLastIndex((share) => share > 0);
    const bottom_C = trace.layers_C[last * 12 + 1] ?? 0;
    expect(Math.abs(bottom_C - 50)).toBeLessThan(0.6);
    expect(summary.lowerRan_s).toBeGreaterThan(600);
    expect(highestOf(trace.outlet_C)).toBeGreaterThan(59.5);
    expect(summary.barredByWater_s).toBeGreaterThan(HOUR_s);
  });

  test("air outside the fitted range is counted while it runs", () => {
    const { summary } = watch(INTEGRATED_50, "heat_pump_only", 4, { start_C: 20, air: steadyAir(40, 0.6) });
    expect(summary.clamped_s).toBe(summary.heatPumpRan_s);
    expect(watch(INTEGRATED_50, "heat_pump_only", 4, { start_C: 20 }).summary.clamped_s).toBe(0);
  });

  test("a condenser on half-warm water heats the cold part: the top stays as it was", () => {
    const start_C = [...new Array<number>(6).fill(20), ...new Array<number>(6).fill(52)];
    const { trace } = watch(INTEGRATED_50, "heat_pump_only", 2, { start_C });
    expect(trace.outlet_C.at(-1)).toBeLessThan(52);
    expect(trace.outlet_C.at(-1)).toBeGreaterThan(51.5);
    expect(trace.layers_C.at(-12)).toBeGreaterThan(30);
  });
});
