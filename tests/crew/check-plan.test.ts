import fc from "fast-check";
import { expect, test } from "vitest";
import { openHighsSolver } from "../../adapters/solver/highs-solver.ts";
import { checkPlan } from "../../src/crew/check-plan.ts";
import { planCase } from "../../src/crew/plan-case.ts";
import { solvePlan } from "../../src/crew/plan-model.ts";
import { readPlan, writePlan } from "../../src/crew/written-plan.ts";
import { seedBooks } from "../support/ask-with-seeds.ts";

const solve = await openHighsSolver();
const books = { ...seedBooks, today: "2026-11-25" };
const days = ["2026-11-30", "2026-12-01", "2026-12-02", "2026-12-03", "2026-12-04"];

test("whatever the solver proposes can be confirmed, whoever is away", () => {
  const away = fc.subarray(books.crew.members.flatMap(({ person }) => days.map((day) => `${person} ${day}`)));
  fc.assert(
    fc.property(away, (off) => {
      const members = books.crew.members.map((member) => ({
        ...member,
        daysOff: days.filter((day) => off.includes(`${member.person} ${day}`)).map((day) => ({ from: day, to: day })),
      }));
      const known = { ...books, crew: { ...books.crew, members } };
      const plan = solvePlan(planCase(known, days), solve);
      // What was planned by hand and finds no place stands in nobody's way here.
      const jobs = known.jobs.filter(({ number }) => !plan?.left.includes(number));
      expect(checkPlan(plan?.placed ?? [], { ...known, jobs })).toEqual([]);
    }),
    { numRuns: 40, seed: 11 },
  );
});

test("a plan that is written reads back as it was", () => {
  const day = fc.constantFrom(...days);
  const person = fc.constantFrom("ebbe", "wren", "nia-2", "o_k");
  const one = fc.record({
    job: fc.integer({ min: 1, max: 99_999 }).map(String),
    day,
    people: fc.uniqueArray(person, { minLength: 1, maxLength: 3 }),
    version: fc.integer({ min: 1, max: 999 }),
  });
  fc.assert(
    fc.property(fc.array(one, { minLength: 1, maxLength: 8 }), (plan) => {
      expect(readPlan(writePlan(plan))).toEqual(plan);
    }),
    { seed: 7 },
  );
});

test("the piece that is no assignment is named", () => {
  expect(readPlan("1003@2026-11-30:ebbe, 1004")).toEqual({ unreadable: "1004" });
  expect(readPlan("")).toEqual({ unreadable: "" });
});

test("a part that is short is named for each job that wants it", () => {
  const crew = { ...books.crew, trucks: { shop: {}, trucks: [] } };
  const faults = checkPlan([{ job: "1003", day: "2026-11-30", people: ["ebbe", "wren"] }], { ...books, crew });
  expect(faults).toContainEqual({ job: "1003", is: "part", part: "ball-valve" });
});
