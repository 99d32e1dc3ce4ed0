import type { Source } from "../declaration/source.ts";
import { designCurrent_A, smallestBreaker_A, thinnestConductor } from "./branch-circuit.ts";
import {
  type CircuitCase,
  type CircuitPlan,
  conductorWithin,
  dropAlong,
  VOLTAGE_BAND,
  type VoltageDrop,
} from "./circuit-plan.ts";
import { CONDUCTORS, type ConductorRow, type WireMetal } from "./conductor-table.ts";
import { powerAtVoltage_W } from "./heating-element.ts";
import { requireWithin } from "./require-within.ts";
import { STUDY_WATER } from "./tank/tank-model.ts";

export const FEEDER_RULE: Source = {
  basis: "published",
  document: "NEC (NFPA 70)",
  edition: "2023",
  section: "422.13 counts the heater as continuous on its branch, not on feeder or service",
};
export const TOTAL_DROP_ADVICE: Source = {
  basis: "published",
  document: "NEC (NFPA 70)",
  edition: "2023",
  section: "informational notes to 210.19 and 215.2, 5 % on feeder and branch together",
};
export const WARMING: Source = { basis: "computed", document: "First law: q = P / (ρ · c · Δt)" };
/** Share of the voltage that feeder and branch together may lose, as the NEC's informational notes advise. */
export const ADVISED_TOTAL_DROP = 0.05;
/** Plug-in units run on this and less [V] (common practice). */
export const PLUG_IN_BELOW_V = 130;
/** Share of a circuit that one thing on cord and plug may use. Source: NEC 210.23(A)(1), from memory. */
export const PLUG_SHARE = 0.8;
/** Supplies that houses have [V]. */
const SUPPLIES_V = [240, 208, 120] as const;

/** What must be known beside the branch circuit itself. */
export interface CircuitOptionCase extends CircuitCase {
  /** Share of the voltage that the branch may lose. */
  readonly drop_limit: number;
  readonly feeder_A: number | undefined;
  readonly feeder_load_A: number | undefined;
  readonly feeder_drop: number | undefined;
  /** Water warmed by so much, for the recovery of each supply. */
  readonly rise_K: number;
}

/** One conductor for the run, with what it loses. */
interface ConductorChoice {
  readonly row: ConductorRow;
  readonly metal: WireMetal;
  readonly drop: VoltageDrop;
  readonly isWithin: boolean;
}

/**
 * Conductors that carry the load, thinnest first, with what each loses on the run.
 * @param known the case; without a run there is nothing to choose by
 * @param plan its plan
 * @returns rows of the table from the thinnest that the load allows
 * @source circuit-plan.ts
 */
export function conductorChoices(known: CircuitOptionCase, plan: CircuitPlan): readonly ConductorChoice[] {
  const rows = CONDUCTORS[known.wire_metal];
  if (plan.conductor === undefined) return [];
  return rows.slice(rows.indexOf(plan.conductor)).flatMap((row) => {
    const drop = dropAlong(row, known, plan.load_A, plan.element_ohm);
    return drop === undefined ? [] : [{ row, metal: known.wire_metal, drop, isWithin: drop.share <= known.drop_limit }];
  });
}

/** Thinnest conductor of the case's own metal that carries the load and keeps the asked drop. */
export function conductorForDrop(known: CircuitOptionCase, plan: CircuitPlan): VoltageDrop | undefined {
  return conductorWithin(known, plan, CONDUCTORS[known.wire_metal], known.drop_limit);
}

/** The conductor of the other metal for the same load: by ampacity, and by drop where the run is known. */
export function otherMetal(
  known: CircuitOptionCase,
  plan: CircuitPlan,
): { readonly metal: WireMetal; readonly row: ConductorRow } | undefined {
  const metal: WireMetal = known.wire_metal === "copper" ? "aluminium" : "copper";
  const conductor = thinnestConductor(plan.design_A, metal, known.column);
  if (conductor === undefined) return undefined;
  const kept = conductorWithin(known, { ...plan, conductor }, CONDUCTORS[metal], known.drop_limit);
  if (known.run_m !== undefined && kept === undefined) return undefined;
  return { metal, row: kept?.row ?? conductor };
}

/** One supply for one element, and what comes of it. */
interface SupplyChoice {
  readonly supply_V: number;
  readonly rated_V: number;
  readonly power_W: number;
  readonly current_A: number;
  readonly breaker_A: number | undefined;
  readonly recovery_L_s: number;
}

/**
 * What one element does on each supply that houses have, and what one made for that supply would do.
 * @param known the case, with an element
 * @returns choices, highest supply first; none that would overload the element
 * @source Ohm's law; NEC 2023 422.13 and 240.6(A) for the breaker; first law for the recovery
 * @limits the element alone, without compressor
 */
export function supplyChoices(known: CircuitOptionCase): readonly SupplyChoice[] {
  const { element_W, rated_volts_V, rise_K } = known;
  if (element_W === 0) return [];
  const ratings = (supply_V: number) =>
    supply_V < rated_volts_V * (1 - VOLTAGE_BAND) && supply_V > PLUG_IN_BELOW_V
      ? [rated_volts_V, supply_V]
      : [rated_volts_V];
  return SUPPLIES_V.filter((supply_V) => supply_V <= rated_volts_V * (1 + VOLTAGE_BAND)).flatMap((supply_V) =>
    ratings(supply_V).map((rated_V) => {
      const power_W = powerAtVoltage_W(element_W, rated_V, supply_V);
      const current_A = power_W / supply_V;
      const breaker_A = smallestBreaker_A(designCurrent_A(current_A));
      return { supply_V, rated_V, power_W, current_A, breaker_A, recovery_L_s: warmingRate_L_s(power_W, rise_K) };
    }),
  );
}

/**
 * Water that a steady power warms.
 * @param power_W power [W], 0..50000
 * @param rise_K rise of temperature [K], above 0, to 100
 * @returns water [L/s]
 * @source q = P / (rho c dt), constants of the simulated tank
 */
export function warmingRate_L_s(power_W: number, rise_K: number): number {
  requireWithin("power_W", power_W, 0, 50_000);
  requireWithin("rise_K", rise_K, Number.MIN_VALUE, 100);
  return power_W / (STUDY_WATER.density_kg_L * STUDY_WATER.specificHeat_J_kg_K * rise_K);
}

/**
 * What a feeder or panel has left with the heater on it [A]; below zero it is overloaded.
 * @param known the case
 * @param plan its plan
 * @returns feeder less its load less the heater, or nothing where either is not known
 * @source NEC 2023 422.13: without the quarter for continuous load, which is for the branch
 * @limits loads simply added; the demand factors of NEC article 220 are the electrician's
 */
export function feederSpare_A({ feeder_A, feeder_load_A }: CircuitOptionCase, plan: CircuitPlan): number | undefined {
  if (feeder_A === undefined || feeder_load_A === undefined) return undefined;
  return feeder_A - feeder_load_A - plan.rated_A;
}

/** Share of the voltage lost on feeder and branch together. */
export function totalDrop({ feeder_drop }: CircuitOptionCase, { drop }: CircuitPlan): number | undefined {
  return feeder_drop === undefined || drop === undefined ? undefined : feeder_drop + drop.share;
}
