import type { Books } from "../books/books.ts";
import { siteOf } from "../crew/job-needs.ts";
import type { Answer, AnswerTable, FindingOf, FindingSpecs, OutOfRange } from "../declaration/answer.ts";
import { q } from "../declaration/answer.ts";
import type { FactSpecs, FactsOf, KnownFacts } from "../declaration/facts.ts";
import { numberResult } from "../declaration/number-result.ts";
import type { Source } from "../declaration/source.ts";
import { declareTopic, type Guidance, PASSED_OVER } from "../declaration/topic.ts";
import { findByName } from "../equipment/find-model.ts";
import type { Job, JobChange } from "../jobs/job.ts";
import type { JobAct } from "../jobs/job-act.ts";
import { LIVE } from "../jobs/job-rules.ts";
import { collectKit } from "../jobs/kit.ts";
import { KIT_RULES } from "../jobs/kit-rules-table.ts";
import { openCritical, untakenSteps } from "../jobs/startup-state.ts";
import { nameStep, STEP_NAMES } from "../jobs/startup-step-names.ts";

const FACTS = {
  kit_used: { type: "flag", optional: true, byNameOnly: true },
  owner: { type: "name", of: "person", optional: true, byNameOnly: true },
  due: { type: "day", optional: true, byNameOnly: true },
  [PASSED_OVER]: { type: "text", optional: true, unlisted: true, byNameOnly: true },
} as const satisfies FactSpecs;

const FINDINGS = {
  ...STEP_NAMES,
  complete: { job: "word" },
  with_items: { job: "word", items: "count" },
  closed_before: { job: "word" },
  no_job: {},
  needs_owner: { items: "count" },
  day_passed: { due: "word" },
  unknown_owner: { typed: "word", nearest: "word" },
  blocks: { items: "count" },
  still_left: { items: "count" },
  kit_not_counted: {},
  step_startup: {},
  step_jobs: {},
} as const satisfies FindingSpecs;

const RESULTS = ["items_left", "readings_taken"] as const;
type Facts = FactsOf<typeof FACTS>;
type Id = (typeof RESULTS)[number];
type F = FindingOf<typeof FINDINGS>;

const RECORD: Source = { basis: "computed", document: "The job's own record" };

export const done = declareTopic({
  id: "done",
  work: "short",
  uses: "job",
  facts: FACTS,
  results: RESULTS,
  findings: FINDINGS,
  tables: { left: ["step"] },
  guide: { next: askNext, hears: () => false },
  enters: () => [],
  compute: (facts, books) => {
    const { openJob } = books;
    if (openJob === undefined) return nothing({ code: "no_job", data: {} }, "step_jobs", "job");
    if (!LIVE.includes(openJob.status))
      return { ...nothing({ code: "closed_before", data: { job: openJob.number } }, "step_jobs", "job"), job: openJob };
    return close(openJob, facts, books);
  },
});

/** Parts are asked for once; who sees to what is left, and by when, only where something is. */
function askNext(known: KnownFacts, books: Books): Guidance<F> | undefined {
  const { openJob } = books;
  if (openJob === undefined || !LIVE.includes(openJob.status)) return undefined;
  const isAsked = (fact: string) => known[fact] !== undefined || isPassed(known, fact);
  if (Object.keys(openJob.parts).length === 0 && kitOf(openJob, books).length > 0 && !isAsked("kit_used"))
    return { fact: "kit_used" };
  const { fresh } = leftOf(openJob, books);
  if (fresh.length === 0) return undefined;
  const items = q("count", fresh.length);
  const fact = ["owner", "due"].find((one) => !isAsked(one));
  return fact === undefined
    ? undefined
    : { fact, before: [{ code: "blocks", data: { items } }], about: [tabulateLeft(fresh)] };
}

function tabulateLeft(steps: readonly string[]): AnswerTable<F> {
  return { id: "left", rows: steps.map((id) => [nameStep(id)]) };
}

function isPassed(known: KnownFacts, fact: string): boolean {
  return String(known[PASSED_OVER]?.value ?? "")
    .split(",")
    .includes(fact);
}

