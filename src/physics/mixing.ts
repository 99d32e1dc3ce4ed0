import type { Source } from "../declaration/source.ts";
import { requireWithin } from "./require-within.ts";

export const MIXING_BALANCE: Source = {
  basis: "computed",
  document: "Energy balance of two streams, equal density and heat capacity",
};

/** Rules in print take 2/3, 70 %, 75 % or 80 % of the tank as drawn hot. */
export const USABLE_SHARE: Source = { basis: "common_practice", document: "V_hot / V_tank: 2/3 … 4/5" };

/**
 * Share of hot water in a mix of hot and cold.
 * @param hot_C hot water [°C], 0..100
 * @param cold_C cold water [°C], below hot_C
 * @param mixed_C temperature of the mix [°C], cold_C..hot_C
 * @returns share of hot, 0..1
 * @source hot_C f + cold_C (1 - f) = mixed_C
 * @limits equal density and heat capacity; the share by weight is right within 0.1 %
 */
export function hotShare(hot_C: number, cold_C: number, mixed_C: number): number {
  requireWithin("hot_C", hot_C, 0, 100);
  requireWithin("mixed_C", mixed_C, cold_C, hot_C);
  if (!(hot_C > cold_C)) throw new RangeError("hot_C must be above cold_C");
  return (mixed_C - cold_C) / (hot_C - cold_C);
}

/**
 * Volume of mixed water that a volume of hot water makes.
 * @param hot_L hot water drawn [L], >= 0
 * @param hot_C hot water [°C], 0..100
 * @param cold_C cold water [°C], below mixed_C
 * @param mixed_C temperature of the mix [°C], above cold_C, up to hot_C
 * @returns mixed volume [L], never below hot_L
 * @source V_mixed = V_hot (Th - Tc) / (Tm - Tc)
 * @limits water shrinks as it cools: the real volume is 0.5 % smaller from 140 to 120 °F, 2.2 % from 180 to 105 °F
 */
export function mixedVolume_L(hot_L: number, hot_C: number, cold_C: number, mixed_C: number): number {
  requireWithin("hot_L", hot_L, 0, Number.MAX_VALUE);
  const share = hotShare(hot_C, cold_C, mixed_C);
  if (!(share > 0)) throw new RangeError("mixed_C must be above cold_C");
  return hot_L / share;
}
