import type { Source } from "../../declaration/source.ts";
import { requireWithin } from "../require-within.ts";
import { airState } from "./air-state.ts";

/** Discharge coefficient of openings that air passes one way [-]; the source gives 0.65 to 0.70. */
export const ONE_WAY_CD = 0.65;
export const STACK: Source = {
  basis: "published",
  document: "ASHRAE Handbook - Fundamentals",
  edition: "1997",
  section:
    "p. 25.13, eq. 37 and 38: stack flow; 0.40 + 0.0045 ΔT where one opening serves both ways, else 0.65 to 0.70",
};

/** Two spaces side by side. */
export interface TwoSpaces {
  readonly room_C: number;
  readonly other_C: number;
  readonly pressure_kPa: number;
}

/** Air that two spaces exchange because one is colder; what leaves comes back as the same mass. */
export interface StackExchange {
  /** Each way [kg/s]. */
  readonly mass_kg_s: number;
  /** Each way, measured in the colder air [m3/s]. */
  readonly airflow_m3_s: number;
  /** Where no pressure stands between the two, above the lower opening, or above the sill of a single one [m]. */
  readonly neutral_m: number;
}

const GRAVITY_m_s2 = 9.80665;
const NARROWEST_m2 = 1e-9;
const LARGEST_m2 = 50;
const TALLEST_m = 30;

/**
 * Exchange through a low and a high opening.
 * @param low_m2 free area of the low opening [m2], 1e-9..50
 * @param high_m2 free area of the high opening [m2], 1e-9..50
 * @param height_m from the middle of one to the middle of the other [m], 0..30
 * @param spaces temperatures [C], -60..90, and barometric pressure [kPa], 50..120
 * @param cd discharge coefficient [-], 0.1..1
 * @returns exchange; zero where both are equally warm
 * @source m = Cd sqrt(2 g h dRho / (1/(A1^2 rho1) + 1/(A2^2 rho2))): pressures at both openings add up to the weight of
 *   the colder column; cold air leaves low, warm air enters high. Eq. 37 of STACK where the temperatures are close
 * @limits no wind, no fan; each space evenly warm
 */
export function exchangeLowHigh(
  low_m2: number,
  high_m2: number,
  height_m: number,
  spaces: TwoSpaces,
  cd = ONE_WAY_CD,
): StackExchange {
  requireWithin("low_m2", low_m2, NARROWEST_m2, LARGEST_m2);
  requireWithin("high_m2", high_m2, NARROWEST_m2, LARGEST_m2);
  requireWithin("height_m", height_m, 0, TALLEST_m);
  requireWithin("cd", cd, 0.1, 1);
  const { cold_kg_m3, warm_kg_m3 } = densities(spaces);
  const lowResistance = 1 / (low_m2 ** 2 * cold_kg_m3);
  const highResistance = 1 / (high_m2 ** 2 * warm_kg_m3);
  const weight_Pa = GRAVITY_m_s2 * height_m * (cold_kg_m3 - warm_kg_m3);
  const mass_kg_s = cd * Math.sqrt((2 * weight_Pa) / (lowResistance + highResistance));
  return {
    mass_kg_s,
    airflow_m3_s: mass_kg_s / cold_kg_m3,
    neutral_m: (height_m * lowResistance) / (lowResistance + highResistance),
  };
}

/**
 * Exchange through one opening, out below and in above (or the other way round).
 * @param area_m2 free area [m2], 1e-9..50
 * @param height_m of the opening itself [m], 0..30
 * @param spaces temperatures [C], -60..90, and barometric pressure [kPa], 50..120
 * @returns exchange; zero where both are equally warm
 * @source Q = (Cd/3) A sqrt(g h dRho/rho), the orifice law added up over the height; Cd = 0.40 + 0.0045 dT by STACK,
 *   never above 0.65
 * @limits a door or grille upright in a wall; a louvre is taken as a plain opening of its free area
 */
export function exchangeOneOpening(area_m2: number, height_m: number, spaces: TwoSpaces): StackExchange {
  requireWithin("area_m2", area_m2, NARROWEST_m2, LARGEST_m2);
  requireWithin("height_m", height_m, 0, TALLEST_m);
  const { cold_kg_m3, warm_kg_m3, mean_kg_m3 } = densities(spaces);
  const cd = Math.min(ONE_WAY_CD, 0.4 + 0.0045 * Math.abs(spaces.room_C - spaces.other_C));
  const relative = (cold_kg_m3 - warm_kg_m3) / mean_kg_m3;
  const airflow_m3_s = (cd / 3) * area_m2 * Math.sqrt(GRAVITY_m_s2 * height_m * relative);
  return { mass_kg_s: airflow_m3_s * mean_kg_m3, airflow_m3_s, neutral_m: height_m / 2 };
}

function densities({ room_C, other_C, pressure_kPa }: TwoSpaces) {
  const [room_kg_m3, other_kg_m3] = [room_C, other_C].map((t_C) => airState(t_C, pressure_kPa).density_kg_m3);
  const cold_kg_m3 = Math.max(room_kg_m3 ?? 0, other_kg_m3 ?? 0);
  const warm_kg_m3 = Math.min(room_kg_m3 ?? 0, other_kg_m3 ?? 0);
  return { cold_kg_m3, warm_kg_m3, mean_kg_m3: (cold_kg_m3 + warm_kg_m3) / 2 };
}
