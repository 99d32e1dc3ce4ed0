import { type Books, codeAt } from "../books/books.ts";
import type { FactValue } from "../declaration/facts.ts";
import { PASSED_OVER } from "../declaration/topic.ts";
import { findModel } from "../equipment/find-model.ts";
import type { Job, JobReading } from "./job.ts";
import { factOfStep, mayNeedReason, whyOfStep } from "./startup-facts.ts";
import type { Accepted, StartupSite, StartupStep } from "./startup-step.ts";
import { STARTUP_STEPS } from "./startup-steps-table.ts";

/** What was told, by the id of each fact. */
export type Told = Readonly<Record<string, FactValue>>;

/** How a step stands. */
export type StepState =
  | { readonly kind: "left_out" }
  /** Neither told nor passed over. */
  | { readonly kind: "open" }
  | { readonly kind: "done" }
  /** Not done, or passed over; with a reason where somebody gave one. */
  | { readonly kind: "not_done"; readonly because?: string }
  | {
      readonly kind: "read";
      readonly value: number;
      readonly accepted?: Accepted;
      /** Left out where too little is known to judge it. */
      readonly isAccepted?: boolean;
      readonly because?: string;
    };

/** Stands as the reason of a reading that could not be judged, because too little is known. */
export const NOT_JUDGED = "not_judged";
/** Two numbers this near are the same on any gauge. */
const ROUNDING = 1e-6;

/** What the job already holds of the steps, by the ids of their facts; a newer word in the walk goes before it. */
export function recallSteps(job: Job | undefined): Told {
  if (job === undefined) return {};
  const steps = STARTUP_STEPS.flatMap(({ id }): (readonly [string, FactValue | undefined])[] => [
    [factOfStep(id), job.readings[id]?.quantity.value],
    [factOfStep(id), job.facts[factOfStep(id)]?.value],
    [whyOfStep(id), job.facts[whyOfStep(id)]?.value],
    [whyOfStep(id), reasonOf(job.readings[id])],
  ]);
  return Object.fromEntries(steps.flatMap(([fact, value]) => (value === undefined ? [] : [[fact, value]])));
}

/** Why a reading stands although it is not accepted. */
function reasonOf(reading: JobReading | undefined): string | undefined {
  return reading?.because === NOT_JUDGED ? undefined : reading?.because;
}

/** What the steps are judged by: what was told, the unit of the catalogue, and what the code at the place allows. */
export function startupSite(told: Told, books: Books): StartupSite {
  const { limits } = codeAt(books, told["place"] ?? books.openJob?.place);
  const model = told["model"] ?? books.openJob?.model;
  const unit = typeof model === "string" ? findModel(books.catalogue, model) : undefined;
  const number = (fact: string) => (typeof told[fact] === "number" ? told[fact] : undefined);
  const text = (fact: string) => (typeof told[fact] === "string" ? told[fact] : undefined);
  const closed = told["closed"];
  return keepKnown({
    unit: unit?.ok ? unit.entry : undefined,
    supply_V: number("supply"),
    setpoint_C: number("setpoint"),
    cold_C: number("cold"),
    air_C: number("air"),
    line_kPa: number("line_pressure"),
    measuredLine_kPa: number(factOfStep("line_pressure")),
    isClosed: typeof closed === "boolean" ? closed : undefined,
    control: text("control"),
    mode: text("mode"),
    mostLine_kPa: limits.line_pressure.value,
    mostAtTap_C: Math.min(limits.tub.value, limits.shower.value),
  });
}

type Optional<T> = { readonly [K in keyof T]: T[K] | undefined };

function keepKnown(site: Optional<Required<StartupSite>>): StartupSite {
  const { mostLine_kPa = 0, mostAtTap_C = 0, ...rest } = site;
  return {
    ...Object.fromEntries(Object.entries(rest).filter(([, value]) => value !== undefined)),
    mostLine_kPa,
    mostAtTap_C,
  };
}

/** How a step stands after what was told. */
export function stateOf(step: StartupStep, told: Told, site: StartupSite): StepState {
  const value = told[factOfStep(step.id)];
  const why = told[whyOfStep(step.id)];
  const because = typeof why === "string" ? { because: why } : {};
  if (value === undefined && step.appliesTo?.(site) === false) return { kind: "left_out" };
  if (step.reading !== undefined && typeof value === "number") {
    const accepted = step.reading.accepts(site, value);
    return { kind: "read", value, ...(accepted && { accepted, isAccepted: isWithin(value, accepted) }), ...because };
  }
  if (value === "done") return { kind: "done" };
  if (value === "not_done" || isPassed(told, factOfStep(step.id)) || why !== undefined)
    return { kind: "not_done", ...because };
  return { kind: "open" };
}

/** True when a reason is still asked for: a reading that is not accepted, or a step that may hurt and was not taken. */
export function wantsReason(step: StartupStep, state: StepState): boolean {
  if (!mayNeedReason(step)) return false;
  if (state.kind === "read") return state.isAccepted === false && state.because === undefined;
  return state.kind === "not_done" && step.isCritical && state.because === undefined;
}

/** Ids of the steps without which a job is not complete: they may hurt, and there is neither a reading nor a reason. */
export function openCritical(job: Job, books: Books): readonly string[] {
  const told: Told = { ...factsOf(job), ...recallSteps(job) };
  const site = startupSite(told, { ...books, openJob: job });
  return STARTUP_STEPS.filter((step) => {
    const state = stateOf(step, told, site);
    return step.isCritical ? state.kind === "open" || wantsReason(step, state) : isUnexplained(job.readings[step.id]);
  }).map(({ id }) => id);
}

/** Ids of the steps that apply here and that nobody has taken. */
export function untakenSteps(job: Job, books: Books): readonly string[] {
  const told: Told = { ...factsOf(job), ...recallSteps(job) };
  const site = startupSite(told, { ...books, openJob: job });
  return STARTUP_STEPS.filter((step) => stateOf(step, told, site).kind === "open").map(({ id }) => id);
}

/** A reading with the ends between which it is accepted on this site. */
export interface AcceptedReading {
  readonly reading: JobReading;
  readonly low: number;
  readonly high: number;
}

/**
 * The readings of a job that can be judged, in the order of the steps. One whose judgement no longer follows from what is
 * known now is left out.
 */
export function acceptedReadings(job: Job, books: Books): readonly AcceptedReading[] {
  const told: Told = { ...factsOf(job), ...recallSteps(job) };
  const site = startupSite(told, { ...books, openJob: job });
  return STARTUP_STEPS.flatMap((step): AcceptedReading[] => {
    const reading = job.readings[step.id];
    const state = reading === undefined ? undefined : stateOf(step, told, site);
    if (reading === undefined || state?.kind !== "read" || state.accepted === undefined) return [];
    const { low, high } = state.accepted;
    return state.isAccepted === reading.isAccepted ? [{ reading, low, high }] : [];
  });
}

export function isPassed(told: Told, fact: string): boolean {
  return String(told[PASSED_OVER] ?? "")
    .split(",")
    .includes(fact);
}

/** What a job knows of the house, by the ids that it keeps it under. */
export function factsOf({ facts }: Job): Told {
  return Object.fromEntries(Object.entries(facts).map(([id, { value }]) => [id, value]));
}

function isUnexplained(reading: JobReading | undefined): boolean {
  return reading !== undefined && !reading.isAccepted && !reading.because?.trim();
}

function isWithin(value: number, { low, high }: Accepted): boolean {
  const slack = ROUNDING * Math.max(1, Math.abs(high));
  return value >= low - slack && value <= high + slack;
}
