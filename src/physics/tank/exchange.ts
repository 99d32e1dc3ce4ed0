import { cell } from "./cell.ts";
import type { TankState } from "./tank-state.ts";

/** What one exchange needs and gives; made once for each tank. Numbers are fields so that no call puts one on the heap. */
export interface Exchange {
  readonly upper: Float64Array;
  readonly right: Float64Array;
  /** In: length of the step [s], > 0, and temperature of the air around the tank [C]. */
  seconds: number;
  air_C: number;
  /** Out: heat lost to the air [J]; negative where the air is warmer. */
  lost_J: number;
}

export function makeExchange(layers: number): Exchange {
  return {
    upper: new Float64Array(layers + 1),
    right: new Float64Array(layers + 1),
    seconds: 0,
    air_C: 0,
    lost_J: 0,
  };
}

/** Up to here e^x - 1 comes from its series, which is then right to 1e-10 of itself. */
const SMALL_EXPONENT = 0.02;

/** Two pivots that differ by less are the same but for rounding. */
const PIVOT_ROUNDING = 1e-17;

/** First terms of e^x - 1. */
function growth(x: number): number {
  return x * (1 + (x / 2) * (1 + (x / 3) * (1 + x / 4)));
}

/**
 * Lets heat flow between slugs and to the air around the tank for `seconds`.
 *
 * One implicit step in flux form: each slug's heat changes by exactly what crosses its faces, so heat is conserved to
 * rounding for any step length, and no step is too long to be stable. The loss is fitted to the exponential, so a tank of
 * one temperature follows T = Ta + (T0 - Ta) e^(-UA t / C) exactly.
 * @param tank changed in place
 * @param exchange what goes in and out
 * @source node equation m c dT/dt = UA (Ta - T) + k A / dx (T above + T below - 2 T); solved as a tridiagonal system
 * @limits conduction is first order in the step: 1 % of the conducted heat at half an hour and 12 layers
 */
export function exchangeHeat(tank: TankState, exchange: Exchange): void {
  const { t_C: t, size, first, last, model } = tank;
  const { upper, right, air_C } = exchange;
  const unit = exchange.seconds / model.layer_J_K;
  const lowSize = cell(size, first);
  const topSize = cell(size, last);
  const isOne = first === last;
  // e^x - 1 for the side alone, and for the slugs that touch the bottom and the top.
  const side = model.side_W_K * unit;
  const end = model.end_W_K * unit;
  const lowExponent = side + (isOne ? 2 * end : end) / lowSize;
  const topExponent = side + end / topSize;
  const lowLoss = lowSize * (lowExponent < SMALL_EXPONENT ? growth(lowExponent) : Math.expm1(lowExponent));
  const topLoss = topSize * (topExponent < SMALL_EXPONENT ? growth(topExponent) : Math.expm1(topExponent));
  const sideLoss = side < SMALL_EXPONENT ? growth(side) : Math.expm1(side);
  if (isOne) {
    t[first] = (lowSize * cell(t, first) + lowLoss * air_C) / (lowSize + lowLoss);
    exchange.lost_J = lowLoss * (cell(t, first) - air_C) * model.layer_J_K;
    return;
  }
  const conduct = model.exchange_W_K * unit;
  const isTwo = last - first === 1;
  const topConduct = (2 * conduct) / ((isTwo ? lowSize : 1) + topSize);
  // Up the column: eliminate what lies below each slug. Slugs between the ends all have the size of one layer.
  let below = isTwo ? topConduct : (2 * conduct) / (lowSize + 1);
  let pivot = 1 / (lowSize + lowLoss + below);
  let carriedUpper = below * pivot;
  let carriedRight = (lowSize * cell(t, first) + lowLoss * air_C) * pivot;
  upper[first] = carriedUpper;
  right[first] = carriedRight;
  let settledUpper = Number.POSITIVE_INFINITY;
  for (let i = first + 1; i < last; i += 1) {
    const above = i === last - 1 ? topConduct : conduct;
    // Equal slugs soon have equal pivots; a division for each would take most of the time.
    if (above !== conduct || below !== conduct || Math.abs(carriedUpper - settledUpper) > PIVOT_ROUNDING) {
      pivot = 1 / (1 + sideLoss + above + below * (1 - carriedUpper));
      settledUpper = carriedUpper;
    }
    carriedRight = (cell(t, i) + sideLoss * air_C + below * carriedRight) * pivot;
    carriedUpper = above * pivot;
    upper[i] = carriedUpper;
    right[i] = carriedRight;
    below = above;
  }
  pivot = 1 / (topSize + topLoss + below * (1 - carriedUpper));
  // And down again: every new temperature follows from the one above it.
  let next = (topSize * cell(t, last) + topLoss * air_C + below * carriedRight) * pivot;
  let lost = topLoss * (next - air_C);
  t[last] = next;
  let between = 0;
  for (let i = last - 1; i > first; i -= 1) {
    next = cell(right, i) + cell(upper, i) * next;
    t[i] = next;
    between += next - air_C;
  }
  next = cell(right, first) + cell(upper, first) * next;
  t[first] = next;
  lost += sideLoss * between + lowLoss * (next - air_C);
  exchange.lost_J = lost * model.layer_J_K;
}
