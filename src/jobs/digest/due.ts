import type { Weekday } from "../../crew/crew.ts";
import { addDays } from "../../crew/days.ts";
import { dayAt, momentOf } from "../../crew/zone-time.ts";
import type { Channel } from "../../ports/outbox.ts";
import { dayPeriod, lastWeekday, type Period } from "./period.ts";

/** When a company reads its digests, and where. */
export interface DigestSchedule {
  readonly channel: Channel;
  /** Minutes after midnight by the clock on the wall, every day; about the day before. */
  readonly daily_min?: number;
  /** The same on one day of the week; about the seven days before it. */
  readonly weekly?: { readonly day: Weekday; readonly at_min: number };
}
/** A digest whose hour has come. */
export interface DueDigest {
  /** Names the period, so that whoever writes it writes the same. */
  readonly id: string;
  readonly period: Period;
}

const WEEK_days = 7;

/**
 * The newest digest of each kind whose hour has come, long ago or just now. Those before it are never made up for: after a
 * week of standstill one day and one week are posted, not ten. An hour that the clocks skip comes when they have skipped
 * it; one that they show twice comes the first time.
 */
export function dueDigests(
  { daily_min, weekly }: DigestSchedule,
  timeZone: string,
  now_ms: number,
): readonly DueDigest[] {
  const today = dayAt(timeZone, now_ms);
  const hasCome = (day: string, at_min: number) => now_ms >= momentOf(timeZone, day, at_min);
  const due: DueDigest[] = [];
  if (daily_min !== undefined) {
    const day = addDays(today, hasCome(today, daily_min) ? -1 : -2);
    due.push({ id: `digest-day-${day}`, period: dayPeriod(day) });
  }
  if (weekly !== undefined) {
    const latest = lastWeekday(today, weekly.day);
    const posted = hasCome(latest, weekly.at_min) ? latest : addDays(latest, -WEEK_days);
    const from = addDays(posted, -WEEK_days);
    due.push({ id: `digest-week-${from}`, period: { from, to: addDays(posted, -1) } });
  }
  return due;
}
