import type { Books } from "../books/books.ts";
import { findMember } from "../crew/crew-words.ts";
import { isAtWork, type Readiness, readyJob, readyPerson } from "../crew/ready.ts";
import { READY_CHECKS, tabulateDay, tabulateJobChecks, tabulatePersonChecks } from "../crew/ready-checks.ts";
import { jobsOn, tabulateLacks, tabulateLapses } from "../crew/ready-findings.ts";
import type { Answer, FindingOf, FindingSpecs, NumberResult, OutOfRange } from "../declaration/answer.ts";
import { q } from "../declaration/answer.ts";
import type { FactSpecs, FactsOf } from "../declaration/facts.ts";
import { numberResult } from "../declaration/number-result.ts";
import type { Source } from "../declaration/source.ts";
import { declareTopic } from "../declaration/topic.ts";
import { findByName } from "../equipment/find-model.ts";
import type { Job } from "../jobs/job.ts";

const FACTS = {
  day: { type: "day" },
  person: { type: "name", of: "person", optional: true },
  job: { type: "name", of: "job", insteadOf: "person", optional: true },
} as const satisfies FactSpecs;

const RESULTS = ["ready_count", "stops", "cares", "lapses_30", "lapses_60", "lapses_90"] as const;

const FINDINGS = {
  ...READY_CHECKS,
  person_ready: { name: "word", day: "word" },
  person_with_care: { name: "word", day: "word", cares: "count" },
  person_not_ready: { name: "word", day: "word", stops: "count" },
  job_ready: { job: "word", day: "word" },
  job_with_care: { job: "word", day: "word", cares: "count" },
  job_not_ready: { job: "word", day: "word", stops: "count" },
  day_ready: { day: "word", crew: "count", jobs: "count" },
  day_not_ready: { day: "word", stops: "count" },
  registers_decide: {},
  nobody_assigned: {},
  no_crew_book: {},
  unknown_person: { typed: "word", nearest: "word" },
  unknown_job: { typed: "word", nearest: "word" },
  step_plan: { day: "word" },
  step_kit: { job: "word" },
} as const satisfies FindingSpecs;

type Facts = FactsOf<typeof FACTS>;
type Id = (typeof RESULTS)[number];
type F = FindingOf<typeof FINDINGS>;
type Subject = "person" | "job" | "day";

export const ready = declareTopic({
  id: "ready",
  work: "short",
  // The jobs as they stand now, not only those of the books.
  uses: "job",
  opensAnew: true,
  facts: FACTS,
  results: RESULTS,
  findings: FINDINGS,
  tables: {
    day: ["what", "stands"],
    missing: ["who", "what", "why", "others"],
    lapses: ["who", "what", "on", "within"],
    checked: ["what", "stands"],
  },
  asides: { tables: ["checked"] },
  compute: (facts, books) => {
    if (books.crew.members.length === 0)
      return { kind: "out-of-range", fact: "day", value: facts.day, reason: { code: "no_crew_book", data: {} } };
    if (facts.job !== undefined) return answerJob(facts, facts.job, books);
    return facts.person === undefined ? answerDay(facts, books) : answerPerson(facts, facts.person, books);
  },
});

function answerPerson({ day }: Facts, typed: string, books: Books): Answer<Id, F> | OutOfRange<F> {
  const found = findMember(typed, books);
  if (!found.ok) return unknown("person", typed, found.nearest);
  const { member, name } = found.entry;
  const readiness = readyPerson(member, day, books);
  const base = answer("person", { name, day }, readiness, readiness.verdict === "no" ? 0 : 1, books);
  return { ...base, tables: [...(base.tables ?? []), tabulatePersonChecks(member, day, books)] };
}

function answerJob({ day }: Facts, typed: string, books: Books): Answer<Id, F> | OutOfRange<F> {
  const found = findByName(
    books.jobs.map((job) => ({ id: job.number, name: job.number, job })),
    typed,
  );
  if (!found.ok) return unknown("job", typed, found.nearest);
  const { job } = found.entry;
  const readiness = readyJob(job, day, books);
  const base = answer("job", { job: job.number, day }, readiness, readiness.verdict === "no" ? 0 : 1, books, job);
  return { ...base, tables: [...(base.tables ?? []), tabulateJobChecks(job, day, books)] };
}

