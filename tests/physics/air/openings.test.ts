import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { airState } from "../../../src/physics/air/air-state.ts";
import { flowThroughOpenings } from "../../../src/physics/air/opening-network.ts";
import {
  areaForFlow_m2,
  areasInRow_m2,
  faceArea_m2,
  freeArea_m2,
  GRILLE_KINDS,
  orificeDrop_Pa,
  orificeFlow_m3_s,
  undercutArea_m2,
} from "../../../src/physics/air/openings.ts";
import { exchangeLowHigh, exchangeOneOpening, ONE_WAY_CD } from "../../../src/physics/air/stack-flow.ts";
import { fromBase, toBase } from "../../../src/units/convert.ts";
import {
  ashraeStack_m3_s,
  FREE_SHARES,
  OPENINGS,
  STACK_SHORTCUT,
  UNDERCUT_FIELD_cfm,
  UNDERCUT_PRACTICE,
  UNDERCUTS,
} from "../../reference/air.ts";

const RHO = 1.2;
const DOOR_m = toBase(30, "in");
const in2 = (area: number) => toBase(area, "in2");
const within = (actual: number, expected: number, share: number) =>
  expect(Math.abs(actual / expected - 1)).toBeLessThan(share);

describe("an opening", () => {
  test.each(OPENINGS)("of $area_in2 in2 passes $flow_cfm cfm at 3 Pa", ({ area_in2, flow_cfm }) => {
    within(fromBase(orificeFlow_m3_s(in2(area_in2), 3, RHO), "cfm"), flow_cfm, 0.001);
  });

  test("the three forms of the equation undo each other", () => {
    const flow_m3_s = orificeFlow_m3_s(0.02, 5, RHO);
    expect(orificeDrop_Pa(0.02, flow_m3_s, RHO)).toBeCloseTo(5, 9);
    expect(areaForFlow_m2(flow_m3_s, 5, RHO)).toBeCloseTo(0.02, 12);
  });

  test("passes nothing without pressure or area", () => {
    expect(orificeFlow_m3_s(0.1, 0, RHO)).toBe(0);
    expect(orificeFlow_m3_s(0, 3, RHO)).toBe(0);
    expect(areaForFlow_m2(0, 3, RHO)).toBe(0);
  });

  test("two alike in a row pass as much as one of 0.71 of the size", () => {
    expect(areasInRow_m2([0.1, 0.1])).toBeCloseTo(0.1 / Math.SQRT2, 12);
    expect(areasInRow_m2([0.1])).toBeCloseTo(0.1, 12);
  });
});

describe("the gap under a 30 in door", () => {
  test.each(UNDERCUTS)("of $gap_in in is $area_in2 in2 and passes $flow_cfm cfm at 3 Pa", (row) => {
    const area_m2 = undercutArea_m2(DOOR_m, toBase(row.gap_in, "in"));
    within(fromBase(area_m2, "in2"), row.area_in2, 1e-9);
    within(fromBase(orificeFlow_m3_s(area_m2, 3, RHO), "cfm"), row.flow_cfm, 0.001);
  });

  test("of 1/2 in agrees with the practice note within 15 %, and a measured door with its leaks passes up to 3 times", () => {
    const gap_m2 = undercutArea_m2(DOOR_m, toBase(UNDERCUT_PRACTICE.gap_in, "in"));
    const flow_cfm = fromBase(orificeFlow_m3_s(gap_m2, 3, RHO), "cfm");
    within(flow_cfm, UNDERCUT_PRACTICE.flow_cfm, 0.15);
    expect(UNDERCUT_FIELD_cfm / flow_cfm).toBeGreaterThan(2.5);
    expect(UNDERCUT_FIELD_cfm / flow_cfm).toBeLessThan(3);
  });
});

