import { describe, expect, test } from "vitest";
import { buildGenericUnit } from "../../src/equipment/generic-unit.ts";
import type { WaterHeater } from "../../src/equipment/water-heater.ts";
import type { ExpectedFacts } from "../../src/faults/expected/known.ts";
import { EXPECTED_READINGS } from "../../src/faults/expected.ts";
import { toBase } from "../../src/units/convert.ts";

/** What a reading should be, in its base unit. */
function expected(id: string, known: ExpectedFacts): number | undefined {
  return EXPECTED_READINGS.get(id)?.compute(known)?.quantity.value;
}
const F = (degrees: number) => toBase(degrees, "F");
const gal = (gallons: number) => toBase(gallons, "gal");
const psi = (pounds: number) => toBase(pounds, "psi");

const USUAL = buildGenericUnit({ nominal_L: gal(50), element_W: 4500, heatPump_W: 1300 });
/** A unit whose tank holds so much, and that loses and idles nothing: the cases below are worked that way. */
function unitOf(gallons: number, unit: WaterHeater = USUAL): WaterHeater {
  return {
    ...unit,
    tank: { ...unit.tank, volume_L: gal(gallons), heatLoss_W_K: 0 },
    controls: { ...unit.controls, standby_W: 0 },
  };
}
/** A heat pump that does the same in any air and water. */
function flatMachine(heat_W: number, cop: number): WaterHeater {
  const sheet = USUAL.heatPump;
  if (sheet === undefined) throw new Error("the usual unit has a heat pump");
  const flat = [1, 0, 0, 0, 0, 0] as const;
  return {
    ...USUAL,
    heatPump: { ...sheet, ratedHeat_W: heat_W, ratedCop: cop, heatCurve: flat, copCurve: flat, fan_W: 0 },
  };
}
const ROOM = { air_C: F(68), airHumidity: 0.5, water_C: F(110) };

describe("electrical readings", () => {
  // Source: Ohm's law, R = V^2 / P; 12.8, 10.5, 15.2 and 9.6 ohm hot. Cold wire has some 2 % less (from memory).
  test.each([
    [4500, 240, 12.8],
    [5500, 240, 10.47],
    [3800, 240, 15.16],
    [4500, 208, 9.61],
  ])("an element of %i W at %i V has %f ohm hot, and a little less cold", (rated_W, rated_V, hot_ohm) => {
    const unit = { ...USUAL, elements: [{ place: "upper" as const, height_m: 0.9, rated_W, rated_V }] };
    const cold_ohm = expected("element_resistance_cold", { unit }) ?? 0;
    expect(cold_ohm).toBeLessThan(hot_ohm);
    expect(cold_ohm).toBeGreaterThan(hot_ohm * 0.97);
  });

  // Source: I = V / R: 18.75 A at 240 V, 16.25 A at 208 V for 12.8 ohm.
  test("current follows the voltage that was measured", () => {
    expect(expected("element_current", { unit: USUAL, supply_V: 240 })).toBeCloseTo(18.75, 2);
    expect(expected("element_current", { unit: USUAL, supply_V: 208 })).toBeCloseTo(16.25, 2);
  });

  test("two unlike elements need to be told apart", () => {
    const elements = [
      { place: "upper" as const, height_m: 0.9, rated_W: 4500, rated_V: 240 },
      { place: "lower" as const, height_m: 0.2, rated_W: 3500, rated_V: 240 },
    ];
    const unit = { ...USUAL, elements };
    expect(expected("element_current", { unit, supply_V: 240 })).toBeUndefined();
    expect(expected("element_current", { unit, supply_V: 240, element: "lower" })).toBeCloseTo(3500 / 240, 3);
  });

  // Source: running current of such machines, compressor and fan together, 1.5 to 4 A (trade figure).
  test("the heat pump draws a few amperes", () => {
    const current_A = expected("heat_pump_current", { ...ROOM, unit: USUAL, supply_V: 240 }) ?? 0;
    expect(current_A).toBeGreaterThan(1.5);
    expect(current_A).toBeLessThan(4);
  });

  // Source: I = P / (V pf), worked by hand: 450 W / (240 V x 0.92).
  test("and that current is its power over volts and power factor", () => {
    const unit = { ...unitOf(50, flatMachine(1350, 3)) };
    expect(expected("heat_pump_current", { ...ROOM, unit, supply_V: 240 })).toBeCloseTo(450 / (240 * 0.92), 4);
  });
});

describe("the sensor", () => {
  // Source: NTC 10 kohm, beta 3950, table worked by R = R25 exp(B (1/T - 1/298.15)).
  test.each([
    [32, 33_620],
    [50, 20_170],
    [77, 10_000],
    [100, 5800],
    [120, 3740],
    [140, 2490],
  ])("at %i °F has %i ohm", (degrees_F, ohms) => {
    const value = expected("sensor_resistance", { sensor_C: F(degrees_F) }) ?? 0;
    expect(Math.abs(value / ohms - 1)).toBeLessThan(0.003);
  });

  test("follows its own sheet where that is known", () => {
    const sensor = { at25_ohm: 50_000, beta_K: 4000 };
    expect(expected("sensor_resistance", { sensor, sensor_C: 25 })).toBeCloseTo(50_000, 6);
  });
});

