import { requireWithin } from "./require-within.ts";
import { ATMOSPHERE_kPa } from "./water.ts";

const HIGHEST_kPa = 2000;

/**
 * Pressure after a diaphragm tank has taken in a volume.
 * @param tank_L total volume of the tank [L], above 0
 * @param precharge_kPa air pressure of the empty tank [kPa gauge], 0..2000
 * @param line_kPa pressure before [kPa gauge], 0..2000
 * @param taken_L volume taken in [L], >= 0
 * @returns pressure after [kPa gauge]; infinity when the tank cannot hold it
 * @source Boyle: P2 = P0 / (P0 / max(P0, P1) - V / V_tank), pressures absolute
 * @limits constant temperature of the air; the diaphragm may stop earlier, and the relief valve opens before infinity
 */
export function pressureAfter_kPa(tank_L: number, precharge_kPa: number, line_kPa: number, taken_L: number): number {
  requireWithin("tank_L", tank_L, Number.MIN_VALUE, Number.MAX_VALUE);
  requireWithin("precharge_kPa", precharge_kPa, 0, HIGHEST_kPa);
  requireWithin("line_kPa", line_kPa, 0, HIGHEST_kPa);
  requireWithin("taken_L", taken_L, 0, Number.MAX_VALUE);
  const P0 = precharge_kPa + ATMOSPHERE_kPa;
  const P1 = line_kPa + ATMOSPHERE_kPa;
  const left = P0 / Math.max(P0, P1) - taken_L / tank_L;
  // An overcharged tank takes nothing before the line has climbed to its precharge.
  return left > 0 ? Math.max(line_kPa, P0 / left - ATMOSPHERE_kPa) : Number.POSITIVE_INFINITY;
}
