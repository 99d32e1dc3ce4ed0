import type { Source } from "../../declaration/source.ts";
import { toBase } from "../../units/convert.ts";
import { APPENDIX_E } from "./rating-conditions.ts";

export type UsageBin = "very_small" | "low" | "medium" | "high";

/** One draw of the simulated-use day: hour and minute from the first draw, gallons, gallons a minute. */
type Row = readonly [hour: number, minute: number, volume_gal: number, flow_gpm: number];

/** Rows from memory; each day's total (10, 38, 55, 84 gal) was checked, and 55 and 84 are published elsewhere too. */
const ROWS: Readonly<Record<UsageBin, readonly Row[]>> = {
  very_small: [
    [0, 0, 2, 1],
    [1, 0, 1, 1],
    [1, 5, 0.5, 1],
    [1, 10, 0.5, 1],
    [1, 15, 0.5, 1],
    [8, 0, 1, 1],
    [8, 15, 2, 1],
    [9, 0, 1.5, 1],
    [9, 15, 1, 1],
  ],
  low: [
    [0, 0, 15, 1.7],
    [0, 30, 2, 1],
    [1, 0, 1, 1],
    [10, 30, 6, 1.7],
    [11, 30, 4, 1.7],
    [12, 0, 1, 1],
    [12, 45, 1, 1],
    [12, 50, 1, 1],
    [16, 15, 2, 1],
    [16, 45, 2, 1.7],
    [17, 0, 3, 1.7],
  ],
  medium: [
    [0, 0, 15, 1.7],
    [0, 30, 2, 1],
    [1, 40, 9, 1.7],
    [10, 30, 9, 1.7],
    [11, 30, 5, 1.7],
    [12, 0, 1, 1],
    [12, 45, 1, 1],
    [12, 50, 1, 1],
    [16, 0, 1, 1],
    [16, 15, 2, 1],
    [16, 45, 2, 1.7],
    [17, 0, 7, 1.7],
  ],
  high: [
    [0, 0, 27, 3],
    [0, 30, 2, 1],
    [0, 40, 1, 1],
    [1, 40, 9, 1.7],
    [10, 30, 15, 3],
    [11, 30, 5, 1.7],
    [12, 0, 1, 1],
    [12, 45, 1, 1],
    [12, 50, 1, 1],
    [16, 0, 2, 1],
    [16, 15, 2, 1],
    [16, 30, 2, 1.7],
    [16, 45, 2, 1.7],
    [17, 0, 14, 3],
  ],
};

export interface PatternDraw {
  readonly start_s: number;
  readonly volume_L: number;
  readonly flow_L_s: number;
}

export const PATTERN_SOURCE: Source = { ...APPENDIX_E, section: "5.5, tables III.1 to III.4" };

/** The draws of one day for a usage bin. */
export function drawPattern(bin: UsageBin): readonly PatternDraw[] {
  return ROWS[bin].map(([hour, minute, volume_gal, flow_gpm]) => ({
    start_s: (hour * 60 + minute) * 60,
    volume_L: toBase(volume_gal, "gal"),
    flow_L_s: toBase(flow_gpm, "gpm"),
  }));
}

/** Lower ends of the bins by first-hour rating. The label rule prints the same (16 CFR 305, appendix D). */
const BIN_FROM_gal: readonly (readonly [UsageBin, number])[] = [
  ["high", 75],
  ["medium", 51],
  ["low", 18],
];
export const BIN_SOURCE: Source = {
  basis: "published",
  document: "16 CFR 305",
  section: "appendix D1 and D3, range tables; exactly 75 gal by 10 CFR 430 appendix E 5.4.1, from memory",
};

/**
 * The usage bin that a first-hour rating falls in.
 * @param firstHour_L first-hour rating [L], >= 0
 * @returns bin
 * @source 16 CFR 305, appendix D1 and D3
 */
export function usageBin(firstHour_L: number): UsageBin {
  const found = BIN_FROM_gal.find(([, from_gal]) => firstHour_L >= toBase(from_gal, "gal") - ROUNDING_L);
  return found ? found[0] : "very_small";
}

/** A rating of exactly 75 gal in litres must not fall below it by a rounding. */
const ROUNDING_L = 1e-9;
