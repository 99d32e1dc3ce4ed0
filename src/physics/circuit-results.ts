import { type NumberResult, q, type Result } from "../declaration/answer.ts";
import { numberResult } from "../declaration/number-result.ts";
import { BREAKER_RULE, CONTINUOUS_RULE, DROP_ADVICE, SMALL_CONDUCTORS, STANDARD_RATINGS } from "./branch-circuit.ts";
import type { CircuitCase, CircuitPlan } from "./circuit-plan.ts";
import { AMPACITY_TABLE, type ConductorRow, RESISTANCE_TABLE, type WireMetal } from "./conductor-table.ts";
import { OHMS_LAW } from "./heating-element.ts";

/** The numbers of a circuit plan, each with its equation, what went in, and its source. */
type CircuitId =
  | "element_power_at_volts"
  | "element_resistance"
  | "load_current"
  | "design_current"
  | "breaker_range"
  | "conductor"
  | "conductor_breaker_limit"
  | "voltage_drop"
  | "voltage_drop_share"
  | "element_power_behind_wire";

/** A conductor by its gauge and chemical symbol, which needs no translation. */
export function nameConductor(row: ConductorRow, wire_metal: WireMetal): string {
  return `${row.size} AWG ${wire_metal === "copper" ? "Cu" : "Al"}`;
}

/** What the element makes on this supply. */
export function elementResults(
  facts: CircuitCase,
  { element_ohm, power_W }: CircuitPlan,
): readonly Result<CircuitId>[] {
  if (element_ohm === undefined) return [];
  const rating = { P_rated: q("power", facts.element_W), V_rated: q("voltage", facts.rated_volts_V) };
  const power = "P = P_rated · (V / V_rated)²";
  return [
    numberResult(
      "element_power_at_volts",
      q("power", power_W),
      power,
      { ...rating, V: q("voltage", facts.supply_V) },
      OHMS_LAW,
    ),
    numberResult("element_resistance", q("resistance", element_ohm), "R = V_rated² / P_rated", rating, OHMS_LAW),
  ];
}

/** Load, breaker and conductor. */
export function circuitResults(facts: CircuitCase, plan: CircuitPlan): readonly Result<CircuitId>[] {
  const load = q("current", plan.load_A);
  const design = q("current", plan.design_A);
  const parts = {
    P: q("power", plan.power_W),
    V: q("voltage", facts.supply_V),
    ...(facts.compressor_A !== undefined && { I_c: q("current", facts.compressor_A) }),
  };
  const sum = facts.together === "simultaneous" ? "I = P / V + I_c" : "I = max(P / V, I_c)";
  const equation = facts.compressor_A === undefined ? "I = P / V" : sum;
  const results: Result<CircuitId>[] = [
    numberResult("load_current", load, equation, parts, OHMS_LAW),
    numberResult("design_current", design, "I_d = 1.25 · I", { I: load }, CONTINUOUS_RULE),
  ];
  if (plan.smallest_A !== undefined && plan.largest_A !== undefined) {
    const range = numberResult(
      "breaker_range",
      q("current", plan.smallest_A),
      "I_d ≤ I_b ≤ ↑(1.5 · I_plate)",
      { I_d: design, I_plate: q("current", plan.rated_A) },
      BREAKER_RULE,
      STANDARD_RATINGS,
    );
    results.push({ ...range, upTo: plan.largest_A });
  }
  return [...results, ...conductorResults(facts, plan)];
}

function conductorResults(
  facts: CircuitCase,
  { conductor, design_A, conductorLimit_A }: CircuitPlan,
): readonly Result<CircuitId>[] {
  if (conductor === undefined || conductorLimit_A === undefined) return [];
  const ampacity = q("current", conductor.ampacity_A[facts.column]);
  const inputs = [
    { symbol: "I_d", quantity: q("current", design_A) },
    { symbol: `I_z (${facts.column} °C)`, quantity: ampacity },
  ];
  const sources = [AMPACITY_TABLE, SMALL_CONDUCTORS] as const;
  const limit = q("current", conductorLimit_A);
  return [
    {
      id: "conductor",
      name: nameConductor(conductor, facts.wire_metal),
      how: { equation: "I_z ≥ I_d", inputs, sources },
    },
    numberResult(
      "conductor_breaker_limit",
      limit,
      "I_b ≤ I_limit",
      { I_limit: limit },
      SMALL_CONDUCTORS,
      AMPACITY_TABLE,
    ),
  ];
}

/** What the wire takes away; nothing when its length is not known. */
export function dropResults(
  facts: CircuitCase,
  { drop, load_A, element_ohm }: CircuitPlan,
): readonly NumberResult<CircuitId>[] {
  if (drop === undefined || facts.run_m === undefined) return [];
  const I = q("current", load_A);
  const r = q("resistance", drop.loop_ohm);
  const V = q("voltage", facts.supply_V);
  const dV = q("voltage", drop.drop_V);
  const wire = { L: q("length", facts.run_m), "r = 2 · L · r_table": r };
  const results: NumberResult<CircuitId>[] = [
    numberResult("voltage_drop", dV, "ΔV = I · r", { I, ...wire }, RESISTANCE_TABLE),
    numberResult("voltage_drop_share", q("share", drop.share), "ΔV / V", { ΔV: dV, V }, DROP_ADVICE),
  ];
  if (drop.power_W === undefined || element_ohm === undefined) return results;
  const inputs = { V, R: q("resistance", element_ohm), r };
  const behind = q("power", drop.power_W);
  return [...results, numberResult("element_power_behind_wire", behind, "P = (V / (R + r))² · R", inputs, OHMS_LAW)];
}
