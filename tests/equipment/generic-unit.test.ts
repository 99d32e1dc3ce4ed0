import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { buildGenericUnit, LEAST_SOURCE_W, usualSupplies_V } from "../../src/equipment/generic-unit.ts";
import { findSheetProblems } from "../../src/equipment/sheet-problems.ts";
import { toBase } from "../../src/units/convert.ts";
import { UA_TYPICAL } from "../reference/tank.ts";

const power = (most_W: number) =>
  fc.oneof(fc.constant(0), fc.double({ min: LEAST_SOURCE_W, max: most_W, noNaN: true }));
const SIZES = fc.record({
  nominal_L: fc.double({ min: toBase(20, "gal"), max: toBase(200, "gal"), noNaN: true }),
  element_W: power(12_000),
  heatPump_W: power(20_000),
});

test("a sheet of any size from 20 to 200 gal can be simulated", () => {
  fc.assert(
    fc.property(SIZES, (size) => {
      expect(findSheetProblems(buildGenericUnit(size))).toEqual([]);
    }),
  );
});

test("says that its numbers are common practice, and holds 90 % of the plate", () => {
  const unit = buildGenericUnit({ nominal_L: 300, element_W: 4500, heatPump_W: 1500 });
  expect(unit.source.basis).toBe("common_practice");
  expect(unit.tank.volume_L).toBeCloseTo(270, 9);
});

test("loses heat as tanks of 50 to 80 gal do, 2.5 to 5 Btu/h-°F (from memory)", () => {
  for (const gallons of [50, 65, 80]) {
    const { heatLoss_W_K } = buildGenericUnit({
      nominal_L: toBase(gallons, "gal"),
      element_W: 0,
      heatPump_W: 1500,
    }).tank;
    expect(heatLoss_W_K).toBeGreaterThan(toBase(UA_TYPICAL.lowest_Btu_h_F, "Btu_h_F") * 0.99);
    expect(heatLoss_W_K).toBeLessThan(toBase(UA_TYPICAL.highest_Btu_h_F, "Btu_h_F"));
  }
});

describe("offers the modes that its sources allow", () => {
  test.each([
    ["elements and heat pump", 4500, 1500, "heat_pump_first"],
    ["a heat pump alone", 0, 1500, "heat_pump_only"],
    ["elements alone", 4500, 0, "elements_only"],
  ])("%s", (_, element_W, heatPump_W, usual) => {
    const unit = buildGenericUnit({ nominal_L: 300, element_W, heatPump_W });
    expect(unit.controls.policies[0]).toBe(usual);
    expect(unit.controls.policies.includes("both_together")).toBe(element_W > 0 && heatPump_W > 0);
  });
  test("without elements it may stand on 120 V, with them it does not", () => {
    expect(usualSupplies_V(0)).toContain(120);
    expect(usualSupplies_V(4500)).not.toContain(120);
  });
});
