import { requireWithin } from "../require-within.ts";

/** One number, or a column of them that each hold for `every_s` and repeat when they run out. */
export type Series = number | { readonly every_s: number; readonly values: ArrayLike<number> };

/** Coldest and warmest mains water that a run accepts [C]. */
const COLDEST_INLET_C = 0.5;
const WARMEST_INLET_C = 35;

/** The inlet temperature at a time [C]. */
export function readSeries(series: Series, time_s: number): number {
  const value = typeof series === "number" ? series : pick(series.values, time_s / series.every_s);
  requireWithin("inlet temperature [C]", value, COLDEST_INLET_C, WARMEST_INLET_C);
  return value;
}

function pick(values: ArrayLike<number>, place: number): number {
  return values[Math.floor(place + 1e-9) % values.length] ?? Number.NaN;
}

/** How long one value holds [s]; infinity for a constant. */
export function seriesEvery_s(series: Series): number {
  return typeof series === "number" ? Number.POSITIVE_INFINITY : series.every_s;
}
