import type { Answer, FindingOf, FindingSpecs, NextStep, OutOfRange, Verdict } from "../declaration/answer.ts";
import { q } from "../declaration/answer.ts";
import { commonFacts, OUR_HABIT } from "../declaration/common-facts.ts";
import type { FactSpecs, FactsOf } from "../declaration/facts.ts";
import { declareTopic } from "../declaration/topic.ts";
import { writeRequest } from "../declaration/write-request.ts";
import { CODE_LIMIT_kPa, type ExpansionPlan, planExpansion, pressureCeiling_kPa } from "../physics/expansion-plan.ts";
import { optionalResults, pressureResults, volumeResults } from "../physics/expansion-results.ts";
import { VESSEL_METALS } from "../physics/expansion-tank.ts";
import { toBase } from "../units/convert.ts";

const FACTS = {
  tank: commonFacts.tank,
  setpoint: commonFacts.setpoint,
  line_pressure: commonFacts.line_pressure,
  cold: { ...commonFacts.cold, ask: true },
  closed: commonFacts.closed,
  control: { type: "choice", options: ["none", "tank", "relief_valve"], optional: true, ask: true },
  relief_setting: commonFacts.relief_setting,
  pressure_limit: {
    type: "quantity",
    quantity: "pressure",
    min: toBase(20, "psi"),
    max: toBase(300, "psi"),
    optional: true,
    byNameOnly: true,
  },
  pipe_volume: {
    type: "quantity",
    quantity: "volume",
    min: 0,
    max: toBase(500, "gal"),
    byNameOnly: true,
    default: { value: 0, source: OUR_HABIT },
  },
  vessel_metal: {
    type: "choice",
    options: VESSEL_METALS,
    default: { value: "steel", source: OUR_HABIT },
  },
  existing_tank: {
    type: "quantity",
    quantity: "volume",
    min: toBase(0.5, "gal"),
    max: toBase(200, "gal"),
    optional: true,
    byNameOnly: true,
  },
  existing_precharge: {
    type: "quantity",
    quantity: "pressure",
    min: 0,
    max: toBase(200, "psi"),
    optional: true,
    byNameOnly: true,
  },
} as const satisfies FactSpecs;

const RESULTS = [
  "expanded_volume",
  "acceptance_volume",
  "tank_volume_minimum",
  "tank_volume_full_formula",
  "next_stock_size",
  "precharge",
  "pressure_ceiling",
  "tank_volume_code_limit",
  "existing_acceptance",
] as const;

const FINDINGS = {
  needs_tank: { ceiling: "pressure", minimum: "volume", size: "volume", precharge: "pressure" },
  needs_large_tank: { minimum: "volume", precharge: "pressure" },
  existing_enough: { acceptance: "volume", needed: "volume" },
  existing_short: { acceptance: "volume", needed: "volume" },
  open_system: { expanded: "volume" },
  code_limit_larger: { volume: "volume", limit: "pressure" },
  check_acceptance: { acceptance: "volume" },
  set_precharge_dry: { precharge: "pressure" },
  place_tank: {},
  existing_precharge_assumed: { precharge: "pressure" },
  give_existing_size: {},
  hot_not_above_cold: { setpoint: "temperature", cold: "temperature" },
  line_at_ceiling: { line_pressure: "pressure", ceiling: "pressure" },
  limit_above_relief: { limit: "pressure", relief: "pressure" },
  step_code_limit: { limit: "pressure" },
  step_mix: { setpoint: "temperature" },
} as const satisfies FindingSpecs;

type Facts = FactsOf<typeof FACTS>;
type Id = (typeof RESULTS)[number];
type F = FindingOf<typeof FINDINGS>;

export const expansion = declareTopic({
  id: "expansion",
  work: "short",
  facts: FACTS,
  results: RESULTS,
  findings: FINDINGS,
  compute: (facts) => refuse(facts) ?? answer(facts, planExpansion(facts)),
  site: (facts) => ({
    storage_C: facts.setpoint_C,
    isClosedSystem: facts.closed,
    linePressure_kPa: facts.line_pressure_kPa,
    reliefSetting_kPa: facts.relief_setting_kPa,
    tank_L: facts.tank_L,
    ...controlOf(facts),
  }),
});

function controlOf({ control, existing_tank_L }: Facts): {
  hasExpansionTank?: boolean;
  expandsThroughRelief?: boolean;
} {
  if (existing_tank_L !== undefined || control === "tank") return { hasExpansionTank: true };
  if (control === undefined) return {};
  return { hasExpansionTank: false, expandsThroughRelief: control === "relief_valve" };
}

