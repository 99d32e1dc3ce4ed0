import { describe, expect, test } from "vitest";
import { NO_CREW_BOOKS } from "../../src/crew/crew.ts";
import { ready } from "../../src/topics/ready.ts";
import { answerWithSeeds, refusalWithSeeds, seedBooks } from "../support/ask-with-seeds.ts";

const countOf = (facts: Parameters<typeof answerWithSeeds>[1], id: string) => {
  const result = answerWithSeeds(ready, facts).results.find((one) => one.id === id);
  return result !== undefined && "quantity" in result ? result.quantity.value : undefined;
};

test("a person is ready, or not, with how many things stand in the way", () => {
  expect(answerWithSeeds(ready, { day: "2026-11-30", person: "Ebbe" })).toMatchObject({
    verdict: "good",
    headline: { code: "person_ready", data: { name: "Ebbe Tarnowell" } },
  });
  expect(answerWithSeeds(ready, { day: "2026-12-01", person: "marisol" })).toMatchObject({
    verdict: "no",
    headline: { code: "person_not_ready", data: { stops: { value: 1 } } },
  });
});

test("a job lacks its permit, and the plan and the kit are offered next", () => {
  const answer = answerWithSeeds(ready, { day: "2026-11-30", job: "1003" });
  expect(answer).toMatchObject({ verdict: "no", headline: { code: "job_not_ready" } });
  expect(answer.tables?.[0]?.rows[0]).toEqual([
    "1003",
    { code: "permit", data: {} },
    { code: "why_none", data: {} },
    "—",
  ]);
  expect(answer.next?.map(({ request }) => request)).toEqual(["plan day=2026-11-30", "kit job=1003"]);
});

describe("a day", () => {
  test("tells what of the jobs stands in the way, what stops first", () => {
    const answer = answerWithSeeds(ready, { day: "2026-11-30" });
    expect(answer.headline).toMatchObject({ code: "day_not_ready", data: { stops: { value: 1 } } });
    expect(answer.tables?.[0]?.rows[0]?.[0]).toBe("1003");
  });

  test("without jobs and with nothing in the way can go ahead", () => {
    expect(answerWithSeeds(ready, { day: "2026-12-14" })).toMatchObject({
      verdict: "caution",
      headline: { code: "day_ready", data: { jobs: { value: 0 } } },
    });
  });

  test("counts what lapses within 30, 60 and 90 days of it", () => {
    const day = { day: "2026-11-30", person: "marisol" };
    // By her book: licence 2026-12-20; lifting 2027-01-19; gauges, manometer and CO meter 2027-01-31; multimeter 2027-02-28.
    expect(["lapses_30", "lapses_60", "lapses_90"].map((id) => countOf(day, id))).toEqual([1, 2, 6]);
  });
});

test("people and jobs that nobody knows are refused with near names; so is a company without a crew book", () => {
  expect(refusalWithSeeds(ready, { day: "2026-11-30", person: "marisool" })).toMatchObject({
    reason: { code: "unknown_person", data: { nearest: expect.stringContaining("marisol") } },
  });
  expect(refusalWithSeeds(ready, { day: "2026-11-30", job: "77" })).toMatchObject({ reason: { code: "unknown_job" } });
  const books = { ...seedBooks, crew: NO_CREW_BOOKS };
  expect(refusalWithSeeds(ready, { day: "2026-11-30" }, books)).toMatchObject({ reason: { code: "no_crew_book" } });
});
