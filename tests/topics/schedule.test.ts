import { describe, expect, test } from "vitest";
import type { Books } from "../../src/books/books.ts";
import { type Answer, q } from "../../src/declaration/answer.ts";
import { mostChanges } from "../../src/household/day-program.ts";
import { candidates } from "../../src/household/schedule-candidates.ts";
import { compareDays, leavesNobodyColder, planSchedule, runWholeYear } from "../../src/household/schedule-plan.ts";
import { planUnit } from "../../src/household/unit-case.ts";
import { schedule } from "../../src/topics/schedule.ts";
import { toBase } from "../../src/units/convert.ts";
import { codesOf, resultOf } from "../support/ask-topic.ts";
import { answerWithSeeds, askWithSeeds, refusalWithSeeds, seedBooks } from "../support/ask-with-seeds.ts";

const CASE = { model: "tarnley-66", people: 2 };
const FACTS = { people: 2, bathrooms: 2, wanted_C: toBase(105, "F") };
const numberOf = (answer: Answer, id: string) => resultOf(answer, id).quantity.value;
const tableOf = (answer: Answer, id: string) => answer.tables?.find((table) => table.id === id)?.rows;

function unitOf(model: string, setpoint_F = 125) {
  const none = { place: undefined, mode: undefined, supply_V: undefined };
  const unit = planUnit({ model, setpoint_C: toBase(setpoint_F, "F"), ...none, rate: "time_of_use" }, seedBooks);
  if (!unit.ok) throw new Error("refused");
  return unit.known;
}

const withValve = answerWithSeeds(schedule, { ...CASE, mixing_valve: true });
const KNOWN = unitOf("tarnley-66");
const BEHIND_VALVE = { ...FACTS, mixing_valve: true };
const found = planSchedule(KNOWN, BEHIND_VALVE, () => undefined);

describe("the schedule that is advised", () => {
  const { best, leftAlone } = found;
  test("is cheaper than leaving it alone, and nobody runs cold on more days or for more water", () => {
    if (best === undefined) throw new Error("no schedule");
    expect(best.cost_usd).toBeLessThan(leftAlone.cost_usd);
    expect(best.coldDays).toBeLessThanOrEqual(leftAlone.coldDays);
    expect(best.shortfall_L).toBeLessThanOrEqual(leftAlone.shortfall_L + 1);
  });
  test("is held against leaving it alone day by day: every cold day of either is counted once", () => {
    if (best === undefined) throw new Error("no schedule");
    const { both, onlyWith, onlyAlone } = compareDays(best, leftAlone);
    expect([both + onlyWith, both + onlyAlone]).toEqual([best.coldDays, leftAlone.coldDays]);
    expect([best.short_L.length, leftAlone.short_L.length]).toEqual([365, 365]);
    const shown = withValve.findings.find(({ code }) => code === "day_by_day")?.data;
    expect(shown).toMatchObject({ both: q("count", both), only_with: q("count", onlyWith) });
    expect(tableOf(withValve, "compared")?.[1]?.at(-1)).toEqual(q("volume", best.shortfall_L));
  });
  test("is the one that running every program through the whole year finds", () => {
    const runs = candidates(KNOWN, BEHIND_VALVE).map((program) => runWholeYear(KNOWN, BEHIND_VALVE, program));
    const kept = runs.filter((run) => leavesNobodyColder(run, leftAlone));
    const cheapest = kept.reduce((a, b) => (b.cost_usd < a.cost_usd ? b : a));
    expect(best?.program).toEqual(cheapest.program);
    expect(best?.cost_usd).toBe(cheapest.cost_usd);
  });
  test("uses less of its energy in dear hours", () => {
    expect(best?.dearShare).toBeLessThan(0.5 * leftAlone.dearShare);
  });
  test("is what the answer shows: headline, saving, and a program of three changes", () => {
    expect([withValve.verdict, withValve.headline.code]).toEqual(["good", "follow_it"]);
    expect(numberOf(withValve, "saving_per_year")).toBeCloseTo(leftAlone.cost_usd - (best?.cost_usd ?? 0), 9);
    const saved = numberOf(withValve, "cost_left_alone") - numberOf(withValve, "cost_per_year");
    expect(numberOf(withValve, "saving_per_year")).toBeCloseTo(saved, 9);
    expect(tableOf(withValve, "program")?.map(([, from]) => from)).toEqual(["14:00", "16:00", "21:00"]);
  });
  test("asks to test the mixing valve before it stores hotter", () => {
    const codes = codesOf(withValve);
    expect(codes.indexOf("check_valve_first")).toBeGreaterThanOrEqual(0);
    expect(codes.indexOf("check_valve_first")).toBeLessThan(codes.indexOf("nobody_colder"));
  });
  test("is drawn with the price of 24 hours and the hours ahead", () => {
    const series = withValve.charts?.[0]?.series ?? [];
    expect(series.map(({ id }) => id)).toEqual(["setpoint", "price", "heat_ahead", "dear_hours"]);
    expect(Math.max(...(series[1]?.y ?? []))).toBe(0.39);
    expect(series[2]?.y.flatMap((on, hour) => (on === 1 ? [hour] : []))).toEqual([14, 15]);
  });
});

