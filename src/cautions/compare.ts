/** Room for rounding between units, so that a limit typed in °F or psi is met and not missed by a hair. */
const HAIR = 1e-9;

/** True when a value lies beyond a limit by more than rounding. */
export function isOver(value: number, limit: number): boolean {
  return value > limit + HAIR * Math.abs(limit);
}

/** True when a value falls short of a limit by more than rounding. */
export function isUnder(value: number, limit: number): boolean {
  return value < limit - HAIR * Math.abs(limit);
}

/**
 * Codes print a temperature in whole °F with whole °C beside it: 120 °F (49 °C). The rounder of the two counts, so that
 * whoever reads 49 °C on a thermometer is not told that it is over 49 °C.
 * @param limit_C temperature that a code sets [°C]
 */
export function asPrinted_C(limit_C: number): number {
  return Math.max(limit_C, Math.round(limit_C));
}
