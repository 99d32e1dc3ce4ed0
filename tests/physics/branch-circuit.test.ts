import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  conductorBreakerLimit_A,
  conductorRow,
  designCurrent_A,
  largestBreaker_A,
  loopResistance_ohm,
  smallestBreaker_A,
  thinnestConductor,
  voltageDrop_V,
} from "../../src/physics/branch-circuit.ts";
import { COLUMNS, CONDUCTORS, STANDARD_BREAKERS_A, WIRE_SIZES } from "../../src/physics/conductor-table.ts";
import { toBase } from "../../src/units/convert.ts";
import { AMPACITY, BREAKERS, CIRCUITS, DROPS, RATED_208, RESISTANCE, SMALL_LIMITS } from "../reference/electrical.ts";

describe("the table", () => {
  const sizes = new Set<string>(WIRE_SIZES);

  test("has the published sizes and no others", () => {
    expect(AMPACITY.map(([size]) => size).filter((size) => !sizes.has(size))).toEqual([]);
    expect(CONDUCTORS.copper.map(({ size }) => size)).toEqual(AMPACITY.map(([size]) => size));
    expect(CONDUCTORS.aluminium.map(({ size }) => size)).toEqual(["12", "10", "8", "6", "4"]);
  });

  test.each(AMPACITY)("%s AWG carries what Table 310.16 prints", (size, copper, aluminium) => {
    const carries = (metal: "copper" | "aluminium") => {
      const row = CONDUCTORS[metal].find((candidate) => candidate.size === size);
      return COLUMNS.map((column) => row?.ampacity_A[column]);
    };
    expect(carries("copper")).toEqual(copper);
    expect(carries("aluminium")).toEqual(aluminium);
  });

  test.each(RESISTANCE)("%s AWG has the resistance of Chapter 9 Table 8", (size, copper, aluminium) => {
    expect(CONDUCTORS.copper.find((row) => row.size === size)?.ohmPer1000Ft).toBe(copper);
    expect(CONDUCTORS.aluminium.find((row) => row.size === size)?.ohmPer1000Ft).toBe(aluminium);
  });

  test("limits small conductors as 240.4(D) does, whatever the column", () => {
    for (const metal of ["copper", "aluminium"] as const)
      for (const row of CONDUCTORS[metal]) {
        const limit_A = Object.entries(SMALL_LIMITS[metal]).find(([size]) => size === row.size)?.[1];
        expect(row.smallLimit_A).toBe(limit_A);
        if (limit_A !== undefined) expect(conductorBreakerLimit_A(row, "90")).toBe(limit_A);
      }
  });

  test("lists the standard breakers of 240.6(A) to 200 A", () => expect(STANDARD_BREAKERS_A).toEqual(BREAKERS));
});

describe.each(CIRCUITS)("$power_W W at $volts V", ({ power_W, volts, load_A, design_A, smallest_A, largest_A }) => {
  test(`counts as ${design_A} A`, () => {
    expect(Math.abs(power_W / volts - load_A)).toBeLessThan(0.01);
    expect(Math.abs(designCurrent_A(power_W / volts) - design_A)).toBeLessThan(0.01);
  });
  test(`takes a breaker of ${smallest_A} to ${largest_A} A`, () => {
    expect(smallestBreaker_A(designCurrent_A(power_W / volts))).toBe(smallest_A);
    expect(largestBreaker_A(power_W / volts)).toBe(largest_A);
  });
});

test("4500 W rated for 208 V on 208 V counts as 27.04 A", () => {
  const { power_W, volts, load_A, design_A } = RATED_208;
  expect(Math.abs(power_W / volts - load_A)).toBeLessThan(0.01);
  expect(Math.abs(designCurrent_A(power_W / volts) - design_A)).toBeLessThan(0.01);
});

