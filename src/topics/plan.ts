import type { Books } from "../books/books.ts";
import { CREW_WORDS, partWord, personName } from "../crew/crew-words.ts";
import { addDays } from "../crew/days.ts";
import { type Change, type Explanation, explainPlan } from "../crew/explain-plan.ts";
import { planCase } from "../crew/plan-case.ts";
import { type Plan, type PlanCase, solvePlan } from "../crew/plan-model.ts";
import type { Answer, AnswerTable, FindingOf, FindingSpecs, OutOfRange } from "../declaration/answer.ts";
import { q } from "../declaration/answer.ts";
import { OUR_HABIT } from "../declaration/common-facts.ts";
import type { FactSpecs, FactsOf } from "../declaration/facts.ts";
import { numberResult } from "../declaration/number-result.ts";
import type { Source } from "../declaration/source.ts";
import { declareTopic } from "../declaration/topic.ts";

const MOST_DAYS = 7;
const FACTS = {
  day: { type: "day" },
  days: {
    type: "quantity",
    quantity: "count",
    min: 1,
    max: MOST_DAYS,
    whole: true,
    usual: [1, 5, 7],
    byNameOnly: true,
    default: { value: 1, source: OUR_HABIT },
  },
} as const satisfies FactSpecs;

const RESULTS = ["jobs_placed", "jobs_left", "driving"] as const;

const FINDINGS = {
  ...CREW_WORDS,
  all_placed: { placed: "count" },
  some_left: { placed: "count", left: "count" },
  none_placed: { left: "count" },
  no_jobs: { day: "word" },
  no_crew_book: {},
  too_long: {},
  proposed: {},
  hours_are_habit: {},
  drive_counted: {},
  before_nothing: {},
  before_permit: {},
  before_survey: {},
  before_both: {},
  reason_people: {},
  reason_day_off: { name: "word" },
  reason_hours: {},
  reason_two_shared: {},
  reason_other_day: {},
  reason_other_crew: {},
  reason_several: {},
  reason_unknown: {},
  place_skill: {},
  place_tool: {},
  place_part: {},
  place_helper: {},
  place_day_off: { name: "word" },
  place_hours: {},
  place_two_shared: {},
  place_other_day: {},
  place_other_crew: {},
  place_none: {},
  step_ready: { day: "word" },
  step_week: { day: "word" },
} as const satisfies FindingSpecs;

type Facts = FactsOf<typeof FACTS>;
type Id = (typeof RESULTS)[number];
type F = FindingOf<typeof FINDINGS>;

/** More than this would take too long to explain one by one. */
const MOST_EXPLAINED = 8;
const SOLVED: Source = { basis: "computed", document: "HiGHS", section: "mixed-integer program, proven optimum" };

export const plan = declareTopic({
  id: "plan",
  work: "short",
  uses: "office",
  facts: FACTS,
  results: RESULTS,
  findings: FINDINGS,
  tables: {
    plan: ["day", "job", "place", "people", "work", "drive", "before"],
    left: ["job", "place", "reason", "placed_by"],
  },
  compute: (facts, books) => refuse(facts, books) ?? propose(facts, books),
});

function refuse({ day }: Facts, { crew }: Books): OutOfRange<F> | undefined {
  if (crew.members.length > 0) return undefined;
  return { kind: "out-of-range", fact: "day", value: day, reason: { code: "no_crew_book", data: {} } };
}

function propose({ day, days }: Facts, books: Books): Answer<Id, F> | OutOfRange<F> {
  const range = Array.from({ length: days }, (_, index) => addDays(day, index));
  const known = planCase(books, range);
  if (known.jobs.length === 0) return nothingToPlan(day);
  const { solve } = books;
  if (solve === undefined) throw new Error("the plan needs a solver, and none was lent");
  const solved = solvePlan(known, solve);
  if (solved === undefined)
    return { kind: "out-of-range", fact: "days", value: q("count", days), reason: { code: "too_long", data: {} } };
  const explained = { ...solved, left: solved.left.slice(0, MOST_EXPLAINED) };
  return answer(day, known, solved, explainPlan(known, explained, solve), books);
}

function nothingToPlan(day: string): Answer<Id, F> {
  return {
    kind: "answer",
    verdict: "info",
    headline: { code: "no_jobs", data: { day } },
    results: [numberResult("jobs_placed", q("count", 0), "n", {}, SOLVED)],
    findings: [],
    next: [{ say: { code: "step_ready", data: { day } }, request: `ready day=${day}` }],
  };
}

