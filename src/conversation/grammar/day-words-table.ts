import type { Weekday } from "../../crew/crew.ts";

/** Words for days near today, folded (lower case, no accents), with how many days after today each is. */
export const DAY_SHIFTS: readonly { readonly days: number; readonly words: readonly string[] }[] = [
  { days: -2, words: ["day before yesterday", "anteayer", "antier", "antes de ayer"] },
  { days: -1, words: ["yesterday", "ayer"] },
  { days: 0, words: ["today", "hoy"] },
  { days: 1, words: ["tomorrow", "tmrw", "manana"] },
  { days: 2, words: ["day after tomorrow", "pasado manana"] },
];

/** Weekdays as crews say them, folded. "Mar" and "sab" are left out: the first is a month too. */
export const WEEKDAY_NAMES: Readonly<Record<Weekday, readonly string[]>> = {
  monday: ["monday", "mon", "lunes"],
  tuesday: ["tuesday", "tues", "tue", "martes"],
  wednesday: ["wednesday", "weds", "wed", "miercoles"],
  thursday: ["thursday", "thurs", "thur", "thu", "jueves"],
  friday: ["friday", "fri", "viernes"],
  saturday: ["saturday", "sat", "sabado"],
  sunday: ["sunday", "sun", "domingo"],
};
