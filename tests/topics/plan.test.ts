import { expect, test } from "vitest";
import { openHighsSolver } from "../../adapters/solver/highs-solver.ts";
import { NO_CREW_BOOKS } from "../../src/crew/crew.ts";
import { plan } from "../../src/topics/plan.ts";
import { answerWithSeeds, refusalWithSeeds, seedBooks } from "../support/ask-with-seeds.ts";

const solve = await openHighsSolver();
const books = { ...seedBooks, solve };
const rowsOf = (table: string, facts: Parameters<typeof answerWithSeeds>[1], of = books) =>
  answerWithSeeds(plan, facts, of).tables?.find(({ id }) => id === table)?.rows ?? [];

test("the promised job has its day, and the one without a day is told what would place it", () => {
  const answer = answerWithSeeds(plan, { day: "2026-11-30", days: 1 }, books);
  expect(answer).toMatchObject({ verdict: "caution", headline: { code: "some_left" } });
  const [placed] = rowsOf("plan", { day: "2026-11-30", days: 1 });
  expect(placed?.slice(0, 4)).toEqual(["2026-11-30", "1003", "Saltmere", "Ebbe Tarnowell, Wren Oduyami"]);
  const left = rowsOf("left", { day: "2026-11-30", days: 1 });
  expect(left.length).toBeGreaterThan(0);
  expect(left.every(([job]) => job === "1005")).toBe(true);
});

test("with a whole week every job has a place, with what it needs before", () => {
  const rows = rowsOf("plan", { day: "2026-11-30", days: 5 });
  expect(rows.map(([day, job]) => [day, job])).toEqual([
    ["2026-11-30", "1003"],
    ["2026-12-01", "1005"],
    ["2026-12-02", "1004"],
  ]);
  expect(rows.map((row) => row.at(-1))).toEqual([
    { code: "before_permit", data: {} },
    { code: "before_both", data: {} },
    { code: "before_both", data: {} },
  ]);
});

test("driving is what everybody drives from the yard and back", () => {
  const { results } = answerWithSeeds(plan, { day: "2026-11-30", days: 1 }, books);
  // Two people, 55 min each way to Saltmere.
  expect(results.find(({ id }) => id === "driving")).toMatchObject({ quantity: { value: 2 * 2 * 55 * 60 } });
});

test("with the only licensed people away the job is left, and coming in would place it", () => {
  const members = seedBooks.crew.members.map((member) => ({
    ...member,
    daysOff: member.person === "wren" ? [{ from: "2026-11-30", to: "2026-11-30" }] : member.daysOff,
  }));
  const jobs = seedBooks.jobs.filter(({ number }) => number === "1003");
  const away = { ...books, jobs, crew: { ...books.crew, members } };
  const rows = rowsOf("left", { day: "2026-11-30", days: 1 }, away);
  expect(rows).toContainEqual([
    "1003",
    "Saltmere",
    { code: "reason_day_off", data: { name: "Wren Oduyami" } },
    { code: "place_day_off", data: { name: "Wren Oduyami" } },
  ]);
});

test("days without a waiting job have nothing to plan; without a crew book there is nobody to plan", () => {
  const jobs = seedBooks.jobs.filter(({ day }) => day !== undefined);
  expect(answerWithSeeds(plan, { day: "2027-03-01", days: 7 }, { ...books, jobs })).toMatchObject({
    verdict: "info",
    headline: { code: "no_jobs" },
  });
  expect(refusalWithSeeds(plan, { day: "2026-11-30", days: 1 }, { ...books, crew: NO_CREW_BOOKS })).toMatchObject({
    reason: { code: "no_crew_book" },
  });
});

test("a solver that found nothing in time is told, with what to ask instead", () => {
  const slow = { ...books, solve: () => ({ kind: "unfinished" }) as const };
  expect(refusalWithSeeds(plan, { day: "2026-11-30", days: 5 }, slow)).toMatchObject({
    fact: "days",
    reason: { code: "too_long" },
  });
});

/*
 * In 2026 clocks go from 02:00 to 03:00 on March 8, and from 02:00 back to 01:00 on November 1 (15 U.S.C. 260a): the same
 * night shift by the clock on the wall is an hour shorter or longer. Job 1003 takes 5 h 50 min with the drive.
 */
test.each([
  ["six hours of the clock into the spring change are five", "2026-03-07", "28:00", false],
  ["six hours a week later are six", "2026-03-14", "28:00", true],
  ["five hours of the clock into the autumn change are six", "2026-10-31", "27:00", true],
  ["five hours a week later are five", "2026-11-07", "27:00", false],
])("a night across a change of the clocks: %s", (_, day, until, fits) => {
  const shift = { from_min: 22 * 60, to_min: Number(until.split(":")[0]) * 60 };
  const members = seedBooks.crew.members
    .filter(({ person }) => person !== "marisol")
    .map((member) => ({ ...member, daysOff: [], hours: { saturday: [shift] } }));
  const jobs = seedBooks.jobs.flatMap((job) => (job.number === "1003" ? [{ ...job, day }] : []));
  const night = { ...books, jobs, crew: { ...books.crew, members } };
  expect(rowsOf("plan", { day, days: 1 }, night).map(([, job]) => job)).toEqual(fits ? ["1003"] : []);
  expect(rowsOf("left", { day, days: 1 }, night).length > 0).toBe(!fits);
});
