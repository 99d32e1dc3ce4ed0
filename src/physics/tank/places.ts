import { cell, whole } from "./cell.ts";
import type { TankState } from "./tank-state.ts";

/** Places in `heights` and `slugs`: two sensors, two elements, both ends of the condenser. */
export const LOWER_SENSOR = 0;
export const UPPER_SENSOR = 1;
export const UPPER_ELEMENT = 2;
export const LOWER_ELEMENT = 3;
export const CONDENSER_FROM = 4;
export const CONDENSER_TO = 5;
const PLACES = 6;

/**
 * Where sensors, elements and condenser stand among the slugs; found anew only when the column has moved.
 * Numbers go in and out of this folder's inner functions as fields, because a number handed to a function that the
 * optimiser does not inline would be put on the heap.
 */
export interface Places {
  /** Heights in layers from the bottom; what a unit lacks stands at 0. */
  readonly heights: Float64Array;
  /** The slug that each height lies in; for a sensor the one whose centre is next below. */
  readonly slugs: Int32Array;
  /** How far each sensor is on the way to the next centre [share]. */
  readonly sensorShare: Float64Array;
  /** Share of the condenser that lies on each slug. */
  readonly weight: Float64Array;
  /** In: how far the condensing refrigerant is above evenly warm water at the present heat [K]. */
  approach_K: number;
  /** Out: water temperature that the heat pump feels [C]. */
  water_C: number;
  /** Out: temperature at which the refrigerant condenses [C]. */
  condensing_C: number;
  /** Out: share of the condenser that gives heat, the rest lying on water that is too warm. */
  covered: number;
  /** Heat to be spread along the condenser [J]. */
  heat_J: number;
  version: number;
  condenserVersion: number;
}

export function preparePlaces(layers: number): Places {
  return {
    heights: new Float64Array(PLACES),
    slugs: new Int32Array(PLACES),
    sensorShare: new Float64Array(2),
    weight: new Float64Array(layers + 1),
    approach_K: 0,
    water_C: 0,
    condensing_C: 0,
    covered: 0,
    heat_J: 0,
    version: -1,
    condenserVersion: -1,
  };
}

/** Brings sensors and elements up to date with the tank. */
export function findPlaces(places: Places, tank: TankState): void {
  if (places.version === tank.version) return;
  places.version = tank.version;
  const { heights, slugs } = places;
  for (let place = 0; place < PLACES; place += 1) {
    const slug = Math.floor(cell(heights, place) - tank.phase) + 1;
    slugs[place] = Math.max(tank.first, Math.min(tank.last, slug));
  }
  placeSensor(places, tank, LOWER_SENSOR);
  placeSensor(places, tank, UPPER_SENSOR);
}

/** A sensor reads on the straight line between the centres of the slugs under and over it. */
function placeSensor(places: Places, tank: TankState, sensor: number): void {
  const { edge, first, last } = tank;
  const twice = 2 * cell(places.heights, sensor);
  let below = whole(places.slugs, sensor);
  let low = cell(edge, below) + cell(edge, below + 1);
  if (low > twice && below > first) {
    below -= 1;
    low = cell(edge, below) + cell(edge, below + 1);
  }
  if (below === last && last > first) {
    below -= 1;
    low = cell(edge, below) + cell(edge, below + 1);
  }
  places.slugs[sensor] = below;
  places.sensorShare[sensor] = 0;
  if (below === last) return;
  const high = cell(edge, below + 1) + cell(edge, below + 2);
  places.sensorShare[sensor] = Math.min(1, Math.max(0, (twice - low) / (high - low)));
}

/** Brings the condenser up to date with the tank, whose places must be. */
function findCondenser(places: Places, tank: TankState): void {
  if (places.condenserVersion === tank.version) return;
  places.condenserVersion = tank.version;
  const { weight, heights, slugs } = places;
  const from = cell(heights, CONDENSER_FROM);
  const to = cell(heights, CONDENSER_TO);
  const end = whole(slugs, CONDENSER_TO);
  for (let i = whole(slugs, CONDENSER_FROM); i <= end; i += 1) {
    const part = Math.min(cell(tank.edge, i + 1), to) - Math.max(cell(tank.edge, i), from);
    weight[i] = Math.max(0, part) / (to - from);
  }
}

/**
 * Finds how the condenser's heat spreads over the water along it, and the one water temperature that stands for it.
 *
 * Refrigerant condenses at one temperature Tc. Each slug takes heat in proportion to its share of the condenser and to
 * Tc less its own temperature; a slug warmer than Tc takes none. With UA the conductance of the whole condenser and A =
 * Q / UA, Tc = (A + sum of w T) / (sum of w) over the slugs colder than Tc. The water temperature felt is Tc - A: that of
 * evenly warm water at which the refrigerant would condense at the same Tc.
 * @param places `approach_K` in; `condensing_C`, `covered` and `water_C` out
 * @source heat balance of a condenser at constant temperature; slugs are in order, the coldest first
 */
export function spreadCondenser(places: Places, tank: TankState): void {
  findCondenser(places, tank);
  const { weight, slugs, approach_K } = places;
  const { t_C: t } = tank;
  const start = whole(slugs, CONDENSER_FROM);
  const end = whole(slugs, CONDENSER_TO);
  let covered = 0;
  let sum = approach_K;
  for (let i = start; i <= end; i += 1) {
    const t_C = cell(t, i);
    if (covered > 0 && t_C * covered >= sum) break;
    const share = cell(weight, i);
    covered += share;
    sum += share * t_C;
  }
  const condensing_C = sum / covered;
  places.covered = covered;
  places.condensing_C = condensing_C;
  places.water_C = condensing_C - approach_K;
}

/** Gives `heat_J` to the slugs along the condenser as `spreadCondenser` found, which must have seen this water. */
export function heatAlongCondenser(places: Places, tank: TankState): void {
  const { weight, slugs, condensing_C } = places;
  const { t_C: t, size, model } = tank;
  const rise = places.heat_J / (model.layer_J_K * places.approach_K);
  const end = whole(slugs, CONDENSER_TO);
  for (let i = whole(slugs, CONDENSER_FROM); i <= end; i += 1) {
    const t_C = cell(t, i);
    // Water is in order: all above is warmer still.
    if (t_C >= condensing_C) break;
    t[i] = t_C + (rise * (cell(weight, i) * (condensing_C - t_C))) / cell(size, i);
  }
}

/**
 * Blends the water along the condenser completely, as the pump of a pumped condenser does. A slug that lies partly along
 * it takes part with that part alone, so heat is conserved and order is kept.
 */
export function stirAlongCondenser(places: Places, tank: TankState): void {
  findCondenser(places, tank);
  const { weight, slugs, heights } = places;
  const { t_C: t, size } = tank;
  const span = cell(heights, CONDENSER_TO) - cell(heights, CONDENSER_FROM);
  const end = whole(slugs, CONDENSER_TO);
  let blend_C = 0;
  for (let i = whole(slugs, CONDENSER_FROM); i <= end; i += 1) blend_C += cell(weight, i) * cell(t, i);
  for (let i = whole(slugs, CONDENSER_FROM); i <= end; i += 1) {
    const share = (cell(weight, i) * span) / cell(size, i);
    t[i] = cell(t, i) + share * (blend_C - cell(t, i));
  }
}
