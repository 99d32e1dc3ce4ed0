import { type NumberResult, q } from "../declaration/answer.ts";
import { numberResult } from "../declaration/number-result.ts";
import { CODE_LIMIT_kPa, type ExpansionCase, type ExpansionPlan } from "./expansion-plan.ts";
import { ACCEPTANCE_WAY, BOYLE, CODE_CEILING, DIAPHRAGM_TANK, STOCK_SIZES } from "./expansion-tank.ts";
import { IAPWS_IF97, waterGrowth } from "./water.ts";

/** The numbers of an expansion plan, each with its equation, what went in, and its source. */
type ExpansionId =
  | "expanded_volume"
  | "acceptance_volume"
  | "tank_volume_minimum"
  | "tank_volume_full_formula"
  | "next_stock_size"
  | "precharge"
  | "pressure_ceiling"
  | "tank_volume_code_limit"
  | "existing_acceptance";

/** What the water grows by and the tank that takes it, both ways. */
export function volumeResults(known: ExpansionCase, plan: ExpansionPlan): readonly NumberResult<ExpansionId>[] {
  const V_s = q("volume", plan.system_L);
  const V_e = q("volume", plan.expanded_L);
  const growth = { "v_hot / v_cold − 1": q("share", waterGrowth(known.cold_C, known.setpoint_C)) };
  const temperatures = { t_cold: q("temperature", known.cold_C), t_hot: q("temperature", known.setpoint_C) };
  const pressures = { P_1: q("pressure", known.line_pressure_kPa), P_2: q("pressure", plan.ceiling_kPa) };
  return [
    numberResult(
      "expanded_volume",
      V_e,
      "V_e = V_s · (v_hot / v_cold − 1)",
      { V_s, ...temperatures, ...growth },
      IAPWS_IF97,
    ),
    numberResult("acceptance_volume", V_e, "V_a = V_e", { V_e }, ACCEPTANCE_WAY),
    numberResult(
      "tank_volume_minimum",
      q("volume", plan.minimum_L),
      "V_t = V_a / (1 − (P_1 + P_atm) / (P_2 + P_atm))",
      { V_a: V_e, ...pressures },
      ACCEPTANCE_WAY,
      BOYLE,
    ),
    numberResult(
      "tank_volume_full_formula",
      q("volume", plan.full_L),
      "V_t = V_s · ((v_hot / v_cold − 1) − 3 · α · Δt) / (1 − (P_1 + P_atm) / (P_2 + P_atm))",
      { V_s, ...temperatures, ...growth, "V_s · 3 · α · Δt": q("volume", plan.metal_L), ...pressures },
      DIAPHRAGM_TANK,
    ),
  ];
}

/** Precharge and ceiling. */
export function pressureResults(known: ExpansionCase, plan: ExpansionPlan): readonly NumberResult<ExpansionId>[] {
  const P_1 = q("pressure", known.line_pressure_kPa);
  const P_2 = q("pressure", plan.ceiling_kPa);
  const ceiling =
    known.pressure_limit_kPa === undefined
      ? { equation: "P_2 = 0.9 · P_relief", inputs: { P_relief: q("pressure", known.relief_setting_kPa) } }
      : { equation: "P_2 = P_limit", inputs: { P_limit: P_2 } };
  return [
    numberResult("precharge", P_1, "P_0 = P_1", { P_1 }, ACCEPTANCE_WAY),
    numberResult("pressure_ceiling", P_2, ceiling.equation, ceiling.inputs, ACCEPTANCE_WAY),
  ];
}

/** Next common size, tank for the code limit, and what an existing tank takes in, where they apply. */
export function optionalResults(known: ExpansionCase, plan: ExpansionPlan): readonly NumberResult<ExpansionId>[] {
  const { minimum_L, stock_L, codeLimit_L, existingAcceptance_L } = plan;
  const P_1 = q("pressure", known.line_pressure_kPa);
  const results: NumberResult<ExpansionId>[] = [];
  if (stock_L !== undefined) {
    const V_t = q("volume", minimum_L);
    results.push(numberResult("next_stock_size", q("volume", stock_L), "V ≥ V_t", { V_t }, STOCK_SIZES));
  }
  if (codeLimit_L !== undefined) {
    const inputs = { V_a: q("volume", plan.expanded_L), P_1, P_limit: q("pressure", CODE_LIMIT_kPa) };
    const equation = "V_t = V_a / (1 − (P_1 + P_atm) / (P_limit + P_atm))";
    results.push(
      numberResult("tank_volume_code_limit", q("volume", codeLimit_L), equation, inputs, CODE_CEILING, BOYLE),
    );
  }
  if (existingAcceptance_L !== undefined && known.existing_tank_L !== undefined) {
    const P_0 = q("pressure", known.existing_precharge_kPa ?? known.line_pressure_kPa);
    const inputs = { V: q("volume", known.existing_tank_L), P_0, P_1, P_2: q("pressure", plan.ceiling_kPa) };
    const equation = "V_a = V · (P_0 / max(P_0, P_1) − P_0 / P_2), P + P_atm";
    results.push(numberResult("existing_acceptance", q("volume", existingAcceptance_L), equation, inputs, BOYLE));
  }
  return results;
}
