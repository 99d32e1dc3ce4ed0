import { describe, expect, test } from "vitest";
import { NO_CREW_BOOKS } from "../../src/crew/crew.ts";
import { q } from "../../src/declaration/answer.ts";
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
    expect(answer.tables?.map(({ id }) => id)).toEqual(["day", "missing", "lapses"]);
    expect(answer.tables?.[0]?.rows).toEqual([
      [
        { code: "job_named", data: { job: "1003" } },
        { code: "stands_stopped", data: { stops: q("count", 1) } },
      ],
      ["Ebbe Tarnowell", { code: "stands_ready", data: {} }],
      ["Marisol Vantreaux", { code: "stands_care", data: { cares: q("count", 2) } }],
      ["Wren Oduyami", { code: "stands_ready", data: {} }],
    ]);
    expect(answer.tables?.[1]?.rows[0]?.[0]).toBe("1003");
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

describe("who else could", () => {
  const missing = (facts: Parameters<typeof answerWithSeeds>[1], books = seedBooks) =>
    answerWithSeeds(ready, facts, books).tables?.find(({ id }) => id === "missing")?.rows ?? [];

  test("for a lapsed license names who holds one for the same work, with the job that they are down for", () => {
    const lapsed = missing({ day: "2026-12-21", person: "marisol" });
    expect(lapsed[0]).toEqual([
      "Marisol Vantreaux",
      { code: "journeyman_plumber", data: {} },
      { code: "why_lapsed", data: { until: "2026-12-20" } },
      "Ebbe Tarnowell",
    ]);
    const thermometer = missing({ day: "2026-11-30", person: "marisol" }).at(-1);
    expect(thermometer?.at(-1)).toBe("Ebbe Tarnowell (1003), Wren Oduyami (1003)");
  });

  test("for a day off names who may do all that somebody away may", () => {
    const wrenOff = seedBooks.crew.members.map((one) =>
      one.person === "wren" ? { ...one, daysOff: [{ from: "2026-11-30", to: "2026-11-30" }] } : one,
    );
    const books = { ...seedBooks, crew: { ...seedBooks.crew, members: wrenOff } };
    // Wren may drive and holds a refrigerant card, as Ebbe does; Marisol has no such card.
    expect(missing({ day: "2026-11-30", person: "wren" }, books)[0]?.at(-1)).toBe("Ebbe Tarnowell (1003)");
  });

  test("for a part that the truck lacks names the truck that holds it", () => {
    const trucks = seedBooks.crew.trucks.trucks.map((truck) =>
      truck.id === "truck-1" ? truck : { ...truck, stock: { ...truck.stock, "ball-valve": 9 } },
    );
    const bare = trucks.map((truck) => (truck.id === "truck-1" ? { ...truck, stock: {} } : truck));
    const alone = seedBooks.jobs.map((job) => (job.number === "1003" ? { ...job, people: ["ebbe"] } : job));
    const crew = { ...seedBooks.crew, trucks: { ...seedBooks.crew.trucks, trucks: bare } };
    const rows = missing({ day: "2026-11-30", job: "1003" }, { ...seedBooks, jobs: alone, crew });
    const valve = rows.find(([, what]) => JSON.stringify(what).includes("Ball valve"));
    expect(valve?.at(-1)).toBe("Truck 2");
  });
});

test("a training that counts no more is told with care, and who still has it", () => {
  const answer = answerWithSeeds(ready, { day: "2027-01-20", person: "marisol" });
  const row = answer.tables?.[0]?.rows.find(([, what]) => JSON.stringify(what).includes("Lifting"));
  expect(row?.[2]).toEqual({ code: "why_training", data: { until: "2027-01-19" } });
});

test("what was looked at is shown beside what is missing", () => {
  const checked = (facts: Parameters<typeof answerWithSeeds>[1]) =>
    answerWithSeeds(ready, facts).tables?.find(({ id }) => id === "checked")?.rows ?? [];
  expect(checked({ day: "2026-11-25", job: "1006" })).toEqual(
    expect.arrayContaining([
      [{ code: "permit", data: {} }, "P-2098"],
      [
        { code: "survey", data: {} },
        { code: "is_done", data: {} },
      ],
      ["Ebbe Tarnowell", "07:00-15:30"],
      [{ code: "skill_plumbing", data: {} }, "Ebbe Tarnowell, Marisol Vantreaux"],
      [
        { code: "calibrated_tools", data: {} },
        { code: "so_many_of", data: { have: q("count", 9), needed: q("count", 9) } },
      ],
    ]),
  );
  expect(checked({ day: "2026-12-01", person: "marisol" })[0]).toEqual([
    { code: "working_hours", data: {} },
    { code: "why_off", data: {} },
  ]);
});
