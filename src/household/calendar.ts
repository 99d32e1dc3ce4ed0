/** The year that is sampled: 365 days that begin on a Monday, the first of January; hours run from midnight. */
export const DAYS_A_YEAR = 365;
export const HOURS_A_DAY = 24;
export const HOUR_s = 3600;
export const DAY_s = HOURS_A_DAY * HOUR_s;
export const MONTHS_A_YEAR = 12;

const DAYS_A_WEEK = 7;
/** Monday to Friday come first, as in the sampled days. */
const WEEKDAYS = 5;
const MONTH_DAYS = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31] as const;
const MONTH_OF_DAY = Uint8Array.from(MONTH_DAYS.flatMap((days, index) => new Array<number>(days).fill(index + 1)));

/** Month of a day, 1 = January; day 0 is the first of January, and the year comes round again after 365 days. */
export function monthOfDay(day: number): number {
  return MONTH_OF_DAY[day % DAYS_A_YEAR] ?? 1;
}

/** The first day of a month, counted from 0. */
export function firstDayOf(month: number): number {
  return MONTH_OF_DAY.indexOf(month);
}

export function isWeekend(day: number): boolean {
  return day % DAYS_A_WEEK >= WEEKDAYS;
}
