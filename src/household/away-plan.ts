import type { Source } from "../declaration/source.ts";
import { POLICIES } from "../equipment/policies.ts";
import { listDraws } from "../physics/tank/draw-list.ts";
import { steadyAir } from "../physics/tank/room-air.ts";
import { type PlanStep, type RunResult, type Site, simulate } from "../physics/tank/simulate.ts";
import { makeTrace, type Trace } from "../physics/tank/trace.ts";
import { DAY_s, firstDayOf, HOUR_s } from "./calendar.ts";
import { priceHours } from "./price-year.ts";
import { seasonOf } from "./season.ts";
import type { RunMode, UnitCase } from "./unit-case.ts";

/** Water in which Legionella multiplies [C]. */
export const GROWTH_RANGE_C = [25, 45] as const;
export const GROWTH_SOURCE: Source = {
  basis: "published",
  document: "WHO, Legionella and the prevention of legionellosis",
  edition: "2007",
  section: "growth 25 to 45 °C; secondary copy read",
};
/** As cool as the away mode holds a tank: safe from frost, and below the range in which germs grow [C]. */
const COOL_HOLD_C = 10;

const LAYERS = 12;
const LONGEST_REHEAT_s = 4 * DAY_s;
const LOOK_s = 600;
/** Start times are told in half hours. */
const LEAD_STEP_s = HOUR_s / 2;

export type HoldId = "left_alone" | "cool_hold" | "switched_off";

/** One way to leave a tank, from leaving to coming back to hot water. */
export interface Hold {
  readonly id: HoldId;
  /** What it is held at [C]; nothing where it is switched off. */
  readonly hold_C: number | undefined;
  readonly energy_kWh: number;
  readonly cost_usd: number;
  /** How long before coming back to start reheating [s]. */
  readonly lead_s: number;
  /** Time for which the mean of the tank is in the growth range [s]. */
  readonly growth_s: number;
  /** Mean of the tank when reheating begins [C]. */
  readonly coolest_C: number;
}
export interface AwayPlan {
  readonly leftAlone: Hold;
  /** Held cool, or switched off where the unit has no away mode; nothing where that leaves no time to reheat. */
  readonly hold: Hold | undefined;
  readonly reheatMode: RunMode;
  readonly air_C: number;
}

interface Scene {
  readonly known: UnitCase;
  readonly site: Site;
  readonly absence_s: number;
  readonly month: number;
  readonly reheatMode: RunMode;
}

/**
 * Two ways to leave a tank while nobody draws, each simulated to the hour of coming back to a hot tank.
 * @param known unit, place, setpoint, price plan
 * @param absence_s time away [s], one day to a year
 * @param month month in which they leave, 1 = January; its air is taken for the whole time
 * @returns leaving it alone, and holding it cool where that leaves time to reheat
 * @source simulation without draws; the start of reheating from a run that begins with the cooled tank
 * @limits the tank begins hot all through, and left alone it may end within its dead band; pipes, and water that stands in them, are not simulated
 */
export function planAway(known: UnitCase, absence_s: number, month: number): AwayPlan {
  const { air_C, humidity, cold_C } = seasonOf(known.place, month);
  const site = { supply_V: known.supply_V, inlet_C: cold_C, air: steadyAir(air_C, humidity) };
  const scene: Scene = { known, site, absence_s, month, reheatMode: chooseReheat(known) };
  const leftAlone = describe(scene, "left_alone", known.setpoint_C, [usualStep(scene, 0, known.mode)], 0);
  return { leftAlone, hold: tryHold(scene, chooseHold(known)), reheatMode: scene.reheatMode, air_C };
}

/** With days to spare the heat pump reheats alone, where the unit lets it. */
function chooseReheat({ model, mode }: UnitCase): RunMode {
  return model.heater.controls.policies.includes("heat_pump_only") ? "heat_pump_only" : mode;
}

interface HoldStep {
  readonly id: HoldId;
  readonly hold_C: number | undefined;
  readonly step: PlanStep;
}

