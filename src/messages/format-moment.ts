import type { CommonTexts } from "./common-texts.ts";

/**
 * A moment as people read it where they are: "25 Nov 14:02".
 * @param at_ms time since 1970-01-01 UTC [ms]
 * @param timeZone IANA name
 */
export function formatMoment(common: CommonTexts, at_ms: number, timeZone: string): string {
  const parts = new Intl.DateTimeFormat("en-US", {
    timeZone,
    month: "numeric",
    day: "numeric",
    hour: "2-digit",
    minute: "2-digit",
    hourCycle: "h23",
  }).formatToParts(at_ms);
  const read = (type: Intl.DateTimeFormatPartTypes) => parts.find((part) => part.type === type)?.value ?? "";
  const month = common.months[Number(read("month")) - 1] ?? "";
  return common.moment(read("day"), month, `${read("hour")}:${read("minute")}`);
}
