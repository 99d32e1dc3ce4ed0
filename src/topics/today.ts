import type { Asker, Books } from "../books/books.ts";
import { dayAt } from "../crew/zone-time.ts";
import {
  type Answer,
  type FindingOf,
  type FindingSpecs,
  type NextStep,
  q,
  type TableCell,
} from "../declaration/answer.ts";
import { numberResult } from "../declaration/number-result.ts";
import { declareTopic } from "../declaration/topic.ts";
import { collectDigest } from "../jobs/digest/collect-digest.ts";
import { recordsSource } from "../jobs/digest/digest-numbers.ts";
import { unitName } from "../jobs/digest/digest-tables.ts";
import { DIGEST_CELLS } from "../jobs/digest/digest-words.ts";
import { weekPeriod } from "../jobs/digest/period.ts";
import { roleOf } from "../jobs/digest/who-sees.ts";
import type { Job } from "../jobs/job.ts";
import { nameStep } from "../jobs/startup-step-names.ts";
import { type DayAhead, daysAhead, missedJobs, unplannedJobs } from "../jobs/today/days-ahead.ts";
import { isAhead, LEFT_WORDS, type MyItem, type MyJob, myDay, openItems } from "../jobs/today/my-jobs.ts";

const FINDINGS = {
  ...DIGEST_CELLS,
  ...LEFT_WORDS,
  my_jobs: { today: "word", jobs: "count", first: "word", place: "word" },
  my_none: { today: "word", next: "word" },
  my_none_at_all: { today: "word" },
  not_in_crew: { name: "word" },
  how_to_join: {},
  how_to_link: {},
  day_ready: { today: "word", jobs: "count" },
  day_not_ready: { today: "word", jobs: "count", stops: "count" },
  week_so_far: { from: "word", finished: "count", items: "count", callbacks: "count" },
  ready_good: {},
  ready_caution: { cares: "count" },
  ready_no: { stops: "count" },
  lacks_people: {},
  lacks_day: {},
  day_passed: { day: "word" },
  step_kit: { job: "word" },
  step_ready: { day: "word" },
  step_plan: { day: "word" },
  step_digest: {},
  step_overdue: {},
  step_callbacks: {},
  step_lapses: {},
  step_jobs: {},
  step_new: {},
  step_help: {},
} as const satisfies FindingSpecs;

const RESULTS = [
  "my_today",
  "jobs_today",
  "unplanned",
  "overdue",
  "finished",
  "open_items",
  "callbacks",
  "lapses_30",
] as const;
type F = FindingOf<typeof FINDINGS>;
type Id = (typeof RESULTS)[number];
type Rows = readonly (readonly TableCell<F>[])[];

/** A phone shows so many lines before it is scrolled. */
const MOST_NEXT = 4;
const MOST_LISTED = 6;
const SOON_days = 30;

export const today = declareTopic({
  id: "today",
  work: "short",
  uses: "office",
  facts: {},
  results: RESULTS,
  findings: FINDINGS,
  tables: {
    now: ["job", "place", "left"],
    next: ["day", "job", "place", "left"],
    items: ["job", "what", "due"],
    days: ["day", "jobs", "ready"],
    unplanned: ["job", "place", "lacks"],
  },
  enters: () => [],
  compute: (_, books) => {
    const day = books.today ?? dayAt(books.company.timeZone, Math.max(0, ...books.jobEvents.map(({ at_ms }) => at_ms)));
    const role = roleOf(books.asker);
    if (role === "technician" && books.asker !== undefined) return forCrew(books.asker, day, books);
    return role === "dispatcher" ? forDispatcher(day, books) : forManager(day, books);
  },
});