function chooseHold({ model, setpoint_C }: UnitCase): HoldStep {
  if (model.heater.controls.policies.includes("away_hold")) {
    const step = { from_s: 0, policy: POLICIES.away_hold, setpoint_C: COOL_HOLD_C };
    return { id: "cool_hold", hold_C: COOL_HOLD_C, step };
  }
  const step = { from_s: 0, policy: POLICIES.switched_off, setpoint_C };
  return { id: "switched_off", hold_C: undefined, step };
}

/** Cools the tank for the whole time, sees how long reheating takes from there, then runs the whole with that start. */
function tryHold(scene: Scene, { id, hold_C, step }: HoldStep): Hold | undefined {
  const { absence_s, reheatMode } = scene;
  const cooled = run(scene, [step], absence_s);
  const lead_s = reheatTime_s(scene, cooled);
  if (lead_s === undefined || lead_s >= absence_s) return undefined;
  return describe(scene, id, hold_C, [step, usualStep(scene, absence_s - lead_s, reheatMode)], lead_s);
}

function usualStep({ known }: Scene, from_s: number, mode: RunMode): PlanStep {
  return { from_s, policy: POLICIES[mode], setpoint_C: known.setpoint_C };
}

function run(
  { known, site }: Scene,
  plan: readonly [PlanStep, ...PlanStep[]],
  duration_s: number,
  trace?: Trace,
  start_C?: Float64Array,
): RunResult {
  const schedule = { duration_s, draws: listDraws([]), plan };
  const options = { layers: LAYERS, ...(trace && { trace }), start_C: start_C ?? known.setpoint_C };
  return simulate(known.model.heater, site, schedule, options);
}

/** Time from the cooled tank until every source has done its work, in whole half hours; nothing when none does. */
function reheatTime_s(scene: Scene, { layersAtEnd_C }: RunResult): number | undefined {
  const trace = makeTrace(LONGEST_REHEAT_s, LOOK_s);
  run(scene, [usualStep(scene, 0, scene.reheatMode)], LONGEST_REHEAT_s, trace, layersAtEnd_C);
  let hasRun = false;
  for (let i = 0; i < trace.count; i++) {
    const isOn = (trace.heatPumpOn[i] ?? 0) + (trace.upperOn[i] ?? 0) + (trace.lowerOn[i] ?? 0) > 0;
    if (hasRun && !isOn) return Math.ceil((i * LOOK_s) / LEAD_STEP_s) * LEAD_STEP_s;
    hasRun ||= isOn;
  }
  // A tank that is still within its dead band needs no reheating.
  return hasRun ? undefined : 0;
}

function describe(
  scene: Scene,
  id: HoldId,
  hold_C: number | undefined,
  plan: readonly [PlanStep, ...PlanStep[]],
  lead_s: number,
): Hold {
  const { absence_s, known, month } = scene;
  const trace = makeTrace(absence_s, HOUR_s, LAYERS);
  const { summary } = run(scene, plan, absence_s, trace);
  const means_C = Array.from({ length: trace.count }, (_, hour) => meanOfHour_C(trace, hour));
  const isGrowing = (mean_C: number) => mean_C >= GROWTH_RANGE_C[0] && mean_C <= GROWTH_RANGE_C[1];
  return {
    id,
    hold_C,
    lead_s,
    energy_kWh: summary.electricity_kWh,
    cost_usd: priceHours(trace.electricity_kWh, known.plan, firstDayOf(month)).total_usd,
    growth_s: Math.min(absence_s, means_C.filter(isGrowing).length * HOUR_s),
    coolest_C: Math.min(...means_C),
  };
}

function meanOfHour_C({ layers_C, layers }: Trace, hour: number): number {
  let sum_C = 0;
  for (let layer = 0; layer < layers; layer++) sum_C += layers_C[hour * layers + layer] ?? 0;
  return sum_C / layers;
}