test.each(DROPS)("$load_A A over $run_ft ft of $size AWG copper loses $drop_V V, $percent %", (row) => {
  const conductor = conductorRow(row.size, "copper");
  const loop_ohm = conductor === undefined ? Number.NaN : loopResistance_ohm(conductor, toBase(row.run_ft, "ft"));
  const drop_V = voltageDrop_V(row.load_A, loop_ohm);
  expect(Math.abs(drop_V - row.drop_V)).toBeLessThan(0.01);
  expect(Math.abs((100 * drop_V) / row.volts - row.percent)).toBeLessThan(0.01);
});

describe("the thinnest conductor", () => {
  const cases = [
    [23.4375, "copper", "60", "10"],
    [23.4375, "copper", "75", "10"],
    [28.6458, "copper", "60", "10"],
    [23.4375, "aluminium", "60", "10"],
    [28.6458, "aluminium", "60", "8"],
    [15, "copper", "60", "14"],
    [15.01, "copper", "60", "12"],
    [20, "copper", "60", "12"],
    [20.01, "copper", "60", "10"],
    [30, "copper", "60", "10"],
    [30.01, "copper", "60", "8"],
    [70, "copper", "60", "4"],
  ] as const;
  test.each(cases)("for %f A in %s, %s °C column, is %s AWG", (design_A, metal, column, size) => {
    expect(thinnestConductor(design_A, metal, column)?.size).toBe(size);
  });

  test("is none beyond the table, 70.01 A copper at 60 °C", () => {
    expect(thinnestConductor(70.01, "copper", "60")).toBeUndefined();
  });

  test("carries the load, may sit behind its breaker, and no thinner one would do both", () => {
    const load = fc.double({ min: 0.5, max: 70, noNaN: true });
    fc.assert(
      fc.property(
        load,
        fc.constantFrom("copper", "aluminium"),
        fc.constantFrom(...COLUMNS),
        (design_A, metal, column) => {
          const chosen = thinnestConductor(design_A, metal, column);
          const breaker_A = smallestBreaker_A(design_A) ?? Number.POSITIVE_INFINITY;
          const does = (row: (typeof CONDUCTORS)["copper"][number]) =>
            row.ampacity_A[column] >= design_A && conductorBreakerLimit_A(row, column) >= breaker_A;
          expect(chosen).toBe(CONDUCTORS[metal].filter(does)[0]);
        },
      ),
    );
  });
});

describe("breakers", () => {
  test("the largest is never under the smallest for one load", () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 130, noNaN: true }), (load_A) => {
        const smallest_A = smallestBreaker_A(designCurrent_A(load_A)) ?? Number.NaN;
        expect(largestBreaker_A(load_A)).toBeGreaterThanOrEqual(smallest_A);
      }),
    );
  });

  test("20 A is the largest up to 13.3 A of load, 25 A just above 16 A", () => {
    expect(largestBreaker_A(13.3)).toBe(20);
    expect(largestBreaker_A(13.34)).toBe(25);
    expect(largestBreaker_A(16.25)).toBe(25);
  });

  test("none is listed beyond 200 A", () => {
    expect(smallestBreaker_A(200.1)).toBeUndefined();
    expect(largestBreaker_A(134)).toBeUndefined();
  });
});

test("no length or no load loses nothing, twice the length loses twice as much", () => {
  const [row] = CONDUCTORS.copper;
  if (row === undefined) throw new Error("the table is empty");
  expect(loopResistance_ohm(row, 0)).toBe(0);
  expect(voltageDrop_V(0, 1)).toBe(0);
  expect(loopResistance_ohm(row, 20) / loopResistance_ohm(row, 10)).toBeCloseTo(2, 12);
});

test.each([Number.NaN, -1, 201])("refuses a load of %f A", (load_A) => {
  expect(() => designCurrent_A(load_A)).toThrow(RangeError);
  expect(() => largestBreaker_A(load_A)).toThrow(RangeError);
  expect(() => voltageDrop_V(load_A, 1)).toThrow(RangeError);
});
test("refuses a NaN run and a NaN design current", () => {
  const [row] = CONDUCTORS.copper;
  expect(() => row && loopResistance_ohm(row, Number.NaN)).toThrow(RangeError);
  expect(() => smallestBreaker_A(Number.NaN)).toThrow(RangeError);
});
