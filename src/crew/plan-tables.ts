import type { Books } from "../books/books.ts";
import type { AnswerTable, FindingOf, FindingSpecs } from "../declaration/answer.ts";
import { q } from "../declaration/answer.ts";
import { partWord, personName } from "./crew-words.ts";
import type { Change, Explanation } from "./explain-plan.ts";
import { PLAN_FAULTS } from "./plan-faults.ts";
import type { Plan, PlanCase } from "./plan-model.ts";

/** Everything that a plan is answered with. */
export const PLAN_FINDINGS = {
  ...PLAN_FAULTS,
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
  confirmed: { jobs: "count" },
  withdrawn: { jobs: "count" },
  not_confirmed: {},
  stands_already: {},
  for_office: {},
  in_chat: {},
  unreadable: { typed: "word" },
  step_confirm: {},
  step_confirm_day: { day: "word" },
  step_withdraw: {},
  step_ready: { day: "word" },
  step_week: { day: "word" },
} as const satisfies FindingSpecs;
export type PlanFinding = FindingOf<typeof PLAN_FINDINGS>;
type F = PlanFinding;

export function jobOf(known: PlanCase, id: string): PlanCase["jobs"][number] {
  const job = known.jobs.find((one) => one.id === id);
  if (job === undefined) throw new Error(`the plan has no job ${id}`);
  return job;
}

export function tabulatePlaced(known: PlanCase, { placed }: Plan, books: Books): AnswerTable<F> {
  const inOrder = [...placed].sort((a, b) => `${a.day} ${a.job}`.localeCompare(`${b.day} ${b.job}`));
  return {
    id: "plan",
    rows: inOrder.map(({ job, day, people }) => {
      const { work_s, drive_s } = jobOf(known, job);
      return [
        day,
        job,
        placeOf(job, books),
        sayNames(people, books),
        q("time", work_s),
        q("time", drive_s),
        sayBefore(job, books),
      ];
    }),
  };
}

export function sayNames(people: readonly string[], books: Books): string {
  return people.map((person) => personName(person, books)).join(", ");
}

export function placeOf(number: string, { jobs }: Books): string {
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
export function tabulateLeft(explained: readonly Explanation[], books: Books): AnswerTable<F> {
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
