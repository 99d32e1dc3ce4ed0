import type { Books } from "../books/books.ts";
import type { AnswerTable, Finding } from "../declaration/answer.ts";
import { q } from "../declaration/answer.ts";
import type { KnownFacts } from "../declaration/facts.ts";
import type { Guidance } from "../declaration/topic.ts";
import type { JobChange } from "./job.ts";
import { factOfStep, whyOfStep } from "./startup-facts.ts";
import { faultOfStep } from "./startup-fault.ts";
import { readingFrom } from "./startup-reading.ts";
import {
  isPassed,
  recallSteps,
  type StepState,
  startupSite,
  stateOf,
  type Told,
  wantsReason,
} from "./startup-state.ts";
import type { StartupSite, StartupStep } from "./startup-step.ts";
import { STARTUP_STEPS } from "./startup-steps-table.ts";

/** What is told of house and unit on the way; it is kept like what any other walk is told. */
const SITE_FACTS = [
  "model",
  "setpoint",
  "line_pressure",
  "closed",
  "control",
  "supply",
  "mode",
  "air",
  "cold",
] as const;

interface Walked {
  readonly told: Told;
  readonly site: StartupSite;
  readonly states: readonly { readonly step: StartupStep; readonly state: StepState }[];
}

/** Where a walk stands: what the job holds, with what was told since. */
export function walkSteps(told: Told, books: Books): Walked {
  const all = { ...recallFor(told, books), ...told };
  const site = startupSite(all, books);
  return { told: all, site, states: STARTUP_STEPS.map((step) => ({ step, state: stateOf(step, all, site) })) };
}

/** What the job holds; the reason of an earlier reading says nothing of a new one. */
function recallFor(told: Told, { openJob }: Books): Told {
  const old = STARTUP_STEPS.filter(({ id }) => told[factOfStep(id)] !== undefined).map(({ id }) => whyOfStep(id));
  return Object.fromEntries(Object.entries(recallSteps(openJob)).filter(([fact]) => !old.includes(fact)));
}

export function toldOf(known: KnownFacts): Told {
  return Object.fromEntries(Object.entries(known).map(([fact, { value }]) => [fact, value]));
}

/** The next question: the unit first, then each step in order, and a reason where one is owed. */
export function nextStep(known: KnownFacts, books: Books): Guidance | undefined {
  const { told, site, states } = walkSteps(toldOf(known), books);
  if (told["list"] === true) return undefined;
  if (site.unit === undefined && !isPassed(told, "model")) return askUnit(told);
  const next = states.find(({ step, state }) => {
    if (state.kind === "open") return true;
    return wantsReason(step, state) && !isPassed(told, whyOfStep(step.id));
  });
  if (next === undefined) return undefined;
  const { step, state } = next;
  if (state.kind !== "open") return askWhy(step, state);
  if (step.id === "first_rise" && wantsAir(site) && !isPassed(told, "air"))
    return { fact: "air", before: sayLast(known, states) };
  return {
    fact: factOfStep(step.id),
    hazards: step.hazards,
    before: [...sayLast(known, states), ...sayAccepted(step, site)],
  };
}

/** What a heat pump gives depends on the air that it breathes. */
function wantsAir({ unit, air_C, mode }: StartupSite): boolean {
  return unit?.heater.heatPump !== undefined && air_C === undefined && mode !== "elements_only";
}

/** A name that the catalogue does not have is asked again. */
function askUnit({ model }: Told): Guidance {
  return { fact: "model", ...(typeof model === "string" && { before: [say("unknown_model", { typed: model })] }) };
}

function askWhy(step: StartupStep, state: StepState): Guidance {
  const outside = state.kind === "read" ? [sayState(step, state), say("offer_fault")] : [];
  return {
    fact: whyOfStep(step.id),
    before: [...outside, say(state.kind === "read" ? "fix_or_say" : "critical_left")],
    ...(state.kind === "read" && { offers: [{ say: say("step_fault"), request: faultOfStep(step, state) }] }),
  };
}

