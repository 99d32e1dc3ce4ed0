import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { STANDARD_AIR } from "../../../src/physics/air/air-state.ts";
import type { DuctRun } from "../../../src/physics/air/duct-kit.ts";
import { airflowLeft, type Fan } from "../../../src/physics/air/fan.ts";

const CURVE: Fan = {
  kind: "curve",
  points: [
    { airflow_m3_s: 0, pressure_Pa: 120 },
    { airflow_m3_s: 0.12, pressure_Pa: 0 },
  ],
};
const POINT: Fan = { kind: "point", rated_m3_s: 0.1, available_Pa: 50 };

/** A grille alone loses k Q² exactly, so that its crossing with a straight fan curve has a closed form. */
function grille(area_m2: number): DuctRun {
  return { diameter_m: 0.2, length_m: 0, material: "galvanized", fittings: [], grille_m2: area_m2 };
}
const grilleFactor = (area_m2: number) => STANDARD_AIR.density_kg_m3 / 2 / (0.6 * area_m2) ** 2;
const flex = (length_m: number, diameter_m = 0.2): DuctRun => ({
  diameter_m,
  length_m,
  material: "flex",
  compression: 0.15,
  fittings: [{ fitting: "elbow_90_smooth", count: 2 }],
});

describe("airflow left", () => {
  test("where a straight fan curve meets a grille is the root of k Q² = p0 (1 - Q / Q0)", () => {
    for (const area_m2 of [0.002, 0.01, 0.05]) {
      const [k, slope] = [grilleFactor(area_m2), 120 / 0.12];
      const root_m3_s = (-slope + Math.sqrt(slope ** 2 + 4 * k * 120)) / (2 * k);
      const { airflow_m3_s, end, loss_Pa } = airflowLeft(CURVE, [grille(area_m2)], STANDARD_AIR);
      expect(airflow_m3_s).toBeCloseTo(root_m3_s, 9);
      expect(loss_Pa).toBeCloseTo(120 - slope * airflow_m3_s, 5);
      expect(end).toBe("balanced");
    }
  });

  test("with one point known is where the ducts take its pressure", () => {
    const { airflow_m3_s, end } = airflowLeft(POINT, [grille(0.01)], STANDARD_AIR);
    expect(airflow_m3_s).toBeCloseTo(Math.sqrt(50 / grilleFactor(0.01)), 9);
    expect(end).toBe("balanced");
  });

  test("is all of it without ducts, and where the ducts take less than is available", () => {
    expect(airflowLeft(CURVE, [], STANDARD_AIR)).toMatchObject({ airflow_m3_s: 0.12, share: 1, end: "full" });
    expect(airflowLeft(POINT, [flex(1)], STANDARD_AIR)).toMatchObject({ airflow_m3_s: 0.1, share: 1, end: "full" });
  });

  test("off the low end of a sheet's curve says so and holds the curve's first pressure", () => {
    const short: Fan = {
      kind: "curve",
      points: [
        { airflow_m3_s: 0.08, pressure_Pa: 60 },
        { airflow_m3_s: 0.12, pressure_Pa: 10 },
      ],
    };
    const { airflow_m3_s, end } = airflowLeft(short, [grille(0.005)], STANDARD_AIR);
    expect(end).toBe("beyond_sheet");
    expect(airflow_m3_s).toBeCloseTo(Math.sqrt(60 / grilleFactor(0.005)), 9);
  });

  test("on a curve that dips takes the crossing with the most air", () => {
    const dip: Fan = {
      kind: "curve",
      points: [
        { airflow_m3_s: 0, pressure_Pa: 100 },
        { airflow_m3_s: 0.03, pressure_Pa: 20 },
        { airflow_m3_s: 0.06, pressure_Pa: 60 },
        { airflow_m3_s: 0.1, pressure_Pa: 0 },
      ],
    };
    expect(airflowLeft(dip, [grille(0.012)], STANDARD_AIR).airflow_m3_s).toBeGreaterThan(0.06);
  });

  test("is none from a fan without pressure", () => {
    const dead: Fan = { kind: "point", rated_m3_s: 0.1, available_Pa: 0 };
    expect(airflowLeft(dead, [flex(3)], STANDARD_AIR)).toMatchObject({ end: "blocked" });
    expect(airflowLeft(dead, [], STANDARD_AIR)).toMatchObject({ end: "full" });
  });

  test("never grows with a longer or narrower duct, and never passes the fan's own", () => {
    const kit = fc.record({
      length_m: fc.double({ min: 0, max: 60, noNaN: true }),
      diameter_m: fc.double({ min: 0.1, max: 0.3, noNaN: true }),
      fan: fc.constantFrom(CURVE, POINT),
    });
    fc.assert(
      fc.property(kit, ({ length_m, diameter_m, fan }) => {
        const left = (kit: DuctRun) => airflowLeft(fan, [kit], STANDARD_AIR).airflow_m3_s;
        const base_m3_s = left(flex(length_m, diameter_m));
        expect(base_m3_s).toBeGreaterThan(0);
        expect(base_m3_s).toBeLessThanOrEqual(0.12);
        expect(left(flex(length_m + 3, diameter_m))).toBeLessThanOrEqual(base_m3_s);
        expect(left(flex(length_m, diameter_m * 0.9))).toBeLessThanOrEqual(base_m3_s);
      }),
      { numRuns: 60 },
    );
  });

  const curve = (...flows: readonly [number, number]): Fan => ({
    kind: "curve",
    points: [
      { airflow_m3_s: flows[0], pressure_Pa: 100 },
      { airflow_m3_s: flows[1], pressure_Pa: 0 },
    ],
  });
  test.each([
    ["points that do not rise", curve(0.1, 0.1)],
    ["a NaN airflow", curve(0, Number.NaN)],
    ["a fan that moves nothing", { kind: "point", rated_m3_s: 0, available_Pa: 50 } satisfies Fan],
    ["a NaN pressure", { kind: "point", rated_m3_s: 0.1, available_Pa: Number.NaN } satisfies Fan],
  ])("refuses %s", (_, fan) => {
    expect(() => airflowLeft(fan, [], STANDARD_AIR)).toThrow(RangeError);
  });
});
