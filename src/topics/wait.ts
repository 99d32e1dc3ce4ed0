import type { SiteFacts } from "../cautions/site-facts.ts";
import type {
  Answer,
  FindingOf,
  FindingSpecs,
  NextStep,
  NumberResult,
  OutOfRange,
  Verdict,
} from "../declaration/answer.ts";
import { q } from "../declaration/answer.ts";
import { commonFacts, OUR_HABIT } from "../declaration/common-facts.ts";
import type { FactSpecs, FactsOf } from "../declaration/facts.ts";
import { numberResult } from "../declaration/number-result.ts";
import { declareTopic } from "../declaration/topic.ts";
import { writeRequest } from "../declaration/write-request.ts";
import { CONTINUITY, DARCY_CHURCHILL, LIKELY_WAIT, PLUG_FLOW } from "../physics/pipe-flow.ts";
import { type PipeRun, planRun, type Segment } from "../physics/pipe-run.ts";
import { insideDiameter_m, nextSizeDown, PIPE_KINDS, PIPE_SIZES, PIPE_SOURCES } from "../physics/pipe-table.ts";
import { velocityLimit_m_s } from "../physics/velocity-limit.ts";
import { IAPWS_IF97 } from "../physics/water.ts";
import { IAPWS_LIQUID_WATER } from "../physics/water-viscosity.ts";
import { toBase } from "../units/convert.ts";

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
} as const satisfies FactSpecs;

const RESULTS = ["pipe_volume", "wait_time", "wait_time_likely", "volume_wasted", "velocity", "pressure_drop"] as const;

const FINDINGS = {
  waits: { time: "time", volume: "volume", likely: "time" },
  cold_run: { velocity: "velocity", drop: "pressure" },
  plug_flow_is_least: {},
  straight_pipe_only: {},
  size_not_made: { size: "word" },
  branch_incomplete: {},
  step_smaller: { size: "word", time: "time" },
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
  compute: (facts) => {
    const segments = layOut(facts);
    return "kind" in segments ? segments : answer(facts, planRun(segments.run, facts.flow_L_s, waterOf(facts)));
  },
  site: describeSite,
});

function describeSite(facts: Facts): SiteFacts {
  const segments = layOut(facts);
  if ("kind" in segments) return {};
  const run = planRun(segments.run, facts.flow_L_s, waterOf(facts));
  if (facts.water === "cold") return { pipeMetal: metalOf(facts), coldPipeVelocity_m_s: run.velocity_m_s };
  return {
    pipeMetal: metalOf(facts),
    hotPipeVelocity_m_s: run.velocity_m_s,
    hotPipeContents_L: run.contents_L,
    hotPipe_C: facts.setpoint_C,
  };
}

function metalOf({ pipe }: Facts): "copper" | "plastic" {
  return pipe === "pex" || pipe === "cpvc" ? "plastic" : "copper";
}

function waterOf({ water, setpoint_C, cold_C }: Facts): number {
  return water === "hot" ? setpoint_C : cold_C;
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

function answer(facts: Facts, run: PipeRun): Answer<Id, F> {
  const isHot = facts.water === "hot";
  return {
    kind: "answer",
    verdict: judge(facts, run),
    headline: headline(facts, run),
    results: [...(isHot ? waitResults(facts, run) : []), ...flowResults(facts, run)],
    findings: findings(facts),
    next: isHot ? nextSteps(facts) : [],
  };
}

function limitOf(facts: Facts): number {
  return velocityLimit_m_s(metalOf(facts), facts.water, waterOf(facts));
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

function waitResults(facts: Facts, run: PipeRun): readonly NumberResult<Id>[] {
  const V = q("volume", run.contents_L);
  const Q = q("water_flow", facts.flow_L_s);
  const t = q("time", run.wait_s);
  const wasted = numberResult("volume_wasted", V, "V … 1.2 · V", { V }, PLUG_FLOW, LIKELY_WAIT);
  return [
    numberResult("pipe_volume", V, "V = Σ π/4 · d² · L", runInputs(run), PIPE_SOURCES[facts.pipe]),
    numberResult("wait_time", t, "t = V / Q", { V, Q }, PLUG_FLOW),
    numberResult("wait_time_likely", q("time", run.likely_s), "1.2 · t", { t }, LIKELY_WAIT),
    { ...wasted, upTo: run.likelyWaste_L },
  ];
}

function flowResults(facts: Facts, run: PipeRun): readonly NumberResult<Id>[] {
  const Q = q("water_flow", facts.flow_L_s);
  const d = q("dimension", run.narrowest_m);
  const velocity = q("velocity", run.velocity_m_s);
  const inputs = { Q, t: q("temperature", waterOf(facts)), ...runInputs(run) };
  return [
    ...(facts.water === "cold"
      ? [
          numberResult(
            "pipe_volume",
            q("volume", run.contents_L),
            "V = Σ π/4 · d² · L",
            runInputs(run),
            PIPE_SOURCES[facts.pipe],
          ),
        ]
      : []),
    numberResult("velocity", velocity, "v = Q / (π/4 · d²)", { Q, d }, CONTINUITY, PIPE_SOURCES[facts.pipe]),
    numberResult(
      "pressure_drop",
      q("pressure", run.drop_kPa),
      "Δp = Σ f · L/d · ρ · v² / 2",
      inputs,
      DARCY_CHURCHILL,
      IAPWS_IF97,
      IAPWS_LIQUID_WATER,
    ),
  ];
}

function runInputs({ segments }: PipeRun) {
  return Object.fromEntries(
    segments.flatMap(({ inside_m, length_m }, index) => [
      [`d_${index + 1}`, q("dimension", inside_m)],
      [`L_${index + 1}`, q("length", length_m)],
    ]),
  );
}

function findings(facts: Facts): readonly F[] {
  const found: F[] = [];
  if (facts.water === "hot") found.push({ code: "plug_flow_is_least", data: {} });
  found.push({ code: "straight_pipe_only", data: {} });
  return found;
}

/** Offers the next size down where the water would still run slowly enough. */
function nextSteps(facts: Facts): readonly NextStep<F>[] {
  const smaller = nextSizeDown(facts.pipe, facts.size);
  const inside_m = smaller === undefined ? undefined : insideDiameter_m(facts.pipe, smaller);
  if (smaller === undefined || inside_m === undefined || facts.branch_size !== undefined) return [];
  const run = planRun([{ inside_m, length_m: facts.length_m }], facts.flow_L_s, waterOf(facts));
  if (run.velocity_m_s > limitOf(facts)) return [];
  const request = writeRequest("wait", {
    pipe: facts.pipe,
    size: smaller,
    length: q("length", facts.length_m),
    flow: q("water_flow", facts.flow_L_s),
    setpoint: q("temperature", facts.setpoint_C),
  });
  return [{ say: { code: "step_smaller", data: { size: smaller, time: q("time", run.wait_s) } }, request }];
}
