import type { Room, SiteFacts } from "../cautions/site-facts.ts";
import type { Answer, FindingOf, FindingSpecs, NextStep, OutOfRange, Verdict } from "../declaration/answer.ts";
import { q } from "../declaration/answer.ts";
import { askedFacts } from "../declaration/asked-facts.ts";
import { OUR_HABIT } from "../declaration/common-facts.ts";
import type { FactSpecs, FactsOf } from "../declaration/facts.ts";
import { declareTopic } from "../declaration/topic.ts";
import { writeRequest } from "../declaration/write-request.ts";
import { ADVISED_DROP, DROP_ADVICE } from "../physics/branch-circuit.ts";
import {
  CIRCUIT_ADVICE,
  dropFindings,
  isPlugOver,
  metalFindings,
  surroundingFindings,
  tabulateConductors,
  tabulateSupplies,
} from "../physics/circuit-advice.ts";
import { feederSpare_A } from "../physics/circuit-options.ts";
import { type CircuitPlan, planCircuit } from "../physics/circuit-plan.ts";
import {
  circuitResults,
  dropResults,
  elementResults,
  nameConductor,
  optionResults,
} from "../physics/circuit-results.ts";
import { COLUMNS, CONDUCTORS, WIRE_METALS, WIRE_SIZES } from "../physics/conductor-table.ts";
import { toBase } from "../units/convert.ts";

const ROOMS = [
  "basement",
  "garage",
  "attic",
  "crawl_space",
  "closet",
  "utility_room",
  "living_space",
  "outdoors",
] as const satisfies readonly Room[];
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
  drop_limit: {
    type: "quantity",
    quantity: "share",
    min: 0.005,
    max: 0.1,
    usual: [0.02, 0.03],
    byNameOnly: true,
    default: { value: ADVISED_DROP, source: DROP_ADVICE },
  },
  feeder: { type: "quantity", quantity: "current", min: 15, max: 400, optional: true, byNameOnly: true },
  feeder_load: { type: "quantity", quantity: "current", min: 0, max: 400, optional: true, byNameOnly: true },
  feeder_drop: { type: "quantity", quantity: "share", min: 0, max: 0.2, optional: true, byNameOnly: true },
  shared: { type: "flag", optional: true },
  disconnect: { type: "choice", options: ["in_sight", "lockable", "neither"], optional: true },
  breaker_listed: { type: "flag", optional: true },
  room: { type: "choice", options: ROOMS, optional: true },
  ground_fault: { type: "flag", optional: true },
  rise: {
    type: "quantity",
    quantity: "temperature_difference",
    min: toBase(10, "F_diff"),
    max: toBase(120, "F_diff"),
    usual: [toBase(60, "F_diff"), toBase(90, "F_diff")],
    byNameOnly: true,
    default: { value: toBase(90, "F_diff"), source: OUR_HABIT },
  },
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
  "conductor_for_drop",
  "total_drop_share",
  "feeder_spare",
  "recovery_rate",
] as const;

const FINDINGS = {
  ...CIRCUIT_ADVICE,
  overpowered: { power: "power", rated: "power", supply: "voltage" },
  plan: { conductor: "word", smallest: "current", largest: "current" },
  beyond_table: { design: "current" },
  wire_too_thin: { wire: "word", design: "current", conductor: "word" },
  breaker_outside: { breaker: "current", smallest: "current", largest: "current" },
  element_slower: { power: "power", rated: "power", share: "share" },
  conductor_caps_breaker: { conductor: "word", limit: "current" },
  motor_in_load: { compressor: "current" },
  compressor_left_out: {},
  ninety_needs_terminals: {},
  plate_wins: {},
  electrician_decides: {},
  wire_not_made: { wire: "word" },
  feeder_incomplete: {},
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
  tables: {
    conductors: ["conductor", "drop", "share", "remark"],
    supplies: ["supply", "rated", "power", "current", "breaker", "recovery"],
  },
  asides: {
    results: ["element_resistance", "voltage_drop", "element_power_behind_wire", "recovery_rate"],
    tables: ["conductors", "supplies"],
  },
  compute: (facts) => refuse(facts) ?? answer(facts, planCircuit(facts)),
  site: (facts) => describeSite(facts, planCircuit(facts)),
});

