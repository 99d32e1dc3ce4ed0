import { cell } from "./cell.ts";
import type { TankState } from "./tank-state.ts";

/**
 * Lets warm water rise: blends every stretch that is warmer below than above, until nothing is.
 *
 * Instant blending stands for natural convection, which takes seconds: with the published effective conductivity for
 * inverted layers (AixLib, buoyancy) an inversion of 1 K over 0.2 m halves in about ten seconds. Heat is conserved
 * exactly, and heat added low in the tank ends up in the same place however finely it is added.
 * @source pool-adjacent-violators: the closest profile that is never warmer below, with the same heat
 */
export function settle(tank: TankState): void {
  const { t_C: t, size, first, last } = tank;
  let below_C = cell(t, first);
  for (let i = first; i < last; i += 1) {
    const above_C = cell(t, i + 1);
    if (below_C <= above_C) {
      below_C = above_C;
      continue;
    }
    let low = i;
    let high = i + 1;
    let volume = cell(size, i) + cell(size, high);
    let heat = cell(size, i) * cell(t, i) + cell(size, high) * cell(t, high);
    for (;;) {
      if (high < last && heat > volume * cell(t, high + 1)) {
        high += 1;
        volume += cell(size, high);
        heat += cell(size, high) * cell(t, high);
      } else if (low > first && heat < volume * cell(t, low - 1)) {
        low -= 1;
        volume += cell(size, low);
        heat += cell(size, low) * cell(t, low);
      } else break;
    }
    const blend_C = heat / volume;
    for (let k = low; k <= high; k += 1) t[k] = blend_C;
    below_C = blend_C;
    i = high - 1;
  }
}