/** How the last reading was judged, said before the next question. */
function sayLast(known: KnownFacts, states: Walked["states"]): readonly Finding[] {
  const last = Object.keys(known).at(-1);
  const read = states.find(({ step, state }) => factOfStep(step.id) === last && state.kind === "read");
  return read === undefined ? [] : [sayState(read.step, read.state)];
}

/** What will be accepted, where that does not depend on the reading itself. */
function sayAccepted({ id, reading }: StartupStep, site: StartupSite): readonly Finding[] {
  const accepted = reading?.accepts(site, Number.NaN);
  if (reading === undefined || accepted === undefined) return [];
  return [say(`expect_${id}`, { low: q(reading.quantity, accepted.low), high: q(reading.quantity, accepted.high) })];
}

/** How a step stands, as a finding of its own. */
export function sayState({ id, reading }: StartupStep, state: StepState): Finding {
  if (state.kind !== "read" || reading === undefined)
    return say(state.kind === "not_done" && state.because !== undefined ? "reasoned" : state.kind, reasonOf(state));
  const measured = q(reading.quantity, state.value);
  if (state.accepted === undefined) return say(`noted_${id}`, { measured });
  const ends = { low: q(reading.quantity, state.accepted.low), high: q(reading.quantity, state.accepted.high) };
  return say(`${state.isAccepted ? "ok" : "out"}_${id}`, { measured, ...ends });
}

function reasonOf(state: StepState): Finding["data"] {
  return state.kind === "not_done" && state.because !== undefined ? { because: state.because } : {};
}

/** Every step with what was read, what is accepted and how it stands. */
export function tabulateSteps({ states, site }: Walked): AnswerTable {
  return {
    id: "steps",
    rows: states
      .filter(({ state }) => state.kind !== "left_out")
      .map(({ step, state }) => {
        const { reading } = step;
        const accepted = state.kind === "read" ? state.accepted : reading?.accepts(site, Number.NaN);
        const seen = state.kind === "read" && reading !== undefined ? q(reading.quantity, state.value) : "–";
        return [
          say(`step_${step.id}`),
          seen,
          accepted === undefined || reading === undefined ? "–" : sayRange(step, accepted),
          say(wordOf(state), reasonOf(state)),
        ];
      }),
  };
}

function sayRange(
  { id, reading }: StartupStep,
  { low, high }: { readonly low: number; readonly high: number },
): Finding {
  const kind = reading?.quantity ?? "count";
  return say(`range_${id}`, { low: q(kind, low), high: q(kind, high) });
}

function wordOf(state: StepState): string {
  if (state.kind === "not_done") return state.because === undefined ? "not_done" : "reasoned";
  if (state.kind !== "read") return state.kind;
  if (state.isAccepted === undefined) return "not_judged";
  if (state.isAccepted) return "accepted";
  return state.because === undefined ? "outside" : "outside_reasoned";
}

/** What the steps told come to in the record: readings beside what was expected, and what was done or why not. */
export function enterSteps(known: KnownFacts, books: Books): readonly JobChange[] {
  const told = toldOf(known);
  const { states } = walkSteps(told, books);
  const steps = states.flatMap(({ step, state }) => enterStep(step, state, told));
  const site = SITE_FACTS.flatMap((fact): JobChange[] => {
    const fresh = known[fact];
    return fresh?.from === "asked" ? [{ kind: "facts", topic: "startup", facts: { [fact]: fresh.value } }] : [];
  });
  const begins = books.openJob?.status === "planned" || books.openJob?.status === "surveyed";
  return [...site, ...(steps.length > 0 && begins ? [{ kind: "status", status: "under_way" } as const] : []), ...steps];
}

function enterStep(step: StartupStep, state: StepState, told: Told): readonly JobChange[] {
  const [fact, why] = [factOfStep(step.id), whyOfStep(step.id)];
  if (told[fact] === undefined && told[why] === undefined) return [];
  const reading = readingFrom(step, state);
  if (reading !== undefined) return [reading];
  const facts = Object.fromEntries([fact, why].flatMap((id) => (told[id] === undefined ? [] : [[id, told[id]]])));
  return [{ kind: "facts", topic: "startup", facts }];
}

export function say(code: string, data: Finding["data"] = {}): Finding {
  return { code, data };
}
