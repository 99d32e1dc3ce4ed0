import type { Solve } from "../ports/solver.ts";
import { crewSize, type Plan, type PlanCase, type PlanJob, type PlanPerson, solvePlan } from "./plan-model.ts";
import type { SkillId } from "./skills-table.ts";

/** One thing that could be otherwise. */
export type Change =
  | { readonly is: "skill"; readonly skill: SkillId }
  | { readonly is: "tool"; readonly tool: string }
  | { readonly is: "part"; readonly part: string }
  /** One more pair of hands, without licence or tools. */
  | { readonly is: "helper" }
  /** Longer hours for everybody. */
  | { readonly is: "hours" }
  /** Somebody goes to two jobs for several people in a day, so that one crew waits for the other. */
  | { readonly is: "two_shared" }
  /** Somebody comes in on a day off. */
  | { readonly is: "day_off"; readonly person: string }
  /** Another day of those asked about. */
  | { readonly is: "other_day" }
  /** Other people than those who are down for it. */
  | { readonly is: "other_crew" };
/** Why a job found no place. */
export interface Explanation {
  readonly job: string;
  /** Changes each of which alone would place it with all other jobs where they fit. */
  readonly alone: readonly Change[];
  /** Where no single change would: changes none of which can be left out, which together would. */
  readonly together: readonly Change[];
}

/**
 * For each job without a place: which single change would place it beside as many other jobs as are placed now, by solving
 * the plan again with that change; where none would, a smallest set that does, by taking back one change after another.
 */
export function explainPlan(known: PlanCase, plan: Plan, solve: Solve): readonly Explanation[] {
  const placed = plan.placed.map(({ job }) => job);
  return plan.left.flatMap((id): Explanation[] => {
    const job = known.jobs.find((one) => one.id === id);
    return job === undefined ? [] : [explain(known, job, placed, solve)];
  });
}

function explain(known: PlanCase, job: PlanJob, placed: readonly string[], solve: Solve): Explanation {
  const changes = possibleChanges(known, job);
  const works = (taken: readonly Change[]) =>
    solvePlan(
      taken.reduce((now, one) => withChange(now, job.id, one), known),
      solve,
      [...placed, job.id],
    ) !== undefined;
  const alone = changes.filter((change) => works([change]));
  if (alone.length > 0 || !works(changes)) return { job: job.id, alone, together: [] };
  const together = [...changes].sort(hardestFirst).reduce<readonly Change[]>((kept, change) => {
    const without = kept.filter((one) => one !== change);
    return works(without) ? without : kept;
  }, changes);
  return { job: job.id, alone, together };
}

/** What a company would rather not do is taken back first, so that what is left is as easy as it can be. */
const HARDEST_FIRST: readonly Change["is"][] = [
  "skill",
  "day_off",
  "hours",
  "two_shared",
  "other_crew",
  "other_day",
  "helper",
  "part",
  "tool",
];
function hardestFirst(a: Change, b: Change): number {
  return HARDEST_FIRST.indexOf(a.is) - HARDEST_FIRST.indexOf(b.is);
}

function possibleChanges({ people, days }: PlanCase, job: PlanJob): readonly Change[] {
  const off = people.filter((person) => job.days.some((day) => isOff(person, day)));
  return [
    ...job.skills.map((skill): Change => ({ is: "skill", skill })),
    ...job.tools.map((tool): Change => ({ is: "tool", tool })),
    ...job.parts.map(({ part }): Change => ({ is: "part", part })),
    ...(crewSize(job) > 1 ? [{ is: "helper" } as const, { is: "two_shared" } as const] : []),
    { is: "hours" },
    ...off.map(({ id }): Change => ({ is: "day_off", person: id })),
    ...(job.days.length < days.length ? [{ is: "other_day" } as const] : []),
    ...(job.named.length > 0 ? [{ is: "other_crew" } as const] : []),
  ];
}

function isOff({ days }: PlanPerson, day: string): boolean {
  const own = days[day];
  return own !== undefined && own.free_s === 0 && own.usual_s > 0;
}

/** Longer than any day. */
const NO_LIMIT_s = 1_000_000;
/** More than any shop holds. */
const PLENTY = 1_000_000;

function withChange(known: PlanCase, id: string, change: Change): PlanCase {
  switch (change.is) {
    case "skill":
      return withJob(known, id, (job) => ({ ...job, skills: job.skills.filter((one) => one !== change.skill) }));
    case "tool":
      return withJob(known, id, (job) => ({ ...job, tools: job.tools.filter((one) => one !== change.tool) }));
    case "part":
      return { ...known, stock: { ...known.stock, [change.part]: PLENTY } };
    case "helper":
      return { ...known, people: [...known.people, helper(known)] };
    case "hours":
      return withPeople(known, (person) => withHours(person, (own_s) => (own_s > 0 ? NO_LIMIT_s : 0)));
    case "two_shared":
      return { ...known, mostShared: 2 };
    case "day_off":
      return withPeople(known, (person) => (person.id === change.person ? withUsualHours(person) : person));
    case "other_day":
      return withJob(known, id, (job) => ({ ...job, days: known.days }));
    case "other_crew":
      return withJob(known, id, (job) => ({ ...job, named: [] }));
  }
}

function withJob(known: PlanCase, id: string, change: (job: PlanJob) => PlanJob): PlanCase {
  return { ...known, jobs: known.jobs.map((job) => (job.id === id ? change(job) : job)) };
}

function withPeople(known: PlanCase, change: (person: PlanPerson) => PlanPerson): PlanCase {
  return { ...known, people: known.people.map(change) };
}

function withHours(person: PlanPerson, hours_s: (own_s: number) => number): PlanPerson {
  const days = Object.entries(person.days).map(([day, own]) => [day, { ...own, free_s: hours_s(own.free_s) }] as const);
  return { ...person, days: Object.fromEntries(days) };
}

function withUsualHours(person: PlanPerson): PlanPerson {
  const days = Object.entries(person.days).map(([day, own]) => [day, { ...own, free_s: own.usual_s }] as const);
  return { ...person, days: Object.fromEntries(days) };
}

function helper({ days, people }: PlanCase): PlanPerson {
  const longest_s = Math.max(
    0,
    ...people.flatMap((person) => Object.values(person.days).map(({ usual_s }) => usual_s)),
  );
  const own = { free_s: longest_s, usual_s: longest_s, skills: new Set<SkillId>(), tools: new Set<string>() };
  return { id: "one-more", days: Object.fromEntries(days.map((day) => [day, own])) };
}