test("grilles: metal is 75 % free and wood 25 % (NFPA 54); face and free area undo each other", () => {
  expect(freeArea_m2(1, "metal")).toBe(FREE_SHARES.metal);
  expect(freeArea_m2(1, "wood")).toBe(FREE_SHARES.wood);
  for (const kind of GRILLE_KINDS) expect(freeArea_m2(faceArea_m2(0.15, kind), kind)).toBeCloseTo(0.15, 12);
});

const COOL_ROOM = { room_C: toBase(60, "F"), other_C: toBase(70, "F"), pressure_kPa: 101.325 };

describe("stack flow", () => {
  const { area_ft2, height_ft, flow_cfm } = STACK_SHORTCUT;
  const [area_m2, height_m] = [toBase(area_ft2, "ft2"), toBase(height_ft, "ft")];

  test("through two openings of 1 ft2, 8 ft apart, at 10 F agrees with the published shortcut within 2.5 %", () => {
    within(fromBase(exchangeLowHigh(area_m2, area_m2, height_m, COOL_ROOM).airflow_m3_s, "cfm"), flow_cfm, 0.025);
  });

  test("agrees with ASHRAE's equation at the neutral level within 1 %, for equal and unequal openings", () => {
    for (const low_m2 of [0.02, 0.093, 0.2]) {
      const { airflow_m3_s, neutral_m } = exchangeLowHigh(low_m2, area_m2, height_m, COOL_ROOM);
      const { other_C, room_C } = COOL_ROOM;
      within(airflow_m3_s, ashraeStack_m3_s(ONE_WAY_CD, low_m2, neutral_m, other_C, room_C), 0.01);
    }
  });

  test("the neutral level lies in the middle of equal openings and moves towards the larger", () => {
    const neutral_m = (low_m2: number) => exchangeLowHigh(low_m2, 0.1, 2, COOL_ROOM).neutral_m;
    within(neutral_m(0.1), 1, 0.02);
    expect(neutral_m(0.2)).toBeLessThan(0.5);
    expect(neutral_m(0.05)).toBeGreaterThan(1.5);
  });

  test("is none between equally warm spaces, and the same which of the two is the colder", () => {
    const even = { room_C: 20, other_C: 20, pressure_kPa: 101.325 };
    expect(exchangeLowHigh(0.1, 0.1, 2, even).mass_kg_s).toBe(0);
    expect(exchangeOneOpening(0.1, 2, even).mass_kg_s).toBe(0);
    const swapped = { room_C: COOL_ROOM.other_C, other_C: COOL_ROOM.room_C, pressure_kPa: 101.325 };
    expect(exchangeLowHigh(0.1, 0.05, 2, swapped)).toEqual(exchangeLowHigh(0.1, 0.05, 2, COOL_ROOM));
  });

  test("grows with area, height and difference", () => {
    const base_kg_s = exchangeLowHigh(0.1, 0.1, 2, COOL_ROOM).mass_kg_s;
    expect(exchangeLowHigh(0.1, 0.2, 2, COOL_ROOM).mass_kg_s).toBeGreaterThan(base_kg_s);
    expect(exchangeLowHigh(0.1, 0.1, 3, COOL_ROOM).mass_kg_s).toBeGreaterThan(base_kg_s);
    expect(exchangeLowHigh(0.1, 0.1, 2, { ...COOL_ROOM, room_C: 10 }).mass_kg_s).toBeGreaterThan(base_kg_s);
  });

  test("one opening passes less than the same area split low and high at its edges", () => {
    const one = exchangeOneOpening(1.6, 2, COOL_ROOM);
    expect(one.mass_kg_s).toBeLessThan(exchangeLowHigh(0.8, 0.8, 2, COOL_ROOM).mass_kg_s);
    expect(one.neutral_m).toBe(1);
  });
});

