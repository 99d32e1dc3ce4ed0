import { expect, test } from "vitest";
import type { Shift } from "../../src/crew/crew.ts";
import { workSpans, workTime_s } from "../../src/crew/work-hours.ts";

const ZONE = "America/Chicago";
const HOUR_s = 3600;

function member(shift: Shift) {
  const hours = { saturday: [shift], sunday: [shift] };
  return { person: "wren", credentials: [], training: [], tools: [], hours, daysOff: [] };
}

/** The clock on the wall at a moment, as the time zone tables of the language itself show it. */
function wallClock(at_ms: number): string {
  const shown = new Intl.DateTimeFormat("sv-SE", { timeZone: ZONE, dateStyle: "short", timeStyle: "short" });
  return shown.format(at_ms);
}

/** In 2026 clocks go from 02:00 to 03:00 on March 8, and from 02:00 back to 01:00 on November 1 (15 U.S.C. 260a). */
test.each([
  ["night into the spring change", "2026-03-07", 22, 30, "2026-03-07 22:00", "2026-03-08 06:00", 7],
  ["the spring change itself", "2026-03-08", 0, 8, "2026-03-08 00:00", "2026-03-08 08:00", 7],
  ["begins in the hour that is skipped", "2026-03-08", 2.5, 8, "2026-03-08 03:30", "2026-03-08 08:00", 4.5],
  ["after the spring change", "2026-03-08", 7, 15.5, "2026-03-08 07:00", "2026-03-08 15:30", 8.5],
  ["night into the autumn change", "2026-10-31", 22, 30, "2026-10-31 22:00", "2026-11-01 06:00", 9],
  ["the autumn change itself", "2026-11-01", 0, 8, "2026-11-01 00:00", "2026-11-01 08:00", 9],
  ["begins in the hour that comes twice", "2026-11-01", 1.5, 8, "2026-11-01 01:30", "2026-11-01 08:00", 7.5],
  ["after the autumn change", "2026-11-01", 7, 15.5, "2026-11-01 07:00", "2026-11-01 15:30", 8.5],
  ["a night without a change", "2026-03-14", 22, 30, "2026-03-14 22:00", "2026-03-15 06:00", 8],
])("%s", (_, day, from_h, to_h, begins, ends, hours) => {
  const one = member({ from_min: from_h * 60, to_min: to_h * 60 });
  const [span] = workSpans(one, day, ZONE);
  expect([wallClock(span?.from_ms ?? 0), wallClock(span?.to_ms ?? 0)]).toEqual([begins, ends]);
  expect(workTime_s(one, day, ZONE)).toBe(hours * HOUR_s);
});
