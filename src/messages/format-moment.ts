import type { CommonTexts } from "./common-texts.ts";

/**
 * A moment as people read it where they are: "25 Nov 14:02".
 * @param at_ms time since 1970-01-01 UTC [ms]
 * @param timeZone IANA name
 */
export function formatMoment(common: CommonTexts, at_ms: number, timeZone: string): string {
  const read = readMoment(at_ms, timeZone);
  const month = common.months[Number(read("month")) - 1] ?? "";
  return common.moment(read("day"), month, `${read("hour")}:${read("minute")}`);
}

/**
 * A moment with its year, for what is read long after: "November 25, 2026, 14:02".
 * @param at_ms time since 1970-01-01 UTC [ms]
 * @param timeZone IANA name
 */
export function formatDayAndTime(common: CommonTexts, at_ms: number, timeZone: string): string {
  const read = readMoment(at_ms, timeZone);
  const month = common.months[Number(read("month")) - 1] ?? "";
  return `${common.day(read("year"), month, read("day"))}, ${read("hour")}:${read("minute")}`;
}

function readMoment(at_ms: number, timeZone: string): (type: Intl.DateTimeFormatPartTypes) => string {
  const parts = new Intl.DateTimeFormat("en-US", {
    timeZone,
    year: "numeric",
    month: "numeric",
    day: "numeric",
    hour: "2-digit",
    minute: "2-digit",
    hourCycle: "h23",
  }).formatToParts(at_ms);
  return (type) => parts.find((part) => part.type === type)?.value ?? "";
}
