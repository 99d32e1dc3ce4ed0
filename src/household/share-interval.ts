import type { Source } from "../declaration/source.ts";
import { requireWithin } from "../physics/require-within.ts";

export const SCORE_INTERVAL: Source = {
  basis: "from_memory",
  document: "Wilson, Probable inference, the law of succession, and statistical inference",
  edition: "1927",
  section: "score interval, 95 %",
};

export interface ShareInterval {
  readonly low: number;
  readonly high: number;
}

/** Half width in standard deviations that holds 95 % of a normal distribution. */
const Z = 1.959964;

/**
 * Between which shares the true one lies with 95 % confidence, when `count` of `of` samples were seen.
 * @param count samples seen, 0..of
 * @param of samples taken, 1 or more
 * @returns lower and upper end, within 0..1
 * @source Wilson 1927: (p + z2/2n ± z sqrt(p(1-p)/n + z2/4n2)) / (1 + z2/n)
 * @limits samples taken to be independent; sampled days share only the heat left in the tank overnight
 */
export function shareInterval(count: number, of: number): ShareInterval {
  requireWithin("of", of, 1, Number.MAX_SAFE_INTEGER);
  requireWithin("count", count, 0, of);
  const share = count / of;
  const middle = share + Z ** 2 / (2 * of);
  const half = Z * Math.sqrt((share * (1 - share)) / of + Z ** 2 / (4 * of ** 2));
  const scale = 1 + Z ** 2 / of;
  return { low: Math.max(0, (middle - half) / scale), high: Math.min(1, (middle + half) / scale) };
}
