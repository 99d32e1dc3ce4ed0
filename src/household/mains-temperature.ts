import type { Source } from "../declaration/source.ts";
import { fromBase, toBase } from "../units/convert.ts";

export const MAINS_TEMPERATURE: Source = {
  basis: "published",
  document: "EnergyPlus Engineering Reference 24.1, Water Mains Temperatures (Christensen and Burch)",
  section: "correlation; minus signs restored so that the coldest day falls in February",
};

/** What the correlation needs to know of a place. */
export interface PlaceClimate {
  /** Mean outdoor air temperature of the year [°C]. */
  readonly yearMean_C: number;
  /** Warmest monthly mean less coldest monthly mean [K]. */
  readonly monthlySpan_K: number;
}

/** Days a year divided into a circle, as the correlation has it [degrees a day]. */
const DEGREES_A_DAY = 0.986;
const RADIANS_A_DEGREE = Math.PI / 180;

/**
 * Temperature of the cold water that arrives from the street on a day of the year.
 * @param day day of the year, 1..366
 * @returns temperature [°C], not below freezing
 * @source T = (Tavg + 6) + ratio (dT/2) sin(0.986 (day - 15 - lag) - 90°), ratio = 0.4 + 0.01 (Tavg - 44),
 *   lag = 35 - (Tavg - 44), all in °F: EnergyPlus Engineering Reference 24.1
 * @limits street mains in the northern half of the world; a private well stays near the yearly mean
 */
export function mainsTemperature_C(place: PlaceClimate, day: number): number {
  if (!(day >= 1 && day <= 366)) throw new RangeError(`day must lie in 1..366, got ${day}`);
  const mean_F = fromBase(place.yearMean_C, "F");
  const span_F = fromBase(place.monthlySpan_K, "F_diff");
  const ratio = 0.4 + 0.01 * (mean_F - 44);
  const lag_days = 35 - (mean_F - 44);
  const angle = (DEGREES_A_DAY * (day - 15 - lag_days) - 90) * RADIANS_A_DEGREE;
  return Math.max(0, toBase(mean_F + 6 + ratio * (span_F / 2) * Math.sin(angle), "F"));
}

/** Day of the year in the middle of a month, month 1 = January. */
export function midMonthDay(month: number): number {
  if (!(Number.isInteger(month) && month >= 1 && month <= 12))
    throw new RangeError(`month must be 1..12, got ${month}`);
  return Math.round((month - 0.5) * (365 / 12));
}
