import type { Source } from "../declaration/source.ts";
import { requireWithin } from "./require-within.ts";

export const IAPWS_LIQUID_WATER: Source = {
  basis: "published",
  document: "IAPWS SR6-08, Properties of Liquid Water at 0.1 MPa",
  edition: "2011",
  section: "equation 7",
};
/** Coefficient [µPa s] and power of (T / 300 K). Source: IAPWS SR6-08(2011), equation 7, read in copies. */
const TERMS = [
  [280.68, -1.9],
  [511.45, -7.7],
  [61.131, -19.6],
  [0.45903, -40],
] as const;

/**
 * Dynamic viscosity of liquid water.
 * @param temperature_C water temperature [°C], 0..100
 * @returns viscosity [Pa s]
 * @source IAPWS SR6-08(2011), equation 7
 * @limits for one atmosphere; house pressure changes it by less than 0.1 % (from memory)
 */
export function waterViscosity_Pa_s(temperature_C: number): number {
  requireWithin("temperature_C", temperature_C, 0, 100);
  const ratio = (temperature_C + 273.15) / 300;
  return TERMS.reduce((sum, [a, b]) => sum + a * ratio ** b, 0) * 1e-6;
}
