import type { Check, Outcome } from "./knowledge.ts";

/** Least weight of an outcome whose range a reading lies far outside of. */
const LEAST_WEIGHT = 1e-9;

/**
 * How far a reading speaks for each outcome of its check: the chance that the true value lies in the outcome's range.
 * @param value what was read, base unit of the check's quantity
 * @param expected what this unit on this site should show, same unit
 * @returns chances by outcome id, adding up to one; nothing when the check takes no reading or a number is not finite
 * @source normal distribution about the reading, standard error by the instrument of the check
 * @limits outcomes without a range get nothing; a reading in a gap between ranges goes to the nearest ones
 */
export function weighReading(
  check: Check,
  value: number,
  expected: number,
): Readonly<Record<string, number>> | undefined {
  if (check.reading === undefined || !Number.isFinite(value) || !Number.isFinite(expected)) return undefined;
  const { share, least } = check.reading.error;
  const error = Math.max(share * Math.abs(value), least, Number.MIN_VALUE);
  const ranged = check.outcomes.filter((outcome) => outcome.share !== undefined || outcome.range !== undefined);
  const weights = ranged.map((outcome) => chanceWithin(rangeOf(outcome, expected), value, error));
  const total = weights.reduce((all, weight) => all + weight, 0);
  if (total < LEAST_WEIGHT) return nearestOf(ranged, value, expected);
  return Object.fromEntries(ranged.map(({ id }, index) => [id, (weights[index] ?? 0) / total]));
}

/** Standard normal distribution, cumulative. @source Abramowitz and Stegun 7.1.26, |error| < 1e-7 (from memory) */
export function normalShareBelow(z: number): number {
  const x = Math.abs(z) / Math.SQRT2;
  const t = 1 / (1 + 0.3275911 * x);
  const series = ((((1.061405429 * t - 1.453152027) * t + 1.421413741) * t - 0.284496736) * t + 0.254829592) * t;
  const tail = (series * Math.exp(-x * x)) / 2;
  return z < 0 ? tail : 1 - tail;
}

interface Bounds {
  readonly from: number;
  readonly to: number;
}

function rangeOf({ share, range }: Outcome, expected: number): Bounds {
  const from = share?.from === undefined ? range?.from : share.from * expected;
  const to = share?.to === undefined ? range?.to : share.to * expected;
  const low = from ?? Number.NEGATIVE_INFINITY;
  const high = to ?? Number.POSITIVE_INFINITY;
  // A share of something below zero turns its ends round.
  return low <= high ? { from: low, to: high } : { from: high, to: low };
}

function chanceWithin({ from, to }: Bounds, value: number, error: number): number {
  const below = (bound: number) => {
    if (bound === Number.NEGATIVE_INFINITY) return 0;
    return bound === Number.POSITIVE_INFINITY ? 1 : normalShareBelow((bound - value) / error);
  };
  return Math.max(0, below(to) - below(from));
}

function nearestOf(
  outcomes: readonly Outcome[],
  value: number,
  expected: number,
): Readonly<Record<string, number>> | undefined {
  const distances = outcomes.map((outcome) => {
    const { from, to } = rangeOf(outcome, expected);
    return Math.max(from - value, value - to, 0);
  });
  const nearest = outcomes[distances.indexOf(Math.min(...distances))];
  return nearest && { [nearest.id]: 1 };
}
