import type { Books } from "../books/books.ts";
import type { Answer, FindingOf, FindingSpecs } from "../declaration/answer.ts";
import { q } from "../declaration/answer.ts";
import type { FactSpecs, FactsOf } from "../declaration/facts.ts";
import { numberResult } from "../declaration/number-result.ts";
import type { Source } from "../declaration/source.ts";
import { declareTopic } from "../declaration/topic.ts";
import type { Job } from "../jobs/job.ts";

const FACTS = {
  number: { type: "name", of: "job", optional: true },
} as const satisfies FactSpecs;

const FINDINGS = {
  shown: { job: "word", customer: "word", place: "word" },
  unknown_job: { typed: "word" },
  none_open: {},
  no_record: {},
  step_open: { job: "word" },
  step_jobs: {},
} as const satisfies FindingSpecs;

const RESULTS = ["readings_taken", "items_open", "files_kept", "entries"] as const;
type Facts = FactsOf<typeof FACTS>;
type Id = (typeof RESULTS)[number];
type F = FindingOf<typeof FINDINGS>;

const RECORD: Source = { basis: "computed", document: "The job's own record" };

/** Everybody of the company may read the record of any of its jobs. */
export const record = declareTopic({
  id: "record",
  work: "short",
  uses: "job",
  facts: FACTS,
  results: RESULTS,
  findings: FINDINGS,
  // What is told here names a record and says nothing of a house.
  enters: () => [],
  compute: (facts, books) => {
    const job = jobOf(facts, books);
    if (job !== undefined) return show(job, books);
    const { number } = facts;
    return number === undefined
      ? nothing({ code: "none_open", data: {} })
      : nothing({ code: "unknown_job", data: { typed: number } });
  },
});

function jobOf({ number }: Facts, { openJob, jobs }: Books): Job | undefined {
  const wanted = number?.trim();
  if (wanted === undefined || wanted === openJob?.number) return openJob;
  return jobs.find((one) => one.number === wanted);
}

function show(job: Job, { openRecord }: Books): Answer<Id, F> {
  const { number, customer, place } = job;
  // Without a store the jobs of the books can be looked at, and no paper is made of them.
  const kept = openRecord?.job === number ? openRecord : undefined;
  return {
    kind: "answer",
    verdict: "info",
    headline: { code: "shown", data: { job: number, customer, place } },
    results: [
      count("readings_taken", Object.keys(job.readings).length),
      count("items_open", job.items.filter(({ closed }) => closed === undefined).length),
      count("files_kept", job.files.length),
      count("entries", job.version),
    ],
    findings: kept === undefined ? [{ code: "no_record", data: {} }] : [],
    next: [{ say: { code: "step_open", data: { job: number } }, request: `job number=${number}` }],
    record: { job, events: kept?.events ?? [], marks: kept?.marks ?? [] },
    ...(kept && {
      acts: [
        { kind: "paper" as const, paper: { kind: "record" as const, job: number, form: "pdf" as const } },
        { kind: "paper" as const, paper: { kind: "record" as const, job: number, form: "json" as const } },
      ],
    }),
  };
}

function nothing(headline: F): Answer<Id, F> {
  return {
    kind: "answer",
    verdict: "caution",
    headline,
    results: [count("entries", 0)],
    findings: [],
    next: [{ say: { code: "step_jobs", data: {} }, request: "job" }],
  };
}

function count(id: Id, value: number) {
  return numberResult(id, q("count", value), "n", {}, RECORD);
}