describe("heat into the tank", () => {
  // Source: F/h = kW 3412 / (8.34 gal), no loss: 36.8, 28.3 and 23.0 °F an hour; 27.6 on 208 V.
  test.each([
    [50, 240, 36.8],
    [65, 240, 28.3],
    [80, 240, 23.0],
    [50, 208, 27.6],
  ])("one 4.5 kW element warms %i gal on %i V by %f °F in an hour", (gallons, plate_V, rise_F) => {
    const unit = unitOf(gallons);
    const known = { unit, plate_V, cold_C: F(50), setpoint_C: F(120), running: "elements" } as const;
    const rise_K = expected("tank_rise_in_an_hour", known) ?? 0;
    expect(Math.abs((rise_K * 1.8) / rise_F - 1)).toBeLessThan(0.01);
  });

  // Source: 0.45 kW at COP 3, the same formula: 11.0 and 6.9 °F an hour.
  test.each([
    [50, 11.0],
    [80, 6.9],
  ])("a heat pump of 0.45 kW at COP 3 warms %i gal by %f °F in an hour", (gallons, rise_F) => {
    const unit = unitOf(gallons, flatMachine(1350, 3));
    const rise_K = expected("tank_rise_in_an_hour", { ...ROOM, unit, running: "heat_pump" }) ?? 0;
    expect(Math.abs((rise_K * 1.8) / rise_F - 1)).toBeLessThan(0.015);
  });

  // Source: Q = 500 gpm dT: 1.35 kW (4600 Btu/h) at 0.5 gpm gives 18.4 °F.
  test("the loop of a split unit comes back warmer by its heat over its flow", () => {
    const known = { ...ROOM, unit: flatMachine(1350, 3), loop_L_s: toBase(0.5, "gpm") };
    expect(Math.abs(((expected("loop_rise", known) ?? 0) * 1.8) / 18.4 - 1)).toBeLessThan(0.015);
  });
});

describe("the draw trial", () => {
  // Source: trade range, usable 0.75 to 0.85 of the real volume; 50 gal nominal, 45 real: 34 to 38 gal.
  test("a tank of 45 gal gives about three quarters to nine tenths of itself before it falls 25 °F", () => {
    const known = { unit: USUAL, cold_C: F(50), setpoint_C: F(120), draw_L_s: toBase(2.5, "gpm") };
    const share = (expected("draw_to_cold", known) ?? 0) / USUAL.tank.volume_L;
    expect(share).toBeGreaterThan(0.73);
    expect(share).toBeLessThan(0.92);
  });
  test("a tank stirred by its inlet gives less", () => {
    const stirred = { ...USUAL, tank: { ...USUAL.tank, stirredByInlet: 0.5 } };
    const known = { cold_C: F(50), setpoint_C: F(120), draw_L_s: toBase(2.5, "gpm") };
    const [less, more] = [stirred, USUAL].map((unit) => expected("draw_to_cold", { ...known, unit }) ?? 0);
    expect(less).toBeLessThan(more ?? 0);
  });
  test("a dribble is no trial, and neither is water as cold as the trial's end", () => {
    const known = { unit: USUAL, cold_C: F(50), setpoint_C: F(120) };
    expect(expected("draw_to_cold", { ...known, draw_L_s: 0.001 })).toBeUndefined();
    expect(expected("draw_to_cold", { ...known, cold_C: F(100), draw_L_s: 0.1 })).toBeUndefined();
  });
});

describe("air across the coil", () => {
  const unit = (() => {
    const machine = flatMachine(1400, 1400 / 450);
    return machine;
  })();
  const known = { ...ROOM, unit, airflow_m3_s: toBase(200, "cfm") };

  // Source: dT = Btu/h / (1.08 cfm): 0.95 kW (3240 Btu/h) at 200 cfm is 15 °F for dry air.
  test("dry air at 200 cfm cools by 15 °F for 0.95 kW", () => {
    const split_K = expected("air_split", { ...known, airHumidity: 0.05 }) ?? 0;
    expect(Math.abs((split_K * 1.8) / 15 - 1)).toBeLessThan(0.03);
    expect(expected("condensate_in_an_hour", { ...known, airHumidity: 0.05 })).toBeUndefined();
  });

  test("damp air cools less, because some of the heat condenses water", () => {
    const [dry, damp] = [0.05, 0.8].map((airHumidity) => expected("air_split", { ...known, airHumidity }) ?? 0);
    expect(damp).toBeLessThan((dry ?? 0) * 0.8);
  });

  // Source: 0.05 to 0.3 gal of condensate an hour (trade figure); lb/h = latent Btu/h / 1060.
  test("damp air leaves a tenth of a gallon or two in an hour, as the heat that it does not show as cooling says", () => {
    const damp = { ...known, airHumidity: 0.7 };
    const volume_L = expected("condensate_in_an_hour", damp) ?? 0;
    expect(volume_L).toBeGreaterThan(gal(0.05));
    expect(volume_L).toBeLessThan(gal(0.3));
    const sensible_W = 1.08 * 200 * (expected("air_split", damp) ?? 0) * 1.8 * 0.29307;
    const latent_W = (volume_L / 0.4536) * 1060 * 0.29307;
    expect(Math.abs((sensible_W + latent_W) / 950 - 1)).toBeLessThan(0.04);
  });

  test("nothing is expected of a machine that this air keeps off", () => {
    expect(expected("air_split", { ...known, air_C: -5 })).toBeUndefined();
  });
});

