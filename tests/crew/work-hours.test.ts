import { describe, expect, test } from "vitest";
import type { CrewMember, Shift } from "../../src/crew/crew.ts";
import { workSpans, workTime_s } from "../../src/crew/work-hours.ts";
import { momentOf, offset_min } from "../../src/crew/zone-time.ts";

const HOUR_s = 3600;
const ZONE = "America/Chicago";
const works = (...sunday: readonly Shift[]): CrewMember => ({
  person: "a",
  credentials: [],
  training: [],
  tools: [],
  hours: { sunday, monday: [{ from_min: 420, to_min: 930 }] },
  daysOff: [{ from: "2026-12-23", to: "2027-01-02" }],
});
const shift = (from: number, to: number): Shift => ({ from_min: from * 60, to_min: to * 60 });

/** Energy Policy Act of 2005, section 110: clocks go forward on the second Sunday of March and back on the first of November. */
describe("when the clocks change in 2026, on 8 March and 1 November", () => {
  test("midnight to eight is seven hours in March and nine in November", () => {
    expect(workTime_s(works(shift(0, 8)), "2026-03-08", ZONE)).toBe(7 * HOUR_s);
    expect(workTime_s(works(shift(0, 8)), "2026-11-01", ZONE)).toBe(9 * HOUR_s);
    expect(workTime_s(works(shift(0, 8)), "2026-03-15", ZONE)).toBe(8 * HOUR_s);
  });

  test("a shift by day is as long as on any other day, and begins at seven by the clock", () => {
    const [span] = workSpans(works(shift(7, 15)), "2026-03-08", ZONE);
    expect(span && new Date(span.from_ms).toISOString()).toBe("2026-03-08T12:00:00.000Z");
    expect(workTime_s(works(shift(7, 15)), "2026-03-08", ZONE)).toBe(8 * HOUR_s);
  });

  test("a night shift that began on Saturday's date counts the hour that is lost on Sunday", () => {
    const night: CrewMember = { ...works(), hours: { saturday: [shift(22, 30)] } };
    expect(workTime_s(night, "2026-03-07", ZONE)).toBe(7 * HOUR_s);
    expect(workTime_s(night, "2026-10-31", ZONE)).toBe(9 * HOUR_s);
  });

  test("02:30, which the clocks skip, is 03:30; 01:30, which comes twice, is the first", () => {
    expect(new Date(momentOf(ZONE, "2026-03-08", 150)).toISOString()).toBe("2026-03-08T08:30:00.000Z");
    expect(new Date(momentOf(ZONE, "2026-11-01", 90)).toISOString()).toBe("2026-11-01T06:30:00.000Z");
  });

  test("the hour before and after the change stand right", () => {
    expect(new Date(momentOf(ZONE, "2026-03-08", 119)).toISOString()).toBe("2026-03-08T07:59:00.000Z");
    expect(new Date(momentOf(ZONE, "2026-03-08", 180)).toISOString()).toBe("2026-03-08T08:00:00.000Z");
    expect(new Date(momentOf(ZONE, "2026-11-01", 120)).toISOString()).toBe("2026-11-01T08:00:00.000Z");
  });
});

test("zones east of Greenwich and zones of half hours stand right", () => {
  expect(offset_min("Asia/Kolkata", Date.UTC(2026, 5, 1))).toBe(330);
  expect(new Date(momentOf("Asia/Kolkata", "2026-06-01", 0)).toISOString()).toBe("2026-05-31T18:30:00.000Z");
});

test("a day off has no hours, its first and last day included; a weekday without hours has none", () => {
  const member = works();
  const hours = ["2026-12-21", "2026-12-28", "2027-01-04", "2026-12-22"].map((day) => workTime_s(member, day, ZONE));
  expect(hours).toEqual([8.5 * HOUR_s, 0, 8.5 * HOUR_s, 0]);
  const edges: CrewMember = { ...member, daysOff: [{ from: "2026-12-21", to: "2026-12-28" }] };
  expect(["2026-12-21", "2026-12-28"].map((day) => workTime_s(edges, day, ZONE))).toEqual([0, 0]);
});
