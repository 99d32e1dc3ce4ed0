import type { Books } from "../../books/books.ts";
import type { Answer, FindingOf, FindingSpecs, NextStep } from "../../declaration/answer.ts";
import { q } from "../../declaration/answer.ts";
import type { FactSpecs, FactsOf } from "../../declaration/facts.ts";
import { numberResult } from "../../declaration/number-result.ts";
import type { Source } from "../../declaration/source.ts";
import { PASSED_OVER } from "../../declaration/topic.ts";
import type { Job, JobChange } from "../job.ts";
import type { JobAct } from "../job-act.ts";
import { STEP_NAMES } from "../startup-step-names.ts";

const UNLISTED = { optional: true, unlisted: true, byNameOnly: true } as const;
const REST = { type: "text", ...UNLISTED, takesRest: true } as const;

/** Which jobs a list shows, other than those ahead. */
const WHICH = ["today", "tomorrow", "late", "mine", "items", "called_back"] as const;
/** What may be done with a job, besides what a fact of its own says. */
const TASKS = [
  "show",
  "new",
  "leave",
  "history",
  "plan",
  "amend",
  "withdraw",
  "cancel",
  "reopen",
  "call_back",
  "item",
  "item_done",
  "close",
] as const;

export const JOB_FACTS = {
  number: { type: "name", of: "job", optional: true },
  task: { type: "choice", options: TASKS, optional: true },
  /** True: several jobs were asked for, not the one that is open. */
  list: { type: "flag", ...UNLISTED },
  which: { type: "choice", options: WHICH, optional: true },
  customer: { type: "text", ...UNLISTED },
  /** Not `place`: the open job must not answer for a new one. */
  town: { type: "name", of: "place", optional: true, byNameOnly: true },
  day: { type: "day", optional: true },
  /** Whose jobs are listed. */
  whose: { type: "name", of: "person", optional: true, unlisted: true },
  /** Who does the job, the one who leads first; names with commas between. */
  crew: { type: "text", ...UNLISTED },
  /** Not `model`: the open job must not answer for itself. */
  planned_unit: { type: "name", of: "model", ...UNLISTED },
  permit_number: REST,
  note: REST,
  item: REST,
  item_done: REST,
  owner: { type: "name", of: "person", ...UNLISTED },
  due: { type: "day", ...UNLISTED },
  /** Number of an entry, and what is right instead. */
  amend: REST,
  /** What is right instead, where only the number was said. */
  right: { type: "text", ...UNLISTED },
  /** Number of an entry, and why it is taken back. */
  withdraw: REST,
  /** Why the customer called again, or why the job is called off. */
  call_back: REST,
  cancel: REST,
  [PASSED_OVER]: { type: "text", ...UNLISTED },
} as const satisfies FactSpecs;

export const JOB_FINDINGS = {
  ...STEP_NAMES,
  shown: { job: "word", customer: "word", place: "word" },
  opened: { job: "word", customer: "word", place: "word" },
  left: { job: "word" },
  none_open: { jobs: "count" },
  ahead: { jobs: "count" },
  unknown_job: { typed: "word" },
  facts_travel: {},
  say_number: {},
  customer_too_much: {},
  unknown_place: { typed: "word", nearest: "word" },
  unknown_person: { typed: "word", nearest: "word" },
  unknown_unit: { typed: "word", nearest: "word" },
  day_passed: { due: "word" },
  no_record: {},
  which_job: {},
  history_of: { job: "word", entries: "count" },
  how_to_amend: {},
  listed: { jobs: "count" },
  listed_day: { jobs: "count", day: "word" },
  listed_person: { jobs: "count", person: "word" },
  listed_items: { items: "count", late: "count" },
  none_such: {},
  planned: { job: "word", day: "word", people: "word" },
  plan_needs: { job: "word" },
  changed: { job: "word" },
  noted: { job: "word" },
  cancelled: { job: "word" },
  reopened: { job: "word" },
  called_back: { job: "word", because: "word" },
  customer_said: { because: "word" },
  item_added: { job: "word", what: "word" },
  item_closed: { job: "word" },
  none_left: {},
  item_is_step: {},
  no_items: { job: "word" },
  which_item: {},
  item_needs: {},
  close_with_done: { job: "word" },
  unknown_item: { typed: "word" },
  amended: { entry: "word", job: "word" },
  withdrawn: { entry: "word", job: "word" },
  which_entry: { job: "word" },
  unknown_entry: { entry: "word" },
  not_readable: { typed: "word", entry: "word" },
  only_withdrawn: { entry: "word" },
  say_which_fact: {},
  same_as_before: { entry: "word" },
  written_elsewhere: { job: "word", talked: "word" },
  late: { due: "word" },
  status_planned: {},
  status_surveyed: {},
  status_under_way: {},
  status_open_items: {},
  status_complete: {},
  status_called_back: {},
  status_cancelled: {},
  step_survey: {},
  step_startup: {},
  step_done: {},
  step_history: {},
  step_items: {},
  step_leave: {},
  step_new: {},
  step_open: { job: "word" },
  step_fault: {},
  step_call_back: {},
  step_reopen: {},
  step_plan: {},
  step_all: {},
  step_close_item: { item: "word" },
  step_amend_last: { entry: "word" },
} as const satisfies FindingSpecs;

export const JOB_RESULTS = ["items_open"] as const;

export type JobFacts = FactsOf<typeof JOB_FACTS>;
type Id = (typeof JOB_RESULTS)[number];
export type JobFinding = FindingOf<typeof JOB_FINDINGS>;
export type JobAnswer = Answer<Id, JobFinding>;
export type JobStep = NextStep<JobFinding>;

const RECORD: Source = { basis: "computed", document: "The job's own record" };

export function count(id: Id, value: number) {
  return numberResult(id, q("count", value), "n", {}, RECORD);
}

/** An answer of one sentence. */
export function notice(headline: JobFinding, more: Partial<JobAnswer> = {}): JobAnswer {
  return { kind: "answer", verdict: "info", headline, results: [], findings: [], ...more };
}

/** Buttons whose words hold no data. */
type PlainStep = Exclude<
  Extract<JobFinding["code"], `step_${string}`>,
  keyof typeof STEP_NAMES | "step_open" | "step_close_item" | "step_amend_last"
>;

/** A button with plain words. */
export function step(code: PlainStep, request: string): JobStep {
  return { say: { code, data: {} }, request };
}

/**
 * The acts of changes to a job. Naming a job to write something into it does not turn the talk away from the job that
 * somebody is at; where none is open, it is talked about from now on.
 */
export function actsOn(job: Job, books: Books, changes: readonly JobChange[]): readonly JobAct[] {
  return [
    ...changes.map((change): JobAct => ({ kind: "change", change, job: job.number })),
    ...(books.talkedJob === undefined ? [{ kind: "open" as const, job: job.number }] : []),
  ];
}

/** Says that the talk is still about another job, with the way to this one. */
export function sayElsewhere(job: Job, { talkedJob }: Books): readonly JobFinding[] {
  if (talkedJob === undefined || talkedJob === job.number) return [];
  return [{ code: "written_elsewhere", data: { job: job.number, talked: talkedJob } }];
}

export function openStep({ number }: Job): JobStep {
  return { say: { code: "step_open", data: { job: number } }, request: `job ${number}` };
}

/** The named job first in a request, so that its button means the same wherever the talk is. */
export function requestFor({ number }: Job, what: string): string {
  return `job number=${number} ${what}`;
}
