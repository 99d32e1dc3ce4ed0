import { describe, expect, test } from "vitest";
import { openHighsSolver } from "../../adapters/solver/highs-solver.ts";
import { buildPlanModel, type PlanCase, solvePlan } from "../../src/crew/plan-model.ts";
import type { ChoiceModel } from "../../src/ports/solver.ts";
import { MON, personDay, planJob, planOf, planPerson, TUE } from "../support/plan-cases.ts";

const solve = await openHighsSolver();
const PLUMBER = personDay(8.5, ["skill_plumbing", "skill_driving"]);
const HELPER = personDay(8.5, []);

const placedIn = (known: PlanCase) =>
  solvePlan(known, solve)?.placed.map(({ job, day, people }) => `${job} ${day} ${people.join("+")}`);

describe("a plan", () => {
  test("gives a job to whoever may do it", () => {
    const known = planOf([planJob("1")], [planPerson("ann", HELPER), planPerson("bo", PLUMBER)]);
    expect(placedIn(known)).toEqual([`1 ${MON} bo`]);
  });

  test("places two short jobs with one person, and not a third that is over their hours", () => {
    const jobs = ["1", "2", "3"].map((id) => planJob(id, { work_s: 3.5 * 3600 }));
    const plan = solvePlan(planOf(jobs, [planPerson("bo", PLUMBER)]), solve);
    expect([plan?.placed.length, plan?.left.length]).toEqual([2, 1]);
  });

  test("hours that are used to the last minute are enough, and a minute less is not", () => {
    const known = (hours: number) => planOf([planJob("1")], [planPerson("bo", personDay(hours, ["skill_plumbing"]))]);
    expect(placedIn(known(4.5))).toHaveLength(1);
    expect(placedIn(known(4.5 - 1 / 60))).toHaveLength(0);
  });

  test("sends two where two are needed, and nobody to two such jobs in a day", () => {
    const jobs = ["1", "2"].map((id) => planJob(id, { people: 2, work_s: 3600 }));
    const people = [planPerson("ann", HELPER), planPerson("bo", PLUMBER)];
    expect(placedIn(planOf(jobs, people))).toEqual([`1 ${MON} ann+bo`]);
    const week = planOf(
      jobs.map((job) => ({ ...job, days: [MON, TUE] })),
      people,
      { days: [MON, TUE] },
    );
    expect(placedIn(week)).toHaveLength(2);
  });

  test("keeps those who are down for a job, and puts a promised job before one that can wait", () => {
    const people = [planPerson("ann", PLUMBER), planPerson("bo", PLUMBER)];
    expect(placedIn(planOf([planJob("1", { named: ["bo"] })], people))).toEqual([`1 ${MON} bo`]);
    const jobs = [
      planJob("1", { work_s: 3 * 3600 }),
      planJob("2", { work_s: 3 * 3600 }),
      planJob("3", { work_s: 7 * 3600, isPromised: true }),
    ];
    expect(placedIn(planOf(jobs, [planPerson("bo", PLUMBER)]))).toEqual([`3 ${MON} bo`]);
  });

  test("uses no part twice", () => {
    const jobs = ["1", "2"].map((id) => planJob(id, { work_s: 3600, parts: [{ part: "mixing-valve", amount: 1 }] }));
    const known = (stock: number) => planOf(jobs, [planPerson("bo", PLUMBER)], { stock: { "mixing-valve": stock } });
    expect(placedIn(known(1))).toHaveLength(1);
    expect(placedIn(known(2))).toHaveLength(2);
  });

  test("keeps to the day that a job has, and does the others as early as it can", () => {
    const jobs = [planJob("1", { days: [TUE] }), planJob("2", { days: [MON, TUE] })];
    const known = planOf(jobs, [planPerson("bo", PLUMBER)], { days: [MON, TUE] });
    expect(placedIn(known)).toEqual([`1 ${TUE} bo`, `2 ${MON} bo`]);
  });

  test("is the same whenever it is asked for", () => {
    const jobs = ["1", "2", "3", "4"].map((id) => planJob(id, { days: [MON, TUE] }));
    const known = planOf(
      jobs,
      ["ann", "bo", "cy"].map((id) => planPerson(id, PLUMBER)),
      { days: [MON, TUE] },
    );
    expect(placedIn(known)).toEqual(placedIn(known));
  });
});

