import { type NumberResult, q, type Result } from "../declaration/answer.ts";
import { numberResult } from "../declaration/number-result.ts";
import { BREAKER_RULE, CONTINUOUS_RULE, DROP_ADVICE, SMALL_CONDUCTORS, STANDARD_RATINGS } from "./branch-circuit.ts";
import {
  type CircuitOptionCase,
  conductorForDrop,
  FEEDER_RULE,
  feederSpare_A,
  TOTAL_DROP_ADVICE,
  totalDrop,
  WARMING,
  warmingRate_L_s,
} from "./circuit-options.ts";
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
  | "element_power_behind_wire"
  | "conductor_for_drop"
  | "total_drop_share"
  | "feeder_spare"
  | "recovery_rate";

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

/** What the choice of conductor, feeder and supply comes to. */
export function optionResults(facts: CircuitOptionCase, plan: CircuitPlan): readonly Result<CircuitId>[] {
  const results: Result<CircuitId>[] = [];
  const better = facts.run_m === undefined ? undefined : conductorForDrop(facts, plan);
  const ΔV = q("share", better?.share ?? 0);
  if (better !== undefined)
    results.push({
      id: "conductor_for_drop",
      name: nameConductor(better.row, facts.wire_metal),
      how: {
        equation: "ΔV / V ≤ ΔV_max",
        inputs: [
          { symbol: "ΔV / V", quantity: ΔV },
          { symbol: "ΔV_max", quantity: q("share", facts.drop_limit) },
        ],
        sources: [RESISTANCE_TABLE, DROP_ADVICE],
      },
    });
  const total = totalDrop(facts, plan);
  if (total !== undefined) {
    const parts = { feeder: q("share", facts.feeder_drop ?? 0), branch: q("share", plan.drop?.share ?? 0) };
    results.push(numberResult("total_drop_share", q("share", total), "feeder + branch", parts, TOTAL_DROP_ADVICE));
  }
  return [...results, ...feederResults(facts, plan), ...recoveryResults(facts, plan)];
}

function feederResults(facts: CircuitOptionCase, plan: CircuitPlan): readonly NumberResult<CircuitId>[] {
  const spare_A = feederSpare_A(facts, plan);
  if (spare_A === undefined || facts.feeder_A === undefined || facts.feeder_load_A === undefined) return [];
  const inputs = {
    I_feeder: q("current", facts.feeder_A),
    I_there: q("current", facts.feeder_load_A),
    I: q("current", plan.rated_A),
  };
  return [numberResult("feeder_spare", q("current", spare_A), "I_feeder − I_there − I", inputs, FEEDER_RULE)];
}

function recoveryResults(facts: CircuitOptionCase, plan: CircuitPlan): readonly NumberResult<CircuitId>[] {
  if (facts.element_W === 0) return [];
  const rate = q("recovery", warmingRate_L_s(plan.power_W, facts.rise_K));
  const inputs = { P: q("power", plan.power_W), Δt: q("temperature_difference", facts.rise_K) };
  return [numberResult("recovery_rate", rate, "q = P / (ρ · c · Δt)", inputs, WARMING)];
}
