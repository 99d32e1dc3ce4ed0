import type { ChoiceModel, Row, Solve } from "../ports/solver.ts";
import type { Stock } from "./crew.ts";
import type { JobNeeds } from "./job-needs.ts";
import type { SkillId } from "./skills-table.ts";

/** A job that waits for a day and for people. */
export interface PlanJob extends JobNeeds {
  readonly id: string;
  /** Days on which it may be done. */
  readonly days: readonly string[];
  /** True: promised for its day, so that no job without a day takes its place. */
  readonly isPromised: boolean;
  /** People who are down for it already and stay. */
  readonly named: readonly string[];
}
/** What somebody can do on one day. */
export interface PersonDay {
  /** Hours that are theirs to give [s]; none on a day off. */
  readonly free_s: number;
  /** Hours that they would have, were it no day off [s]. */
  readonly usual_s: number;
  readonly skills: ReadonlySet<SkillId>;
  readonly tools: ReadonlySet<string>;
}
export interface PlanPerson {
  readonly id: string;
  readonly days: Readonly<Record<string, PersonDay>>;
}
/** Everything that a plan is made of. */
export interface PlanCase {
  readonly jobs: readonly PlanJob[];
  readonly people: readonly PlanPerson[];
  /** Earliest first. */
  readonly days: readonly string[];
  /** What lies in the shop and in all trucks together; what a crew needs is loaded in the morning. */
  readonly stock: Stock;
  /** How many jobs for several people somebody may have in a day; one where nobody says otherwise. */
  readonly mostShared?: number;
}
export interface Placement {
  readonly job: string;
  readonly day: string;
  readonly people: readonly string[];
}
export interface Plan {
  readonly placed: readonly Placement[];
  /** Jobs that found no place, in the order of the case. */
  readonly left: readonly string[];
}

const MINUTE_s = 60;
const placeName = (job: number, day: number) => `y${job}_${day}`;
const goesName = (person: number, job: number, day: number) => `x${person}_${job}_${day}`;

/**
 * The plan as choices of yes or no. First the jobs that are promised are placed, then as many others as possible; then people drive as little as possible and
 * jobs come as early as possible; a day later weighs as much as a minute of driving.
 *
 * Rows: a job has at most one day; its crew has just the number it takes, with everybody named for it; each skill and tool
 * is with somebody of the crew; nobody works and drives longer than their hours; no part is used twice.
 * @param mustPlace ids of jobs that must be placed, whatever it costs
 * @limits Each job counts the way from the yard and back, so a plan never drives more than it says. Jobs that take several
 * people are done first thing, so somebody has at most one of them a day; then crews never wait for each other.
 */
export function buildPlanModel(known: PlanCase, mustPlace: readonly string[] = []): ChoiceModel {
  const spots = listSpots(known);
  const driving = known.jobs.map(({ drive_s, people }) => Math.round(drive_s / MINUTE_s) * people);
  // One more job outweighs all driving and all waiting together.
  const most = driving.reduce((sum, minutes) => sum + minutes + known.days.length, 1);
  const choices = spots.flatMap(({ job, day, goers }) => [
    { name: placeName(job, day), cost: day - most * weightOf(known, job) },
    ...goers.map((person) => ({
      name: goesName(person, job, day),
      cost: Math.round((known.jobs[job]?.drive_s ?? 0) / MINUTE_s),
    })),
  ]);
  return {
    choices,
    rows: [
      ...known.jobs.map((job, index) => dayRow(spots, index, mustPlace.includes(job.id))),
      ...spots.flatMap((spot) => crewRows(known, spot)),
      ...known.people.flatMap((_, person) => known.days.flatMap((_day, day) => personRows(known, spots, person, day))),
      ...partRows(known, spots),
    ],
  };
}

/** A promised job outweighs all others together. */
function weightOf({ jobs }: PlanCase, job: number): number {
  return jobs[job]?.isPromised === true ? jobs.length + 1 : 1;
}

/** A job on a day that it may be done on, with the people who work then. */
interface Spot {
  readonly job: number;
  readonly day: number;
  readonly goers: readonly number[];
}

function listSpots({ jobs, people, days }: PlanCase): readonly Spot[] {
  return jobs.flatMap((job, at) =>
    days.flatMap((day, dayAt): Spot[] => {
      if (!job.days.includes(day)) return [];
      const goers = people.flatMap(({ days: own }, person) => ((own[day]?.free_s ?? 0) > 0 ? [person] : []));
      return [{ job: at, day: dayAt, goers }];
    }),
  );
}

