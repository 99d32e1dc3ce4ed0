import type { Books } from "../books/books.ts";
import type { Job } from "../jobs/job.ts";
import type { CrewMember } from "./crew.ts";
import { weekdayOf } from "./days.ts";
import { jobNeeds } from "./job-needs.ts";
import type { PersonDay, PlanCase, PlanJob, PlanPerson } from "./plan-model.ts";
import { addStock, carries } from "./ready.ts";
import { SKILLS, type SkillId } from "./skills-table.ts";
import { mayWork } from "./validity.ts";
import { workTime_s } from "./work-hours.ts";

/** Jobs that still wait to be done. */
export const WAITING: readonly Job["status"][] = ["planned", "surveyed", "called_back"];

/**
 * What a plan for some days is made of: the jobs that wait for one of these days or for any day, and everybody in the crew
 * book with what they may do, carry and give on each day. Jobs and people stand by their ids, so the same books always come
 * to the same plan.
 */
export function planCase(books: Books, days: readonly string[]): PlanCase {
  const { members, trucks } = books.crew;
  return {
    days,
    jobs: waitingJobs(books, days).map((job) => planJob(job, days, books)),
    people: [...members].sort(byPerson).map((member) => planPerson(member, days, books)),
    stock: addStock([trucks.shop, ...trucks.trucks.map(({ stock }) => stock)]),
  };
}

/** The jobs that may be done on one of these days, by number. */
export function waitingJobs({ jobs }: Books, days: readonly string[]): readonly Job[] {
  const waiting = jobs.filter(
    ({ status, day }) => WAITING.includes(status) && (day === undefined || days.includes(day)),
  );
  return waiting.sort((a, b) => (a.number < b.number ? -1 : 1));
}

function planJob(job: Job, days: readonly string[], books: Books): PlanJob {
  const known = new Set(books.crew.members.map(({ person }) => person));
  return {
    ...jobNeeds(job, books),
    id: job.number,
    days: job.day === undefined ? days : [job.day],
    isPromised: job.day !== undefined,
    named: job.people.filter((person) => known.has(person)),
  };
}

function planPerson(member: CrewMember, days: readonly string[], books: Books): PlanPerson {
  return {
    id: member.person,
    days: Object.fromEntries(days.map((day) => [day, personDay(member, day, books)])),
  };
}

function personDay(member: CrewMember, day: string, { company, crew }: Books): PersonDay {
  const tools = crew.members.flatMap((one) => one.tools.map(({ tool }) => tool));
  const withoutDaysOff = { ...member, daysOff: [] };
  return {
    free_s: workTime_s(member, day, company.timeZone),
    usual_s: member.hours[weekdayOf(day)] === undefined ? 0 : workTime_s(withoutDaysOff, day, company.timeZone),
    skills: new Set(skillIds().filter((skill) => mayWork(member, SKILLS[skill].kinds, day))),
    tools: new Set(tools.filter((tool) => carries(member, tool, day))),
  };
}

function skillIds(): readonly SkillId[] {
  return Object.keys(SKILLS).filter((id): id is SkillId => Object.hasOwn(SKILLS, id));
}

function byPerson(a: CrewMember, b: CrewMember): number {
  return a.person < b.person ? -1 : 1;
}
