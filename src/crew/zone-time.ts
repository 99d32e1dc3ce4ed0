import { dayNumber, dayOfNumber } from "./days.ts";

const MINUTE_ms = 60_000;
const DAY_ms = 86_400_000;

/**
 * How far the clocks of a time zone stand before UTC at a moment [min], by the zone tables that come with the language
 * itself; asking them is a pure look-up, like a table of our own that somebody else keeps right.
 */
export function offset_min(timeZone: string, at_ms: number): number {
  const parts = new Intl.DateTimeFormat("en-US", {
    timeZone,
    year: "numeric",
    month: "numeric",
    day: "numeric",
    hour: "numeric",
    minute: "numeric",
    second: "numeric",
    hourCycle: "h23",
  }).formatToParts(at_ms);
  const read = (type: Intl.DateTimeFormatPartTypes) => Number(parts.find((part) => part.type === type)?.value ?? 0);
  const wall_ms = Date.UTC(read("year"), read("month") - 1, read("day"), read("hour"), read("minute"), read("second"));
  return Math.round((wall_ms - Math.floor(at_ms / 1000) * 1000) / MINUTE_ms);
}

/**
 * The moment at which the clocks on the wall show a time of a day.
 * @param clock_min minutes after midnight by the wall clock; past 1440 it is a time of the next day
 * @returns time since 1970-01-01 UTC [ms]. A time that clocks skip is taken as much later as they skip; of a time that
 * they show twice, the first is taken.
 */
export function momentOf(timeZone: string, day: string, clock_min: number): number {
  const wall_ms = dayNumber(day) * DAY_ms + clock_min * MINUTE_ms;
  // The offset a day before and a day after bracket every change of the clocks, which are never so close together.
  const before = offset_min(timeZone, wall_ms - DAY_ms);
  const after = offset_min(timeZone, wall_ms + DAY_ms);
  const early_ms = wall_ms - before * MINUTE_ms;
  if (offset_min(timeZone, early_ms) === before) return early_ms;
  const late_ms = wall_ms - after * MINUTE_ms;
  // Neither offset gives that time back: the clocks skip it, and the offset before the change moves it on.
  return offset_min(timeZone, late_ms) === after ? late_ms : early_ms;
}

/** The date on the wall calendar of a time zone at a moment, YYYY-MM-DD. */
export function dayAt(timeZone: string, at_ms: number): string {
  return dayOfNumber(Math.floor((at_ms + offset_min(timeZone, at_ms) * MINUTE_ms) / DAY_ms));
}
