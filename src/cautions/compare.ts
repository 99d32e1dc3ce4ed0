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