describe("any number of openings", () => {
  test("two of them pass what the closed form says", () => {
    const { in_kg_s, out_kg_s } = flowThroughOpenings(
      [
        { area_m2: 0.05, from_m: 0.1, to_m: 0.1 },
        { area_m2: 0.02, from_m: 2.1, to_m: 2.1 },
      ],
      COOL_ROOM,
    );
    const { mass_kg_s } = exchangeLowHigh(0.05, 0.02, 2, COOL_ROOM);
    expect(in_kg_s).toBeCloseTo(mass_kg_s, 9);
    expect(out_kg_s).toBeCloseTo(mass_kg_s, 9);
  });

  test("a tall one passes air both ways, as the closed form says within 1 %", () => {
    const difference_K = Math.abs(COOL_ROOM.other_C - COOL_ROOM.room_C);
    const door = { area_m2: 1.6, from_m: 0, to_m: 2, cd: 0.4 + 0.0045 * difference_K };
    within(flowThroughOpenings([door], COOL_ROOM).in_kg_s, exchangeOneOpening(1.6, 2, COOL_ROOM).mass_kg_s, 0.01);
  });

  test("what comes in goes out or is taken by the fan, whatever the openings", () => {
    const opening = fc.record({
      area_m2: fc.double({ min: 0.001, max: 0.5, noNaN: true }),
      from_m: fc.double({ min: 0, max: 1, noNaN: true }),
      to_m: fc.double({ min: 1, max: 2.5, noNaN: true }),
    });
    const caseOf = fc.record({
      openings: fc.array(opening, { minLength: 1, maxLength: 4 }),
      room_C: fc.double({ min: -10, max: 35, noNaN: true }),
      takenOut_kg_s: fc.double({ min: -0.2, max: 0.2, noNaN: true }),
    });
    fc.assert(
      fc.property(caseOf, ({ openings, room_C, takenOut_kg_s }) => {
        fc.pre(openings.some(({ area_m2 }) => area_m2 > 0.02));
        const spaces = { room_C, other_C: 18, pressure_kPa: 101.325 };
        const { in_kg_s, out_kg_s } = flowThroughOpenings(openings, spaces, takenOut_kg_s);
        expect(in_kg_s - out_kg_s).toBeCloseTo(takenOut_kg_s, 9);
        expect(Math.min(in_kg_s, out_kg_s)).toBeGreaterThanOrEqual(0);
      }),
      { numRuns: 60 },
    );
  });

  test("a strong fan draws in through all of them, at the pressure of the orifice law", () => {
    const { density_kg_m3 } = airState(20, 101.325);
    const even = { room_C: 20, other_C: 20, pressure_kPa: 101.325 };
    const { in_kg_s, out_kg_s, floor_Pa } = flowThroughOpenings([{ area_m2: 0.02, from_m: 0, to_m: 0.1 }], even, 0.1);
    expect(in_kg_s).toBeCloseTo(0.1, 9);
    expect(out_kg_s).toBe(0);
    expect(-floor_Pa).toBeCloseTo(orificeDrop_Pa(0.02, 0.1 / density_kg_m3, density_kg_m3, ONE_WAY_CD), 6);
  });

  test("without any opening, or a fan that would tear the door, is refused", () => {
    expect(() => flowThroughOpenings([], COOL_ROOM)).toThrow(RangeError);
    expect(() => flowThroughOpenings([{ area_m2: 1e-6, from_m: 0, to_m: 0 }], COOL_ROOM, 0.1)).toThrow(RangeError);
  });
});

const REFUSED = [
  ["a NaN area", () => orificeFlow_m3_s(Number.NaN, 3, RHO)],
  ["a pressure below zero", () => orificeFlow_m3_s(0.1, -1, RHO)],
  ["an area of zero to push through", () => orificeDrop_Pa(0, 0.1, RHO)],
  ["no pressure to size for", () => areaForFlow_m2(0.1, 0, RHO)],
  ["a closed hole in a row", () => areasInRow_m2([0.1, 0])],
  ["a NaN gap", () => undercutArea_m2(0.8, Number.NaN)],
  ["a room of NaN degrees", () => exchangeOneOpening(0.1, 2, { ...COOL_ROOM, room_C: Number.NaN })],
] as const;
test.each(REFUSED)("refuses %s", (_, run) => {
  expect(run).toThrow(RangeError);
});
