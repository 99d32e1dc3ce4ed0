import type { Source } from "../declaration/source.ts";
import { toBase } from "../units/convert.ts";
import { requireWithin } from "./require-within.ts";
import { ATMOSPHERE_kPa, waterGrowth } from "./water.ts";

export const DIAPHRAGM_TANK: Source = {
  basis: "published",
  document: "ASHRAE Handbook, HVAC Systems and Equipment, hydronic chapter",
  edition: "2000",
  section: "diaphragm tank equation, read in a copy",
};
export const ACCEPTANCE_WAY: Source = {
  basis: "published",
  document: "R. W. Griffith, Thermal Expansion Tanks, part 2",
  edition: "2015",
  section: "acceptance method, ceiling 10 % below the relief setting",
};
export const BOYLE: Source = { basis: "computed", document: "Boyle's law, absolute pressures, P_atm = 14.7 psi" };
export const CODE_CEILING: Source = {
  basis: "published",
  document: "IPC",
  edition: "2021",
  section: "607.3 with 604.8: 80 psi",
};
export const STOCK_SIZES: Source = {
  basis: "common_practice",
  document: "Common potable expansion tank volumes; makers' sizes differ",
};

export const VESSEL_METALS = ["steel", "copper", "none"] as const;
export type VesselMetal = (typeof VESSEL_METALS)[number];

/** One kelvin is 1.8 degrees Fahrenheit, exact. */
const F_PER_K = 1.8;
/**
 * Linear expansion [1/K]. Source: ASHRAE hydronic chapter as transcribed, 6.5e-6 per °F for steel, 9.5e-6 for copper
 * (the Copper Tube Handbook has 9.4e-6); "none" leaves the growth of the metal out.
 */
const LINEAR_EXPANSION_per_K: Readonly<Record<VesselMetal, number>> = {
  steel: 6.5e-6 * F_PER_K,
  copper: 9.5e-6 * F_PER_K,
  none: 0,
};
/** A solid grows in three directions. */
const DIRECTIONS = 3;
const LARGEST_L = 20_000;
const HIGHEST_kPa = 2000;
const STOCK_L: readonly number[] = [2, 4.4, 8, 10, 14, 20, 26, 34, 44, 62, 80].map((gallons) => toBase(gallons, "gal"));

/**
 * Volume by which the water in a system grows.
 * @param system_L water in heater and pipes [L], 0..20000
 * @param cold_C temperature before [°C], 0..100
 * @param hot_C temperature after [°C], cold_C..100
 * @returns growth [L], never below zero
 * @source V (v_hot / v_cold - 1), volumes from IAPWS-IF97 as in steam tables
 */
export function expandedVolume_L(system_L: number, cold_C: number, hot_C: number): number {
  requireWithin("system_L", system_L, 0, LARGEST_L);
  requireWithin("hot_C", hot_C, cold_C, 100);
  return system_L * Math.max(0, waterGrowth(cold_C, hot_C));
}

/**
 * Volume by which a metal vessel grows around its water.
 * @param system_L volume of vessel and pipes [L], 0..20000
 * @param rise_K temperature rise [K], 0..100
 * @param metal what vessel and pipes are made of; "none" counts nothing
 * @returns growth [L]
 * @source ASHRAE diaphragm tank equation, 3 alpha dt
 */
export function vesselGrowth_L(system_L: number, rise_K: number, metal: VesselMetal): number {
  requireWithin("system_L", system_L, 0, LARGEST_L);
  requireWithin("rise_K", rise_K, 0, 100);
  return system_L * DIRECTIONS * LINEAR_EXPANSION_per_K[metal] * rise_K;
}

/**
 * Smallest diaphragm tank that takes in a volume while the pressure climbs from line to ceiling.
 * @param acceptance_L volume to take in [L], 0..20000
 * @param line_kPa line pressure, which is also the precharge [kPa gauge], 0..2000
 * @param ceiling_kPa highest pressure allowed [kPa gauge], above line_kPa
 * @returns total tank volume [L]
 * @source Boyle: V = acceptance / (1 - P1 / P2), pressures absolute; ASHRAE diaphragm tank, Griffith 2015
 * @limits slow change at constant air temperature, sea-level air pressure
 */
export function tankForAcceptance_L(acceptance_L: number, line_kPa: number, ceiling_kPa: number): number {
  requireWithin("acceptance_L", acceptance_L, 0, LARGEST_L);
  const share = acceptanceShare(line_kPa, line_kPa, ceiling_kPa);
  if (!(share > 0)) throw new RangeError("ceiling_kPa must be above line_kPa");
  return acceptance_L / share;
}

/**
 * Share of a diaphragm tank that can fill with water between line and ceiling pressure.
 * @param precharge_kPa air pressure of the empty tank [kPa gauge], 0..2000
 * @param line_kPa line pressure [kPa gauge], 0..2000
 * @param ceiling_kPa highest pressure allowed [kPa gauge], above line_kPa
 * @returns share of the total volume, 0..1; zero when the precharge is at or above the ceiling
 * @source Boyle: P0/max(P0, P1) - P0/P2, pressures absolute; equals 1 - P1/P2 when the precharge is the line pressure
 * @limits the diaphragm itself may stop earlier; the maker states its acceptance volume
 */
export function acceptanceShare(precharge_kPa: number, line_kPa: number, ceiling_kPa: number): number {
  requireWithin("precharge_kPa", precharge_kPa, 0, HIGHEST_kPa);
  requireWithin("line_kPa", line_kPa, 0, HIGHEST_kPa);
  requireWithin("ceiling_kPa", ceiling_kPa, line_kPa, HIGHEST_kPa);
  const P0 = precharge_kPa + ATMOSPHERE_kPa;
  const P1 = line_kPa + ATMOSPHERE_kPa;
  const P2 = ceiling_kPa + ATMOSPHERE_kPa;
  return Math.max(0, P0 / Math.max(P0, P1) - P0 / P2);
}

/**
 * The next common total volume that is not smaller.
 * @param minimum_L smallest volume that will do [L], >= 0
 * @returns common size [L], or nothing when it is beyond the list
 * @source common practice, see STOCK_SIZES; makers' sizes differ
 */
export function nextStockSize_L(minimum_L: number): number | undefined {
  requireWithin("minimum_L", minimum_L, 0, Number.MAX_VALUE);
  return STOCK_L.find((size_L) => size_L >= minimum_L);
}
