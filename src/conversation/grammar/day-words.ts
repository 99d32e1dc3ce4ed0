import { WEEKDAYS, type Weekday } from "../../crew/crew.ts";
import { addDays, weekdayOf } from "../../crew/days.ts";
import { foldText } from "../../units/fold-text.ts";
import { DAY_SHIFTS, WEEKDAY_NAMES } from "./day-words-table.ts";

/** A day that was said in words instead of a date. */
export interface DayInWords {
  /** YYYY-MM-DD. */
  readonly day: string;
  readonly end: number;
  /** The other day that these words may mean, where people differ. */
  readonly other?: string;
}

const DAYS_A_WEEK = 7;
const NAMES: ReadonlyMap<string, Weekday> = new Map(
  WEEKDAYS.flatMap((day) => WEEKDAY_NAMES[day].map((name): [string, Weekday] => [name, day])),
);
const SHIFTS: ReadonlyMap<string, number> = new Map(
  DAY_SHIFTS.flatMap(({ words, days }) => words.map((word): [string, number] => [word, days])),
);
const longestFirst = (words: Iterable<string>) => [...words].sort((a, b) => b.length - a.length).join("|");
const ENDS = "(?![\\p{L}\\p{N}])";
const SHIFT = new RegExp(`(${longestFirst(SHIFTS.keys())})${ENDS}`, "uy");
const WEEKDAY = new RegExp(
  `(?:(this|coming|next|last|este|proximo|pasado|ultimo) )?(${longestFirst(NAMES.keys())})${ENDS}(?: (que viene|proximo|siguiente|pasado)${ENDS})?`,
  "uy",
);
/** "Por la mañana" is the morning, not tomorrow. */
const MORNING = /\b(?:la|esta) $/;
const COMING = ["proximo", "siguiente", "que viene", "coming"];
const PAST = ["last", "pasado", "ultimo"];

/**
 * Reads a day that is said in words, from a place in folded text on: today, mañana, friday, next monday, el lunes que viene.
 * A weekday alone is the next one, today counted in. "Next" in English is the one of the following week from Monday on,
 * "próximo" in Spanish the first one after today; where people differ, `other` tells.
 * @param today the day where the company is, YYYY-MM-DD
 */
export function readDayWords(folded: string, at: number, today: string): DayInWords | undefined {
  if (/[\p{L}\p{N}]/u.test(folded.charAt(at - 1))) return undefined;
  const shift = matchAt(SHIFT, folded, at);
  const days = shift && SHIFTS.get(shift[1] ?? "");
  if (shift && days !== undefined) {
    if (shift[1] === "manana" && MORNING.test(folded.slice(Math.max(0, at - "esta ".length), at))) return undefined;
    return { day: addDays(today, days), end: at + shift[0].length };
  }
  const named = matchAt(WEEKDAY, folded, at);
  const weekday = named && NAMES.get(named[2] ?? "");
  if (named === undefined || weekday === undefined) return undefined;
  return { ...pickWeekday(weekday, named[1] ?? named[3] ?? "", today), end: at + named[0].length };
}

/** The words for a day in a whole text, wherever they stand. */
export function findDayWords(text: string, today: string): DayInWords | undefined {
  const folded = foldText(text);
  for (let at = 0; at < folded.length; at++) {
    const found = readDayWords(folded, at, today);
    if (found !== undefined) return found;
  }
  return undefined;
}

/** True for a word that says a day by itself. */
export function isDayWord(word: string): boolean {
  return SHIFTS.has(word) || NAMES.has(word);
}

function pickWeekday(weekday: Weekday, which: string, today: string): Omit<DayInWords, "end"> {
  const coming = addDays(today, ahead(weekday, today));
  const isToday = coming === today;
  const after = isToday ? addDays(today, DAYS_A_WEEK) : coming;
  if (PAST.includes(which)) return { day: addDays(coming, -DAYS_A_WEEK) };
  if (which === "next") return withOther(nextWeeks(weekday, today), after);
  if (COMING.includes(which)) return withOther(after, nextWeeks(weekday, today));
  return isToday && which === "" ? { day: today, other: after } : { day: coming };
}

function withOther(day: string, other: string): Omit<DayInWords, "end"> {
  return day === other ? { day } : { day, other };
}

/** Days from today to the next such weekday, today counted in [0..6]. */
function ahead(weekday: Weekday, today: string): number {
  const days = WEEKDAYS.indexOf(weekday) - WEEKDAYS.indexOf(weekdayOf(today));
  return (days + DAYS_A_WEEK) % DAYS_A_WEEK;
}

/** The weekday of the week that begins on the Monday after today. */
function nextWeeks(weekday: Weekday, today: string): string {
  const monday = addDays(today, DAYS_A_WEEK - WEEKDAYS.indexOf(weekdayOf(today)));
  return addDays(monday, WEEKDAYS.indexOf(weekday));
}

function matchAt(pattern: RegExp, text: string, at: number): RegExpExecArray | undefined {
  pattern.lastIndex = at;
  return pattern.exec(text) ?? undefined;
}