function dayRow(spots: readonly Spot[], job: number, must: boolean): Row {
  const own = spots.filter((spot) => spot.job === job);
  return { terms: own.map(({ day }) => [placeName(job, day), 1]), max: 1, ...(must && { min: 1 }) };
}

function crewRows({ jobs, people, days }: PlanCase, { job: at, day: dayAt, goers }: Spot): readonly Row[] {
  const job = jobs[at];
  const day = days[dayAt];
  if (job === undefined || day === undefined) return [];
  const place = placeName(at, dayAt);
  const size = Math.max(job.people, job.named.length);
  const atLeastOne = (able: (own: PersonDay) => boolean): Row => {
    const who = goers.filter((person) => {
      const own = people[person]?.days[day];
      return own !== undefined && able(own);
    });
    return { terms: [...who.map((person) => [goesName(person, at, dayAt), 1] as const), [place, -1]], min: 0 };
  };
  return [
    { terms: [...goers.map((person) => [goesName(person, at, dayAt), 1] as const), [place, -size]], min: 0, max: 0 },
    ...job.named.map((id): Row => {
      const person = people.findIndex((one) => one.id === id);
      const goes = goers.includes(person) ? [[goesName(person, at, dayAt), 1] as const] : [];
      return { terms: [...goes, [place, -1]], min: 0 };
    }),
    ...job.skills.map((skill) => atLeastOne(({ skills }) => skills.has(skill))),
    ...job.tools.map((tool) => atLeastOne(({ tools }) => tools.has(tool))),
  ];
}

function personRows(
  { jobs, people, days, mostShared = 1 }: PlanCase,
  spots: readonly Spot[],
  person: number,
  day: number,
): readonly Row[] {
  const own = spots.filter((spot) => spot.day === day && spot.goers.includes(person));
  if (own.length === 0) return [];
  const term = ({ job }: Spot, factor: number) => [goesName(person, job, day), factor] as const;
  const time_s = ({ job }: Spot) => (jobs[job]?.work_s ?? 0) + (jobs[job]?.drive_s ?? 0);
  const shared = own.filter(({ job }) => crewSize(jobs[job]) > 1);
  const free_s = people[person]?.days[days[day] ?? ""]?.free_s ?? 0;
  return [
    { terms: own.map((spot) => term(spot, Math.round(time_s(spot)))), max: Math.round(free_s) },
    ...(shared.length > mostShared ? [{ terms: shared.map((spot) => term(spot, 1)), max: mostShared }] : []),
  ];
}

/** How many people go to a job. */
export function crewSize(job: PlanJob | undefined): number {
  return job === undefined ? 0 : Math.max(job.people, job.named.length);
}

function partRows({ jobs, stock }: PlanCase, spots: readonly Spot[]): readonly Row[] {
  const parts = new Set(jobs.flatMap((job) => job.parts.map(({ part }) => part)));
  return [...parts].map((part): Row => {
    const uses = spots.map(
      ({ job, day }) => [placeName(job, day), jobs[job]?.parts.find((one) => one.part === part)?.amount ?? 0] as const,
    );
    return { terms: uses.filter(([, amount]) => amount > 0), max: stock[part] ?? 0 };
  });
}

/** What a solver took, as a plan; nothing where it found none. */
export function solvePlan(known: PlanCase, solve: Solve, mustPlace: readonly string[] = []): Plan | undefined {
  const solution = solve(buildPlanModel(known, mustPlace));
  if (solution.kind !== "optimal") return undefined;
  const placed = listSpots(known).flatMap(({ job, day, goers }): Placement[] => {
    const [id, on] = [known.jobs[job]?.id, known.days[day]];
    if (id === undefined || on === undefined || !solution.taken.has(placeName(job, day))) return [];
    const who = goers.filter((person) => solution.taken.has(goesName(person, job, day)));
    return [{ job: id, day: on, people: who.flatMap((person) => known.people[person]?.id ?? []) }];
  });
  const done = new Set(placed.map(({ job }) => job));
  return { placed, left: known.jobs.filter(({ id }) => !done.has(id)).map(({ id }) => id) };
}
