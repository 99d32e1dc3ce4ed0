import type { SiteFacts } from "../cautions/site-facts.ts";
import type { Answer, FindingOf, FindingSpecs, NextStep, OutOfRange, Verdict } from "../declaration/answer.ts";
import { q } from "../declaration/answer.ts";
import { OUR_HABIT } from "../declaration/common-facts.ts";
import type { FactSpecs, FactsOf } from "../declaration/facts.ts";
import { declareTopic } from "../declaration/topic.ts";
import { writeRequest } from "../declaration/write-request.ts";
import { ADVISED_DROP } from "../physics/branch-circuit.ts";
import { type CircuitPlan, conductorWithin, planCircuit } from "../physics/circuit-plan.ts";
import { circuitResults, dropResults, elementResults, nameConductor } from "../physics/circuit-results.ts";
import { COLUMNS, CONDUCTORS, WIRE_METALS, WIRE_SIZES } from "../physics/conductor-table.ts";
import { toBase } from "../units/convert.ts";

const FACTS = {
  element: { type: "quantity", quantity: "power", min: 0, max: 12_000, usual: [3500, 3800, 4500, 5500] },
  supply: { type: "quantity", quantity: "voltage", min: 100, max: 277, usual: [240, 208, 120] },
  run: {
    type: "quantity",
    quantity: "length",
    min: 0,
    max: toBase(500, "ft"),
    usual: [25, 50, 75, 100].map((feet) => toBase(feet, "ft")),
    optional: true,
    ask: true,
  },
  rated_volts: {
    type: "quantity",
    quantity: "voltage",
    min: 100,
    max: 277,
    byNameOnly: true,
    default: { value: 240, source: OUR_HABIT },
  },
  compressor: {
    type: "quantity",
    quantity: "current",
    min: 0,
    max: 40,
    optional: true,
    ask: true,
    byNameOnly: true,
  },
  together: {
    type: "choice",
    options: ["simultaneous", "interlocked"],
    default: { value: "simultaneous", source: OUR_HABIT },
  },
  wire_metal: {
    type: "choice",
    options: WIRE_METALS,
    default: { value: "copper", source: OUR_HABIT },
  },
  column: {
    type: "choice",
    options: COLUMNS,
    default: {
      value: "60",
      source: { basis: "from_memory", document: "NEC (NFPA 70)", section: "110.14(C), 334.80", edition: "2023" },
    },
  },
  wire: { type: "choice", options: WIRE_SIZES, optional: true },
  breaker: { type: "quantity", quantity: "current", min: 10, max: 200, optional: true, byNameOnly: true },
} as const satisfies FactSpecs;

const RESULTS = [
  "element_power_at_volts",
  "element_resistance",
  "load_current",
  "design_current",
  "breaker_range",
  "conductor",
  "conductor_breaker_limit",
  "voltage_drop",
  "voltage_drop_share",
  "element_power_behind_wire",
] as const;

const FINDINGS = {
  overpowered: { power: "power", rated: "power", supply: "voltage" },
  plan: { conductor: "word", smallest: "current", largest: "current" },
  beyond_table: { design: "current" },
  wire_too_thin: { wire: "word", design: "current", conductor: "word" },
  breaker_outside: { breaker: "current", smallest: "current", largest: "current" },
  element_slower: { power: "power", rated: "power", share: "share" },
  conductor_caps_breaker: { conductor: "word", limit: "current" },
  drop_high: { share: "share", advised: "share", conductor: "word", better: "share" },
  drop_beyond_table: { share: "share", advised: "share" },
  motor_in_load: { compressor: "current" },
  compressor_left_out: {},
  ninety_needs_terminals: {},
  plate_wins: {},
  electrician_decides: {},
  wire_not_made: { wire: "word" },
  step_seventy_five: {},
} as const satisfies FindingSpecs;

type Facts = FactsOf<typeof FACTS>;
type Id = (typeof RESULTS)[number];
type F = FindingOf<typeof FINDINGS>;

export const circuit = declareTopic({
  id: "circuit",
  work: "short",
  facts: FACTS,
  results: RESULTS,
  findings: FINDINGS,
  compute: (facts) => refuse(facts) ?? answer(facts, planCircuit(facts)),
  site: (facts) => describeSite(facts, planCircuit(facts)),
});

function describeSite(facts: Facts, { design_A, breakerTop_A, existing, drop }: CircuitPlan): SiteFacts {
  return {
    elementPower_W: facts.element_W,
    supply_V: facts.supply_V,
    ...(facts.element_W > 0 && { ratedVoltage_V: facts.rated_volts_V }),
    designCurrent_A: design_A,
    conductorMetal: facts.wire_metal,
    ...(facts.breaker_A !== undefined && { breaker_A: facts.breaker_A }),
    ...(breakerTop_A !== undefined && { largestBreaker_A: breakerTop_A }),
    ...(existing !== undefined && { wireAmpacity_A: existing.ampacity_A[facts.column] }),
    ...(drop !== undefined && { voltageDrop_share: drop.share }),
  };
}

