import type { Source } from "../declaration/source.ts";
import { toBase } from "../units/convert.ts";
import {
  CONDUCTORS,
  type Column,
  type ConductorRow,
  STANDARD_BREAKERS_A,
  type WireMetal,
  type WireSize,
} from "./conductor-table.ts";
import { requireWithin } from "./require-within.ts";

const nec = (section: string): Source => ({
  basis: "published",
  document: "NEC (NFPA 70)",
  edition: "2023",
  section,
});
export const CONTINUOUS_RULE = nec("422.13, storage heater up to 120 gal counts as continuous");
export const BREAKER_RULE = nec("422.11(E), single appliance without motor");
export const STANDARD_RATINGS = nec("240.6(A), standard ratings");
export const SMALL_CONDUCTORS = nec("240.4(D), small conductors");
export const DROP_ADVICE = nec("informational notes to 210.19, 3 % on the branch");

/** Load that runs three hours or more counts with a quarter on top, NEC 422.10(A) and 422.13. */
const CONTINUOUS_FACTOR = 1.25;
/** Highest breaker for one appliance without a motor, NEC 422.11(E)(3); under the small load, 422.11(E)(2). */
const BREAKER_FACTOR = 1.5;
const SMALL_LOAD_A = 13.3;
const SMALL_LOAD_BREAKER_A = 20;
const MOST_A = 200;
/** Share of the voltage that may get lost on the branch, as the NEC's informational notes advise. */
export const ADVISED_DROP = 0.03;
const TABLE_LENGTH_m = toBase(1000, "ft");
const THERE_AND_BACK = 2;

/**
 * Current that branch conductors and breaker must carry for a continuous load.
 * @param load_A load [A], 0..200
 * @returns design current [A]
 * @source NEC 2023 422.10(A), 422.13: 125 %
 */
export function designCurrent_A(load_A: number): number {
  requireWithin("load_A", load_A, 0, MOST_A);
  return load_A * CONTINUOUS_FACTOR;
}

/**
 * Smallest standard breaker that carries a current all day.
 * @param design_A design current [A], 0..250
 * @returns standard rating [A], or nothing beyond the list
 * @source NEC 2023 240.6(A)
 */
export function smallestBreaker_A(design_A: number): number | undefined {
  requireWithin("design_A", design_A, 0, MOST_A * CONTINUOUS_FACTOR);
  return STANDARD_BREAKERS_A.find((rating_A) => rating_A >= design_A);
}

/**
 * Largest standard breaker that one appliance without a motor may have when its plate names none.
 * @param load_A load [A], 0..200
 * @returns standard rating [A], or nothing beyond the list
 * @source NEC 2023 422.11(E)(2) and (3): 20 A up to a load of 13.3 A, above it 150 % and the next standard size up
 * @limits a plate that names a breaker wins; with a motor in the load the plate decides
 */
export function largestBreaker_A(load_A: number): number | undefined {
  requireWithin("load_A", load_A, 0, MOST_A);
  if (load_A <= SMALL_LOAD_A) return SMALL_LOAD_BREAKER_A;
  return STANDARD_BREAKERS_A.find((rating_A) => rating_A >= load_A * BREAKER_FACTOR);
}

/**
 * Thinnest conductor that carries the design current and may sit behind the smallest breaker for it.
 * @param design_A design current [A], 0..250
 * @param metal conductor metal
 * @param column temperature column of the ampacity table
 * @returns table row, or nothing beyond the table
 * @source NEC 2023 Table 310.16, 240.4(D)
 * @limits up to three current-carrying conductors, 30 °C around; no derating for heat or bundling
 */
export function thinnestConductor(design_A: number, metal: WireMetal, column: Column): ConductorRow | undefined {
  const breaker_A = smallestBreaker_A(design_A);
  if (breaker_A === undefined) return undefined;
  return CONDUCTORS[metal].find(
    (row) => row.ampacity_A[column] >= design_A && conductorBreakerLimit_A(row, column) >= breaker_A,
  );
}

/** Table row of a size and metal, or nothing: aluminium starts at 12. */
export function conductorRow(size: WireSize, metal: WireMetal): ConductorRow | undefined {
  return CONDUCTORS[metal].find((row) => row.size === size);
}

/**
 * Largest breaker that a conductor may sit behind.
 * @param row table row
 * @param column temperature column of the ampacity table
 * @returns rating [A]
 * @source NEC 2023 240.4(D) for small conductors; else 240.4(B), the next standard rating above the ampacity
 */
export function conductorBreakerLimit_A(row: ConductorRow, column: Column): number {
  const ampacity_A = row.ampacity_A[column];
  const nextUp_A = STANDARD_BREAKERS_A.find((rating_A) => rating_A >= ampacity_A) ?? ampacity_A;
  return Math.min(row.smallLimit_A ?? nextUp_A, nextUp_A);
}

/**
 * Resistance of a conductor there and back.
 * @param row table row
 * @param run_m length of the run, one way [m], 0..1000
 * @returns resistance [ohm]
 * @source NEC 2023 Chapter 9 Table 8, 75 °C
 * @limits direct current; at these sizes alternating current adds nothing that counts (from memory)
 */
export function loopResistance_ohm(row: ConductorRow, run_m: number): number {
  requireWithin("run_m", run_m, 0, 1000);
  return (THERE_AND_BACK * run_m * row.ohmPer1000Ft) / TABLE_LENGTH_m;
}

/**
 * Voltage lost along the wire of a single-phase circuit.
 * @param load_A load [A], 0..200
 * @param loop_ohm resistance there and back [ohm], >= 0
 * @returns voltage drop [V]
 * @source V = I R, with R = 2 L r
 */
export function voltageDrop_V(load_A: number, loop_ohm: number): number {
  requireWithin("load_A", load_A, 0, MOST_A);
  requireWithin("loop_ohm", loop_ohm, 0, Number.MAX_VALUE);
  return load_A * loop_ohm;
}
