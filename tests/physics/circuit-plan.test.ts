import { describe, expect, test } from "vitest";
import { type CircuitCase, conductorWithin, planCircuit } from "../../src/physics/circuit-plan.ts";
import { CONDUCTORS } from "../../src/physics/conductor-table.ts";
import { toBase } from "../../src/units/convert.ts";
import { BEHIND_WIRE } from "../reference/electrical.ts";

const CASE: CircuitCase = {
  element_W: 4500,
  rated_volts_V: 240,
  supply_V: 240,
  compressor_A: undefined,
  together: "simultaneous",
  run_m: undefined,
  wire_metal: "copper",
  column: "60",
  wire: undefined,
  breaker_A: undefined,
};

describe("load", () => {
  const cases = [
    ["the element alone", {}, 18.75],
    ["element and compressor at once", { compressor_A: 3 }, 21.75],
    ["the larger of two that lock each other out", { compressor_A: 3, together: "interlocked" }, 18.75],
    ["the compressor where it is the larger", { compressor_A: 25, together: "interlocked" }, 25],
    ["a compressor without element", { element_W: 0, compressor_A: 4 }, 4],
    ["a 240 V element on 208 V", { supply_V: 208 }, 16.25],
  ] as const;
  test.each(cases)("is %s: %o makes %f A", (_, change, load_A) => {
    expect(planCircuit({ ...CASE, ...change }).load_A).toBeCloseTo(load_A, 9);
  });
});

describe("voltage", () => {
  const cases = [
    [240, 240, "within"],
    [228, 240, "within"],
    [227, 240, "under"],
    [208, 240, "under"],
    [252, 240, "within"],
    [253, 240, "over"],
    [240, 208, "over"],
  ] as const;
  test.each(cases)("%f V on an element for %f V is %s", (supply_V, rated_volts_V, match) => {
    expect(planCircuit({ ...CASE, supply_V, rated_volts_V }).match).toBe(match);
  });
  test("does not matter without an element", () => {
    expect(planCircuit({ ...CASE, element_W: 0, supply_V: 120 }).match).toBe("within");
  });
});

describe("wire and breaker that are there", () => {
  test("12 AWG is too thin for 4500 W at 240 V, 10 AWG is not", () => {
    expect(planCircuit({ ...CASE, wire: "12" }).isWireTooThin).toBe(true);
    expect(planCircuit({ ...CASE, wire: "10" }).isWireTooThin).toBe(false);
  });
  test("12 AWG in the 75 °C column carries 23.4 A but may not sit behind its 25 A breaker", () => {
    expect(planCircuit({ ...CASE, wire: "12", column: "75" }).isWireTooThin).toBe(true);
  });
  const breakers = [
    [20, true],
    [25, false],
    [30, false],
    [35, true],
  ] as const;
  test.each(breakers)("a %f A breaker outside 25 to 30 A: %s", (breaker_A, isOutside) => {
    expect(planCircuit({ ...CASE, breaker_A }).isBreakerOutside).toBe(isOutside);
  });
  test("4500 W for 240 V on 208 V draw 16.25 A and may have the 30 A of their plate", () => {
    const { smallest_A, largest_A } = planCircuit({ ...CASE, supply_V: 208 });
    expect([smallest_A, largest_A]).toEqual([25, 30]);
  });
  test("5500 W may have 35 A by its load, 30 A on 10 AWG", () => {
    const { largest_A, breakerTop_A, conductorLimit_A } = planCircuit({ ...CASE, element_W: 5500 });
    expect([largest_A, conductorLimit_A, breakerTop_A]).toEqual([35, 30, 30]);
  });
});

describe("voltage drop", () => {
  test("is left out without a run", () => expect(planCircuit(CASE).drop).toBeUndefined());
  test("over 100 ft of 10 AWG is 4.65 V, 1.94 %, and leaves 4330.56 W", () => {
    const { drop } = planCircuit({ ...CASE, run_m: toBase(100, "ft") });
    expect(Math.abs((drop?.drop_V ?? 0) - 4.65)).toBeLessThan(0.01);
    expect(Math.abs((drop?.share ?? 0) - 0.019375)).toBeLessThan(1e-4);
    expect(Math.abs((drop?.power_W ?? 0) - BEHIND_WIRE.power_W)).toBeLessThan(0.1);
  });
  test("leaves no element power out when a compressor shares the wire", () => {
    expect(planCircuit({ ...CASE, compressor_A: 3, run_m: 30 }).drop?.power_W).toBeUndefined();
  });
  test("over 3 % on 10 AWG at 200 ft is brought under it by 8 AWG", () => {
    const known = { ...CASE, run_m: toBase(200, "ft") };
    const plan = planCircuit(known);
    expect(plan.drop?.share).toBeGreaterThan(0.03);
    const better = conductorWithin(known, plan, CONDUCTORS.copper, 0.03);
    expect(better?.row.size).toBe("8");
    expect(better?.share).toBeLessThanOrEqual(0.03);
  });
  test("is beyond every conductor of the table at 1500 ft", () => {
    const known = { ...CASE, run_m: toBase(1500, "ft") };
    expect(conductorWithin(known, planCircuit(known), CONDUCTORS.copper, 0.03)).toBeUndefined();
  });
});

test("a load beyond the table has no conductor: 12 kW and 20 A at 240 V in copper, 60 °C", () => {
  expect(planCircuit({ ...CASE, element_W: 12_000, compressor_A: 20 }).conductor).toBeUndefined();
});
