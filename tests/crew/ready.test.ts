import { describe, expect, test } from "vitest";
import type { Books } from "../../src/books/books.ts";
import type { CrewMember } from "../../src/crew/crew.ts";
import { jobNeeds } from "../../src/crew/job-needs.ts";
import { readyJob, readyPerson, type Want } from "../../src/crew/ready.ts";
import type { FactValue } from "../../src/declaration/facts.ts";
import type { Job } from "../../src/jobs/job.ts";
import { seedBooks } from "../support/ask-with-seeds.ts";

const DAY = "2026-11-30";
const job = (rest: Partial<Job> = {}, facts: Readonly<Record<string, FactValue>> = {}): Job => ({
  number: "9001",
  customer: "X. Y.",
  place: "Ostrowick",
  status: "surveyed",
  day: DAY,
  permit: "P-1",
  model: "hollin-50",
  people: ["ebbe", "wren"],
  facts: Object.fromEntries(
    Object.entries(facts).map(([id, value]) => [id, { value, topic: "kit", by: "ebbe", at_ms: 0 }]),
  ),
  readings: {},
  items: [],
  files: [],
  parts: {},
  notes: [],
  trail: [],
  openedAt_ms: 0,
  version: 1,
  ...rest,
});
const wantsOf = (one: Job, day = DAY, books = seedBooks): readonly Want[] =>
  readyJob(one, day, books).lacks.map(({ want }) => want);
const withMember = (person: string, change: (member: CrewMember) => CrewMember): Books => ({
  ...seedBooks,
  crew: {
    ...seedBooks.crew,
    members: seedBooks.crew.members.map((one) => (one.person === person ? change(one) : one)),
  },
});

describe("a job", () => {
  test("with people, papers, tools and hours is ready, but for what the shop must give", () => {
    const { verdict, lacks } = readyJob(job(), DAY, seedBooks);
    expect(lacks.filter(({ stops }) => stops)).toEqual([]);
    expect(verdict).not.toBe("no");
  });

  test("without permit and survey is not", () => {
    const { permit: _, ...bare } = job({ status: "planned" });
    expect(wantsOf(bare)).toEqual(expect.arrayContaining([{ is: "permit" }, { is: "survey" }]));
  });

  test("that caps gas needs a gas fitter, and names who could stand in", () => {
    const withoutFitter = job({ people: ["marisol", "wren"] }, { replaces: "gas" });
    expect(wantsOf(withoutFitter)).toContainEqual({ is: "skill", skill: "skill_gas", others: ["ebbe"] });
    expect(wantsOf(job({}, { replaces: "gas" })).some(({ is }) => is === "skill")).toBe(false);
  });

  test("on the last day of a license is ready, and on the day after it is not", () => {
    const on = (day: string) =>
      wantsOf(job({ people: ["marisol", "wren"] }, { circuit_right: true }), day)
        .filter(({ is }) => is === "skill")
        .map((want) => (want.is === "skill" ? [want.skill, want.standing?.is] : []));
    const booksOpen = seedBooks.crew.members.some(({ person }) => person === "marisol");
    expect(booksOpen).toBe(true);
    // 2026-12-20 is a Sunday: nobody works, so the license is looked at on the Friday before and the Monday after.
    expect(on("2026-12-18").filter(([skill, is]) => skill === "skill_plumbing" && is === "lapsed")).toEqual([]);
    expect(on("2026-12-21")).toContainEqual(["skill_plumbing", "lapsed"]);
  });

  test("for two with one person down lacks a helper", () => {
    expect(wantsOf(job({ people: ["ebbe"] }))).toContainEqual({
      is: "helpers",
      needed: 2,
      given: 1,
      others: ["marisol", "wren"],
    });
  });

  test("on somebody's day off says so, and who holds all that they hold", () => {
    const want = wantsOf(job({ people: ["marisol", "wren"] }), "2026-12-01").find(({ is }) => is === "off");
    expect(want).toEqual({ is: "off", others: [] });
  });

  test("longer than a short Friday does not fit into it", () => {
    const want = wantsOf(job({ people: ["marisol", "wren"], place: "Saltmere" }), "2026-12-04").find(
      ({ is }) => is === "hours",
    );
    expect(want).toMatchObject({ needed_s: (4 + 110 / 60) * 3600, free_s: 5 * 3600, others: ["ebbe"] });
  });

  test("with a tool out of calibration names the tool and who carries a good one", () => {
    expect(wantsOf(job({ people: ["marisol"], status: "called_back" }))).toEqual([
      { is: "calibration", tool: "thermometer", until: "2026-11-10", others: ["ebbe", "wren"] },
    ]);
  });

  test("that needs more than truck and shop hold is stopped; what the shop holds is only to be loaded", () => {
    const wants = wantsOf(job({}, { air_way: "ducts", duct_length: 30, seismic: true }));
    expect(wants).toContainEqual(expect.objectContaining({ is: "part", part: "duct-8-in", inShop: false }));
    expect(wants).toContainEqual(expect.objectContaining({ is: "part", part: "seismic-strap", inShop: true }));
  });

  test("with somebody who is not in the crew book says so", () => {
    expect(wantsOf(job({ people: ["ebbe", "lupe"] }))).toContainEqual({ is: "unknown_person" });
  });
});

test("a call-back asks for no kit and no second person", () => {
  expect(jobNeeds(job({ status: "called_back" }), seedBooks)).toMatchObject({ people: 1, parts: [] });
});

describe("a person", () => {
  const ebbe = seedBooks.crew.members.find(({ person }) => person === "ebbe");
  test("with nothing lapsed and at work is ready", () => {
    expect(ebbe && readyPerson(ebbe, DAY, seedBooks).verdict).toBe("good");
  });

  test("whose first aid card ran out is told with care, and is not stopped", () => {
    expect(ebbe && readyPerson(ebbe, "2026-12-01", seedBooks)).toMatchObject({
      verdict: "caution",
      lacks: [{ stops: false, want: { is: "credential", kind: "first_aid", standing: { is: "warns" } } }],
    });
  });

  test("without a standing license to work on pipes is stopped", () => {
    const books = withMember("ebbe", (member) => ({
      ...member,
      credentials: member.credentials.map((one) => ({ ...one, expires: "2026-11-29" })),
    }));
    const lapsed = books.crew.members.find(({ person }) => person === "ebbe");
    expect(lapsed && readyPerson(lapsed, DAY, books).verdict).toBe("no");
  });

  test("is away on a day off and on a weekend", () => {
    const why = (day: string) => ebbe && readyPerson(ebbe, day, seedBooks).lacks[0]?.want.is;
    expect([why("2026-12-23"), why("2026-12-05")]).toEqual(["off", "no_hours"]);
  });
});