/** The least cost of all ways to choose, found by trying every one of them. */
function tryAll({ choices, rows }: ChoiceModel): number {
  let best = Number.POSITIVE_INFINITY;
  for (let way = 0; way < 2 ** choices.length; way++) {
    const taken = new Map(choices.map(({ name }, index) => [name, (way >> index) & 1]));
    const isKept = rows.every(({ terms, min = Number.NEGATIVE_INFINITY, max = Number.POSITIVE_INFINITY }) => {
      const sum = terms.reduce((total, [name, factor]) => total + factor * (taken.get(name) ?? 0), 0);
      return sum >= min && sum <= max;
    });
    if (isKept)
      best = Math.min(
        best,
        choices.reduce((sum, { name, cost }) => sum + cost * (taken.get(name) ?? 0), 0),
      );
  }
  return best;
}

/** Plans counted by hand of the rules in words, not of the rows: every job to every crew on every day. */
function countBest({ jobs, people, days, stock }: PlanCase): number {
  const options = jobs.map((job) => [
    undefined,
    ...job.days.flatMap((day) =>
      subsets(
        people.map(({ id }) => id),
        job.people,
      ).map((crew) => ({ day, crew })),
    ),
  ]);
  const fits = (way: readonly ({ day: string; crew: readonly string[] } | undefined)[]) => {
    const done = jobs.flatMap((job, index) => (way[index] === undefined ? [] : [{ job, ...way[index] }]));
    const skilled = done.every(({ job, day, crew }) =>
      job.skills.every((skill) => crew.some((id) => people.find((one) => one.id === id)?.days[day]?.skills.has(skill))),
    );
    const inHours = people.every(({ id, days: own }) =>
      days.every((day) => {
        const mine = done.filter((one) => one.day === day && one.crew.includes(id));
        const time_s = mine.reduce((sum, { job }) => sum + job.work_s + job.drive_s, 0);
        return time_s <= (own[day]?.free_s ?? 0) && mine.filter(({ job }) => job.people > 1).length <= 1;
      }),
    );
    const used = done.flatMap(({ job }) => job.parts).reduce((sum, { amount }) => sum + amount, 0);
    return skilled && inHours && used <= (stock["valve"] ?? 0);
  };
  const ways = options.reduce<(typeof options)[number][]>(
    (soFar, one) => soFar.flatMap((way) => one.map((choice) => [...way, choice])),
    [[]],
  );
  return Math.max(...ways.filter(fits).map((way) => way.filter((one) => one !== undefined).length));
}

function subsets(ids: readonly string[], size: number): readonly (readonly string[])[] {
  if (size === 0) return [[]];
  return ids.flatMap((id, at) => subsets(ids.slice(at + 1), size - 1).map((rest) => [id, ...rest]));
}

describe("against every way there is", () => {
  const CASES: readonly (readonly [string, PlanCase])[] = [
    [
      "one day, two people",
      planOf(
        [planJob("1"), planJob("2", { people: 2, work_s: 7200 })],
        [planPerson("ann", HELPER), planPerson("bo", PLUMBER)],
      ),
    ],
    [
      "two days, one part",
      planOf(
        ["1", "2"].map((id) => planJob(id, { days: [MON, TUE], parts: [{ part: "valve", amount: 1 }] })),
        [planPerson("bo", PLUMBER), planPerson("cy", personDay(5, ["skill_plumbing"]))],
        { days: [MON, TUE], stock: { valve: 1 } },
      ),
    ],
    [
      "three jobs, hours for two of them",
      planOf(
        [
          planJob("1", { work_s: 14400 }),
          planJob("2", { work_s: 10800 }),
          planJob("3", { work_s: 7200, skills: ["skill_gas"] }),
        ],
        [planPerson("ann", personDay(6, ["skill_gas"])), planPerson("bo", PLUMBER)],
      ),
    ],
  ];
  test.each(CASES)("%s: no way costs less", (_, known) => {
    const solution = solve(buildPlanModel(known));
    expect(solution.kind === "optimal" && solution.cost).toBe(tryAll(buildPlanModel(known)));
  });

  test.each(CASES)("%s: by the rules in words no way places more jobs", (_, known) => {
    expect(solvePlan(known, solve)?.placed.length).toBe(countBest(known));
  });
});