function refuse(facts: Facts): OutOfRange<F> | undefined {
  const setpoint = q("temperature", facts.setpoint_C);
  const cold = q("temperature", facts.cold_C);
  if (facts.setpoint_C <= facts.cold_C)
    return refusal("setpoint", setpoint, { code: "hot_not_above_cold", data: { setpoint, cold } });
  const limit = q("pressure", pressureCeiling_kPa(facts));
  const relief = q("pressure", facts.relief_setting_kPa);
  if (limit.value > relief.value)
    return refusal("pressure_limit", limit, { code: "limit_above_relief", data: { limit, relief } });
  const line_pressure = q("pressure", facts.line_pressure_kPa);
  if (line_pressure.value < limit.value) return undefined;
  return refusal("line_pressure", line_pressure, { code: "line_at_ceiling", data: { line_pressure, ceiling: limit } });
}

function refusal(fact: keyof typeof FACTS, value: OutOfRange["value"], reason: F): OutOfRange<F> {
  return { kind: "out-of-range", fact, value, reason };
}

function answer(facts: Facts, plan: ExpansionPlan): Answer<Id, F> {
  return {
    kind: "answer",
    verdict: judge(facts, plan),
    headline: headline(facts, plan),
    results: [...volumeResults(facts, plan), ...pressureResults(facts, plan), ...optionalResults(facts, plan)],
    findings: findings(facts, plan),
    next: nextSteps(facts, plan),
  };
}

function judge(facts: Facts, { existingAcceptance_L, expanded_L }: ExpansionPlan): Verdict {
  if (!facts.closed) return "info";
  if (existingAcceptance_L === undefined) return "caution";
  return existingAcceptance_L >= expanded_L ? "good" : "no";
}

function headline(facts: Facts, plan: ExpansionPlan): F {
  const { expanded_L, minimum_L, stock_L, existingAcceptance_L } = plan;
  const needed = q("volume", expanded_L);
  if (existingAcceptance_L !== undefined) {
    const acceptance = q("volume", existingAcceptance_L);
    const code = existingAcceptance_L >= expanded_L ? "existing_enough" : "existing_short";
    return { code, data: { acceptance, needed } };
  }
  if (!facts.closed) return { code: "open_system", data: { expanded: needed } };
  const minimum = q("volume", minimum_L);
  const precharge = q("pressure", facts.line_pressure_kPa);
  if (stock_L === undefined) return { code: "needs_large_tank", data: { minimum, precharge } };
  return {
    code: "needs_tank",
    data: { ceiling: q("pressure", plan.ceiling_kPa), minimum, size: q("volume", stock_L), precharge },
  };
}

function findings(facts: Facts, { expanded_L, codeLimit_L, existingAcceptance_L }: ExpansionPlan): readonly F[] {
  const precharge = q("pressure", facts.line_pressure_kPa);
  const found: F[] = [];
  if (!facts.closed) return found;
  if (codeLimit_L !== undefined)
    found.push({
      code: "code_limit_larger",
      data: { volume: q("volume", codeLimit_L), limit: q("pressure", CODE_LIMIT_kPa) },
    });
  if (facts.control === "tank" && facts.existing_tank_L === undefined)
    found.push({ code: "give_existing_size", data: {} });
  if (existingAcceptance_L !== undefined && facts.existing_precharge_kPa === undefined)
    found.push({ code: "existing_precharge_assumed", data: { precharge } });
  found.push({ code: "check_acceptance", data: { acceptance: q("volume", expanded_L) } });
  found.push({ code: "set_precharge_dry", data: { precharge } }, { code: "place_tank", data: {} });
  return found;
}

function nextSteps(facts: Facts, { codeLimit_L }: ExpansionPlan): readonly NextStep<F>[] {
  const limit = q("pressure", CODE_LIMIT_kPa);
  const shared = {
    tank: q("volume", facts.tank_L),
    setpoint: q("temperature", facts.setpoint_C),
    cold: q("temperature", facts.cold_C),
  };
  const again = writeRequest("expansion", {
    ...shared,
    line_pressure: q("pressure", facts.line_pressure_kPa),
    pressure_limit: limit,
  });
  const steps: NextStep<F>[] = [];
  if (facts.closed && codeLimit_L !== undefined)
    steps.push({ say: { code: "step_code_limit", data: { limit } }, request: again });
  steps.push({
    say: { code: "step_mix", data: { setpoint: shared.setpoint } },
    request: writeRequest("mix", shared),
  });
  return steps;
}
