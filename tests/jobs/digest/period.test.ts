import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { addDays } from "../../../src/crew/days.ts";
import { type DigestSchedule, dueDigests } from "../../../src/jobs/digest/due.ts";
import { boundsOf, dayPeriod, isWithin, weekPeriod } from "../../../src/jobs/digest/period.ts";

/** Zones whose clocks change at two, at midnight, by half an hour, and never; and one that once left a whole day out. */
const ZONES = [
  "America/Chicago",
  "America/Santiago",
  "America/Havana",
  "Australia/Lord_Howe",
  "America/Phoenix",
  "Pacific/Apia",
];
const HOUR_ms = 3_600_000;

/** The date and time on the wall, straight from the zone tables of the language: nothing of ours is asked. */
function wall(timeZone: string, at_ms: number): string {
  return new Intl.DateTimeFormat("sv-SE", { timeZone, dateStyle: "short", timeStyle: "short" }).format(at_ms);
}
const wallDay = (timeZone: string, at_ms: number) => wall(timeZone, at_ms).slice(0, 10);

const moments = fc
  .integer({ min: Date.UTC(2009, 0, 1) / 60_000, max: Date.UTC(2030, 0, 1) / 60_000 })
  .map((min) => min * 60_000);

describe("a period", () => {
  test("holds exactly the moments whose date on the wall lies in it, over every change of the clocks", () => {
    fc.assert(
      fc.property(fc.constantFrom(...ZONES), moments, (zone, at_ms) => {
        const day = wallDay(zone, at_ms);
        expect(isWithin(boundsOf(dayPeriod(day), zone), at_ms)).toBe(true);
        expect(isWithin(boundsOf(dayPeriod(addDays(day, 1)), zone), at_ms)).toBe(false);
        const week = weekPeriod(day);
        expect(isWithin(boundsOf(week, zone), at_ms)).toBe(true);
        expect(week.from <= day && day <= week.to).toBe(true);
      }),
      { numRuns: 400 },
    );
  });

  test("a day is an hour shorter in spring and longer in autumn, a week begins on Monday", () => {
    const hours = (day: string) => {
      const { from_ms, until_ms } = boundsOf(dayPeriod(day), "America/Chicago");
      return (until_ms - from_ms) / HOUR_ms;
    };
    expect([hours("2026-03-08"), hours("2026-11-01"), hours("2026-11-02")]).toEqual([23, 25, 24]);
    expect(weekPeriod("2026-11-29")).toEqual({ from: "2026-11-23", to: "2026-11-29" });
    expect(weekPeriod("2026-11-30").from).toBe("2026-11-30");
  });
});

describe("what is due", () => {
  const schedule = (daily_min: number): DigestSchedule => ({
    channel: { door: "web", id: "managers" },
    daily_min,
    weekly: { day: "monday", at_min: daily_min },
  });

  test("at its hour, not before; late it is the same", () => {
    const at = (utc: string) => dueDigests(schedule(390), "America/Chicago", Date.parse(utc)).map(({ id }) => id);
    // 06:30 in Chicago in November is 12:30 UTC.
    expect(at("2026-11-30T12:29:59Z")).toEqual(["digest-day-2026-11-28", "digest-week-2026-11-16"]);
    expect(at("2026-11-30T12:30:00Z")).toEqual(["digest-day-2026-11-29", "digest-week-2026-11-23"]);
    expect(at("2026-12-06T23:00:00Z")).toEqual(["digest-day-2026-12-05", "digest-week-2026-11-23"]);
  });

  test("the weekly one is about the seven days before its day", () => {
    const due = dueDigests(
      { channel: { door: "web", id: "m" }, weekly: { day: "friday", at_min: 960 } },
      "America/Chicago",
      Date.parse("2026-11-27T22:00:00Z"),
    );
    expect(due).toEqual([{ id: "digest-week-2026-11-20", period: { from: "2026-11-20", to: "2026-11-26" } }]);
  });

  /*
   * Walks through the days around a change of the clocks and notes when each post's id is first seen. What the wall shows
   * then comes from the zone tables of the language; the moments were worked out by hand from each zone's change.
   */
  const changes = [
    // 02:00 becomes 03:00: half past two comes an hour later by the wall.
    ["America/Chicago", "2026-03-07T12:00Z", 150, "2026-03-08T08:30Z", ["2026-03-08 03:30", "2026-03-09 02:30"]],
    // 02:00 becomes 01:00: the first half past one counts.
    ["America/Chicago", "2026-10-31T12:00Z", 90, "2026-11-01T06:30Z", ["2026-11-01 01:30", "2026-11-02 01:30"]],
    // 01:00 becomes 00:00.
    ["America/Havana", "2026-10-31T12:00Z", 15, "2026-11-01T04:15Z", ["2026-11-01 00:15", "2026-11-02 00:15"]],
    // Midnight itself is left out.
    ["America/Santiago", "2026-09-05T12:00Z", 0, "2026-09-06T04:00Z", ["2026-09-06 01:00", "2026-09-07 00:00"]],
    // Half an hour is left out from 02:00 on.
    ["Australia/Lord_Howe", "2026-10-03T00:00Z", 135, "2026-10-03T15:45Z", ["2026-10-04 02:45", "2026-10-05 02:15"]],
  ] as const;
  test.each(changes)("%s from %s, minute %i: once a day, first at %s", (zone, start, min, first, walls) => {
    const seen = new Map<string, number>();
    const from_ms = Date.parse(start);
    for (let at_ms = from_ms; at_ms < from_ms + 2 * 24 * HOUR_ms; at_ms += HOUR_ms / 4)
      for (const { id } of dueDigests({ channel: { door: "web", id: "m" }, daily_min: min }, zone, at_ms))
        if (!seen.has(id)) seen.set(id, at_ms);
    // The first is the one that was due before the walk began.
    const posted = [...seen].slice(1);
    expect(posted.map(([, at_ms]) => wall(zone, at_ms))).toEqual(walls);
    expect(posted[0]?.[1]).toBe(Date.parse(first));
    expect(posted.map(([id]) => id)).toEqual(walls.map((shown) => `digest-day-${addDays(shown.slice(0, 10), -1)}`));
  });

  test("time never brings an older digest back once a newer one was due", () => {
    fc.assert(
      fc.property(
        fc.constantFrom("America/Chicago", "America/Santiago", "Pacific/Apia"),
        moments,
        fc.integer({ min: 1, max: 40 * 24 * 60 }),
        fc.integer({ min: 0, max: 1439 }),
        (zone, at_ms, later_min, min) => {
          const [before, after] = [at_ms, at_ms + later_min * 60_000].map((moment) =>
            dueDigests(schedule(min), zone, moment).map(({ period }) => period.from),
          );
          for (const [index, from] of (before ?? []).entries()) expect(from <= (after?.[index] ?? "")).toBe(true);
        },
      ),
      { numRuns: 300 },
    );
  });
});