/** My jobs of today and the next ones: where, which unit, what is left. */
function forCrew({ id, name }: Asker, day: string, books: Books): Answer<Id, F> {
  const mine = myDay(id, day, books);
  const isKnown = books.crew.members.some(({ person }) => person === id) || mine.now.length + mine.next.length > 0;
  if (!isKnown && mine.items.length === 0) return forStranger(name);
  const [first] = mine.now;
  const [later] = mine.next;
  const all = [...mine.now, ...mine.next.slice(0, MOST_NEXT)];
  return {
    kind: "answer",
    verdict: mine.items.some(({ item }) => item.due < day) ? "caution" : "info",
    headline: sayMine(day, mine.now.length, first?.job, later?.job.day),
    results: [count("my_today", "n(my jobs up to today)", mine.now.length, books)],
    findings: [],
    tables: filled([
      { id: "now", rows: mine.now.map((one) => nowRow(one, books)) },
      { id: "next", rows: mine.next.slice(0, MOST_NEXT).map(nextRow) },
      { id: "items", rows: mine.items.map((one) => itemRow(one, day)) },
    ]),
    next: [
      ...opens([...all.map(({ job }) => job), ...mine.items.map(({ job }) => job)]),
      ...kitStep(all),
      { say: { code: "step_jobs", data: {} }, request: "job" },
    ],
  };
}

function sayMine(day: string, jobs: number, first: Job | undefined, next: string | undefined): F {
  if (first !== undefined)
    return { code: "my_jobs", data: { today: day, jobs: q("count", jobs), first: first.number, place: first.place } };
  if (next !== undefined) return { code: "my_none", data: { today: day, next } };
  return { code: "my_none_at_all", data: { today: day } };
}

/** Somebody whom the company's books do not know: how to be known, and what can be done at once. */
function forStranger(name: string): Answer<Id, F> {
  return {
    kind: "answer",
    verdict: "info",
    headline: { code: "not_in_crew", data: { name } },
    results: [],
    findings: [
      { code: "how_to_link", data: {} },
      { code: "how_to_join", data: {} },
    ],
    next: [
      { say: { code: "step_jobs", data: {} }, request: "job" },
      { say: { code: "step_new", data: {} }, request: "job new" },
      { say: { code: "step_help", data: {} }, request: "help" },
    ],
  };
}

/** How ready today and the next working day are, what nobody is down for, what is overdue. */
function forDispatcher(day: string, books: Books): Answer<Id, F> {
  const days = daysAhead(day, books);
  const [now, next] = days;
  const open = unplannedJobs(books);
  const missed = missedJobs(books, day).filter((job) => !open.includes(job));
  const late = openItems(books.jobs).filter(({ item }) => item.due < day);
  const [stops, jobs] = [now?.stops ?? 0, now?.jobs.length ?? 0];
  const data = { today: day, jobs: q("count", jobs) };
  return {
    kind: "answer",
    verdict: now?.verdict ?? "info",
    headline:
      stops > 0 ? { code: "day_not_ready", data: { ...data, stops: q("count", stops) } } : { code: "day_ready", data },
    results: [
      count("jobs_today", "n(jobs, day = today)", jobs, books),
      count("unplanned", "n(jobs without people or day, or whose day has passed)", open.length + missed.length, books),
      count("overdue", "n(open items, due < today)", late.length, books),
    ],
    findings: [],
    tables: filled([
      { id: "days", rows: days.map(dayRow) },
      { id: "unplanned", rows: [...missed, ...open].map((job) => unplannedRow(job, day)) },
      { id: "items", rows: late.map((one) => itemRow(one, day)) },
    ]),
    next: [
      ...days.map(
        (one): NextStep<F> => ({
          say: { code: "step_ready", data: { day: one.day } },
          request: `ready day=${one.day}`,
        }),
      ),
      ...(next === undefined
        ? []
        : [{ say: { code: "step_plan" as const, data: { day: next.day } }, request: `plan day=${next.day}` }]),
      ...opens([...missed, ...open, ...late.map(({ job }) => job)]),
    ],
  };
}

