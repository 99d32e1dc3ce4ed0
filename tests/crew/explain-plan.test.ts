import { expect, test } from "vitest";
import { openHighsSolver } from "../../adapters/solver/highs-solver.ts";
import { explainPlan } from "../../src/crew/explain-plan.ts";
import { type PlanCase, solvePlan } from "../../src/crew/plan-model.ts";
import { MON, personDay, planJob, planOf, planPerson, TUE } from "../support/plan-cases.ts";

const solve = await openHighsSolver();
const PLUMBER = personDay(8.5, ["skill_plumbing"]);

function explain(known: PlanCase) {
  const plan = solvePlan(known, solve);
  if (plan === undefined) throw new Error("no plan");
  return explainPlan(known, plan, solve);
}

const ALONE: readonly (readonly [string, PlanCase, readonly object[]])[] = [
  [
    "nobody holds the skill",
    planOf([planJob("1", { skills: ["skill_plumbing", "skill_gas"] })], [planPerson("bo", PLUMBER)]),
    [{ is: "skill", skill: "skill_gas" }],
  ],
  [
    "nobody carries the tool",
    planOf([planJob("1", { tools: ["manometer"] })], [planPerson("bo", PLUMBER)]),
    [{ is: "tool", tool: "manometer" }],
  ],
  [
    "the part is out of stock",
    planOf([planJob("1", { parts: [{ part: "drain-pan", amount: 1 }] })], [planPerson("bo", PLUMBER)]),
    [{ is: "part", part: "drain-pan" }],
  ],
  [
    "one pair of hands is too few",
    planOf([planJob("1", { people: 2 })], [planPerson("bo", PLUMBER)]),
    [{ is: "helper" }],
  ],
  [
    "the day is too short",
    planOf([planJob("1", { work_s: 9 * 3600 })], [planPerson("bo", PLUMBER)]),
    [{ is: "hours" }],
  ],
  [
    "the only plumber is off",
    planOf([planJob("1")], [planPerson("bo", { ...PLUMBER, free_s: 0 })]),
    [{ is: "day_off", person: "bo" }],
  ],
  [
    "who is down for it may not do it",
    planOf([planJob("1", { named: ["ann"] })], [planPerson("ann", personDay(8.5, [])), planPerson("bo", PLUMBER)]),
    [{ is: "skill", skill: "skill_plumbing" }, { is: "other_crew" }],
  ],
  [
    "its day is full and another is free",
    planOf(
      [planJob("1", { isPromised: true, work_s: 6 * 3600 }), planJob("2", { days: [MON], work_s: 6 * 3600 })],
      [planPerson("bo", PLUMBER)],
      { days: [MON, TUE] },
    ),
    [{ is: "hours" }, { is: "other_day" }],
  ],
];
test.each(ALONE)("%s: that alone is named", (_, known, alone) => {
  expect(explain(known)).toEqual([{ job: known.jobs.at(-1)?.id, alone, together: [] }]);
});

test("two things missing are named together, and neither alone", () => {
  const job = planJob("1", { skills: ["skill_plumbing", "skill_gas"], tools: ["manometer"] });
  expect(explain(planOf([job], [planPerson("bo", PLUMBER)]))).toEqual([
    {
      job: "1",
      alone: [],
      together: expect.arrayContaining([
        { is: "skill", skill: "skill_gas" },
        { is: "tool", tool: "manometer" },
      ]),
    },
  ]);
});

test("a plan with every job in its place has nothing to explain", () => {
  expect(explain(planOf([planJob("1")], [planPerson("bo", PLUMBER)]))).toEqual([]);
});
