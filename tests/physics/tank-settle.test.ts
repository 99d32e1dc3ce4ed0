import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { settle } from "../../src/physics/tank/settle.ts";
import { buildTankModel, STUDY_WATER } from "../../src/physics/tank/tank-model.ts";
import { fillTank, setLayers, storedHeat_J } from "../../src/physics/tank/tank-state.ts";
import { bareTank } from "../fixtures/bare-tank.ts";
import { BUOYANCY, INVERSIONS } from "../reference/tank.ts";

function tankOf(layers_C: readonly number[]) {
  const tank = fillTank(buildTankModel(bareTank().tank, layers_C.length, STUDY_WATER), 20);
  setLayers(tank, layers_C);
  return tank;
}
const layersOf = (tank: ReturnType<typeof tankOf>) => [...tank.t_C.subarray(1)];

test.each(INVERSIONS)("top to bottom $topDown settles to $settled exactly", ({ topDown, settled }) => {
  const tank = tankOf([...topDown].reverse());
  settle(tank);
  expect(layersOf(tank)).toEqual([...settled].reverse());
});

describe("for any layers", () => {
  const layers = fc.array(fc.double({ min: 5, max: 80, noNaN: true }), { minLength: 2, maxLength: 40 });

  test("nothing is warmer below than above, and heat is the same", () => {
    fc.assert(
      fc.property(layers, (layers_C) => {
        const tank = tankOf(layers_C);
        const before_J = storedHeat_J(tank);
        settle(tank);
        const after = layersOf(tank);
        after.forEach((t_C, i) => {
          expect(t_C).toBeLessThanOrEqual((after[i + 1] ?? t_C) + 1e-9);
        });
        expect(Math.abs(storedHeat_J(tank) / before_J - 1)).toBeLessThan(1e-12);
      }),
    );
  });

  test("settled layers stay as they are", () => {
    fc.assert(
      fc.property(layers, (layers_C) => {
        const sorted = [...layers_C].sort((a, b) => a - b);
        const tank = tankOf(sorted);
        settle(tank);
        expect(layersOf(tank)).toEqual(sorted);
      }),
    );
  });

  test("heat into the lowest layer ends up in the same place at once and in ten parts", () => {
    fc.assert(
      fc.property(layers, fc.double({ min: 0, max: 60, noNaN: true }), (layers_C, rise_K) => {
        const sorted = [...layers_C].sort((a, b) => a - b);
        const [once, often] = [tankOf(sorted), tankOf(sorted)];
        const heat = (tank: typeof once, rise: number) => {
          tank.t_C[1] = (tank.t_C[1] ?? 0) + rise;
          settle(tank);
        };
        heat(once, rise_K);
        for (let k = 0; k < 10; k += 1) heat(often, rise_K / 10);
        layersOf(once).forEach((t_C, i) => {
          expect(layersOf(often)[i]).toBeCloseTo(t_C, 8);
        });
      }),
    );
  });
});

test("instant blending stands for convection that halves an inversion of 1 K over 0.2 m in under 15 s", () => {
  // Effective conductivity of inverted layers, as published: lambda + 2/3 rho cp kappa dx² sqrt(g beta dT / dx).
  const { difference_K, height_m, effective_W_m_K } = BUOYANCY;
  const [water_W_m_K, rho_cp_J_m3_K, kappa, g_m_s2, beta_1_K] = [0.598, 1000 * 4180, 0.4, 9.81, 350e-6];
  const root = Math.sqrt((g_m_s2 * beta_1_K * difference_K) / height_m);
  const effective = water_W_m_K + (2 / 3) * rho_cp_J_m3_K * kappa * height_m ** 2 * root;
  expect(Math.abs(effective / effective_W_m_K - 1)).toBeLessThan(0.01);
  // Two layers of height dx exchange lambda / dx for each square metre; each holds rho cp dx.
  const halving_s = (Math.LN2 * rho_cp_J_m3_K * height_m ** 2) / (2 * effective);
  expect(halving_s).toBeLessThan(15);
});
