import type { Books } from "../books/books.ts";
import type { CrewMember } from "../crew/crew.ts";
import { CREW_WORDS, findMember, partAmount, partWord } from "../crew/crew-words.ts";
import { siteOf } from "../crew/job-needs.ts";
import { stockOf } from "../crew/ready.ts";
import type { Answer, AnswerTable, FindingOf, FindingSpecs, OutOfRange } from "../declaration/answer.ts";
import { q } from "../declaration/answer.ts";
import type { FactSpecs } from "../declaration/facts.ts";
import { numberResult } from "../declaration/number-result.ts";
import { declareTopic } from "../declaration/topic.ts";
import { findByName, findModel } from "../equipment/find-model.ts";
import type { Job } from "../jobs/job.ts";
import { collectKit, type Kit, type KitLine } from "../jobs/kit.ts";
import { KIT_REASONS, TRADE } from "../jobs/kit-rule.ts";
import { KIT_RULES } from "../jobs/kit-rules-table.ts";
import { KIT_TOLD, type KitSite } from "../jobs/kit-told-facts.ts";
import { KIT_WORDS } from "../jobs/kit-words-table.ts";

const FACTS = {
  ...KIT_TOLD,
  job: { type: "name", of: "job", optional: true },
  person: { type: "name", of: "person", optional: true },
} as const satisfies FactSpecs;

const RESULTS = ["part_kinds", "on_truck", "to_load"] as const;

const FINDINGS = {
  ...CREW_WORDS,
  ...KIT_REASONS,
  kit_complete: { parts: "count" },
  kit_to_load: { parts: "count", load: "count" },
  kit_listed: { parts: "count" },
  still_open: { facts: "fact" },
  no_truck: {},
  ordered_apart: {},
  sizes_elsewhere: {},
  gas_first: {},
  unknown_model: { typed: "word", nearest: "word" },
  unknown_job: { typed: "word", nearest: "word" },
  unknown_person: { typed: "word", nearest: "word" },
} as const satisfies FindingSpecs;

type Id = (typeof RESULTS)[number];
type F = FindingOf<typeof FINDINGS>;

export const kit = declareTopic({
  id: "kit",
  work: "short",
  // The jobs as they stand now, not only those of the books.
  uses: "job",
  facts: FACTS,
  results: RESULTS,
  findings: FINDINGS,
  tables: { kit: ["part", "amount", "on_truck", "to_load", "why"] },
  compute: (facts, books) => {
    const job = facts.job === undefined ? undefined : findJob(facts.job, books);
    if (job !== undefined && !job.ok) return unknown("job", facts.job ?? "", job.nearest);
    const model = facts.model === undefined ? undefined : findModel(books.catalogue, facts.model);
    if (model !== undefined && !model.ok) return unknown("model", facts.model ?? "", model.nearest);
    const member = facts.person === undefined ? undefined : findMember(facts.person, books);
    if (member !== undefined && !member.ok) return unknown("person", facts.person ?? "", member.nearest);
    const riders = ridersOf(job?.entry.job ?? books.openJob, member?.entry.member, books);
    const { job: _job, person: _person, ...told } = facts;
    const known = Object.fromEntries(Object.entries(told).filter(([, value]) => value !== undefined));
    const site: KitSite = {
      ...(job?.ok && siteOf(job.entry.job, books)),
      ...known,
      ...(model?.ok && { unit: model.entry }),
    };
    return answer(
      collectKit(KIT_RULES, site, riders === undefined ? {} : stockOf(riders, books.crew)),
      site,
      riders !== undefined,
      books,
    );
  },
});

function findJob(typed: string, { jobs }: Books) {
  return findByName(
    jobs.map((job) => ({ id: job.number, name: job.number, job })),
    typed,
  );
}

/** Whose trucks are looked into: the one who was named, else the crew of the job; nothing where nobody has a truck. */
function ridersOf(
  job: Job | undefined,
  member: CrewMember | undefined,
  books: Books,
): readonly CrewMember[] | undefined {
  const riders =
    member === undefined ? books.crew.members.filter(({ person }) => job?.people.includes(person)) : [member];
  return riders.some(({ truck }) => truck !== undefined) ? riders : undefined;
}

function unknown(fact: "job" | "model" | "person", typed: string, nearest: readonly string[]): OutOfRange<F> {
  const reason: F = { code: `unknown_${fact}`, data: { typed, nearest: nearest.join(", ") } };
  return { kind: "out-of-range", fact, value: typed, reason };
}

function answer({ lines, open }: Kit, site: KitSite, hasTruck: boolean, books: Books): Answer<Id, F> {
  const toLoad = lines.filter((line) => line.toLoad > 0);
  const parts = q("count", lines.length);
  return {
    kind: "answer",
    verdict: hasTruck && toLoad.length === 0 ? "good" : "info",
    headline: headline(hasTruck, parts, toLoad.length),
    results: [
      numberResult("part_kinds", parts, "n", {}, TRADE),
      ...(hasTruck
        ? [
            numberResult("on_truck", q("count", lines.filter(isOnTruck).length), "n", {}, TRADE),
            numberResult("to_load", q("count", toLoad.length), "n", {}, TRADE),
          ]
        : []),
    ],
    findings: [
      ...(site.replaces === "gas" ? [{ code: "gas_first" as const, data: {} }] : []),
      ...(open.length === 0 ? [] : [{ code: "still_open" as const, data: { facts: open.join(",") } }]),
      ...(hasTruck ? [] : [{ code: "no_truck" as const, data: {} }]),
      { code: "ordered_apart", data: {} },
      ...(site.circuit_right === false ? [{ code: "sizes_elsewhere" as const, data: {} }] : []),
    ],
    tables: [tabulate(lines, hasTruck, books)],
  };
}

function headline(hasTruck: boolean, parts: ReturnType<typeof q<"count">>, load: number): F {
  if (!hasTruck) return { code: "kit_listed", data: { parts } };
  return load === 0
    ? { code: "kit_complete", data: { parts } }
    : { code: "kit_to_load", data: { parts, load: q("count", load) } };
}

function isOnTruck({ isOrdered, toLoad }: KitLine): boolean {
  return !isOrdered && toLoad === 0;
}

function tabulate(lines: readonly KitLine[], hasTruck: boolean, books: Books): AnswerTable<F> {
  return {
    id: "kit",
    rows: lines.map(({ part, amount, onTruck, toLoad, because, isOrdered }) => [
      partWord(part, books),
      partAmount(part, amount, books),
      hasTruck && !isOrdered ? partAmount(part, onTruck, books) : "—",
      hasTruck && !isOrdered ? partAmount(part, toLoad, books) : "—",
      KIT_WORDS[because[0]],
    ]),
  };
}
