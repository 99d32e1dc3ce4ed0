import { describe, expect, test } from "vitest";
import { POLICIES } from "../../src/equipment/policies.ts";
import { drawsOf, sampleDays } from "../../src/household/cold-risk.ts";
import type { Pace } from "../../src/physics/tank/engine.ts";
import { steadyAir } from "../../src/physics/tank/room-air.ts";
import { simulate } from "../../src/physics/tank/simulate.ts";
import { INTEGRATED_65, RESISTANCE_50 } from "../fixtures/water-heaters.ts";

const DAYS = 60;
const DRAWS = drawsOf(sampleDays({ people: 3, bathrooms: 2 }, 7, DAYS), 40.5);
const SITE = { supply_V: 240, inlet_C: 10, air: steadyAir(18, 0.5) };
const CASES = [
  { unit: RESISTANCE_50, mode: "elements_only" },
  { unit: INTEGRATED_65, mode: "heat_pump_only" },
  { unit: INTEGRATED_65, mode: "heat_pump_first" },
] as const;
type Case = (typeof CASES)[number];

function run({ unit, mode }: Case, options: { readonly layers?: number; readonly pace?: Pace }) {
  const plan = [{ from_s: 0, policy: POLICIES[mode], setpoint_C: 52 }] as const;
  return simulate(unit, SITE, { duration_s: DAYS * 86_400, draws: DRAWS, plan }, options).summary;
}

/** All longest steps cut by the same factor. */
function paceOf(cut: number): Pace {
  return { idle_s: 1800 / cut, heating_s: 600 / cut, drawing_s: 60 / cut, exchange_s: 300 / cut };
}

/** How far each is from the finest, as a share of it. */
function farFromFinest(values: readonly number[]): readonly number[] {
  const finest = values.at(-1) ?? Number.NaN;
  return values.slice(0, -1).map((value) => Math.abs(value / finest - 1));
}

describe.each(CASES)("$unit.id, $mode, over 60 sampled days", (known) => {
  test("electricity closes in as layers go 6, 12, 24, 48: the product's 12 lie within 2 % of 48, and 24 within 1 %", () => {
    const [six = 1, twelve = 1, twentyFour = 1] = farFromFinest(
      [6, 12, 24, 48].map((layers) => run(known, { layers }).electricity_kWh),
    );
    expect(twelve).toBeLessThan(0.02);
    expect(twentyFour).toBeLessThan(0.01);
    expect(twentyFour).toBeLessThan(Math.max(six, twelve));
  });

  test("electricity stays within 0.5 % of steps of an eighth as steps are halved and halved again", () => {
    const paces = [1, 2, 4, 8].map(paceOf);
    const runs = paces.map((pace) => run(known, { pace }));
    for (const far of farFromFinest(runs.map(({ electricity_kWh }) => electricity_kWh)))
      expect(far).toBeLessThan(0.005);
    for (const far of farFromFinest(runs.map(({ hot_L }) => hot_L))) expect(far).toBeLessThan(0.002);
    const steps = runs.map((summary) => summary.steps);
    expect(steps).toEqual([...steps].sort((a, b) => a - b));
  });
});
