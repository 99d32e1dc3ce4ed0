import { describe, expect, test } from "vitest";
import type { Credential, CrewMember } from "../../src/crew/crew.ts";
import { addDays, daysBetween, weekdayOf } from "../../src/crew/days.ts";
import { bestStanding, isCalibrated, lapsesOf, mayWork, standingOf } from "../../src/crew/validity.ts";

const LICENSE: Credential = {
  kind: "journeyman_plumber",
  number: "J-1",
  issuer: "Testbench Board",
  expires: "2026-12-20",
  checked: "2026-12-01",
};
const member = (rest: Partial<CrewMember>): CrewMember => ({
  person: "a",
  credentials: [],
  training: [],
  tools: [],
  hours: {},
  daysOff: [],
  ...rest,
});

describe("a credential", () => {
  test.each([
    ["2026-12-19", "valid"],
    ["2026-12-20", "valid"],
    ["2026-12-21", "lapsed"],
  ] as const)("that expires on 2026-12-20 is on %s %s", (day, is) => {
    expect(standingOf(LICENSE, day).is).toBe(is);
  });

  test.each([
    ["2026-12-20", "valid"],
    ["2026-12-21", "grace"],
    ["2027-01-19", "grace"],
    ["2027-01-20", "lapsed"],
  ] as const)("with 30 days of grace is on %s %s", (day, is) => {
    expect(standingOf({ ...LICENSE, lapse: "grace", grace_days: 30 }, day).is).toBe(is);
  });

  test("that only warns stops nobody", () => {
    const aid: Credential = { kind: "first_aid", number: "1", issuer: "X", expires: "2026-01-01" };
    expect(standingOf(aid, "2026-06-01")).toEqual({ is: "warns", until: "2026-01-01" });
    expect(mayWork(member({ credentials: [aid] }), ["first_aid"], "2026-06-01")).toBe(true);
  });

  test("that does not run out is valid for good", () => {
    expect(standingOf({ kind: "refrigerant_card", number: "1", issuer: "X" }, "2099-01-01")).toEqual({ is: "valid" });
  });

  test.each([
    ["2026-09-20", "valid"],
    ["2026-09-11", "valid"],
    ["2026-09-10", "unchecked"],
  ] as const)("looked up on %s is 90 days or more later %s", (checked, is) => {
    expect(standingOf({ ...LICENSE, checked }, "2026-12-10").is).toBe(is);
  });

  test("that nobody ever looked up is unchecked, where there is a register", () => {
    const { checked: _, ...never } = LICENSE;
    expect(standingOf(never, "2026-12-01").is).toBe("unchecked");
  });
});

test("of two of a kind the better one counts", () => {
  const both = member({ credentials: [{ ...LICENSE, expires: "2026-01-01" }, LICENSE] });
  expect(bestStanding(both, ["journeyman_plumber"], "2026-12-10")?.is).toBe("valid");
  expect(bestStanding(both, ["electrician"], "2026-12-10")).toBeUndefined();
});

test("a calibration counts through its last day", () => {
  const meter = { tool: "clamp-meter", id: "1", calibratedUntil: "2026-12-15" };
  expect([isCalibrated(meter, "2026-12-15"), isCalibrated(meter, "2026-12-16")]).toEqual([true, false]);
});

test("what lapses is told within 30, 60 and 90 days, the soonest first; what is past or later is not", () => {
  const on = (days: number): Credential => ({ ...LICENSE, number: String(days), expires: addDays("2026-12-01", days) });
  const lapses = lapsesOf(member({ credentials: [91, 90, 61, 60, 31, 30, 0, -1].map(on) }), "2026-12-01");
  expect(lapses.map(({ in_days, within }) => [in_days, within])).toEqual([
    [0, 30],
    [30, 30],
    [31, 60],
    [60, 60],
    [61, 90],
    [90, 90],
  ]);
});

describe("days of the calendar", () => {
  test("2024 had a 29th of February and 2026 has none", () => {
    expect(addDays("2024-02-28", 1)).toBe("2024-02-29");
    expect(addDays("2026-02-28", 1)).toBe("2026-03-01");
    expect(daysBetween("2026-12-31", "2027-01-01")).toBe(1);
  });
  /** ISO 8601: 1 January 2026 is a Thursday, 29 February 2024 was one too; 1 January 2000 was a Saturday. */
  test.each([
    ["2026-01-01", "thursday"],
    ["2024-02-29", "thursday"],
    ["2000-01-01", "saturday"],
    ["1969-12-31", "wednesday"],
  ])("%s is a %s", (day, weekday) => expect(weekdayOf(day)).toBe(weekday));
});
