import type { Books } from "../books/books.ts";
import type { Job } from "../jobs/job.ts";
import type { CrewMember } from "./crew.ts";
import { type JobNeeds, jobNeeds } from "./job-needs.ts";
import { WAITING } from "./plan-case.ts";
import { addStock, carries } from "./ready.ts";
import { SKILLS, type SkillId } from "./skills-table.ts";
import { mayWork } from "./validity.ts";
import { isDayOff, workTime_s } from "./work-hours.ts";
import type { ShownPlacement } from "./written-plan.ts";

/** Why an assignment cannot be confirmed, of one job. */
export type PlanFault = { readonly job: string } & (
  | { readonly is: "unknown_job" | "changed" | "not_waiting" | "twice" | "day_passed" | "nobody" | "not_there" }
  | { readonly is: "unknown_person" | "off" | "no_hours" | "hours" | "two_shared"; readonly person: string }
  | { readonly is: "skill"; readonly skill: SkillId }
  | { readonly is: "tool"; readonly tool: string }
  | { readonly is: "part"; readonly part: string }
  | { readonly is: "too_few"; readonly needed: number; readonly given: number }
);

/** A job on a day with people, whether it is being confirmed or was planned before. */
interface Placed {
  readonly job: Job;
  readonly day: string;
  readonly people: readonly string[];
  readonly needs: JobNeeds;
}

/**
 * Whether assignments still hold: nobody changed the jobs since they were shown, everybody is at work and allowed, nobody
 * works longer than their hours or is on two jobs for several people, and there is enough of every part. Jobs that are
 * planned for the same days count too.
 * @returns what stands in the way, job by job; nothing where all holds
 */
export function checkPlan(placements: readonly ShownPlacement[], books: Books): readonly PlanFault[] {
  const own = placements.flatMap((one, index) => recordFaults(one, placements.slice(0, index), books));
  if (own.length > 0) return own;
  const placed = placements.flatMap(({ job: number, day, people }): Placed[] => {
    const job = books.jobs.find((one) => one.number === number);
    return job === undefined ? [] : [{ job, day, people, needs: jobNeeds(job, books) }];
  });
  const all = [...placed, ...plannedBefore(placed, books)];
  return [
    ...placed.flatMap((one) => crewFaults(one, books)),
    ...placed.flatMap((one) => dayFaults(one, all, books)),
    ...partFaults(placed, all, books),
  ];
}

/** What the record says against it, before anything is counted. */
function recordFaults(
  { job: number, day, people, version }: ShownPlacement,
  before: readonly ShownPlacement[],
  { jobs, crew, today = "" }: Books,
): readonly PlanFault[] {
  const job = jobs.find((one) => one.number === number);
  if (job === undefined) return [{ job: number, is: "unknown_job" }];
  if (version !== undefined && version !== job.version) return [{ job: number, is: "changed" }];
  if (!WAITING.includes(job.status)) return [{ job: number, is: "not_waiting" }];
  if (before.some((one) => one.job === number)) return [{ job: number, is: "twice" }];
  if (day < today) return [{ job: number, is: "day_passed" }];
  if (people.length === 0) return [{ job: number, is: "nobody" }];
  return people
    .filter((person) => !crew.members.some((member) => member.person === person))
    .map((person) => ({ job: number, is: "unknown_person" as const, person }));
}

/** Jobs that stand planned for the same days and are not part of this plan. */
function plannedBefore(placed: readonly Placed[], books: Books): readonly Placed[] {
  const days = new Set(placed.map(({ day }) => day));
  const own = new Set(placed.map(({ job }) => job.number));
  const isTaken = ({ number, status, day }: Job) =>
    (WAITING.includes(status) || status === "under_way") && day !== undefined && days.has(day) && !own.has(number);
  return books.jobs
    .filter(isTaken)
    .map((job) => ({ job, day: job.day ?? "", people: job.people, needs: jobNeeds(job, books) }));
}

function crewFaults({ job: { number: job }, day, people, needs }: Placed, books: Books): readonly PlanFault[] {
  const crew = membersOf(people, books);
  const away = crew.flatMap((member): PlanFault[] => {
    if (workTime_s(member, day, books.company.timeZone) > 0) return [];
    return [{ job, is: isDayOff(member, day) ? "off" : "no_hours", person: member.person }];
  });
  const skills = needs.skills.filter((skill) => !crew.some((member) => mayWork(member, SKILLS[skill].kinds, day)));
  const tools = needs.tools.filter((tool) => !crew.some((member) => carries(member, tool, day)));
  return [
    ...away,
    ...(people.length < needs.people
      ? [{ job, is: "too_few" as const, needed: needs.people, given: people.length }]
      : []),
    ...skills.map((skill) => ({ job, is: "skill" as const, skill })),
    ...tools.map((tool) => ({ job, is: "tool" as const, tool })),
  ];
}

function membersOf(people: readonly string[], { crew }: Books): readonly CrewMember[] {
  return crew.members.filter(({ person }) => people.includes(person));
}

/** Hours of each of the people, and jobs for several, over everything that they have on that day. */
function dayFaults(
  { job: { number: job }, day, people }: Placed,
  all: readonly Placed[],
  books: Books,
): readonly PlanFault[] {
  return membersOf(people, books).flatMap((member): PlanFault[] => {
    const { person } = member;
    const theirs = all.filter((one) => one.day === day && one.people.includes(person));
    const busy_s = theirs.reduce((sum, { needs }) => sum + needs.work_s + needs.drive_s, 0);
    const free_s = workTime_s(member, day, books.company.timeZone);
    const shared = theirs.filter((one) => Math.max(one.people.length, one.needs.people) > 1);
    return [
      ...(free_s > 0 && Math.round(busy_s) > Math.round(free_s) ? [{ job, is: "hours" as const, person }] : []),
      ...(shared.length > 1 ? [{ job, is: "two_shared" as const, person }] : []),
    ];
  });
}

/** Amounts that are sums of lengths differ in the last digits. */
const ROUNDING = 1e-6;

function partFaults(placed: readonly Placed[], all: readonly Placed[], { crew }: Books): readonly PlanFault[] {
  const stock = addStock([crew.trucks.shop, ...crew.trucks.trucks.map((truck) => truck.stock)]);
  const used = addStock(all.map(({ needs }) => Object.fromEntries(needs.parts.map((one) => [one.part, one.amount]))));
  const short = Object.entries(used).filter(([part, amount]) => amount > (stock[part] ?? 0) + ROUNDING);
  return short.flatMap(([part]) =>
    placed
      .filter(({ needs }) => needs.parts.some((one) => one.part === part))
      .map(({ job }) => ({ job: job.number, is: "part" as const, part })),
  );
}
