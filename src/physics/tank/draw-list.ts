import { requireWithin } from "../require-within.ts";
import { byte, cell } from "./cell.ts";

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

/** Draws as columns. A year is some 25,000 of them; columns keep that small and quick. */
interface DrawColumns {
  readonly count: number;
  readonly start_s: Float64Array;
  readonly duration_s: Float64Array;
  readonly volume_L: Float64Array;
  readonly wanted_C: Float64Array;
  readonly isMixed: Uint8Array;
}

/** Draws in order of start. */
export interface Draws extends DrawColumns {
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
  const columns = makeDrawColumns(requests.length);
  requests.forEach((draw, i) => {
    writeDrawRequest(columns, i, draw);
  });
  return orderDraws(columns);
}

/** Empty columns for so many draws, to be filled and given to `orderDraws`. */
export function makeDrawColumns(count: number): DrawColumns {
  return {
    count,
    start_s: new Float64Array(count),
    duration_s: new Float64Array(count),
    volume_L: new Float64Array(count),
    wanted_C: new Float64Array(count),
    isMixed: new Uint8Array(count),
  };
}

function writeDrawRequest(columns: DrawColumns, i: number, draw: DrawRequest): void {
  columns.start_s[i] = draw.start_s;
  columns.duration_s[i] = draw.duration_s;
  columns.volume_L[i] = draw.volume_L;
  columns.wanted_C[i] = draw.wanted_C;
  columns.isMixed[i] = draw.isMixed ? 1 : 0;
}

/**
 * Puts columns of draws in order.
 * @param columns every draw filled in, in any order; taken over as they are where they stand in order already
 * @returns the draws in order of start; those that start together stay as they were
 * @throws where a draw is out of range: 1 s to one day, 0 to 2000 L, wanted 0 to 95 C
 */
export function orderDraws(columns: DrawColumns): Draws {
  const { start_s, duration_s, volume_L, wanted_C, count } = columns;
  let isInOrder = true;
  for (let i = 0; i < count; i += 1) {
    requireWithin("draw start [s]", cell(start_s, i), 0, 1e10);
    requireWithin("draw duration [s]", cell(duration_s, i), 1, LONGEST_DRAW_s);
    requireWithin("draw volume [L]", cell(volume_L, i), 0, LARGEST_DRAW_L);
    requireWithin("wanted temperature [C]", cell(wanted_C, i), 0, 95);
    if (i > 0 && cell(start_s, i) < cell(start_s, i - 1)) isInOrder = false;
  }
  const ordered = isInOrder ? columns : sortColumns(columns);
  return { ...ordered, mostAtOnce: countMostAtOnce(ordered.start_s, ordered.duration_s) };
}

function sortColumns(columns: DrawColumns): DrawColumns {
  const { start_s } = columns;
  const order = Array.from({ length: columns.count }, (_, i) => i).sort((a, b) => cell(start_s, a) - cell(start_s, b));
  const pick = (values: Float64Array) => Float64Array.from(order, (i) => cell(values, i));
  return {
    count: columns.count,
    start_s: pick(start_s),
    duration_s: pick(columns.duration_s),
    volume_L: pick(columns.volume_L),
    wanted_C: pick(columns.wanted_C),
    isMixed: Uint8Array.from(order, (i) => byte(columns.isMixed, i)),
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
