import type { Books } from "../books/books.ts";
import type { SiteFacts } from "../cautions/site-facts.ts";
import type { Answer, FindingOf, FindingSpecs, NextStep, OutOfRange, Verdict } from "../declaration/answer.ts";
import { q } from "../declaration/answer.ts";
import { askedFacts } from "../declaration/asked-facts.ts";
import { commonFacts, OUR_HABIT } from "../declaration/common-facts.ts";
import type { FactSpecs, FactsOf } from "../declaration/facts.ts";
import { declareTopic } from "../declaration/topic.ts";
import { writeRequest } from "../declaration/write-request.ts";
import { planWarmth, WARMTH_FINDINGS, type Warmth, warmthFindings } from "../household/pipe-warmth.ts";
import { INSULATIONS } from "../physics/pipe-heat-loss.ts";
import { cooldownResults, loopResults } from "../physics/pipe-heat-results.ts";
import { type PipeRun, planRun, type Segment } from "../physics/pipe-run.ts";
import { flowResults, type RunCase, waitResults } from "../physics/pipe-run-results.ts";
import { insideDiameter_m, nextSizeDown, PIPE_KINDS, PIPE_SIZES, pipeMetal } from "../physics/pipe-table.ts";
import { velocityLimit_m_s } from "../physics/velocity-limit.ts";
import { toBase } from "../units/convert.ts";

const ALL_DAY_s = 86_400;

const FACTS = {
  pipe: { type: "choice", options: PIPE_KINDS },
  size: { type: "choice", options: PIPE_SIZES },
  length: {
    type: "quantity",
    quantity: "length",
    min: toBase(1, "ft"),
    max: toBase(1000, "ft"),
    usual: [20, 40, 60, 80].map((feet) => toBase(feet, "ft")),
  },
  flow: {
    type: "quantity",
    quantity: "water_flow",
    min: toBase(0.2, "gpm"),
    max: toBase(60, "gpm"),
    usual: [0.5, 1.2, 2, 2.5].map((gpm) => toBase(gpm, "gpm")),
    ask: true,
    default: { value: toBase(2, "gpm"), source: OUR_HABIT },
  },
  water: {
    type: "choice",
    options: ["hot", "cold"],
    default: { value: "hot", source: OUR_HABIT },
  },
  setpoint: {
    ...commonFacts.setpoint,
    default: { value: toBase(120, "F"), source: OUR_HABIT },
  },
  cold: commonFacts.cold,
  branch_size: { type: "choice", options: PIPE_SIZES, optional: true, byNameOnly: true },
  branch_length: {
    type: "quantity",
    quantity: "length",
    min: toBase(0.5, "ft"),
    max: toBase(500, "ft"),
    optional: true,
    byNameOnly: true,
  },
  insulation: { type: "choice", options: INSULATIONS, optional: true },
  wanted: commonFacts.wanted,
  air: commonFacts.air,
  loop: { type: "flag", optional: true },
  loop_length: {
    type: "quantity",
    quantity: "length",
    min: toBase(2, "ft"),
    max: toBase(2000, "ft"),
    optional: true,
    byNameOnly: true,
  },
  loop_fall: {
    type: "quantity",
    quantity: "temperature_difference",
    min: toBase(1, "F_diff"),
    max: toBase(40, "F_diff"),
    usual: [toBase(5, "F_diff"), toBase(10, "F_diff")],
    optional: true,
    byNameOnly: true,
  },
  loop_hours: {
    type: "quantity",
    quantity: "time",
    min: 0,
    max: ALL_DAY_s,
    optional: true,
    byNameOnly: true,
  },
  cop: { type: "quantity", quantity: "ratio", min: 0.8, max: 6, usual: [1, 2.5, 3], optional: true, byNameOnly: true },
  tank: { ...commonFacts.tank, optional: true, byNameOnly: true },
  price: { type: "quantity", quantity: "energy_price", min: 0, max: 2, optional: true, byNameOnly: true },
} as const satisfies FactSpecs;

