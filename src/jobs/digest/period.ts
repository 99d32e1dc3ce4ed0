import { WEEKDAYS, type Weekday } from "../../crew/crew.ts";
import { addDays, weekdayOf } from "../../crew/days.ts";
import { momentOf } from "../../crew/zone-time.ts";

/** Days of the company's calendar, YYYY-MM-DD, both counted in. */
export interface Period {
  readonly from: string;
  readonly to: string;
}
/** The same as moments [ms since 1970-01-01 UTC]; `until_ms` is no longer in it. */
export interface Bounds {
  readonly from_ms: number;
  readonly until_ms: number;
}

const LAST_OF_WEEK = 6;

export function dayPeriod(day: string): Period {
  return { from: day, to: day };
}

/** The week that a day lies in, from Monday to Sunday. */
export function weekPeriod(day: string): Period {
  const from = addDays(day, -WEEKDAYS.indexOf(weekdayOf(day)));
  return { from, to: addDays(from, LAST_OF_WEEK) };
}

/** The newest day that is that weekday, the day itself counted in. */
export function lastWeekday(day: string, weekday: Weekday): string {
  const back = WEEKDAYS.indexOf(weekdayOf(day)) - WEEKDAYS.indexOf(weekday);
  return addDays(day, -((back + WEEKDAYS.length) % WEEKDAYS.length));
}

/**
 * When a period begins and ends by the clocks of a time zone: a day on which they change is an hour shorter or longer.
 * Midnight that the clocks skip is the moment to which they skip.
 */
export function boundsOf({ from, to }: Period, timeZone: string): Bounds {
  return { from_ms: momentOf(timeZone, from, 0), until_ms: momentOf(timeZone, addDays(to, 1), 0) };
}

export function isWithin({ from_ms, until_ms }: Bounds, at_ms: number): boolean {
  return at_ms >= from_ms && at_ms < until_ms;
}
