/** A share as counted, and between which ends the true one lies by chance alone. */
export interface Share {
  readonly share: number;
  readonly low: number;
  readonly high: number;
}

/** Below so many a percentage says more than the count holds; common practice in the reporting of small numbers. */
export const ENOUGH_FOR_A_SHARE = 20;
/** Below so many a median is one job's story. @source common practice */
export const ENOUGH_FOR_A_MEDIAN = 5;
/** Two-sided 95 % of the normal distribution. */
const Z = 1.959964;

/**
 * A share with its 95 % score interval.
 * @param some how many of `all`, 0..all
 * @param all [>= 1]
 * @returns nothing where `all` is below {@link ENOUGH_FOR_A_SHARE}: small numbers are shown as counts
 * @source E. B. Wilson, J. Am. Stat. Assoc. 22 (1927) 209-212 (from memory)
 * @limits jobs are taken as independent of each other, which they are not where one cause runs through many
 */
export function shareOf(some: number, all: number): Share | undefined {
  if (!(all >= ENOUGH_FOR_A_SHARE && some >= 0 && some <= all)) return undefined;
  const p = some / all;
  const z2 = Z * Z;
  const middle = (p + z2 / (2 * all)) / (1 + z2 / all);
  const half = (Z / (1 + z2 / all)) * Math.sqrt((p * (1 - p)) / all + z2 / (4 * all * all));
  return { share: p, low: Math.max(0, middle - half), high: Math.min(1, middle + half) };
}

/** The middle one of some numbers, or the mean of the middle two; nothing where there are none. */
export function medianOf(values: readonly number[]): number | undefined {
  const inOrder = [...values].sort((a, b) => a - b);
  const upper = inOrder[Math.floor(inOrder.length / 2)];
  const lower = inOrder[Math.ceil(inOrder.length / 2) - 1];
  return upper === undefined || lower === undefined ? undefined : (upper + lower) / 2;
}