/** The week so far: what was finished, what is open, what came back, what lapses. */
function forManager(day: string, books: Books): Answer<Id, F> {
  const { from } = weekPeriod(day);
  const week = collectDigest(books, { from, to: day }, day);
  const late = week.items.filter(({ isOverdue }) => isOverdue);
  const soon = week.lapses.filter(({ in_days }) => in_days <= SOON_days);
  const [finished, items, callBacks] = [week.finished.length, week.items.length, week.callBacks.length];
  const show = (figure: "overdue" | "callbacks" | "lapses"): NextStep<F> => ({
    say: { code: `step_${figure}`, data: {} },
    request: `digest show=${figure} from=${from} to=${day}`,
  });
  return {
    kind: "answer",
    verdict: late.length + callBacks > 0 ? "caution" : "info",
    headline: {
      code: "week_so_far",
      data: { from, finished: q("count", finished), items: q("count", items), callbacks: q("count", callBacks) },
    },
    results: [
      count("finished", "n(jobs closed since Monday)", finished, books),
      count("open_items", "n(items open now)", items, books),
      count("overdue", "n(open items, due < today)", late.length, books),
      count("callbacks", "n(call-backs since Monday)", callBacks, books),
      count("jobs_today", "n(jobs, day = today)", jobsOn(day, books), books),
      count("lapses_30", "n(last day - today <= 30 d)", soon.length, books),
    ],
    findings: [],
    tables: filled([{ id: "items", rows: late.map(({ story, item }) => itemRow({ job: story.job, item }, day)) }]),
    next: [
      { say: { code: "step_digest", data: {} }, request: "digest week" },
      ...(late.length > 0 ? [show("overdue")] : []),
      ...(callBacks > 0 ? [show("callbacks")] : []),
      ...(soon.length > 0 ? [show("lapses")] : []),
      { say: { code: "step_ready", data: { day } }, request: `ready day=${day}` },
    ],
  };
}

function jobsOn(day: string, { jobs }: Books): number {
  return jobs.filter((job) => job.day === day && isAhead(job.status)).length;
}

function filled(tables: readonly { readonly id: string; readonly rows: Rows }[]) {
  return tables.filter(({ rows }) => rows.length > 0);
}

function nowRow({ job, left }: MyJob, books: Books): Rows[number] {
  const unit = unitName(job.model, books);
  return [job.number, typeof unit === "string" ? `${job.place}, ${unit}` : job.place, left];
}

function nextRow({ job, left }: MyJob): Rows[number] {
  return [job.day ?? "", job.number, job.place, left];
}

function itemRow({ job, item }: MyItem, day: string): Rows[number] {
  const due: F = { code: item.due < day ? "overdue_since" : "due_on", data: { due: item.due } };
  return [job.number, nameStep(item.what), due];
}

function dayRow({ day, jobs, verdict, stops, cares }: DayAhead): Rows[number] {
  const ready: Readonly<Record<DayAhead["verdict"], F>> = {
    no: { code: "ready_no", data: { stops: q("count", stops) } },
    caution: { code: "ready_caution", data: { cares: q("count", cares) } },
    good: { code: "ready_good", data: {} },
  };
  return [day, q("count", jobs.length), ready[verdict]];
}

function unplannedRow(job: Job, day: string): Rows[number] {
  const lacks: readonly (F | false)[] = [
    job.day === undefined && { code: "lacks_day", data: {} },
    job.people.length === 0 && { code: "lacks_people", data: {} },
    job.day !== undefined && job.day < day && { code: "day_passed", data: { day: job.day } },
  ];
  return [job.number, job.place, lacks.filter((one) => one !== false)];
}

/** Buttons that open jobs, each once. */
function opens(jobs: readonly Job[]): readonly NextStep<F>[] {
  return [...new Set(jobs.map(({ number }) => number))].slice(0, MOST_LISTED).map((job) => ({
    say: { code: "step_open", data: { job } },
    request: `job number=${job}`,
  }));
}

/** The kit of the first job whose parts are not all on the truck. */
function kitStep(jobs: readonly MyJob[]): readonly NextStep<F>[] {
  const lacking = jobs.find(({ left }) => left.some(({ code }) => code === "left_kit"));
  if (lacking === undefined) return [];
  const job = lacking.job.number;
  return [{ say: { code: "step_kit", data: { job } }, request: `kit job=${job}` }];
}

function count(id: Id, equation: string, value: number, books: Books) {
  return numberResult(id, q("count", value), equation, {}, recordsSource(books));
}
