import { requireWithin } from "../require-within.ts";
import { cell } from "./cell.ts";

/** One use of hot water. */
export interface DrawRequest {
  /** Start, from the start of the run [s]. */
  readonly start_s: number;
  readonly duration_s: number;
  /** Volume at the fixture, mixed where the fixture mixes [L]. */
  readonly volume_L: number;
  /** Temperature that the person or appliance wants; below it the draw counts as short [C]. */
  readonly wanted_C: number;
  /** True where the fixture mixes down to what is wanted (shower, tub, sink); false where it takes hot water as it comes. */
  readonly isMixed: boolean;
}

/** Draws as columns, in order of start. A year is some 25,000 of them; columns keep that small and quick. */
export interface Draws {
  readonly count: number;
  readonly start_s: Float64Array;
  readonly duration_s: Float64Array;
  readonly volume_L: Float64Array;
  readonly wanted_C: Float64Array;
  readonly isMixed: Uint8Array;
  /** The largest number of draws that are open at one moment. */
  readonly mostAtOnce: number;
}

const LONGEST_DRAW_s = 86_400;
const LARGEST_DRAW_L = 2000;

/**
 * Puts draws in order and into columns.
 * @param requests draws in any order, overlapping as they like
 * @returns the columns
 * @throws where a draw is out of range: 1 s to one day, 0 to 2000 L, wanted 0 to 95 C
 */
export function listDraws(requests: readonly DrawRequest[]): Draws {
  const sorted = [...requests].sort((a, b) => a.start_s - b.start_s);
  for (const draw of sorted) {
    requireWithin("draw start [s]", draw.start_s, 0, 1e10);
    requireWithin("draw duration [s]", draw.duration_s, 1, LONGEST_DRAW_s);
    requireWithin("draw volume [L]", draw.volume_L, 0, LARGEST_DRAW_L);
    requireWithin("wanted temperature [C]", draw.wanted_C, 0, 95);
  }
  const start_s = Float64Array.from(sorted, (draw) => draw.start_s);
  const duration_s = Float64Array.from(sorted, (draw) => draw.duration_s);
  return {
    count: sorted.length,
    start_s,
    duration_s,
    volume_L: Float64Array.from(sorted, (draw) => draw.volume_L),
    wanted_C: Float64Array.from(sorted, (draw) => draw.wanted_C),
    isMixed: Uint8Array.from(sorted, (draw) => (draw.isMixed ? 1 : 0)),
    mostAtOnce: countMostAtOnce(start_s, duration_s),
  };
}

function countMostAtOnce(start_s: Float64Array, duration_s: Float64Array): number {
  const ends_s = start_s.map((begin_s, i) => begin_s + cell(duration_s, i)).sort();
  let most = 0;
  let closed = 0;
  for (let i = 0; i < start_s.length; i += 1) {
    while (cell(ends_s, closed) <= cell(start_s, i)) closed += 1;
    most = Math.max(most, i + 1 - closed);
  }
  return most;
}
