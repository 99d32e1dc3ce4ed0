import { POLICIES } from "../equipment/policies.ts";
import { FIRST_HOUR } from "../equipment/test-procedure/rating-conditions.ts";
import { mixedVolume_L } from "../physics/mixing.ts";
import { cell } from "../physics/tank/cell.ts";
import { type DrawRequest, listDraws } from "../physics/tank/draw-list.ts";
import { simulate } from "../physics/tank/simulate.ts";
import { makeTrace } from "../physics/tank/trace.ts";
import type { ColdRiskCase } from "./cold-risk.ts";

type TrialCase = Pick<ColdRiskCase, "unit" | "site" | "plan" | "wanted_C">;

/** One draw of the usable-volume trial; below the largest draw that the simulation takes. */
const PORTION_L = 500;
/** Nobody's tank gives more mixed water than so many times its volume; bounds a trial with cold almost as warm as wanted. */
const MOST_TANKS = 20;
/** More than even a perfect tank has, so that the trial always ends cold. */
const MORE_THAN_ALL = 1.1;
const LONGEST_RECOVERY_s = 96 * 3600;
const MINUTE_s = 60;

/**
 * Mixed water that one hot tank gives in one go with every source off, before it is under the wanted temperature.
 * @param known unit, site with constant inlet, plan whose first setpoint the tank starts at, wanted temperature
 * @returns volume at the fixtures [L]
 * @source simulation: plug flow with a stirred inlet, drawn at the 3 gpm of the first-hour test
 * @limits slower draws keep a little more of the tank hot
 */
export function usableMixed_L({ unit, site, plan, wanted_C }: TrialCase): number {
  const cold_C = constantInlet_C(site.inlet_C);
  const { setpoint_C } = plan[0];
  const perfect_L = mixedVolume_L(unit.tank.volume_L, setpoint_C, cold_C, wanted_C);
  const drawn_L = Math.min(perfect_L * MORE_THAN_ALL, unit.tank.volume_L * MOST_TANKS);
  const draws = listDraws(portionsOf(drawn_L, wanted_C));
  const off = { from_s: 0, policy: POLICIES.switched_off, setpoint_C } as const;
  const schedule = { duration_s: drawn_L / FIRST_HOUR.flow_L_s + MINUTE_s, draws, plan: [off] as const };
  const { shortfall_L, atFixtures_L } = simulate(unit, site, schedule).summary;
  return atFixtures_L - shortfall_L;
}

function portionsOf(drawn_L: number, wanted_C: number): readonly DrawRequest[] {
  const count = Math.ceil(drawn_L / PORTION_L);
  const volume_L = drawn_L / count;
  const duration_s = volume_L / FIRST_HOUR.flow_L_s;
  const start_s = (place: number) => place * duration_s;
  return Array.from({ length: count }, (_, place) => ({
    start_s: start_s(place),
    duration_s,
    volume_L,
    wanted_C,
    isMixed: true,
  }));
}

/**
 * Time from a tank full of cold water until every source has done its work.
 * @param known unit, site with constant inlet, plan whose first step is the mode and setpoint to reach
 * @returns time [s], or nothing when the water is not hot and every source at rest within four days
 * @source simulation without draws, read every minute
 */
export function recoveryTime_s({ unit, site, plan }: TrialCase): number | undefined {
  const trace = makeTrace(LONGEST_RECOVERY_s, MINUTE_s);
  const schedule = { duration_s: LONGEST_RECOVERY_s, draws: listDraws([]), plan: [plan[0]] as const };
  simulate(unit, site, schedule, { trace, start_C: constantInlet_C(site.inlet_C) });
  // Guarding against frost, a source may rest long before the water is hot.
  const hot_C = plan[0].setpoint_C - unit.controls.deadBand_K.upper;
  let hasRun = false;
  for (let i = 0; i < trace.count; i++) {
    const isOn = cell(trace.heatPumpOn, i) + cell(trace.upperOn, i) + cell(trace.lowerOn, i) > 0;
    if (hasRun && !isOn && cell(trace.outlet_C, i) >= hot_C) return i * MINUTE_s;
    hasRun ||= isOn;
  }
  return undefined;
}

function constantInlet_C(inlet: TrialCase["site"]["inlet_C"]): number {
  if (typeof inlet === "number") return inlet;
  throw new RangeError("a trial needs an inlet temperature that does not change");
}