function describeSite(facts: Facts, plan: CircuitPlan): SiteFacts {
  const { design_A, breakerTop_A, existing, drop } = plan;
  const spare_A = feederSpare_A(facts, plan);
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
    ...(spare_A !== undefined && { feederSpare_A: spare_A }),
    ...describeSurroundings(facts),
  };
}

function describeSurroundings({ disconnect, breaker_listed, room, ground_fault }: Facts): SiteFacts {
  return {
    // A switch in sight says nothing about the breaker.
    ...(disconnect !== undefined && { hasDisconnectInSight: disconnect === "in_sight" }),
    ...(disconnect !== undefined && disconnect !== "in_sight" && { isBreakerLockable: disconnect === "lockable" }),
    ...(breaker_listed !== undefined && { isBreakerListed: breaker_listed }),
    ...(room !== undefined && { room }),
    ...(ground_fault !== undefined && { hasGroundFault: ground_fault }),
  };
}

function refuse({ wire, wire_metal, feeder_A, feeder_load_A }: Facts): OutOfRange<F> | undefined {
  if (wire !== undefined && !CONDUCTORS[wire_metal].some((row) => row.size === wire))
    return { kind: "out-of-range", fact: "wire", value: wire, reason: { code: "wire_not_made", data: { wire } } };
  if ((feeder_A === undefined) === (feeder_load_A === undefined)) return undefined;
  const fact = feeder_A === undefined ? "feeder_load" : "feeder";
  const value = q("current", feeder_A ?? feeder_load_A ?? 0);
  return { kind: "out-of-range", fact, value, reason: { code: "feeder_incomplete", data: {} } };
}

function answer(facts: Facts, plan: CircuitPlan): Answer<Id, F> {
  return {
    kind: "answer",
    verdict: judge(facts, plan),
    headline: headline(facts, plan),
    results: [
      ...elementResults(facts, plan),
      ...circuitResults(facts, plan),
      ...dropResults(facts, plan),
      ...optionResults(facts, plan),
    ],
    findings: findings(facts, plan),
    tables: [...tabulateConductors(facts, plan), ...tabulateSupplies(facts)],
    next: nextSteps(facts),
  };
}

function judge(facts: Facts, plan: CircuitPlan): Verdict {
  const { match, isWireTooThin, isBreakerOutside, conductor, drop } = plan;
  const isOver = (feederSpare_A(facts, plan) ?? 0) < 0 || isPlugOver(facts, plan);
  if (match === "over" || isWireTooThin || isBreakerOutside || isOver) return "no";
  const isCaution = match === "under" || conductor === undefined || (drop?.share ?? 0) > facts.drop_limit;
  return isCaution || facts.shared === true || facts.breaker_listed === false ? "caution" : "info";
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
  found.push(...dropFindings(facts, plan), ...metalFindings(facts, plan), ...surroundingFindings(facts, plan));
  if (facts.compressor_A === undefined) found.push({ code: "compressor_left_out", data: {} });
  else found.push({ code: "motor_in_load", data: { compressor: q("current", facts.compressor_A) } });
  if (facts.column === "90") found.push({ code: "ninety_needs_terminals", data: {} });
  found.push({ code: "plate_wins", data: {} }, { code: "electrician_decides", data: {} });
  return found;
}

function nextSteps(facts: Facts): readonly NextStep<F>[] {
  if (facts.column !== "60") return [];
  const request = writeRequest("circuit", { ...withoutWire(askedFacts(FACTS, facts)), column: "75" });
  return [{ say: { code: "step_seventy_five", data: {} }, request }];
}

/** The wire and breaker that are there were judged; the step asks what would do. */
function withoutWire({ wire: _wire, breaker: _breaker, ...rest }: ReturnType<typeof askedFacts>) {
  return rest;
}
