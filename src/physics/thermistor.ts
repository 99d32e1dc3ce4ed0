import type { Source } from "../declaration/source.ts";
import { requireWithin } from "./require-within.ts";

export const BETA_EQUATION: Source = { basis: "computed", document: "Thermistor, beta equation about 25 °C" };
/** What most water-heater sensors are; the unit's own sheet decides. */
export const USUAL_THERMISTOR = { at25_ohm: 10_000, beta_K: 3950 } as const;
export const USUAL_THERMISTOR_SOURCE: Source = {
  basis: "common_practice",
  document: "Usual sensor: 10 kΩ at 25 °C, beta 3950 K; the unit's sheet decides",
};

/** A sensor whose resistance falls as it warms. */
export interface Thermistor {
  readonly at25_ohm: number;
  readonly beta_K: number;
}

const ZERO_C_IN_K = 273.15;
const REFERENCE_K = 298.15;

/**
 * Resistance of a thermistor.
 * @param sensor resistance at 25 °C [ohm], 100..1e6, and beta [K], 1000..8000
 * @param temperature_C temperature of the sensor [°C], -50..150
 * @returns resistance [ohm]
 * @source R = R25 exp(beta (1 / T - 1 / 298.15 K)), T in kelvin
 * @limits one beta fits a real sensor within a few percent between 0 and 80 °C (from memory)
 */
export function thermistorResistance_ohm({ at25_ohm, beta_K }: Thermistor, temperature_C: number): number {
  requireWithin("at25_ohm", at25_ohm, 100, 1e6);
  requireWithin("beta_K", beta_K, 1000, 8000);
  requireWithin("temperature_C", temperature_C, -50, 150);
  return at25_ohm * Math.exp(beta_K * (1 / (temperature_C + ZERO_C_IN_K) - 1 / REFERENCE_K));
}
