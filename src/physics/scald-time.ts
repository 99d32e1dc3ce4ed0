import { toBase } from "../units/convert.ts";
import { requireWithin } from "./require-within.ts";
import { LONGEST_POINTS, type ScaldPoint, SHORTEST_POINTS } from "./scald-table.ts";

/** How long skin bears water before it burns: sources differ, so it is a range. */
export interface ScaldTime {
  readonly shortest_s: number;
  readonly longest_s: number;
}
/** Coolest water for which the sources give a time [°C], 113 °F. */
export const SCALD_FROM_C = coolest_C();

/**
 * Time after which water of this temperature burns adult skin.
 * @param water_C water temperature [°C], 0..100
 * @returns shortest and longest time that the sources give [s]; nothing below 113 °F, where they stop; zero to one
 *   second above 155 °F, where they say no more than that
 * @source scald-table.ts; between its rows the logarithm of time runs straight
 * @limits adults; children and older people burn faster; not a safety margin
 */
export function scaldTime_s(water_C: number): ScaldTime | undefined {
  requireWithin("water_C", water_C, 0, 100);
  if (water_C < SCALD_FROM_C) return undefined;
  const shortest_s = interpolate(SHORTEST_POINTS, water_C);
  const longest_s = interpolate(LONGEST_POINTS, water_C);
  return { shortest_s: shortest_s ?? 0, longest_s: longest_s ?? 1 };
}

function interpolate(points: readonly ScaldPoint[], water_C: number): number | undefined {
  let below: ScaldPoint | undefined;
  for (const point of points) {
    const at_C = toBase(point.at_F, "F");
    if (at_C === water_C) return point.time_s;
    if (at_C > water_C) return below === undefined ? undefined : between(below, point, water_C);
    below = point;
  }
  return undefined;
}

function between(cooler: ScaldPoint, hotter: ScaldPoint, water_C: number): number {
  const from_C = toBase(cooler.at_F, "F");
  const part = (water_C - from_C) / (toBase(hotter.at_F, "F") - from_C);
  return cooler.time_s * (hotter.time_s / cooler.time_s) ** part;
}

function coolest_C(): number {
  return toBase(Math.min(...SHORTEST_POINTS.map((point) => point.at_F)), "F");
}
