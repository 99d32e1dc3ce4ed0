import { formatNumber } from "./format-number.ts";
import type { Language } from "./language.ts";

const SECONDS_PER_MINUTE = 60;
const SECONDS_PER_HOUR = 3600;
const SECONDS_PER_DAY = 86_400;
/** From here on, days read better than hours. */
const DAYS_FROM_s = 2 * SECONDS_PER_DAY;
const DAY_WORDS: Readonly<Record<Language, readonly [one: string, many: string]>> = {
  en: ["day", "days"],
  es: ["día", "días"],
};

/**
 * Writes a time the way a person says it: "0.4 s", "42 s", "1 min 12 s", "2 h 5 min", "3 days 4 h".
 * @param time_s time [s]
 */
export function formatDuration(time_s: number, language: Language): string {
  if (time_s < 0) return `-${formatDuration(-time_s, language)}`;
  if (time_s < 10) return `${formatNumber(time_s, { significant: 2 })} s`;
  const whole_s = Math.round(time_s);
  if (whole_s < SECONDS_PER_MINUTE) return `${formatNumber(whole_s, { decimals: 0 })} s`;
  if (whole_s < SECONDS_PER_HOUR) return join(whole_s, SECONDS_PER_MINUTE, "min", 1, "s");
  const whole_min = Math.round(time_s / SECONDS_PER_MINUTE) * SECONDS_PER_MINUTE;
  if (whole_min < DAYS_FROM_s) return join(whole_min, SECONDS_PER_HOUR, "h", SECONDS_PER_MINUTE, "min");
  const whole_h = Math.round(time_s / SECONDS_PER_HOUR) * SECONDS_PER_HOUR;
  const [one, many] = DAY_WORDS[language];
  return join(whole_h, SECONDS_PER_DAY, whole_h < 2 * SECONDS_PER_DAY ? one : many, SECONDS_PER_HOUR, "h");
}

function join(time_s: number, large_s: number, large: string, small_s: number, small: string): string {
  const count = Math.floor(time_s / large_s);
  const rest = Math.round((time_s - count * large_s) / small_s);
  const first = `${formatNumber(count, { decimals: 0 })} ${large}`;
  return rest === 0 ? first : `${first} ${rest} ${small}`;
}