function close(job: Job, { owner, due, kit_used }: Facts, books: Books): Answer<Id, F> | OutOfRange<F> {
  const { fresh, settled, still } = leftOf(job, books);
  const { today = "" } = books;
  if (due !== undefined && due < today)
    return { kind: "out-of-range", fact: "due", value: due, reason: { code: "day_passed", data: { due } } };
  const who = owner === undefined ? undefined : findOwner(owner, books);
  if (owner !== undefined && who?.ok === false) {
    const data = { typed: owner, nearest: who.nearest.join(", ") };
    return { kind: "out-of-range", fact: "owner", value: owner, reason: { code: "unknown_owner", data } };
  }
  const items = q("count", fresh.length + still.length);
  if (fresh.length > 0 && (owner === undefined || due === undefined))
    return {
      ...nothing({ code: "needs_owner", data: { items: q("count", fresh.length) } }, "step_startup", "startup"),
      job,
    };
  const isComplete = fresh.length + still.length === 0;
  const changes: readonly JobChange[] = [
    ...(job.status === "under_way" || job.status === "open_items" ? [] : [status("under_way")]),
    ...(kit_used === true ? [{ kind: "parts" as const, parts: Object.fromEntries(kitOf(job, books)) }] : []),
    ...settled.map((item) => ({ kind: "item_closed" as const, item })),
    ...fresh.map((id) => ({
      kind: "item_opened" as const,
      item: { id, what: id, owner: who?.ok ? who.entry.id : "", due: due ?? "" },
    })),
    status(isComplete ? "complete" : "open_items"),
  ];
  const untaken = untakenSteps(job, books).filter((id) => !fresh.includes(id) && !still.includes(id));
  const acts: readonly JobAct[] = [
    ...changes.map((change) => ({ kind: "change" as const, change })),
    { kind: "summary" },
  ];
  return {
    kind: "answer",
    verdict: isComplete ? "good" : "caution",
    headline: isComplete
      ? { code: "complete", data: { job: job.number } }
      : { code: "with_items", data: { job: job.number, items } },
    results: results(job, items.value),
    findings: [
      ...(isComplete ? [] : [{ code: "still_left" as const, data: { items } }]),
      ...(kit_used === true || Object.keys(job.parts).length > 0
        ? []
        : [{ code: "kit_not_counted" as const, data: {} }]),
    ],
    ...(untaken.length > 0 && { tables: [tabulateLeft(untaken)] }),
    next: isComplete ? [] : [{ say: { code: "step_startup", data: {} }, request: "startup" }],
    acts,
  };
}

/** What is left: not yet an item, an item that has been settled since, and items of any other kind. */
function leftOf(job: Job, books: Books) {
  const critical = openCritical(job, books);
  const open = job.items.filter(({ closed }) => closed === undefined).map(({ id }) => id);
  return {
    fresh: critical.filter((id) => !open.includes(id)),
    settled: open.filter((id) => isStep(id, job) && !critical.includes(id)),
    still: open.filter((id) => critical.includes(id) || !isStep(id, job)),
  };
}

/** An item that this topic made names the step that it is about. */
function isStep(id: string, { items }: Job): boolean {
  return items.some((item) => item.id === id && item.what === id);
}

/** Somebody of the company, by the name they go by. */
function findOwner(typed: string, { people, crew }: Books) {
  const known = people.map(({ id, name }) => ({ id, name }));
  const others = crew.members.map(({ person }) => ({ id: person, name: person }));
  return findByName([...known, ...others], typed);
}

/** The kit of the job by part: whole pieces, or metres of what is cut to length. */
function kitOf(job: Job, books: Books): readonly (readonly [string, number])[] {
  return collectKit(KIT_RULES, siteOf(job, books)).lines.map(({ part, amount }) => [part, amount] as const);
}

function status(to: "under_way" | "open_items" | "complete"): JobChange {
  return { kind: "status", status: to };
}

function results(job: Job, left: number) {
  return [
    numberResult("items_left", q("count", left), "n", {}, RECORD),
    numberResult("readings_taken", q("count", Object.keys(job.readings).length), "n", {}, RECORD),
  ];
}

function nothing(headline: F, step: "step_jobs" | "step_startup", request: string): Answer<Id, F> {
  return {
    kind: "answer",
    verdict: "caution",
    headline,
    results: [numberResult("items_left", q("count", 0), "n", {}, RECORD)],
    findings: [],
    next: [{ say: { code: step, data: {} }, request }],
  };
}
