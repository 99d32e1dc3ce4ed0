import type { Source } from "../../declaration/source.ts";
import { requireWithin } from "../require-within.ts";

/** How leaks of a house answer to pressure: Q = C dp^n with this n [-]. */
const LEAK_POWER = 0.65;
const TEST_Pa = 50;
const HOUR_s = 3600;
const MOST_m3_s = 10;
export const LEAKAGE: Source = {
  basis: "common_practice",
  document: "Power law of envelope leakage, Q = C Δp^n, scaled from the blower door at 50 Pa",
  section: "n 0.65",
};

/** Ways in which a flame's smoke gets out, the weakest draught first. */
export const VENTING_KINDS = [
  "water_heater_alone",
  "natural_shared",
  "natural_draft",
  "fan_assisted",
  "sealed",
] as const;
export type VentingKind = (typeof VENTING_KINDS)[number];
/**
 * House pressure below outdoors that a vented appliance is taken to stand [Pa]. A water heater left alone on a chimney
 * stands least, a sealed one most.
 */
export const DEPRESSURISATION_LIMIT_Pa = {
  water_heater_alone: 2,
  natural_shared: 3,
  natural_draft: 5,
  fan_assisted: 15,
  sealed: 50,
} as const satisfies Readonly<Record<VentingKind, number>>;
export const DEPRESSURISATION_LIMITS: Source = {
  basis: "from_memory",
  document: "Limits of depressurisation in the combustion appliance zone, building analyst practice",
  section: "2, 3, 5, 15 and 50 Pa by kind of venting; not looked up, and a spillage test on site decides",
};

/**
 * Leakage at 50 Pa from air changes.
 * @param changes50_per_h air changes an hour at 50 Pa [1/h], 0.05..50
 * @param house_m3 volume of the house [m3], 10..10000
 * @returns airflow at 50 Pa [m3/s]
 * @source definition of the blower-door air change
 */
export function leakageFromChanges_m3_s(changes50_per_h: number, house_m3: number): number {
  requireWithin("changes50_per_h", changes50_per_h, 0.05, 50);
  requireWithin("house_m3", house_m3, 10, 10_000);
  return (changes50_per_h * house_m3) / HOUR_s;
}

/**
 * How far a fan that only exhausts, or only brings in, moves the pressure of a house.
 * @param unbalanced_m3_s airflow that leaves through ducts and must come back through leaks [m3/s], 0..10
 * @param leakage50_m3_s airflow through the leaks at 50 Pa [m3/s], 0.001..10
 * @returns pressure difference from outdoors [Pa]: below it for exhaust, above it for intake
 * @source 50 (Q / Q50)^(1/0.65)
 * @limits one zone, doors inside open, no wind or stack; other fans add to the flow, not to the pressure
 */
export function housePressure_Pa(unbalanced_m3_s: number, leakage50_m3_s: number): number {
  requireWithin("unbalanced_m3_s", unbalanced_m3_s, 0, MOST_m3_s);
  requireWithin("leakage50_m3_s", leakage50_m3_s, 0.001, MOST_m3_s);
  return TEST_Pa * (unbalanced_m3_s / leakage50_m3_s) ** (1 / LEAK_POWER);
}

/**
 * Exhaust that moves the house by a given pressure.
 * @param pressure_Pa [Pa], 0..1000
 * @param leakage50_m3_s airflow through the leaks at 50 Pa [m3/s], 0.001..10
 * @returns airflow [m3/s]
 * @source the same power law, solved for Q
 */
export function flowAtHousePressure_m3_s(pressure_Pa: number, leakage50_m3_s: number): number {
  requireWithin("pressure_Pa", pressure_Pa, 0, 1000);
  requireWithin("leakage50_m3_s", leakage50_m3_s, 0.001, MOST_m3_s);
  return leakage50_m3_s * (pressure_Pa / TEST_Pa) ** LEAK_POWER;
}
