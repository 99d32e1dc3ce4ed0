import { requireWithin } from "../require-within.ts";
import { airState } from "./air-state.ts";
import { ONE_WAY_CD, type TwoSpaces } from "./stack-flow.ts";

/** A hole between two spaces: a gap under a door, a grille, a louvred leaf, a crack. */
export interface Opening {
  /** Free area [m2], 0..50. */
  readonly area_m2: number;
  /** Lower and upper edge above the floor [m]. */
  readonly from_m: number;
  readonly to_m: number;
  /** Discharge coefficient [-]; 0.65 where absent. */
  readonly cd?: number;
}

/** What flows between a room and the space beside it. */
export interface OpeningFlow {
  /** Into the room [kg/s]. */
  readonly in_kg_s: number;
  /** Out of the room through the openings [kg/s]; what a fan takes away is not in it. */
  readonly out_kg_s: number;
  /** Pressure of the room over the other space, at the floor [Pa]. */
  readonly floor_Pa: number;
}

const GRAVITY_m_s2 = 9.80665;
/** Tall openings are cut into slices so that air can go both ways. */
const SLICE_m = 0.15;
const MOST_SLICES = 16;
const MOST_Pa = 5000;
const HALVINGS = 70;

/**
 * Flow through any number of openings between a room and the space beside it, with or without a fan.
 * @param openings at least one with some area
 * @param spaces temperatures [C], -60..90, and barometric pressure [kPa], 50..120
 * @param takenOut_kg_s air that a duct takes out of the room and does not bring back [kg/s], -5..5; below zero brings in
 * @returns mass flows and the pressure in the room
 * @throws RangeError without any opening, or where they are so small that the fan would need over 5000 Pa
 * @source orifice law for each slice, pressure by the weight of the two columns, floor pressure by halving so that
 *   in = out + taken out
 * @limits no wind; each space evenly warm
 */
export function flowThroughOpenings(openings: readonly Opening[], spaces: TwoSpaces, takenOut_kg_s = 0): OpeningFlow {
  requireWithin("takenOut_kg_s", takenOut_kg_s, -5, 5);
  const slices = openings.flatMap(cutOpening);
  if (slices.length === 0) throw new RangeError("no opening between room and neighbour");
  const room_kg_m3 = airState(spaces.room_C, spaces.pressure_kPa).density_kg_m3;
  const other_kg_m3 = airState(spaces.other_C, spaces.pressure_kPa).density_kg_m3;
  const flows = { in_kg_s: 0, out_kg_s: 0 };
  const settle = (floor_Pa: number): number => {
    flows.in_kg_s = 0;
    flows.out_kg_s = 0;
    for (const { strength_m2, height_m } of slices) {
      const over_Pa = floor_Pa - GRAVITY_m_s2 * height_m * (room_kg_m3 - other_kg_m3);
      if (over_Pa > 0) flows.out_kg_s += strength_m2 * Math.sqrt(2 * room_kg_m3 * over_Pa);
      else flows.in_kg_s += strength_m2 * Math.sqrt(-2 * other_kg_m3 * over_Pa);
    }
    return flows.out_kg_s + takenOut_kg_s - flows.in_kg_s;
  };
  const floor_Pa = balancedPressure_Pa(settle);
  settle(floor_Pa);
  return { ...flows, floor_Pa };
}

/** Pressure at which as much comes in as goes out; flow out rises with it. */
function balancedPressure_Pa(surplus_kg_s: (floor_Pa: number) => number): number {
  let reach_Pa = 1;
  while (surplus_kg_s(-reach_Pa) > 0 || surplus_kg_s(reach_Pa) < 0) {
    reach_Pa *= 4;
    if (reach_Pa > MOST_Pa) throw new RangeError(`openings too small: over ${MOST_Pa} Pa across them`);
  }
  let [low, high] = [-reach_Pa, reach_Pa];
  for (let turn = 0; turn < HALVINGS; turn += 1) {
    const middle = (low + high) / 2;
    if (surplus_kg_s(middle) > 0) high = middle;
    else low = middle;
  }
  return (low + high) / 2;
}

function cutOpening({ area_m2, from_m, to_m, cd = ONE_WAY_CD }: Opening) {
  requireWithin("area_m2", area_m2, 0, 50);
  requireWithin("from_m", from_m, 0, 30);
  requireWithin("to_m", to_m, from_m, 30);
  requireWithin("cd", cd, 0.1, 1);
  if (area_m2 === 0) return [];
  const count = Math.max(1, Math.min(MOST_SLICES, Math.ceil((to_m - from_m) / SLICE_m)));
  return Array.from({ length: count }, (_, i) => ({
    strength_m2: (cd * area_m2) / count,
    height_m: from_m + ((i + 0.5) * (to_m - from_m)) / count,
  }));
}
