import { describe, expect, test } from "vitest";
import type { ElectricityPlan } from "../../src/books/prices.ts";
import {
  changesOfDay,
  type DayProgram,
  dearHours,
  mostChanges,
  partsOfDay,
  planYear,
  settingsOfDay,
} from "../../src/household/day-program.ts";
import { hasDearHours } from "../../src/household/schedule-plan.ts";
import { seedBooks } from "../support/ask-with-seeds.ts";

const FLAT = Array.from({ length: 24 }, () => 0.16);
const EVENING = FLAT.map((price, hour) => (hour >= 16 && hour < 21 ? 0.39 : price));
const TWICE = FLAT.map((price, hour) => ([7, 8, 18, 19].includes(hour) ? 0.4 : price));
const LATE = FLAT.map((price, hour) => (hour === 0 || hour >= 22 ? 0.4 : price));
const PROGRAM: DayProgram = {
  ahead_h: 2,
  settings: {
    dear: { mode: "heat_pump_only", setpoint_C: 43 },
    before: { mode: "heat_pump_first", setpoint_C: 60 },
    other: { mode: "heat_pump_first", setpoint_C: 52 },
    level: { mode: "heat_pump_first", setpoint_C: 52 },
  },
};
const EVENING_PEAK = seedBooks.prices.electricity[1];
const hoursOf = (parts: readonly string[], part: string) => parts.flatMap((one, hour) => (one === part ? [hour] : []));

describe("dear hours", () => {
  test("are the five of an evening peak, and none of a flat day", () => {
    expect(hoursOf(dearHours(EVENING).map(String), "true")).toEqual([16, 17, 18, 19, 20]);
    expect(dearHours(FLAT)).not.toContain(true);
  });
  test("do not include an hour that costs 20 % over the mean or less", () => {
    const one = (price: number) => FLAT.map((usual, hour) => (hour === 12 ? price : usual));
    const atLimit = (1.2 * 23 * 0.16) / (24 - 1.2);
    expect(dearHours(one(atLimit - 1e-6))).not.toContain(true);
    expect(dearHours(one(atLimit + 1e-6))[12]).toBe(true);
  });
});

describe("parts of a day", () => {
  const cases = [
    ["an evening peak", EVENING, [16, 17, 18, 19, 20], [14, 15]],
    ["two peaks", TWICE, [7, 8, 18, 19], [5, 6, 16, 17]],
    ["a peak around midnight", LATE, [0, 22, 23], [20, 21]],
  ] as const;
  test.each(cases)("with %s", (_, prices, dear, before) => {
    const parts = partsOfDay(prices, 2);
    expect(hoursOf(parts, "dear")).toEqual(dear);
    expect(hoursOf(parts, "before")).toEqual(before);
    expect(hoursOf(parts, "level")).toEqual([]);
  });
  test("are all level where no hour is dear", () => {
    expect(new Set(partsOfDay(FLAT, 4))).toEqual(new Set(["level"]));
  });
});

describe("changes", () => {
  test("are three on a day with one peak, none on a flat day, six with two peaks", () => {
    expect(changesOfDay(PROGRAM, EVENING)).toEqual([14, 16, 21]);
    expect(changesOfDay(PROGRAM, FLAT)).toEqual([]);
    expect(changesOfDay(PROGRAM, TWICE)).toHaveLength(6);
  });
  test("are two where nothing is heated ahead", () => {
    expect(changesOfDay({ ...PROGRAM, ahead_h: 0 }, EVENING)).toEqual([16, 21]);
  });
});

describe("a year's plan", () => {
  if (EVENING_PEAK === undefined) throw new Error("the seeds have one plan only");
  const plan: ElectricityPlan = EVENING_PEAK;
  const steps = planYear(PROGRAM, plan);
  test("begins at 0, goes forward, and changes only when something changes", () => {
    expect(steps[0].from_s).toBe(0);
    steps.slice(1).forEach((step, i) => {
      const before = steps[i];
      expect(step.from_s).toBeGreaterThan(before?.from_s ?? 0);
      expect([step.policy.id, step.setpoint_C]).not.toEqual([before?.policy.id, before?.setpoint_C]);
    });
  });
  test("has three changes on each of 261 weekdays and none on weekends", () => {
    expect(mostChanges(PROGRAM, plan)).toBe(3);
    expect(steps).toHaveLength(1 + 3 * 261);
    const onWeekend = steps.slice(1).filter(({ from_s }) => Math.floor(from_s / 86_400) % 7 >= 5);
    expect(onWeekend).toEqual([]);
  });
  test("holds at each hour what the day's program says", () => {
    const monday = settingsOfDay(PROGRAM, plan.seasons[1]?.weekday_usd_kWh ?? []);
    for (const hour of [0, 13, 14, 15, 16, 20, 21, 23]) {
      const now = steps.filter(({ from_s }) => from_s <= hour * 3600).at(-1);
      expect([now?.policy.id, now?.setpoint_C]).toEqual([monday[hour]?.mode, monday[hour]?.setpoint_C]);
    }
  });
});

test("of the seeds' plans only the evening peak has dear hours", () => {
  expect(seedBooks.prices.electricity.map(hasDearHours)).toEqual([false, true]);
});
