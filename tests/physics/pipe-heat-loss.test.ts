import { describe, expect, test } from "vitest";
import { planLoop } from "../../src/physics/circulation-loop.ts";
import {
  cooledTo_C,
  coolingTime_s,
  filmCoefficient_W_m2K,
  heatPerMetre_J_mK,
  INSULATIONS,
  insulationR,
  lossPerMetre_W_mK,
} from "../../src/physics/pipe-heat-loss.ts";
import { toBase } from "../../src/units/convert.ts";
import { BARE_STEEL, BRIGHT_COPPER, BTU_H_FT_F, COOLING, COOLING_CASE, WORKED } from "../reference/pipe-heat.ts";

const F = (value: number) => toBase(value, "F");
const SECONDS_PER_HOUR = 3600;
const COPPER = { kind: "copper_l", size: "3/4", insulation: "none" } as const;
const loss = (outside_in: number, above_F: number, emissivity: number) => {
  const outside_m = toBase(outside_in, "in");
  return (filmCoefficient_W_m2K(outside_m, F(70 + above_F), F(70), emissivity) * Math.PI * outside_m) / BTU_H_FT_F;
};

describe("bare pipe in still air, against the Guide of 1941", () => {
  test.each(BARE_STEEL)("steel $outside_in in, $above_F °F above: $loss Btu/(h ft °F), ours 8 to 12 % more", (row) => {
    const ratio = loss(row.outside_in, row.above_F, 0.94) / row.loss;
    expect(Math.abs(ratio - 1.1)).toBeLessThan(0.025);
  });
  test.each(BRIGHT_COPPER)("bright copper $outside_in in, $above_F °F above: $loss, ours 12 to 21 % more", (row) => {
    const ratio = loss(row.outside_in, row.above_F, 0.05) / row.loss;
    expect(Math.abs(ratio - 1.165)).toBeLessThan(0.05);
  });
});

test("1/2 in pipe, worked by hand: bare 4.1 h °F/Btu a foot, foam nearly twice that; dull copper is 12 % under", () => {
  const R = (insulation: "none" | "half") =>
    BTU_H_FT_F / lossPerMetre_W_mK({ kind: "copper_l", size: "1/2", insulation }, F(110), F(70));
  expect(Math.abs(R("none") / WORKED.bare - 0.88)).toBeLessThan(0.03);
  expect(Math.abs(R("half") / WORKED.foam - 1)).toBeLessThan(0.05);
});

describe("insulation", () => {
  test("each thicker one loses less, on every pipe", () => {
    for (const kind of ["copper_l", "pex", "cpvc"] as const) {
      const losses = INSULATIONS.map((insulation) => lossPerMetre_W_mK({ kind, size: "3/4", insulation }, 50, 20));
      expect(losses).toEqual([...losses].sort((a, b) => b - a));
      expect(new Set(losses).size).toBe(4);
    }
  });
  test("of 1/2 in on 3/4 tube is R-2.55 by r ln(r/r0)/k with k = 0.28, under R-3; 3/4 in is over", () => {
    const r = (15 / 16) * (Math.log(1.875 / 0.875) / 0.28);
    expect(Math.abs(insulationR({ ...COPPER, insulation: "half" }) - r)).toBeLessThan(0.01);
    expect(insulationR({ ...COPPER, insulation: "half" })).toBeLessThan(3);
    expect(insulationR({ ...COPPER, insulation: "three_quarter" })).toBeGreaterThan(3);
  });
  test("none has no resistance of its own", () => expect(insulationR(COPPER)).toBe(0));
});

describe("cooling", () => {
  const { from_F, air_F, constant_h } = COOLING_CASE;
  test.each(COOLING)("after $hours h leaves $left_F °F, exact, within 0.01 °F", ({ hours, left_F }) => {
    const left_C = cooledTo_C(F(from_F), F(air_F), constant_h * SECONDS_PER_HOUR, hours * SECONDS_PER_HOUR);
    expect(Math.abs(left_C - F(left_F)) * 1.8).toBeLessThan(0.01);
    const time_s = coolingTime_s(F(from_F), F(left_F), F(air_F), constant_h * SECONDS_PER_HOUR);
    expect(Math.abs(time_s / SECONDS_PER_HOUR / hours - 1)).toBeLessThan(0.001);
  });
  test("never ends where the air is as warm", () => {
    expect(coolingTime_s(50, 40, 40, 1000)).toBe(Number.POSITIVE_INFINITY);
  });
  test("a metre of 3/4 L holds the heat of its water and a tenth more in its wall", () => {
    const water = (Math.PI / 4) * toBase(0.785, "in") ** 2 * 988 * 4181;
    expect(heatPerMetre_J_mK(COPPER, 50) / water).toBeGreaterThan(1.1);
    expect(heatPerMetre_J_mK(COPPER, 50) / water).toBeLessThan(1.25);
  });
});

describe("circulation loop", () => {
  const LOOP = {
    pipe: { ...COPPER, insulation: "half" },
    length_m: 36,
    hot_C: 50,
    fall_K: 5,
    air_C: 20,
    hours: 24,
    cop: 3,
    tank_L: 300,
  } as const;
  const plan = planLoop(LOOP);
  test("loses UA times length times the mean difference, and the pump brings just that", () => {
    const mean_K = 50 - 2.5 - 20;
    expect(plan.loss_W).toBeCloseTo(plan.loss_W_mK * 36 * mean_K, 9);
    // 1 L of water gives off about 4140 J for each kelvin at this temperature.
    expect(Math.abs((plan.pumpFlow_L_s * 4140 * 5) / plan.loss_W - 1)).toBeLessThan(0.01);
  });
  test("takes a third of its heat in power at a COP of 3, every hour of the day", () => {
    expect(plan.heat_kWh_day).toBeCloseTo((plan.loss_W * 24) / 1000, 9);
    expect(plan.electricity_kWh_day).toBeCloseTo(plan.heat_kWh_day / 3, 9);
    expect(planLoop({ ...LOOP, hours: 6 }).heat_kWh_day).toBeCloseTo(plan.heat_kWh_day / 4, 9);
  });
  test("needs half the flow for twice the fall, nearly, and less heat", () => {
    const steep = planLoop({ ...LOOP, fall_K: 10 });
    expect(steep.loss_W).toBeLessThan(plan.loss_W);
    expect(steep.pumpFlow_L_s / plan.pumpFlow_L_s).toBeLessThan(0.5);
  });
  test("says how often the tank goes round only where the tank is known", () => {
    expect(plan.turnovers).toBeCloseTo((plan.pumpFlow_L_s * 86_400) / 300, 9);
    expect(planLoop({ ...LOOP, tank_L: undefined }).turnovers).toBeUndefined();
  });
});

const REFUSED = [
  ["NaN water", () => lossPerMetre_W_mK(COPPER, Number.NaN, 20)],
  ["a size that is not made", () => heatPerMetre_J_mK({ ...COPPER, kind: "cpvc", size: "3/8" }, 20)],
  ["air at 100 °C", () => filmCoefficient_W_m2K(0.02, 50, 100, 0.9)],
  ["cooling upwards", () => coolingTime_s(40, 50, 20, 100)],
] as const;
test.each(REFUSED)("refuses %s", (_, run) => expect(run).toThrow(RangeError));