describe("one that is cheaper but colder", () => {
  const { leftAlone, refused } = found;
  test("is refused, and the answer says what it would have saved", () => {
    if (refused === undefined) throw new Error("none was refused");
    expect(leavesNobodyColder(refused, leftAlone)).toBe(false);
    expect(refused.cost_usd).toBeLessThan(found.best?.cost_usd ?? 0);
    expect(codesOf(withValve)).toContain("refused_cheaper");
  });
  const run = { ...leftAlone, coldDays: 10, shortfall_L: 100 };
  const cases = [
    ["as many cold days and as much short water", 10, 100, true],
    ["one cold day more", 11, 100, false],
    ["two liters more, on no more days", 10, 102, false],
    ["fewer of both", 9, 50, true],
  ] as const;
  test.each(cases)("judged by %s", (_, coldDays, shortfall_L, isKept) => {
    expect(leavesNobodyColder({ ...run, coldDays, shortfall_L }, run)).toBe(isKept);
  });
});

describe("programs that are tried", () => {
  const known = unitOf("hollin-80");
  test("never store hotter than asked without a mixing valve, and up to 140 °F with one", () => {
    const hottest = (mixing_valve: boolean | undefined) =>
      Math.max(
        ...candidates(known, { ...FACTS, mixing_valve }).flatMap(({ settings }) =>
          Object.values(settings).map(({ setpoint_C }) => setpoint_C),
        ),
      );
    expect([hottest(undefined), hottest(false)]).toEqual([known.setpoint_C, known.setpoint_C]);
    expect(hottest(true)).toBeCloseTo(toBase(140, "F"), 9);
  });
  test("stay within the unit's own range, modes and changes a day", () => {
    const { heater, changesADay } = known.model;
    const [lowest_C, highest_C] = heater.controls.setpoint_C;
    const tried = candidates(known, { ...FACTS, mixing_valve: true });
    expect(tried.length).toBeGreaterThan(10);
    for (const program of tried) {
      expect(mostChanges(program, known.plan)).toBeLessThanOrEqual(changesADay);
      for (const { mode, setpoint_C } of Object.values(program.settings)) {
        expect(heater.controls.policies).toContain(mode);
        expect(setpoint_C).toBeGreaterThanOrEqual(lowest_C);
        expect(setpoint_C).toBeLessThanOrEqual(highest_C);
      }
    }
  });
  test("are fewer where the unit allows two changes a day only", () => {
    const tight = { ...known, model: { ...known.model, changesADay: 2 } };
    const tried = candidates(tight, { ...FACTS, mixing_valve: true });
    expect(tried.length).toBeGreaterThan(0);
    expect(tried.length).toBeLessThan(candidates(known, { ...FACTS, mixing_valve: true }).length);
    expect(tried.every((program) => mostChanges(program, known.plan) <= 2)).toBe(true);
  });
});

test("without a better schedule it says to leave it alone, and that a valve would help", () => {
  const answer = answerWithSeeds(schedule, { model: "fenmoor-120", people: 5, mixing_valve: false });
  expect([answer.verdict, answer.headline.code]).toEqual(["info", "leave_it_alone"]);
  expect(numberOf(answer, "saving_per_year")).toBe(0);
  expect(codesOf(answer)).toContain("valve_would_help");
  expect(tableOf(answer, "program")).toBeUndefined();
});

test("progress goes forward to its end", () => {
  const shares: number[] = [];
  askWithSeeds(schedule, { ...CASE, people: 1 }, seedBooks, (done, total) => shares.push(done / total));
  expect(shares.at(-1)).toBe(1);
  expect(shares).toEqual([...shares].sort((a, b) => a - b));
});

describe("refuses", () => {
  const cases = [
    ["a plain tank, which takes no schedule", { model: "brackwell-50" }, "model", "no_schedule"],
    ["a flat rate, under which no hour is dear", { rate: "flat" }, "rate", "no_dear_hours"],
    ["an unknown model", { model: "tarnley" }, "model", "unknown_model"],
    [
      "120 °F from a tank at 115",
      { setpoint: toBase(115, "F"), wanted: toBase(120, "F") },
      "wanted",
      "wanted_above_setpoint",
    ],
  ] as const;
  test.each(cases)("%s", (_, change, fact, code) => {
    const refused = refusalWithSeeds(schedule, { ...CASE, ...change });
    expect([refused.fact, refused.reason?.code]).toEqual([fact, code]);
  });
  test("books without a time-of-use plan", () => {
    const [flat] = seedBooks.prices.electricity;
    const books: Books = { ...seedBooks, prices: { ...seedBooks.prices, electricity: [flat] } };
    expect(refusalWithSeeds(schedule, CASE, books).reason?.code).toBe("rate_not_in_books");
  });
});

test("asks for the model and the people", () => {
  expect(askWithSeeds(schedule, {}).result).toEqual({ kind: "needs-facts", missing: ["model", "people"] });
});