function refuse({ wire, wire_metal }: Facts): OutOfRange<F> | undefined {
  if (wire === undefined || CONDUCTORS[wire_metal].some((row) => row.size === wire)) return undefined;
  return { kind: "out-of-range", fact: "wire", value: wire, reason: { code: "wire_not_made", data: { wire } } };
}

function answer(facts: Facts, plan: CircuitPlan): Answer<Id, F> {
  return {
    kind: "answer",
    verdict: judge(plan),
    headline: headline(facts, plan),
    results: [...elementResults(facts, plan), ...circuitResults(facts, plan), ...dropResults(facts, plan)],
    findings: findings(facts, plan),
    next: nextSteps(facts),
  };
}

function judge({ match, isWireTooThin, isBreakerOutside, conductor, drop }: CircuitPlan): Verdict {
  if (match === "over" || isWireTooThin || isBreakerOutside) return "no";
  const isCaution = match === "under" || conductor === undefined || (drop?.share ?? 0) > ADVISED_DROP;
  return isCaution ? "caution" : "info";
}

function headline(facts: Facts, plan: CircuitPlan): F {
  const { conductor, smallest_A, breakerTop_A, design_A } = plan;
  const power = q("power", plan.power_W);
  const design = q("current", design_A);
  if (plan.match === "over")
    return {
      code: "overpowered",
      data: { power, rated: q("power", facts.element_W), supply: q("voltage", facts.supply_V) },
    };
  if (conductor === undefined || smallest_A === undefined || breakerTop_A === undefined)
    return { code: "beyond_table", data: { design } };
  if (plan.isWireTooThin && plan.existing !== undefined)
    return {
      code: "wire_too_thin",
      data: {
        wire: nameConductor(plan.existing, facts.wire_metal),
        design,
        conductor: nameConductor(conductor, facts.wire_metal),
      },
    };
  const range = { smallest: q("current", smallest_A), largest: q("current", breakerTop_A) };
  if (plan.isBreakerOutside && facts.breaker_A !== undefined)
    return { code: "breaker_outside", data: { breaker: q("current", facts.breaker_A), ...range } };
  return { code: "plan", data: { conductor: nameConductor(plan.existing ?? conductor, facts.wire_metal), ...range } };
}

function findings(facts: Facts, plan: CircuitPlan): readonly F[] {
  const { conductor, conductorLimit_A, largest_A } = plan;
  const found: F[] = [];
  if (plan.match === "under") {
    const share = q("share", plan.power_W / facts.element_W);
    found.push({
      code: "element_slower",
      data: { power: q("power", plan.power_W), rated: q("power", facts.element_W), share },
    });
  }
  const inUse = plan.existing ?? conductor;
  if (inUse && conductorLimit_A !== undefined && largest_A !== undefined && conductorLimit_A < largest_A) {
    const data = { conductor: nameConductor(inUse, facts.wire_metal), limit: q("current", conductorLimit_A) };
    found.push({ code: "conductor_caps_breaker", data });
  }
  found.push(...dropFindings(facts, plan));
  if (facts.compressor_A === undefined) found.push({ code: "compressor_left_out", data: {} });
  else found.push({ code: "motor_in_load", data: { compressor: q("current", facts.compressor_A) } });
  if (facts.column === "90") found.push({ code: "ninety_needs_terminals", data: {} });
  found.push({ code: "plate_wins", data: {} }, { code: "electrician_decides", data: {} });
  return found;
}

function dropFindings(facts: Facts, plan: CircuitPlan): readonly F[] {
  if (plan.drop === undefined || plan.drop.share <= ADVISED_DROP) return [];
  const share = q("share", plan.drop.share);
  const advised = q("share", ADVISED_DROP);
  const better = conductorWithin(facts, plan, CONDUCTORS[facts.wire_metal], ADVISED_DROP);
  if (better === undefined) return [{ code: "drop_beyond_table", data: { share, advised } }];
  const data = {
    share,
    advised,
    conductor: nameConductor(better.row, facts.wire_metal),
    better: q("share", better.share),
  };
  return [{ code: "drop_high", data }];
}

function nextSteps(facts: Facts): readonly NextStep<F>[] {
  const known = {
    element: q("power", facts.element_W),
    supply: q("voltage", facts.supply_V),
    run: facts.run_m === undefined ? undefined : q("length", facts.run_m),
    rated_volts: q("voltage", facts.rated_volts_V),
    compressor: facts.compressor_A === undefined ? undefined : q("current", facts.compressor_A),
    together: facts.together,
    wire_metal: facts.wire_metal,
  };
  if (facts.column !== "60") return [];
  return [
    { say: { code: "step_seventy_five", data: {} }, request: writeRequest("circuit", { ...known, column: "75" }) },
  ];
}
