import type { Books } from "../books/books.ts";
import { type AnswerTable, type FindingOf, type FindingSpecs, q, type TableCell } from "../declaration/answer.ts";
import type { Job } from "../jobs/job.ts";
import type { CrewMember } from "./crew.ts";
import { truckName } from "./crew-tables.ts";
import { namesOf, partWord, personName } from "./crew-words.ts";
import { weekdayOf } from "./days.ts";
import { jobNeeds } from "./job-needs.ts";
import { writeHours } from "./read-hours.ts";
import { carries, isAtWork, type Readiness, readyJob, readyPerson, stockOf } from "./ready.ts";
import { READY_WHYS, sayStanding } from "./ready-findings.ts";
import { SKILLS } from "./skills-table.ts";
import { isCalibrated, mayWork, standingOf } from "./validity.ts";
import { isDayOff } from "./work-hours.ts";

/** What was looked at, and what there is of it, as cells of a table. */
export const READY_CHECKS = {
  ...READY_WHYS,
  calibrated_tools: {},
  stock_on_truck: {},
  truck: {},
  people_down: {},
  work_and_drive: {},
  good_through: { until: "word" },
  no_end: {},
  is_done: {},
  not_asked: {},
  so_many_of: { have: "count", needed: "count" },
  job_named: { job: "word" },
  stands_ready: {},
  stands_care: { cares: "count" },
  stands_stopped: { stops: "count" },
} as const satisfies FindingSpecs;
export type ReadyCheck = FindingOf<typeof READY_CHECKS>;
type Row = readonly [what: TableCell<ReadyCheck>, stands: TableCell<ReadyCheck>];
const NOTHING = "—";

/** All that is looked at for a person: papers, training, tools, hours of that day, truck. */
export function tabulatePersonChecks(member: CrewMember, day: string, books: Books): AnswerTable<ReadyCheck> {
  const { credentials, training, tools, truck } = member;
  return {
    id: "checked",
    rows: [
      [{ code: "working_hours", data: {} }, hoursOn(member, day)],
      ...credentials.map((one): Row => [{ code: one.kind, data: {} }, sayHeld(standingOf(one, day))]),
      ...training.map(({ subject, until }): Row => {
        const counts = until === undefined || until >= day;
        return [{ code: "training", data: { subject } }, counts ? goodThrough(until) : sayStale(until)];
      }),
      ...tools.map((tool): Row => {
        const { calibratedUntil: until } = tool;
        const stands = isCalibrated(tool, day) ? goodThrough(until) : sayCalibration(until ?? "");
        return [partWord(tool.tool, books), stands];
      }),
      [{ code: "truck", data: {} }, truckName(truck, books)],
    ],
  };
}

/** All that is looked at for a job: papers, people with their hours, who may do what, tools, stock. */
export function tabulateJobChecks(job: Job, day: string, books: Books): AnswerTable<ReadyCheck> {
  const needs = jobNeeds(job, books);
  const crew = books.crew.members.filter(({ person }) => job.people.includes(person));
  const working = crew.filter((one) => isAtWork(one, day, books));
  const isCallBack = job.status === "called_back";
  const carried = needs.tools.filter((tool) => crew.some((one) => carries(one, tool, day))).length;
  return {
    id: "checked",
    rows: [
      [
        { code: "permit", data: {} },
        job.permit ?? (isCallBack ? { code: "not_asked", data: {} } : { code: "why_none", data: {} }),
      ],
      [{ code: "survey", data: {} }, isCallBack ? { code: "not_asked", data: {} } : surveyOf(job)],
      [{ code: "people_down", data: {} }, namesOf(job.people, books)],
      [{ code: "work_and_drive", data: {} }, q("time", needs.work_s + needs.drive_s)],
      ...crew.map((member): Row => [personName(member.person, books), hoursOn(member, day)]),
      ...needs.skills.map((skill): Row => {
        const able = working.filter((one) => mayWork(one, SKILLS[skill].kinds, day)).map(({ person }) => person);
        return [{ code: skill, data: {} }, namesOf(able, books)];
      }),
      [{ code: "calibrated_tools", data: {} }, soManyOf(carried, needs.tools.length)],
      ...(needs.parts.length === 0 ? [] : [stockRow(needs.parts, crew, books)]),
    ],
  };
}

function stockRow(parts: ReturnType<typeof jobNeeds>["parts"], crew: readonly CrewMember[], books: Books): Row {
  const stock = stockOf(crew, books.crew);
  const enough = parts.filter(({ part, amount }) => (stock[part] ?? 0) >= amount).length;
  return [{ code: "stock_on_truck", data: {} }, soManyOf(enough, parts.length)];
}

/** How everybody of the crew and every job of a day stand. */
export function tabulateDay(day: string, jobs: readonly Job[], books: Books): AnswerTable<ReadyCheck> {
  return {
    id: "day",
    rows: [
      ...jobs.map(
        (job): Row => [{ code: "job_named", data: { job: job.number } }, sayVerdict(readyJob(job, day, books))],
      ),
      ...books.crew.members.map((member): Row => {
        const stands = isAtWork(member, day, books)
          ? sayVerdict(readyPerson(member, day, books))
          : hoursOn(member, day);
        return [personName(member.person, books), stands];
      }),
    ],
  };
}

function sayVerdict({ verdict, lacks }: Readiness): ReadyCheck {
  const stops = lacks.filter((lack) => lack.stops).length;
  if (verdict === "no") return { code: "stands_stopped", data: { stops: q("count", stops) } };
  if (verdict === "good") return { code: "stands_ready", data: {} };
  return { code: "stands_care", data: { cares: q("count", lacks.length) } };
}

function surveyOf({ status }: Job): ReadyCheck {
  return status === "planned" ? { code: "why_none", data: {} } : { code: "is_done", data: {} };
}

function hoursOn(member: CrewMember, day: string): TableCell<ReadyCheck> {
  if (isDayOff(member, day)) return { code: "why_off", data: {} };
  const shifts = member.hours[weekdayOf(day)] ?? [];
  return shifts.length === 0 ? { code: "why_no_hours", data: {} } : writeHours(shifts);
}

function sayHeld(standing: ReturnType<typeof standingOf>): ReadyCheck {
  return standing.is === "valid" ? goodThrough(standing.until) : sayStanding(standing);
}

function goodThrough(until: string | undefined): ReadyCheck {
  return until === undefined ? { code: "no_end", data: {} } : { code: "good_through", data: { until } };
}

function sayStale(until: string | undefined): ReadyCheck {
  return { code: "why_training", data: { until: until ?? NOTHING } };
}

function sayCalibration(until: string): ReadyCheck {
  return { code: "why_calibration", data: { until } };
}

function soManyOf(have: number, needed: number): ReadyCheck {
  return { code: "so_many_of", data: { have: q("count", have), needed: q("count", needed) } };
}
