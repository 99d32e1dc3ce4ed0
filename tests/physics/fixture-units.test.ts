import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { FIXTURES, type Flush, LOAD_CODES } from "../../src/physics/fixture-unit-table.ts";
import {
  demandFlow,
  fixtureLoad,
  loadSource,
  steadyFlow_L_s,
  sumFixtureUnits,
} from "../../src/physics/fixture-units.ts";
import { fromBase } from "../../src/units/convert.ts";
import { HUNTER_DEMAND, IPC_DEMAND, IPC_REMEMBERED, LOADS } from "../reference/supply.ts";

const NONE = {
  bath_groups: 0,
  toilets: 0,
  lavatories: 0,
  showers: 0,
  tubs: 0,
  kitchen_sinks: 0,
  dishwashers: 0,
  clothes_washers: 0,
};
const gpm = (units: number, code: "ipc" | "upc", flush: Flush) =>
  fromBase(demandFlow(units, code, flush).flow_L_s, "gpm");

test.each(LOADS)(
  "$fixture with $flush: $cold cold, $hot hot, $total in all (IPC)",
  ({ fixture, flush, cold, hot, total }) => {
    expect(fixtureLoad(fixture, "ipc", "private", flush)).toEqual({ cold, hot, total });
  },
);

describe.each(["tank", "valve"] as const)("with %s toilets", (flush) => {
  test.each([...IPC_DEMAND[flush]])("%f units ask for %f gpm by the IPC", (units, flow_gpm) => {
    expect(gpm(units, "ipc", flush)).toBeCloseTo(flow_gpm, 9);
    expect(demandFlow(units, "ipc", flush).source.basis).toBe("published");
  });
  test.each([...HUNTER_DEMAND[flush]])("%f units ask for %f gpm by Hunter's curve", (units, flow_gpm) => {
    expect(gpm(units, "upc", flush)).toBeCloseTo(flow_gpm, 9);
    expect(demandFlow(units, "upc", flush).source.basis).toBe("published");
  });
});

test.each(IPC_REMEMBERED)("%f units ask for %f gpm by the IPC, said to be from memory", (units, flow_gpm) => {
  expect(gpm(units, "ipc", "tank")).toBeCloseTo(flow_gpm, 9);
  expect(demandFlow(units, "ipc", "tank").source.basis).toBe("from_memory");
});

describe("demand", () => {
  test("for few fixtures is far lower by Hunter's curve: 10 units, 8 against 14.6 gpm", () => {
    expect(gpm(10, "upc", "tank") / gpm(10, "ipc", "tank")).toBeCloseTo(8 / 14.6, 9);
  });
  test("between two rows is on the straight line: 11.5 of 11 and 12 units", () => {
    expect(gpm(11.5, "upc", "tank")).toBeCloseTo(8.75, 9);
  });
  test("is none without units, and never under the first row", () => {
    expect(gpm(0, "ipc", "tank")).toBe(0);
    expect(gpm(0.5, "ipc", "tank")).toBe(3);
    expect(gpm(1, "upc", "tank")).toBe(3);
  });
  test("never falls with more units, and flush valves ask for at least as much as tanks", () => {
    const units = fc.double({ min: 0.1, max: 299, noNaN: true });
    fc.assert(
      fc.property(units, fc.constantFrom(...LOAD_CODES), (w, code) => {
        expect(gpm(w + 1, code, "tank")).toBeGreaterThanOrEqual(gpm(w, code, "tank"));
        expect(gpm(w + 1, code, "valve")).toBeGreaterThanOrEqual(gpm(w, code, "valve"));
        expect(gpm(w, code, "valve")).toBeGreaterThanOrEqual(gpm(w, code, "tank"));
      }),
    );
  });
  test("beyond 300 units and for NaN is refused", () => {
    expect(() => demandFlow(300.1, "ipc", "tank")).toThrow(RangeError);
    expect(() => demandFlow(Number.NaN, "upc", "tank")).toThrow(RangeError);
  });
});

describe("a house of two bath groups, kitchen sink and dishwasher", () => {
  const counts = { ...NONE, bath_groups: 2, kitchen_sinks: 1, dishwashers: 1 };
  test("has 7.2 + 1.4 + 1.4 = 10 units by the IPC, 5.4 of them hot, all read", () => {
    const units = sumFixtureUnits(counts, 0, "ipc", "private", "tank");
    expect(units.total).toBeCloseTo(10, 9);
    expect(units.hot).toBeCloseTo(5.4, 9);
    expect(loadSource(counts, "ipc", "private").basis).toBe("published");
  });
  test("says memory where a remembered row is used", () => {
    expect(loadSource({ ...counts, showers: 1 }, "ipc", "private").basis).toBe("from_memory");
    expect(loadSource(counts, "upc", "private").basis).toBe("from_memory");
  });
  test("counts hose bibbs as 5 gpm each by the IPC (Table 604.3), and in units by the UPC", () => {
    expect(fromBase(steadyFlow_L_s(2, "ipc"), "gpm")).toBeCloseTo(10, 9);
    expect(steadyFlow_L_s(2, "upc")).toBe(0);
    const outside = sumFixtureUnits(NONE, 2, "upc", "private", "tank");
    expect(outside).toEqual({ cold: 3.5, hot: 0, total: 3.5 });
  });
});

test("no fixture loads cold and hot pipe by less than both together, by either code", () => {
  for (const code of LOAD_CODES)
    for (const use of ["private", "public"] as const)
      for (const flush of ["tank", "valve"] as const)
        for (const fixture of FIXTURES) {
          const { cold, hot, total } = fixtureLoad(fixture, code, use, flush);
          expect(cold + hot, fixture).toBeGreaterThanOrEqual(total - 1e-9);
          expect(Math.max(cold, hot), fixture).toBeLessThanOrEqual(total);
        }
});
