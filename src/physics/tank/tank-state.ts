import { cell } from "./cell.ts";
import type { TankModel } from "./tank-model.ts";

/**
 * The water in the tank as a column of slugs that rise together when hot water is drawn.
 *
 * At rest with `phase` 0 slugs 1..N are the N layers. A draw lifts the whole column by `phase` of a layer: slug 0, below,
 * holds the `phase` of a layer that came in, and slug N, on top, has lost as much. At a full layer the slugs are renamed.
 * So a draw of any size is exact plug flow: no water is blended by the arithmetic, whatever the step, and everything that
 * does blend (inlet stirring, conduction, rising warm water) is a stated equation.
 */
export interface TankState {
  readonly model: TankModel;
  /** Temperature of slugs 0..N [C]. */
  readonly t_C: Float64Array;
  /** Volume of each slug in layers, valid from `first` to `last`. */
  readonly size: Float64Array;
  /** Lower edge of each slug in layers from the bottom; `edge[last + 1]` is the top of the tank. */
  readonly edge: Float64Array;
  /** Share of a layer that the column is lifted by, 0 <= phase < 1. */
  phase: number;
  /** Slugs that take part in heat flow; a sliver at either end goes with its neighbour. */
  first: number;
  last: number;
  /** How far a sliver, and the neighbour it goes with, are from their common temperature: below, and on top [K]. */
  lowSliver_K: number;
  lowNeighbour_K: number;
  topSliver_K: number;
  topNeighbour_K: number;
  /** Counts every change of the slugs' places; whoever remembers places checks it. */
  version: number;
}

/** A sliver of less than this share of a layer is one with its neighbour while heat flows. */
const SLIVER = 0.01;

/** A tank of one temperature [C]. */
export function fillTank(model: TankModel, t_C: number): TankState {
  const tank: TankState = {
    model,
    t_C: new Float64Array(model.layers + 1).fill(t_C),
    size: new Float64Array(model.layers + 1).fill(1),
    edge: new Float64Array(model.layers + 2),
    phase: 0,
    first: 1,
    last: model.layers,
    lowSliver_K: 0,
    lowNeighbour_K: 0,
    topSliver_K: 0,
    topNeighbour_K: 0,
    version: 0,
  };
  shapeSlugs(tank);
  return tank;
}

/** Sets the layers of a tank at rest, bottom first [C]. */
export function setLayers(tank: TankState, layers_C: ArrayLike<number>): void {
  if (layers_C.length !== tank.model.layers)
    throw new RangeError(`${layers_C.length} layer temperatures for a tank of ${tank.model.layers} layers`);
  tank.phase = 0;
  tank.t_C.set(Float64Array.from(layers_C), 1);
  tank.t_C[0] = cell(tank.t_C, 1);
  shapeSlugs(tank);
}

/** Works out slug sizes and edges after the column has moved; a sliver at an end goes with its neighbour from here on. */
export function shapeSlugs(tank: TankState): void {
  const { t_C: t, size, edge, phase } = tank;
  const top = tank.model.layers;
  tank.version += 1;
  tank.first = 0;
  tank.last = top;
  size[1] = 1;
  size[top - 1] = 1;
  size[0] = phase;
  size[top] = 1 - phase;
  if (phase < SLIVER) {
    const sliver_C = cell(t, 0);
    const neighbour_C = cell(t, 1);
    joinSliver(tank, 0, 1);
    tank.lowSliver_K = sliver_C - cell(t, 1);
    tank.lowNeighbour_K = neighbour_C - cell(t, 1);
    tank.first = 1;
  }
  if (1 - phase < SLIVER) {
    const sliver_C = cell(t, top);
    const neighbour_C = cell(t, top - 1);
    joinSliver(tank, top, top - 1);
    tank.topSliver_K = sliver_C - cell(t, top - 1);
    tank.topNeighbour_K = neighbour_C - cell(t, top - 1);
    tank.last = top - 1;
  }
  for (let i = tank.first + 1; i <= tank.last; i += 1) edge[i] = i - 1 + phase;
  edge[tank.first] = 0;
  edge[tank.last + 1] = top;
}

/** Makes a sliver and its neighbour one slug of their common temperature. */
function joinSliver({ t_C: t, size }: TankState, sliver: number, neighbour: number): void {
  const a = cell(size, sliver);
  const b = cell(size, neighbour);
  t[neighbour] = (a * cell(t, sliver) + b * cell(t, neighbour)) / (a + b);
  size[neighbour] = a + b;
}

/** Parts slivers from their neighbours again before the column moves; both have warmed or cooled alike meanwhile. */
export function separateSlivers(tank: TankState): void {
  const { t_C: t } = tank;
  const top = tank.model.layers;
  if (tank.first === 1) {
    t[0] = cell(t, 1) + tank.lowSliver_K;
    t[1] = cell(t, 1) + tank.lowNeighbour_K;
  }
  if (tank.last < top) {
    t[top] = cell(t, top - 1) + tank.topSliver_K;
    t[top - 1] = cell(t, top - 1) + tank.topNeighbour_K;
  }
}

/** Heat in the tank above 0 C [J]. */
export function storedHeat_J(tank: TankState): number {
  let sum = 0;
  for (let i = tank.first; i <= tank.last; i += 1) sum += cell(tank.size, i) * cell(tank.t_C, i);
  return sum * tank.model.layer_J_K;
}

/** Temperature of the water that would leave next [C]. */
export function topTemperature_C(tank: TankState): number {
  return cell(tank.t_C, tank.last);
}

/** Mean temperature of all the water [C]. */
export function meanTemperature_C(tank: TankState): number {
  return storedHeat_J(tank) / (tank.model.layer_J_K * tank.model.layers);
}

/** Writes the temperatures of N equal layers, bottom first, into `into` from `offset` on [C]. */
export function writeLayers(tank: TankState, into: Float64Array, offset: number): void {
  const { edge, t_C: t, last } = tank;
  let slug = tank.first;
  for (let layer = 0; layer < tank.model.layers; layer += 1) {
    let sum = 0;
    for (;;) {
      const part = Math.min(cell(edge, slug + 1), layer + 1) - Math.max(cell(edge, slug), layer);
      sum += part * cell(t, slug);
      if (slug === last || cell(edge, slug + 1) >= layer + 1) break;
      slug += 1;
    }
    into[offset + layer] = sum;
  }
}
