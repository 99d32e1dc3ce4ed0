import { describe, expect, test } from "vitest";
import { type ExpansionCase, planExpansion, pressureCeiling_kPa } from "../../src/physics/expansion-plan.ts";
import { fromBase, toBase } from "../../src/units/convert.ts";

const CASE: ExpansionCase = {
  tank_L: toBase(50, "gal"),
  pipe_volume_L: 0,
  cold_C: toBase(50, "F"),
  setpoint_C: toBase(140, "F"),
  line_pressure_kPa: toBase(60, "psi"),
  relief_setting_kPa: toBase(150, "psi"),
  pressure_limit_kPa: undefined,
  vessel_metal: "steel",
  existing_tank_L: undefined,
  existing_precharge_kPa: undefined,
};

test("the pressure may climb to 10 % below the relief setting, 135 of 150 psi, unless a limit is named", () => {
  expect(fromBase(pressureCeiling_kPa(CASE), "psi")).toBeCloseTo(135, 9);
  expect(fromBase(pressureCeiling_kPa({ ...CASE, pressure_limit_kPa: toBase(100, "psi") }), "psi")).toBeCloseTo(100, 9);
});

test("pipes count as water: 2 gal of pipe on 50 gal are 52 gal", () => {
  const withPipes = planExpansion({ ...CASE, pipe_volume_L: toBase(2, "gal") });
  expect(withPipes.expanded_L / planExpansion(CASE).expanded_L).toBeCloseTo(52 / 50, 9);
});

test("the metal takes off what the full formula counts and nothing else", () => {
  const steel = planExpansion(CASE);
  expect(steel.full_L / steel.minimum_L).toBeCloseTo(1 - steel.metal_L / steel.expanded_L, 9);
  expect(planExpansion({ ...CASE, vessel_metal: "none" }).full_L).toBe(steel.minimum_L);
});

test("metal that grows more than the water leaves a tank of zero, not a negative one", () => {
  expect(planExpansion({ ...CASE, cold_C: 0, setpoint_C: 8, vessel_metal: "copper" }).full_L).toBe(0);
});

describe("a tank for the code limit of 80 psi", () => {
  test("is 2.67 gal for 50 gal from 50 to 120 °F at 60 psi (handbook equation)", () => {
    const { codeLimit_L } = planExpansion({ ...CASE, setpoint_C: toBase(120, "F") });
    expect(Math.abs(fromBase(codeLimit_L ?? 0, "gal") / 2.66966 - 1)).toBeLessThan(1e-3);
  });

  test.each([
    ["a limit is named", { pressure_limit_kPa: toBase(100, "psi") }],
    ["the line is at 80 psi", { line_pressure_kPa: toBase(80, "psi") }],
    [
      "the relief valve opens below it",
      { relief_setting_kPa: toBase(75, "psi"), line_pressure_kPa: toBase(40, "psi") },
    ],
  ])("is left out where %s", (_, change) => {
    expect(planExpansion({ ...CASE, ...change }).codeLimit_L).toBeUndefined();
  });
});

test("an existing tank without a known precharge is taken as charged to the line", () => {
  const existing = { ...CASE, existing_tank_L: 10 };
  const charged = planExpansion({ ...existing, existing_precharge_kPa: CASE.line_pressure_kPa });
  expect(planExpansion(existing).existingAcceptance_L).toBe(charged.existingAcceptance_L);
  expect(planExpansion(CASE).existingAcceptance_L).toBeUndefined();
});