const RESULTS = [
  "pipe_volume",
  "wait_time",
  "wait_time_likely",
  "volume_wasted",
  "velocity",
  "pressure_drop",
  "cooldown_time",
  "loop_heat_loss",
  "loop_heat_per_day",
  "loop_electricity_per_day",
  "loop_cost_per_year",
  "pump_flow",
  "loop_turnovers",
] as const;

const FINDINGS = {
  ...WARMTH_FINDINGS,
  waits: { time: "time", volume: "volume", likely: "time" },
  cold_run: { velocity: "velocity", drop: "pressure" },
  plug_flow_is_least: {},
  straight_pipe_only: {},
  size_not_made: { size: "word" },
  branch_incomplete: {},
  loop_too_cold: { hot: "temperature", fall: "temperature_difference" },
  step_smaller: { size: "word", time: "time" },
  step_insulate: {},
} as const satisfies FindingSpecs;

type Facts = FactsOf<typeof FACTS>;
type Id = (typeof RESULTS)[number];
type F = FindingOf<typeof FINDINGS>;

export const wait = declareTopic({
  id: "wait",
  work: "short",
  facts: FACTS,
  results: RESULTS,
  findings: FINDINGS,
  asides: { results: ["loop_heat_per_day", "pump_flow", "loop_turnovers"], findings: ["still_air"] },
  compute: (facts, books) => {
    const segments = layOut(facts);
    return "kind" in segments ? segments : (refuseLoop(facts) ?? answer(facts, runOf(facts, segments.run), books));
  },
  site: describeSite,
});

function describeSite(facts: Facts): SiteFacts {
  const segments = layOut(facts);
  if ("kind" in segments) return {};
  const run = runOf(facts, segments.run);
  const pipe = { pipeMetal: pipeMetal(facts.pipe) };
  if (facts.water === "cold") return { ...pipe, coldPipeVelocity_m_s: run.velocity_m_s };
  return {
    ...pipe,
    hotPipeVelocity_m_s: run.velocity_m_s,
    hotPipeContents_L: run.contents_L,
    hotPipe_C: facts.setpoint_C,
    ...(facts.insulation !== undefined && { isHotPipeInsulated: facts.insulation !== "none" }),
    ...(facts.loop !== undefined && { hasCirculationLoop: facts.loop }),
    ...(facts.loop === true && facts.loop_hours_s === ALL_DAY_s && { loopControl: "always_on" as const }),
    ...(facts.loop === true &&
      facts.loop_fall_K !== undefined && { loopReturn_C: facts.setpoint_C - facts.loop_fall_K }),
  };
}

function waterOf({ water, setpoint_C, cold_C }: Facts): number {
  return water === "hot" ? setpoint_C : cold_C;
}

/** Pipe that must empty before hot water comes: behind a running loop, only the branch. */
function runOf(facts: Facts, segments: readonly Segment[]): PipeRun {
  const isBehindLoop = facts.loop === true && facts.water === "hot" && segments.length > 1;
  return planRun(isBehindLoop ? segments.slice(1) : segments, facts.flow_L_s, waterOf(facts));
}

/** The run as segments from heater to fixture, or why it cannot be laid out. */
function layOut(facts: Facts): { readonly run: readonly Segment[] } | OutOfRange<F> {
  const { pipe, size, length_m, branch_size, branch_length_m } = facts;
  const inside_m = insideDiameter_m(pipe, size);
  if (inside_m === undefined) return notMade("size", size);
  const main = { inside_m, length_m };
  if (branch_size === undefined && branch_length_m === undefined) return { run: [main] };
  if (branch_size === undefined || branch_length_m === undefined) {
    const fact = branch_size === undefined ? "branch_length" : "branch_size";
    const value = branch_length_m === undefined ? (branch_size ?? "") : q("length", branch_length_m);
    return { kind: "out-of-range", fact, value, reason: { code: "branch_incomplete", data: {} } };
  }
  const branch_m = insideDiameter_m(pipe, branch_size);
  if (branch_m === undefined) return notMade("branch_size", branch_size);
  return { run: [main, { inside_m: branch_m, length_m: branch_length_m }] };
}

