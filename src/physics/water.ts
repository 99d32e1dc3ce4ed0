import type { Source } from "../declaration/source.ts";
import { requireWithin } from "./require-within.ts";
import { LIQUID_GIBBS_TERMS, SATURATION_TERMS } from "./water-gibbs-table.ts";

export const IAPWS_IF97: Source = {
  basis: "published",
  document: "IAPWS R7-97, Industrial Formulation for Water and Steam (IF97)",
  edition: "2012",
  section: "region 1 and saturation line",
};
/** Standard atmosphere [kPa]; exact by definition. */
export const ATMOSPHERE_kPa = 101.325;
const ZERO_C_IN_K = 273.15;
const COLDEST_C = 0;
const HOTTEST_C = 100;
const HIGHEST_kPa = 10_000;
const KPA_PER_MPA = 1000;
/** Specific gas constant of water [J/(kg K)] and the reducing constants of region 1, IAPWS-IF97. */
const GAS_CONSTANT = 461.526;
const REDUCING_MPA = 16.53;
const REDUCING_K = 1386;
const OFFSET_PRESSURE = 7.1;
const OFFSET_TEMPERATURE = 1.222;

/**
 * Pressure at which water boils.
 * @param temperature_C water temperature [°C], 0..100
 * @returns absolute pressure [kPa]
 * @source IAPWS-IF97, equation 30
 * @limits matches the release's check value at 300 K in all nine digits
 */
export function boilingPressure_kPa(temperature_C: number): number {
  requireWithin("temperature_C", temperature_C, COLDEST_C, HOTTEST_C);
  const T = temperature_C + ZERO_C_IN_K;
  const [n1, n2, n3, n4, n5, n6, n7, n8, n9, n10] = SATURATION_TERMS;
  const theta = T + n9 / (T - n10);
  const A = (theta + n1) * theta + n2;
  const B = (n3 * theta + n4) * theta + n5;
  const C = (n6 * theta + n7) * theta + n8;
  return ((2 * C) / (-B + Math.sqrt(B * B - 4 * A * C))) ** 4 * KPA_PER_MPA;
}

/**
 * Density of liquid water.
 * @param temperature_C water temperature [°C], 0..100
 * @param pressure_kPa absolute pressure [kPa], 0..10000; one atmosphere when not given
 * @returns density [kg/m3]
 * @source IAPWS-IF97, region 1, v = (R T / p) pi dg/dpi
 * @limits within 0.002 % of the more exact IAPWS SR6-08 from 32 to 210 °F at one atmosphere
 */
export function waterDensity_kg_m3(temperature_C: number, pressure_kPa: number = ATMOSPHERE_kPa): number {
  requireWithin("temperature_C", temperature_C, COLDEST_C, HOTTEST_C);
  requireWithin("pressure_kPa", pressure_kPa, 0, HIGHEST_kPa);
  const T = temperature_C + ZERO_C_IN_K;
  const p = OFFSET_PRESSURE - pressure_kPa / KPA_PER_MPA / REDUCING_MPA;
  const t = REDUCING_K / T - OFFSET_TEMPERATURE;
  let slope = 0;
  for (const [i, j, n] of LIQUID_GIBBS_TERMS) if (i > 0) slope -= n * i * p ** (i - 1) * t ** j;
  return (REDUCING_MPA * 1e6) / (GAS_CONSTANT * T * slope);
}

/**
 * By what share water grows when it is heated: v_hot / v_cold - 1, both at their boiling pressure as in steam tables.
 * @param cold_C temperature before [°C], 0..100
 * @param hot_C temperature after [°C], 0..100
 * @returns growth [share]; negative when the water shrinks
 * @source volume is the inverse of density, IAPWS-IF97
 * @limits at 60 psig all through, the growth is larger by 0.2 % of itself; water below 39 °F shrinks when warmed
 */
export function waterGrowth(cold_C: number, hot_C: number): number {
  return saturatedDensity_kg_m3(cold_C) / saturatedDensity_kg_m3(hot_C) - 1;
}

/**
 * Density of liquid water at its boiling pressure, as printed in steam tables.
 * @param temperature_C water temperature [°C], 0..100
 * @returns density [kg/m3]
 * @source IAPWS-IF97, region 1 at the pressure of equation 30
 */
export function saturatedDensity_kg_m3(temperature_C: number): number {
  return waterDensity_kg_m3(temperature_C, boilingPressure_kPa(temperature_C));
}

/**
 * Heat capacity of liquid water at constant pressure.
 * @param temperature_C water temperature [°C], 0..100
 * @param pressure_kPa absolute pressure [kPa], 0..10000; one atmosphere when not given
 * @returns heat capacity [J/(kg K)]
 * @source IAPWS-IF97, region 1, cp = -R tau^2 d2g/dtau2
 */
export function waterHeatCapacity_J_kgK(temperature_C: number, pressure_kPa: number = ATMOSPHERE_kPa): number {
  requireWithin("temperature_C", temperature_C, COLDEST_C, HOTTEST_C);
  requireWithin("pressure_kPa", pressure_kPa, 0, HIGHEST_kPa);
  const tau = REDUCING_K / (temperature_C + ZERO_C_IN_K);
  const p = OFFSET_PRESSURE - pressure_kPa / KPA_PER_MPA / REDUCING_MPA;
  const t = tau - OFFSET_TEMPERATURE;
  let curvature = 0;
  for (const [i, j, n] of LIQUID_GIBBS_TERMS) curvature += n * p ** i * j * (j - 1) * t ** (j - 2);
  return -GAS_CONSTANT * tau * tau * curvature;
}
