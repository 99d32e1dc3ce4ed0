import type { Source } from "../../declaration/source.ts";
import { requireWithin } from "../require-within.ts";
import { airState } from "./air-state.ts";

/** Which of the unit's two air connections lead outdoors through a duct. */
export const DUCT_ARRANGEMENTS = ["none", "exhaust_only", "intake_only", "both"] as const;
export type DuctArrangement = (typeof DUCT_ARRANGEMENTS)[number];

export const SUPERPOSITION: Source = {
  basis: "from_memory",
  document: "Combining natural infiltration and an unbalanced fan, root of the sum of squares",
  section: "simplified method of ASHRAE and LBNL; not looked up",
};

/** Which way the house loses air: 1 out, -1 in. */
const NET_SIGN = { none: 0, exhaust_only: 1, intake_only: -1, both: 0 } as const;
const DRY_AIR_J_kg_K = 1006;
const MOST_m3_s = 10;

/** What ducts to outdoors do to room and house while the heat pump runs. */
export interface DuctEffect {
  /** Heat taken out of the room or house by the cold air [W]. */
  readonly roomCooling_W: number;
  /** Outdoor air that comes into the house because of the ducts, beyond what leaks in anyway [m3/s]. */
  readonly addedOutdoor_m3_s: number;
  /** Heat that outdoor air needs to become house air [W]; below zero where outdoors is warmer. */
  readonly makeUp_W: number;
  /** Air that leaves the house and must leak back in [m3/s]; below zero where it is blown in. */
  readonly netExhaust_m3_s: number;
}

/**
 * What an arrangement of ducts does to the house.
 * @param arrangement which connections lead outdoors
 * @param run airflow through the unit [m3/s], 0..10; heat taken from the air [W], 0..20000; natural infiltration of the
 *   house [m3/s], 0..10; indoor and outdoor temperature [C], -60..90; barometric pressure [kPa], 50..120
 * @returns cooling of the room, added outdoor air and its heat, net exhaust
 * @source none: the room gives the heat. Exhaust only: cold air leaves, outdoor air leaks in. Intake only: outdoor air,
 *   cooled, is blown in. Both: the house takes no part. Added air sqrt(Qn^2 + Qf^2) - Qn by SUPERPOSITION
 * @limits dry heat only; duct walls and leaks of the casing are not in it
 */
export function ductEffect(arrangement: DuctArrangement, run: DuctedRun): DuctEffect {
  requireWithin("airflow_m3_s", run.airflow_m3_s, 0, MOST_m3_s);
  requireWithin("cooling_W", run.cooling_W, 0, 20_000);
  const addedOutdoor_m3_s = NET_SIGN[arrangement] !== 0 ? addedAir_m3_s(run.airflow_m3_s, run.natural_m3_s) : 0;
  const isInRoom = arrangement === "none" || arrangement === "intake_only";
  return {
    roomCooling_W: isInRoom ? run.cooling_W : 0,
    addedOutdoor_m3_s,
    makeUp_W: makeUpHeat_W(addedOutdoor_m3_s, run.indoor_C, run.outdoor_C, run.pressure_kPa),
    netExhaust_m3_s: NET_SIGN[arrangement] * run.airflow_m3_s,
  };
}

export interface DuctedRun {
  readonly airflow_m3_s: number;
  readonly cooling_W: number;
  readonly natural_m3_s: number;
  readonly indoor_C: number;
  readonly outdoor_C: number;
  readonly pressure_kPa: number;
}

/**
 * Outdoor air that an unbalanced fan adds to what leaks in by itself.
 * @param fan_m3_s unbalanced airflow [m3/s], 0..10
 * @param natural_m3_s natural infiltration [m3/s], 0..10
 * @returns added airflow [m3/s], never more than the fan moves
 * @source sqrt(Qn^2 + Qf^2) - Qn
 */
export function addedAir_m3_s(fan_m3_s: number, natural_m3_s: number): number {
  requireWithin("fan_m3_s", fan_m3_s, 0, MOST_m3_s);
  requireWithin("natural_m3_s", natural_m3_s, 0, MOST_m3_s);
  return Math.hypot(fan_m3_s, natural_m3_s) - natural_m3_s;
}

/**
 * Heat that outdoor air needs to become as warm as the house.
 * @param outdoor_m3_s airflow, measured as outdoor air [m3/s], 0..10
 * @param indoor_C house [C], -60..90
 * @param outdoor_C outdoors [C], -60..90
 * @param pressure_kPa barometric pressure [kPa], 50..120
 * @returns heat rate [W]; below zero where outdoors is warmer
 * @source m cp (ti - to), cp of dry air 1006 J/(kg K), ASHRAE Handbook - Fundamentals 2017, ch. 1, eq. 30
 * @limits dry heat; damp outdoor air in summer brings latent heat besides
 */
export function makeUpHeat_W(outdoor_m3_s: number, indoor_C: number, outdoor_C: number, pressure_kPa: number): number {
  requireWithin("outdoor_m3_s", outdoor_m3_s, 0, MOST_m3_s);
  requireWithin("indoor_C", indoor_C, -60, 90);
  const { density_kg_m3 } = airState(outdoor_C, pressure_kPa);
  return outdoor_m3_s * density_kg_m3 * DRY_AIR_J_kg_K * (indoor_C - outdoor_C);
}