describe("a day of the household", () => {
  const day = { cold_C: F(50), setpoint_C: F(120), hotUse_L: gal(50), air_C: F(68), airHumidity: 0.5 };

  // Source: kWh = gal 8.34 dT / (3412 COP): 50 gal by 70 °F is 8.6 kWh at COP 1 and 2.9 at COP 3.
  test("50 gal by 70 °F takes 8.6 kWh with elements and 2.9 at COP 3", () => {
    const { heatPump: _, ...plain } = USUAL;
    const share = (unit: WaterHeater, energy_kWh: number) =>
      (expected("energy_per_day", { ...day, unit }) ?? 0) / energy_kWh;
    expect(Math.abs(share(unitOf(50, plain), 8.555) - 1)).toBeLessThan(0.01);
    expect(Math.abs(share(unitOf(50, flatMachine(1350, 3)), 2.852) - 1)).toBeLessThan(0.01);
  });

  // Source: worked by hand: 8.56 kWh / 1.35 kW = 6.3 h; a 4.5 kW element 1.9 h.
  test("and keeps the heat pump busy for 6.3 hours", () => {
    const run_s = expected("run_time_per_day", { ...day, unit: unitOf(50, flatMachine(1350, 3)) }) ?? 0;
    expect(run_s / 3600).toBeCloseTo(6.3, 1);
  });

  test("the loss of the tank and the standby of its controls are counted", () => {
    const [bare, real] = [unitOf(45), USUAL].map((unit) => expected("energy_per_day", { ...day, unit }) ?? 0);
    expect(real).toBeGreaterThan((bare ?? 0) + 0.1);
  });
});

describe("pressure over a heat-up", () => {
  const known = { unit: unitOf(50), cold_C: F(50), setpoint_C: F(120), line_kPa: psi(60) };

  // Source: 50 gal from 50 to 120 °F grow by 0.57 gal; 2.7 gal of tank hold that between 60 and 80 psi.
  test("a tank of 2.7 gal lets 50 gal rise by 20 psi", () => {
    const expansion = { kind: "tank", tank_L: gal(2.7), precharge_kPa: psi(60) } as const;
    expect((expected("pressure_rise", { ...known, expansion }) ?? 0) / psi(1)).toBeCloseTo(20, 0);
  });
  test("an open system does not rise; a closed one goes to its relief valve", () => {
    expect(expected("pressure_rise", { ...known, expansion: { kind: "open" } })).toBe(0);
    const closed = { ...known, relief_kPa: psi(150), expansion: { kind: "closed" } } as const;
    expect((expected("pressure_rise", closed) ?? 0) / psi(1)).toBeCloseTo(90, 6);
  });
  test("a flat or overcharged tank rises more than a good one", () => {
    const rise = (precharge_kPa: number) =>
      expected("pressure_rise", { ...known, expansion: { kind: "tank", tank_L: gal(4.4), precharge_kPa } }) ?? 0;
    expect(rise(psi(20))).toBeGreaterThan(rise(psi(60)));
    expect(rise(psi(90))).toBeGreaterThan(rise(psi(60)));
  });
});

describe("every expected reading", () => {
  test("is nothing at all while nothing is known, save for limits that hold everywhere", () => {
    const known = [...EXPECTED_READINGS].filter(([, { compute }]) => compute({}) !== undefined).map(([id]) => id);
    expect(known).toEqual(["least_insulation", "most_bond_resistance"]);
  });

  test("says its quantity, what went in and its source", () => {
    const all: ExpectedFacts = {
      ...ROOM,
      airHumidity: 0.75,
      unit: USUAL,
      plate_V: 240,
      supply_V: 238,
      sensor_C: 40,
      cold_C: 10,
      setpoint_C: 50,
      running: "elements",
      hotUse_L: 200,
      draw_L_s: 0.15,
      coldFlow_L_s: 0.2,
      loop_L_s: 0.05,
      line_kPa: 400,
      expansion: { kind: "closed" },
    };
    for (const [id, { quantity, compute }] of EXPECTED_READINGS) {
      const result = compute(all);
      expect(result?.quantity.kind, id).toBe(quantity);
      expect(result?.quantity.value, id).toBeGreaterThan(0);
      expect(result?.how.sources.length, id).toBeGreaterThan(0);
    }
  });
});