function answer(
  day: string,
  known: PlanCase,
  solved: Plan,
  explained: readonly Explanation[],
  books: Books,
): Answer<Id, F> {
  const [placed, left] = [q("count", solved.placed.length), q("count", solved.left.length)];
  const drive_s = solved.placed.reduce((sum, one) => sum + one.people.length * jobOf(known, one.job).drive_s, 0);
  return {
    kind: "answer",
    verdict: judge(solved),
    headline: headline(solved),
    results: [
      numberResult("jobs_placed", placed, "max n", {}, SOLVED),
      numberResult("jobs_left", left, "n", {}, SOLVED),
      numberResult("driving", q("time", drive_s), "min sum t", {}, SOLVED),
    ],
    findings: [
      { code: "proposed", data: {} },
      { code: "hours_are_habit", data: {} },
      { code: "drive_counted", data: {} },
    ],
    tables: [
      ...(solved.placed.length > 0 ? [tabulatePlaced(known, solved, books)] : []),
      ...(explained.length > 0 ? [tabulateLeft(explained, books)] : []),
    ],
    next: [
      { say: { code: "step_ready", data: { day } }, request: `ready day=${day}` },
      ...(known.days.length < MOST_DAYS
        ? [{ say: { code: "step_week" as const, data: { day } }, request: `plan day=${day} days=${MOST_DAYS}` }]
        : []),
    ],
  };
}

function judge({ placed, left }: Plan): "good" | "caution" | "no" {
  if (left.length === 0) return "good";
  return placed.length === 0 ? "no" : "caution";
}

function headline({ placed, left }: Plan): F {
  if (left.length === 0) return { code: "all_placed", data: { placed: q("count", placed.length) } };
  if (placed.length === 0) return { code: "none_placed", data: { left: q("count", left.length) } };
  return { code: "some_left", data: { placed: q("count", placed.length), left: q("count", left.length) } };
}

function jobOf(known: PlanCase, id: string): PlanCase["jobs"][number] {
  const job = known.jobs.find((one) => one.id === id);
  if (job === undefined) throw new Error(`the plan has no job ${id}`);
  return job;
}

function tabulatePlaced(known: PlanCase, { placed }: Plan, books: Books): AnswerTable<F> {
  const inOrder = [...placed].sort((a, b) => `${a.day} ${a.job}`.localeCompare(`${b.day} ${b.job}`));
  return {
    id: "plan",
    rows: inOrder.map(({ job, day, people }) => {
      const { work_s, drive_s } = jobOf(known, job);
      const who = people.map((person) => personName(person, books)).join(", ");
      return [day, job, placeOf(job, books), who, q("time", work_s), q("time", drive_s), sayBefore(job, books)];
    }),
  };
}

function placeOf(number: string, { jobs }: Books): string {
  return jobs.find((job) => job.number === number)?.place ?? "";
}

/** What the job must still have before its day. */
function sayBefore(number: string, { jobs }: Books): F {
  const job = jobs.find((one) => one.number === number);
  if (job === undefined || job.status === "called_back") return { code: "before_nothing", data: {} };
  const [noPermit, noSurvey] = [job.permit === undefined, job.status === "planned"];
  if (noPermit && noSurvey) return { code: "before_both", data: {} };
  if (noPermit) return { code: "before_permit", data: {} };
  return { code: noSurvey ? "before_survey" : "before_nothing", data: {} };
}

/** A line for each change that would place a job; where several are needed together, they stand under one another. */
function tabulateLeft(explained: readonly Explanation[], books: Books): AnswerTable<F> {
  const rows = explained.flatMap(({ job, alone, together }) => {
    const place = placeOf(job, books);
    if (alone.length > 0) return alone.map((change) => [job, place, reason(change, books), placedBy(change, books)]);
    const changes = together.map((change) => [
      job,
      place,
      { code: "reason_several" as const, data: {} },
      named(change, books),
    ]);
    const none: readonly F[] = [
      { code: "reason_unknown", data: {} },
      { code: "place_none", data: {} },
    ];
    return changes.length > 0 ? changes : [[job, place, ...none]];
  });
  return { id: "left", rows };
}

/** What stands in the way, by its name. */
function reason(change: Change, books: Books): F {
  switch (change.is) {
    case "skill":
      return { code: change.skill, data: {} };
    case "tool":
      return partWord(change.tool, books);
    case "part":
      return partWord(change.part, books);
    case "helper":
      return { code: "reason_people", data: {} };
    case "day_off":
      return { code: "reason_day_off", data: { name: personName(change.person, books) } };
    default:
      return { code: `reason_${change.is}`, data: {} };
  }
}

function placedBy(change: Change, books: Books): F {
  if (change.is === "day_off") return { code: "place_day_off", data: { name: personName(change.person, books) } };
  return { code: `place_${change.is}`, data: {} };
}

/** Among several changes each says what it is about, not only what is done about it. */
function named(change: Change, books: Books): F {
  return change.is === "skill" || change.is === "tool" || change.is === "part"
    ? reason(change, books)
    : placedBy(change, books);
}