/** A day is ready when everybody who works is, and every job of that day. */
function answerDay({ day }: Facts, books: Books): Answer<Id, F> {
  const crew = books.crew.members.filter((member) => isAtWork(member, day, books));
  const jobs = jobsOn(day, books);
  const each = crew.map((member) => readyPerson(member, day, books));
  const all = [...each, ...jobs.map((job) => readyJob(job, day, books))];
  const lacks = all.flatMap((one) => one.lacks);
  const some = lacks.length > 0 ? "caution" : "good";
  const together: Readiness = {
    verdict: all.some(({ verdict }) => verdict === "no") ? "no" : some,
    lacks,
    // A job tells the same of its people as they do themselves.
    lapses: each.flatMap(({ lapses }) => lapses),
  };
  const readyCount = each.filter(({ verdict }) => verdict !== "no").length;
  const data = { day, crew: q("count", crew.length), jobs: q("count", jobs.length) };
  const base = answer("day", { day }, together, readyCount, books);
  return {
    ...base,
    tables: [tabulateDay(day, jobs, books), ...(base.tables ?? [])],
    ...(together.verdict !== "no" && { headline: { code: "day_ready", data } }),
  };
}

function unknown(fact: "person" | "job", typed: string, nearest: readonly string[]): OutOfRange<F> {
  const reason: F = { code: `unknown_${fact}`, data: { typed, nearest: nearest.join(", ") } };
  return { kind: "out-of-range", fact, value: typed, reason };
}

function answer(
  subject: Subject,
  of: { readonly name?: string; readonly job?: string; readonly day: string },
  readiness: Readiness,
  readyCount: number,
  books: Books,
  job?: Job,
): Answer<Id, F> {
  const { verdict, lacks, lapses } = readiness;
  return {
    kind: "answer",
    verdict,
    headline: headline(subject, of, readiness),
    results: countResults(readiness, readyCount, books),
    findings: [
      ...(job !== undefined && job.people.length === 0 ? [{ code: "nobody_assigned" as const, data: {} }] : []),
      { code: "registers_decide", data: {} },
    ],
    tables: [
      ...(lacks.length > 0 ? [tabulateLacks(lacks, of.day, books)] : []),
      ...(lapses.length > 0 ? [tabulateLapses(lapses, books)] : []),
    ],
    next: [
      { say: { code: "step_plan", data: { day: of.day } }, request: `plan day=${of.day}` },
      ...(job === undefined
        ? []
        : [{ say: { code: "step_kit" as const, data: { job: job.number } }, request: `kit job=${job.number}` }]),
    ],
  };
}

function headline(
  subject: Subject,
  { name = "", job = "", day }: { readonly name?: string; readonly job?: string; readonly day: string },
  { verdict, lacks }: Readiness,
): F {
  const stops = q("count", lacks.filter((lack) => lack.stops).length);
  const cares = q("count", lacks.filter((lack) => !lack.stops).length);
  if (subject === "day") return { code: "day_not_ready", data: { day, stops } };
  if (subject === "job") {
    if (verdict === "no") return { code: "job_not_ready", data: { job, day, stops } };
    if (verdict === "caution") return { code: "job_with_care", data: { job, day, cares } };
    return { code: "job_ready", data: { job, day } };
  }
  if (verdict === "no") return { code: "person_not_ready", data: { name, day, stops } };
  if (verdict === "caution") return { code: "person_with_care", data: { name, day, cares } };
  return { code: "person_ready", data: { name, day } };
}

function countResults({ lacks, lapses }: Readiness, readyCount: number, books: Books): readonly NumberResult<Id>[] {
  const source: Source = {
    basis: books.company.isInvented ? "invented" : "published",
    document: books.company.name,
    section: "crew.yaml, trucks.yaml",
  };
  const count = (id: Id, value: number) => numberResult(id, q("count", value), "n", {}, source);
  const within = (days: number) => lapses.filter(({ in_days }) => in_days <= days).length;
  return [
    count("ready_count", readyCount),
    count("stops", lacks.filter(({ stops }) => stops).length),
    count("cares", lacks.filter(({ stops }) => !stops).length),
    count("lapses_30", within(30)),
    count("lapses_60", within(60)),
    count("lapses_90", within(90)),
  ];
}
