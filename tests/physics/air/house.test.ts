import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  DEPRESSURISATION_LIMIT_Pa,
  flowAtHousePressure_m3_s,
  housePressure_Pa,
  leakageFromChanges_m3_s,
  VENTING_KINDS,
} from "../../../src/physics/air/house-pressure.ts";
import { addedAir_m3_s, type DuctedRun, ductEffect, makeUpHeat_W } from "../../../src/physics/air/make-up-air.ts";
import { fromBase, toBase } from "../../../src/units/convert.ts";
import { HOUSE, SENSIBLE } from "../../reference/air.ts";

const cfm = (flow: number) => toBase(flow, "cfm");

describe("house pressure", () => {
  test.each(HOUSE)("$exhaust_cfm cfm out of a house of $leakage50_cfm cfm at 50 Pa make $pressure_Pa Pa", (row) => {
    const pressure_Pa = housePressure_Pa(cfm(row.exhaust_cfm), cfm(row.leakage50_cfm));
    expect(Math.abs(pressure_Pa - row.pressure_Pa)).toBeLessThan(0.05);
  });

  test("is 50 Pa at the blower door's own flow and none without a fan", () => {
    expect(housePressure_Pa(0.5, 0.5)).toBeCloseTo(50, 9);
    expect(housePressure_Pa(0, 0.5)).toBe(0);
  });

  test("a house of 1500 cfm stands a 150 cfm exhaust under every limit; one of 300 cfm breaks all but the sealed", () => {
    const breaks = (leakage50_cfm: number) =>
      VENTING_KINDS.filter((kind) => housePressure_Pa(cfm(150), cfm(leakage50_cfm)) > DEPRESSURISATION_LIMIT_Pa[kind]);
    expect(breaks(1500)).toEqual([]);
    expect(breaks(300)).toEqual(["water_heater_alone", "natural_shared", "natural_draft", "fan_assisted"]);
  });

  test("3 air changes at 50 Pa in 20,000 ft3 are 1000 cfm", () => {
    expect(fromBase(leakageFromChanges_m3_s(3, toBase(20_000, "ft3")), "cfm")).toBeCloseTo(1000, 6);
  });

  test("and the flow that makes it undo each other; a tighter house moves further", () => {
    const caseOf = fc.record({
      flow_m3_s: fc.double({ min: 0.001, max: 1, noNaN: true }),
      leakage50_m3_s: fc.double({ min: 0.05, max: 5, noNaN: true }),
    });
    fc.assert(
      fc.property(caseOf, ({ flow_m3_s, leakage50_m3_s }) => {
        const pressure_Pa = housePressure_Pa(flow_m3_s, leakage50_m3_s);
        expect(housePressure_Pa(flow_m3_s, leakage50_m3_s * 0.9)).toBeGreaterThan(pressure_Pa);
        fc.pre(pressure_Pa < 1000);
        expect(flowAtHousePressure_m3_s(pressure_Pa, leakage50_m3_s)).toBeCloseTo(flow_m3_s, 9);
      }),
    );
  });
});

describe("make-up air", () => {
  const RUN: DuctedRun = {
    airflow_m3_s: 0.1,
    cooling_W: 1000,
    natural_m3_s: 0.05,
    indoor_C: 20,
    outdoor_C: -5,
    pressure_kPa: 101.325,
  };

  test("100 cfm raised by 20 F take 1.08 x cfm x F within 1 % (standard air)", () => {
    const heat_W = makeUpHeat_W(cfm(100), toBase(90, "F"), toBase(70, "F"), 101.325);
    expect(Math.abs(fromBase(heat_W, "Btu_h") / (SENSIBLE * 100 * 20) - 1)).toBeLessThan(0.01);
  });

  test("a tight house draws in all that the fan moves, a leaky one less", () => {
    expect(addedAir_m3_s(0.1, 0)).toBeCloseTo(0.1, 12);
    expect(addedAir_m3_s(0.1, 0.1)).toBeCloseTo(0.1 * (Math.SQRT2 - 1), 12);
    expect(addedAir_m3_s(0, 0.1)).toBe(0);
  });

  test("without ducts the room gives the heat; with both the house gives none", () => {
    expect(ductEffect("none", RUN)).toEqual({
      roomCooling_W: 1000,
      addedOutdoor_m3_s: 0,
      makeUp_W: 0,
      netExhaust_m3_s: 0,
    });
    expect(ductEffect("both", RUN)).toEqual({
      roomCooling_W: 0,
      addedOutdoor_m3_s: 0,
      makeUp_W: 0,
      netExhaust_m3_s: 0,
    });
  });

  test("exhaust only spares the room and draws outdoor air; intake only cools the room and pushes house air out", () => {
    const out = ductEffect("exhaust_only", RUN);
    const into = ductEffect("intake_only", RUN);
    expect(out).toMatchObject({ roomCooling_W: 0, netExhaust_m3_s: 0.1 });
    expect(into).toMatchObject({ roomCooling_W: 1000, netExhaust_m3_s: -0.1 });
    expect(out.makeUp_W).toBe(into.makeUp_W);
    expect(out.makeUp_W).toBeCloseTo(makeUpHeat_W(addedAir_m3_s(0.1, 0.05), 20, -5, 101.325), 9);
  });

  test("in winter exhaust only costs a tight house more than the room's cooling, in mild weather less", () => {
    expect(ductEffect("exhaust_only", { ...RUN, natural_m3_s: 0.01 }).makeUp_W).toBeGreaterThan(1000);
    expect(ductEffect("exhaust_only", { ...RUN, outdoor_C: 15 }).makeUp_W).toBeLessThan(1000);
    expect(ductEffect("exhaust_only", { ...RUN, outdoor_C: 30 }).makeUp_W).toBeLessThan(0);
  });
});

const REFUSED = [
  ["a NaN exhaust", () => housePressure_Pa(Number.NaN, 1)],
  ["a house without leaks", () => housePressure_Pa(0.1, 0)],
  ["no air changes", () => leakageFromChanges_m3_s(0, 500)],
  ["a NaN pressure", () => flowAtHousePressure_m3_s(Number.NaN, 1)],
  ["a NaN outdoors", () => makeUpHeat_W(0.1, 20, Number.NaN, 101.325)],
  ["infiltration below zero", () => addedAir_m3_s(0.1, -0.1)],
] as const;
test.each(REFUSED)("refuses %s", (_, run) => {
  expect(run).toThrow(RangeError);
});
