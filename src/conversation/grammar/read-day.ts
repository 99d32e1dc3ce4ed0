import { readDayWords } from "./day-words.ts";
import { MONTHS } from "./trade-words-table.ts";

export interface DayMatch {
  /** YYYY-MM-DD. */
  readonly day: string;
  readonly end: number;
}

const MONTH_NUMBERS: ReadonlyMap<string, number> = new Map(
  MONTHS.flatMap((names, index) => names.map((name): [string, number] => [name, index + 1])),
);
const ISO = /(\d{4})-(\d{1,2})-(\d{1,2})(?!\d)/y;
/** Month first, as people write it in the United States, whatever their language. */
const US = /(\d{1,2})[/-](\d{1,2})[/-](\d{4}|\d{2})(?!\d)/y;
const DAY_MONTH = /(\d{1,2})(?:st|nd|rd|th|o)?[ .-](?:de |of )?([a-z]{3,10})\.?,?[ -](?:de |del )?(\d{4})(?!\d)/y;
const MONTH_DAY = /([a-z]{3,10})\.? (\d{1,2})(?:st|nd|rd|th)?,? (?:de |del )?(\d{4})(?!\d)/y;
/** A year of two figures is in this century. */
const CENTURY = 2000;
const MONTHS_OF_30 = [4, 6, 9, 11];

/**
 * Reads the day that starts at a place in folded text: 2026-12-01, 12/1/2026, 1 dic 2026, Dec 1, 2026.
 * @param today where it is known, "tomorrow" and "friday" are days too
 */
export function readDay(folded: string, at: number, today?: string): DayMatch | undefined {
  const said = today === undefined ? undefined : readDayWords(folded, at, today);
  return readDate(folded, at) ?? (said && { day: said.day, end: said.end });
}

function readDate(folded: string, at: number): DayMatch | undefined {
  const iso = matchAt(ISO, folded, at);
  if (iso) return toDay(iso, iso[1], Number(iso[2]), iso[3], at);
  const us = matchAt(US, folded, at);
  if (us) return toDay(us, us[3], Number(us[1]), us[2], at);
  const dayMonth = matchAt(DAY_MONTH, folded, at);
  if (dayMonth) return toDay(dayMonth, dayMonth[3], MONTH_NUMBERS.get(dayMonth[2] ?? ""), dayMonth[1], at);
  const monthDay = matchAt(MONTH_DAY, folded, at);
  return monthDay && toDay(monthDay, monthDay[3], MONTH_NUMBERS.get(monthDay[1] ?? ""), monthDay[2], at);
}

function toDay(
  match: RegExpExecArray,
  yearText: string | undefined,
  month: number | undefined,
  dayText: string | undefined,
  at: number,
): DayMatch | undefined {
  const year = Number(yearText) < 100 ? CENTURY + Number(yearText) : Number(yearText);
  const day = Number(dayText);
  if (month === undefined || !(month >= 1 && month <= 12) || !(day >= 1 && day <= daysIn(year, month)))
    return undefined;
  const pad = (number: number) => String(number).padStart(2, "0");
  return { day: `${year}-${pad(month)}-${pad(day)}`, end: at + match[0].length };
}

function daysIn(year: number, month: number): number {
  if (month !== 2) return MONTHS_OF_30.includes(month) ? 30 : 31;
  const isLeap = (year % 4 === 0 && year % 100 !== 0) || year % 400 === 0;
  return isLeap ? 29 : 28;
}

function matchAt(pattern: RegExp, text: string, at: number): RegExpExecArray | undefined {
  pattern.lastIndex = at;
  return pattern.exec(text) ?? undefined;
}
