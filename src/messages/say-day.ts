import { findDayWords } from "../conversation/grammar/day-words.ts";
import { WEEKDAYS } from "../crew/crew.ts";
import { weekdayOf } from "../crew/days.ts";
import type { KnownFact } from "../declaration/facts.ts";
import { type FactVoice, showValue, type Voice } from "./voice.ts";

/** A day with its weekday, as people check it. */
export function showWeekday(voice: Voice, fact: FactVoice, day: string): string {
  const name = voice.common.weekdays[WEEKDAYS.indexOf(weekdayOf(day))] ?? "";
  return voice.common.weekday(name, showValue(voice, fact, day));
}

/**
 * How a day was read that was said in words, and which other day the words may mean.
 * @returns nothing where a date was typed
 */
export function sayDayRead(voice: Voice, fact: FactVoice, { value, typed }: KnownFact): string | undefined {
  if (fact.spec.type !== "day" || typed === undefined || typeof value !== "string") return undefined;
  const found = findDayWords(typed, voice.books?.today ?? value);
  if (found === undefined) return undefined;
  const read = voice.common.readAs(typed.trim(), showWeekday(voice, fact, value));
  const isOpen = found.day === value && found.other !== undefined;
  return isOpen ? `${read}. ${voice.common.otherDay(showWeekday(voice, fact, found.other))}` : read;
}
