import {
  conductorBreakerLimit_A,
  conductorRow,
  designCurrent_A,
  largestBreaker_A,
  loopResistance_ohm,
  smallestBreaker_A,
  thinnestConductor,
  voltageDrop_V,
} from "./branch-circuit.ts";
import type { Column, ConductorRow, WireMetal, WireSize } from "./conductor-table.ts";
import { elementResistance_ohm, powerAtVoltage_W, powerBehindWire_W } from "./heating-element.ts";

/** Service voltage stays within 5 % of its name. Source: ANSI C84.1 range A, from memory. */
export const VOLTAGE_BAND = 0.05;

/** What must be known of a single-phase circuit to a water heater. */
export interface CircuitCase {
  readonly element_W: number;
  readonly rated_volts_V: number;
  readonly supply_V: number;
  readonly compressor_A: number | undefined;
  readonly together: "simultaneous" | "interlocked";
  readonly run_m: number | undefined;
  readonly wire_metal: WireMetal;
  readonly column: Column;
  readonly wire: WireSize | undefined;
  readonly breaker_A: number | undefined;
}

/** How the supply compares with the rating of the element: beyond the band it is another voltage, not a weak one. */
type VoltageMatch = "over" | "under" | "within";

export interface CircuitPlan {
  readonly match: VoltageMatch;
  readonly element_ohm: number | undefined;
  readonly power_W: number;
  readonly load_A: number;
  /** Load by the plate, or what flows on this supply where that is more. */
  readonly rated_A: number;
  readonly design_A: number;
  readonly smallest_A: number | undefined;
  readonly largest_A: number | undefined;
  /** The conductor to use: thinnest that will do. */
  readonly conductor: ConductorRow | undefined;
  /** The conductor that is there, when its size is known and the table has it. */
  readonly existing: ConductorRow | undefined;
  /** Largest breaker that the conductor in use may sit behind. */
  readonly conductorLimit_A: number | undefined;
  /** Largest breaker that both the load and the conductor in use allow. */
  readonly breakerTop_A: number | undefined;
  readonly isWireTooThin: boolean;
  readonly isBreakerOutside: boolean;
  readonly drop: VoltageDrop | undefined;
}

export interface VoltageDrop {
  readonly row: ConductorRow;
  readonly loop_ohm: number;
  readonly drop_V: number;
  readonly share: number;
  /** Power left in the element behind the wire; only when the element is the whole load. */
  readonly power_W: number | undefined;
}

/**
 * Plans a branch circuit by table: load, breaker, conductor and voltage drop.
 * @param known the case
 * @returns the plan; what the tables do not reach is left out
 * @source branch-circuit.ts, heating-element.ts
 * @limits single-phase; the compressor's current is added to the element's as if both were in phase, which is on the
 *   safe side
 */
export function planCircuit(known: CircuitCase): CircuitPlan {
  const { element_W, rated_volts_V, supply_V, wire_metal, column, wire, breaker_A } = known;
  const power_W = powerAtVoltage_W(element_W, rated_volts_V, supply_V);
  const element_ohm = element_W > 0 ? elementResistance_ohm(element_W, rated_volts_V) : undefined;
  const load_A = loadCurrent_A(known, power_W / supply_V);
  // The rule for the largest breaker speaks of the current on the plate, which a low supply does not reach.
  const rated_A = Math.max(load_A, loadCurrent_A(known, element_W / rated_volts_V));
  const design_A = designCurrent_A(load_A);
  const smallest_A = smallestBreaker_A(design_A);
  const largest_A = largestBreaker_A(rated_A);
  const conductor = thinnestConductor(design_A, wire_metal, column);
  const existing = wire === undefined ? undefined : conductorRow(wire, wire_metal);
  const inUse = existing ?? conductor;
  const conductorLimit_A = inUse === undefined ? undefined : conductorBreakerLimit_A(inUse, column);
  const breakerTop_A = largest_A === undefined ? undefined : Math.min(largest_A, conductorLimit_A ?? largest_A);
  return {
    match: matchVoltage(known),
    element_ohm,
    power_W,
    load_A,
    rated_A,
    design_A,
    smallest_A,
    largest_A,
    conductor,
    existing,
    conductorLimit_A,
    breakerTop_A,
    isWireTooThin: existing !== undefined && !carries(existing, column, design_A, smallest_A),
    isBreakerOutside:
      breaker_A !== undefined && (breaker_A < (smallest_A ?? 0) || breaker_A > (breakerTop_A ?? breaker_A)),
    drop: inUse === undefined ? undefined : dropAlong(inUse, known, load_A, element_ohm),
  };
}

/** Thinnest conductor, from the planned one up, that loses no more than a share of the supply; with its drop. */
export function conductorWithin(
  known: CircuitCase,
  plan: CircuitPlan,
  rows: readonly ConductorRow[],
  most: number,
): VoltageDrop | undefined {
  const { conductor } = plan;
  if (conductor === undefined) return undefined;
  return rows
    .slice(rows.indexOf(conductor))
    .map((row) => dropAlong(row, known, plan.load_A, plan.element_ohm))
    .find((drop) => drop !== undefined && drop.share <= most);
}

function matchVoltage({ element_W, rated_volts_V, supply_V }: CircuitCase): VoltageMatch {
  if (element_W === 0) return "within";
  if (supply_V > rated_volts_V * (1 + VOLTAGE_BAND)) return "over";
  return supply_V < rated_volts_V * (1 - VOLTAGE_BAND) ? "under" : "within";
}

function carries(row: ConductorRow, column: Column, design_A: number, breaker_A: number | undefined): boolean {
  return row.ampacity_A[column] >= design_A && conductorBreakerLimit_A(row, column) >= (breaker_A ?? design_A);
}

function loadCurrent_A({ compressor_A, together }: CircuitCase, element_A: number): number {
  const motor_A = compressor_A ?? 0;
  return together === "simultaneous" ? element_A + motor_A : Math.max(element_A, motor_A);
}

/** What a conductor loses on the run of a case; nothing where the run is not known. */
export function dropAlong(
  row: ConductorRow,
  { run_m, supply_V, compressor_A }: CircuitCase,
  load_A: number,
  element_ohm: number | undefined,
): VoltageDrop | undefined {
  if (run_m === undefined) return undefined;
  const loop_ohm = loopResistance_ohm(row, run_m);
  const drop_V = voltageDrop_V(load_A, loop_ohm);
  const isElementAlone = element_ohm !== undefined && compressor_A === undefined;
  return {
    row,
    loop_ohm,
    drop_V,
    share: drop_V / supply_V,
    power_W: isElementAlone ? powerBehindWire_W(element_ohm, supply_V, loop_ohm) : undefined,
  };
}