function notMade(fact: "size" | "branch_size", size: string): OutOfRange<F> {
  return { kind: "out-of-range", fact, value: size, reason: { code: "size_not_made", data: { size } } };
}

/** A loop cannot come back colder than the air around it. */
function refuseLoop({ loop, loop_fall_K, setpoint_C, air_C, water }: Facts): OutOfRange<F> | undefined {
  if (loop !== true || water === "cold" || loop_fall_K === undefined || air_C === undefined) return undefined;
  if (setpoint_C - loop_fall_K > air_C) return undefined;
  const fall = q("temperature_difference", loop_fall_K);
  const data = { hot: q("temperature", setpoint_C), fall };
  return { kind: "out-of-range", fact: "loop_fall", value: fall, reason: { code: "loop_too_cold", data } };
}

function answer(facts: Facts, run: PipeRun, books: Books): Answer<Id, F> {
  const known: RunCase = { ...facts, water_C: waterOf(facts) };
  const shared = { kind: "answer", verdict: judge(facts, run), headline: headline(facts, run) } as const;
  const flow = flowResults(known, run);
  if (facts.water === "cold")
    return { ...shared, results: flow, findings: [{ code: "straight_pipe_only", data: {} }], next: [] };
  const warmth = planWarmth(facts, books);
  return {
    ...shared,
    results: [...waitResults(known, run), ...flow, ...warmthResults(facts, warmth)],
    findings: [
      { code: "plug_flow_is_least", data: {} },
      { code: "straight_pipe_only", data: {} },
      ...warmthFindings(facts, warmth, facts.branch_size !== undefined),
    ],
    next: nextSteps(facts),
    assumed: warmth.assumed,
  };
}

function warmthResults({ setpoint_C, wanted_C }: Facts, { pipe, air_C, loop }: Warmth) {
  const cooled = cooldownResults(pipe, setpoint_C, wanted_C, air_C);
  return loop === undefined ? cooled : [...cooled, ...loopResults(loop.known, loop.plan, loop.price_usd_kWh)];
}

function limitOf(facts: Facts): number {
  return velocityLimit_m_s(pipeMetal(facts.pipe), facts.water, waterOf(facts));
}

function judge(facts: Facts, { velocity_m_s }: PipeRun): Verdict {
  return velocity_m_s > limitOf(facts) ? "caution" : "info";
}

function headline({ water }: Facts, run: PipeRun): F {
  if (water === "cold")
    return { code: "cold_run", data: { velocity: q("velocity", run.velocity_m_s), drop: q("pressure", run.drop_kPa) } };
  return {
    code: "waits",
    data: { time: q("time", run.wait_s), volume: q("volume", run.contents_L), likely: q("time", run.likely_s) },
  };
}

/** Offers the next size down where the water would still run slowly enough, and insulation on a bare pipe. */
function nextSteps(facts: Facts): readonly NextStep<F>[] {
  const isBare = facts.insulation === undefined || facts.insulation === "none";
  const wrapped = writeRequest("wait", { ...askedFacts(FACTS, facts), insulation: "three_quarter" });
  const insulate: readonly NextStep<F>[] = isBare
    ? [{ say: { code: "step_insulate", data: {} }, request: wrapped }]
    : [];
  return [...smallerStep(facts), ...insulate];
}

function smallerStep(facts: Facts): readonly NextStep<F>[] {
  const smaller = nextSizeDown(facts.pipe, facts.size);
  const inside_m = smaller === undefined ? undefined : insideDiameter_m(facts.pipe, smaller);
  if (smaller === undefined || inside_m === undefined || facts.branch_size !== undefined) return [];
  const run = planRun([{ inside_m, length_m: facts.length_m }], facts.flow_L_s, waterOf(facts));
  if (run.velocity_m_s > limitOf(facts)) return [];
  const request = writeRequest("wait", { ...askedFacts(FACTS, facts), size: smaller });
  return [{ say: { code: "step_smaller", data: { size: smaller, time: q("time", run.wait_s) } }, request }];
}
