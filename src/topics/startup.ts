import type { Books } from "../books/books.ts";
import { type Answer, type Finding, type FindingSpecs, q } from "../declaration/answer.ts";
import type { FactValue } from "../declaration/facts.ts";
import { numberResult } from "../declaration/number-result.ts";
import { nameWithUnit } from "../declaration/run-topic.ts";
import type { Topic } from "../declaration/topic.ts";
import { factOfStep, STARTUP_FACTS } from "../jobs/startup-facts.ts";
import { faultOfStep } from "../jobs/startup-fault.ts";
import type { StepState, Told } from "../jobs/startup-state.ts";
import { STARTUP_HABIT, type StartupSite, type StartupStep } from "../jobs/startup-step.ts";
import { COLD_C } from "../jobs/startup-steps/first-rise.ts";
import { STARTUP_STEPS } from "../jobs/startup-steps-table.ts";
import { enterSteps, nextStep, say, tabulateSteps, walkSteps } from "../jobs/startup-walk.ts";
import { powerAtVoltage_W } from "../physics/heating-element.ts";

const RESULTS = ["steps_done", "steps_open"] as const;

const FINDINGS: FindingSpecs = {
  all_accepted: { steps: "count" },
  some_open: { open: "count", steps: "count" },
  accepted: {},
  outside: {},
  outside_reasoned: {},
  not_judged: {},
  done: {},
  not_done: {},
  reasoned: { because: "word" },
  open: {},
  left_out: {},
  fix_or_say: {},
  critical_left: {},
  offer_fault: {},
  element_gives: { supply: "voltage", rated: "voltage", power: "power" },
  rise_counted_with: { cold: "temperature" },
  not_kept: {},
  unknown_model: { typed: "word" },
  step_close: {},
  step_fault: {},
  step_walk: {},
  ...Object.fromEntries(STARTUP_STEPS.flatMap(findingsOf)),
};

type F = Finding;

/** Its facts and sentences are made from the table of steps, so its types are those of any topic. */
export const startup: Topic = {
  id: "startup",
  work: "short",
  uses: "job",
  facts: STARTUP_FACTS,
  results: RESULTS,
  findings: FINDINGS,
  tables: { steps: ["step", "measured", "accepted", "stands"] },
  guide: { next: nextStep, hears: () => false },
  enters: enterSteps,
  compute: (facts: Readonly<Record<string, FactValue>>, books: Books) => answer(byId(facts), books),
};

/** Everything that is said of one step. */
function findingsOf({ id, reading }: StartupStep): readonly (readonly [string, FindingSpecs[string]])[] {
  const label = [`step_${id}`, {}] as const;
  if (reading === undefined) return [label];
  const { quantity } = reading;
  const judged = { measured: quantity, low: quantity, high: quantity };
  const ends = { low: quantity, high: quantity };
  return [
    label,
    [`ok_${id}`, judged],
    [`out_${id}`, judged],
    [`noted_${id}`, { measured: quantity }],
    [`expect_${id}`, ends],
    [`range_${id}`, ends],
  ];
}

function byId(named: Readonly<Record<string, FactValue | undefined>>): Told {
  return Object.fromEntries(
    Object.entries(STARTUP_FACTS).flatMap(([id, spec]) => {
      const value = named[nameWithUnit(id, spec)];
      return value === undefined ? [] : [[id, value]];
    }),
  );
}

function answer(told: Told, books: Books): Answer<(typeof RESULTS)[number], F> {
  const walked = walkSteps(told, books);
  const asked = walked.states.filter(({ state }) => state.kind !== "left_out");
  const open = asked.filter(({ state }) => !isSettled(state));
  const steps = q("count", asked.length);
  const left = q("count", open.length);
  const outside = asked.find(({ state }) => state.kind === "read" && state.isAccepted === false);
  return {
    kind: "answer",
    verdict: open.length === 0 ? "good" : "caution",
    headline: open.length === 0 ? say("all_accepted", { steps }) : say("some_open", { open: left, steps }),
    results: [
      numberResult("steps_done", q("count", asked.length - open.length), "n", {}, STARTUP_HABIT),
      numberResult("steps_open", left, "n", {}, STARTUP_HABIT, ...asked.map(({ step }) => step.source)),
    ],
    findings: [
      ...sayElement(walked.site, walked.told),
      ...(walked.told[factOfStep("first_rise")] === undefined
        ? []
        : [say("rise_counted_with", { cold: q("temperature", walked.site.cold_C ?? COLD_C) })]),
      ...(books.openJob === undefined ? [say("not_kept")] : []),
    ],
    tables: [tabulateSteps(walked)],
    next: [
      ...(outside === undefined ? [] : [{ say: say("step_fault"), request: faultOfStep(outside.step, outside.state) }]),
      ...(told["list"] === true ? [{ say: say("step_walk"), request: "startup" }] : []),
      ...(books.openJob === undefined ? [] : [{ say: say("step_close"), request: "done" }]),
    ],
  };
}

/** Taken, or left with a reason; a reading that too little is known to judge counts as taken. */
function isSettled(state: StepState): boolean {
  if (state.kind === "read") return state.isAccepted !== false || state.because !== undefined;
  return state.kind === "done" || (state.kind === "not_done" && state.because !== undefined);
}

/** An element on another voltage than its own gives another power. */
function sayElement({ unit }: StartupSite, told: Told): readonly F[] {
  const supply_V = told[factOfStep("supply")];
  const [element] = unit?.heater.elements ?? [];
  if (element === undefined || typeof supply_V !== "number") return [];
  if (Math.abs(supply_V - element.rated_V) <= 0.05 * element.rated_V) return [];
  return [
    say("element_gives", {
      supply: q("voltage", supply_V),
      rated: q("voltage", element.rated_V),
      power: q("power", powerAtVoltage_W(element.rated_W, element.rated_V, supply_V)),
    }),
  ];
}
