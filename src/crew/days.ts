import { WEEKDAYS, type Weekday } from "./crew.ts";

const DAY_ms = 86_400_000;
const DAYS_A_WEEK = 7;
/** 1970-01-01 was a Thursday. */
const FIRST_WEEKDAY = 3;

/** Days since 1970-01-01 of a calendar day, YYYY-MM-DD; no clock and no time zone comes into it. */
export function dayNumber(day: string): number {
  const [year = 0, month = 1, date = 1] = day.split("-").map(Number);
  return Math.round(Date.UTC(year, month - 1, date) / DAY_ms);
}

/** The calendar day of a number of days since 1970-01-01. */
export function dayOfNumber(number: number): string {
  return new Date(number * DAY_ms).toISOString().slice(0, "2026-01-01".length);
}

/** The day so many days later, or earlier where negative. */
export function addDays(day: string, days: number): string {
  return dayOfNumber(dayNumber(day) + days);
}

/** How many days the second day is after the first; negative where it is before. */
export function daysBetween(from: string, to: string): number {
  return dayNumber(to) - dayNumber(from);
}

export function weekdayOf(day: string): Weekday {
  const place = (((dayNumber(day) + FIRST_WEEKDAY) % DAYS_A_WEEK) + DAYS_A_WEEK) % DAYS_A_WEEK;
  return WEEKDAYS[place] ?? "monday";
}
