import type { Books } from "../books/books.ts";
import type { Answer, FindingOf, FindingSpecs, OutOfRange } from "../declaration/answer.ts";
import { q } from "../declaration/answer.ts";
import type { FactSpecs, FactsOf, KnownFacts } from "../declaration/facts.ts";
import { numberResult } from "../declaration/number-result.ts";
import type { Source } from "../declaration/source.ts";
import { declareTopic, type Guidance, PASSED_OVER } from "../declaration/topic.ts";
import { findByName } from "../equipment/find-model.ts";
import { isInitialsOrNickname } from "../jobs/customer.ts";
import type { Job } from "../jobs/job.ts";
import { LIVE } from "../jobs/job-rules.ts";

const UNLISTED = { optional: true, unlisted: true, byNameOnly: true } as const;

const FACTS = {
  number: { type: "name", of: "job", optional: true },
  task: { type: "choice", options: ["show", "new", "leave"], optional: true },
  customer: { type: "text", ...UNLISTED },
  /** Not `place`: the open job must not answer for a new one. */
  town: { type: "name", of: "place", optional: true, byNameOnly: true },
  day: { type: "day", optional: true },
  [PASSED_OVER]: { type: "text", ...UNLISTED },
} as const satisfies FactSpecs;

const FINDINGS = {
  shown: { job: "word", customer: "word", place: "word" },
  opened: { job: "word", customer: "word", place: "word" },
  left: { job: "word" },
  none_open: { jobs: "count" },
  unknown_job: { typed: "word" },
  facts_travel: {},
  say_number: {},
  customer_too_much: {},
  unknown_place: { typed: "word", nearest: "word" },
  no_record: {},
  step_survey: {},
  step_startup: {},
  step_done: {},
  step_leave: {},
  step_new: {},
  step_open: { job: "word" },
} as const satisfies FindingSpecs;

const RESULTS = ["jobs_open", "facts_known", "readings_taken", "items_open"] as const;
type Facts = FactsOf<typeof FACTS>;
type Id = (typeof RESULTS)[number];
type F = FindingOf<typeof FINDINGS>;

const RECORD: Source = { basis: "computed", document: "The job's own record" };
/** Jobs that are offered as buttons, the nearest in time first. */
const MOST_OFFERED = 6;

export const job = declareTopic({
  id: "job",
  work: "short",
  uses: "job",
  facts: FACTS,
  results: RESULTS,
  findings: FINDINGS,
  tables: { jobs: ["job", "customer", "place", "day"] },
  guide: { next: askNew, hears: () => false },
  // What is told here is about the record, not about the house.
  enters: () => [],
  compute: (facts, books) => {
    if (facts.task === "new") return begin(facts, books);
    if (facts.task === "leave") return leave(books);
    if (facts.number !== undefined) return open(facts.number, books);
    return books.openJob === undefined ? list(books) : show(books.openJob, books);
  },
});

/** A new job asks for whom, where and when; everything else is answered at once. */
function askNew(known: KnownFacts): Guidance<F> | undefined {
  if (known["task"]?.value !== "new") return undefined;
  const passed = String(known[PASSED_OVER]?.value ?? "").split(",");
  const next = ["customer", "town", "day"].find((fact) => known[fact] === undefined && !passed.includes(fact));
  return next === undefined ? undefined : { fact: next };
}

function begin({ customer = "", town, day }: Facts, books: Books): Answer<Id, F> | OutOfRange<F> {
  if (!isInitialsOrNickname(customer))
    return { kind: "out-of-range", fact: "customer", value: customer, reason: { code: "customer_too_much", data: {} } };
  const [own] = books.places;
  const wanted = town ?? own?.name ?? books.company.town;
  const there = findByName(books.places, wanted);
  if (!there.ok) {
    const reason: F = { code: "unknown_place", data: { typed: wanted, nearest: there.nearest.join(", ") } };
    return { kind: "out-of-range", fact: "town", value: wanted, reason };
  }
  const number = books.nextJob;
  if (number === undefined) return notice({ code: "no_record", data: {} }, books);
  return {
    ...notice({ code: "opened", data: { job: number, customer, place: there.entry.name } }, books),
    verdict: "good",
    findings: [{ code: "facts_travel", data: {} }],
    next: steps(),
    acts: [{ kind: "begin", job: number, customer, place: there.entry.name, ...(day !== undefined && { day }) }],
  };
}

function leave(books: Books): Answer<Id, F> {
  const { openJob } = books;
  if (openJob === undefined) return list(books);
  return { ...notice({ code: "left", data: { job: openJob.number } }, books), acts: [{ kind: "leave" }] };
}

function open(typed: string, books: Books): Answer<Id, F> {
  const wanted = typed.trim();
  const found = books.openJob?.number === wanted ? books.openJob : books.jobs.find(({ number }) => number === wanted);
  if (found === undefined)
    return { ...list(books), verdict: "no", headline: { code: "unknown_job", data: { typed: wanted } } };
  return { ...show(found, books), acts: [{ kind: "open", job: found.number }] };
}

function show(one: Job, books: Books): Answer<Id, F> {
  const { number, customer, place } = one;
  return {
    ...notice({ code: "shown", data: { job: number, customer, place } }, books),
    results: [
      count("facts_known", Object.keys(one.facts).length),
      count("readings_taken", Object.keys(one.readings).length),
      count("items_open", one.items.filter(({ closed }) => closed === undefined).length),
    ],
    findings: [{ code: "facts_travel", data: {} }],
    next: [
      ...(LIVE.includes(one.status) ? steps() : []),
      { say: { code: "step_leave", data: {} }, request: "job leave" },
    ],
    job: one,
  };
}

/** What lies ahead: the jobs that are not closed, by day. */
function list(books: Books): Answer<Id, F> {
  const ahead = [...books.jobs]
    .filter(({ status }) => status !== "cancelled" && status !== "complete")
    .sort((a, b) => (a.day ?? "~").localeCompare(b.day ?? "~") || a.number.localeCompare(b.number));
  return {
    ...notice({ code: "none_open", data: { jobs: q("count", ahead.length) } }, books),
    results: [count("jobs_open", ahead.length)],
    findings: [{ code: "say_number", data: {} }],
    ...(ahead.length > 0 && {
      tables: [
        { id: "jobs", rows: ahead.map(({ number, customer, place, day }) => [number, customer, place, day ?? "–"]) },
      ],
    }),
    next: [
      ...ahead.slice(0, MOST_OFFERED).map(({ number }) => ({
        say: { code: "step_open" as const, data: { job: number } },
        request: `job number=${number}`,
      })),
      { say: { code: "step_new", data: {} }, request: "job new" },
    ],
  };
}

function notice(headline: F, books: Books): Answer<Id, F> {
  return { kind: "answer", verdict: "info", headline, results: [count("jobs_open", books.jobs.length)], findings: [] };
}

function steps(): NonNullable<Answer<Id, F>["next"]> {
  return [
    { say: { code: "step_survey", data: {} }, request: "survey" },
    { say: { code: "step_startup", data: {} }, request: "startup" },
    { say: { code: "step_done", data: {} }, request: "done" },
  ];
}

function count(id: Id, value: number) {
  return numberResult(id, q("count", value), "n", {}, RECORD);
}
