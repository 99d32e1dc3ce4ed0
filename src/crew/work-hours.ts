import type { CrewMember } from "./crew.ts";
import { daysBetween, weekdayOf } from "./days.ts";
import { momentOf } from "./zone-time.ts";

/** A stretch of time that somebody works. */
export interface WorkSpan {
  readonly from_ms: number;
  readonly to_ms: number;
}

/** True: the person has the day off. */
export function isDayOff({ daysOff }: CrewMember, day: string): boolean {
  return daysOff.some(({ from, to }) => daysBetween(from, day) >= 0 && daysBetween(day, to) >= 0);
}

/**
 * When somebody works in the shifts that begin on a local day; none on a day off.
 * Shifts are told by the clock on the wall, so a shift across a change of the clocks is an hour shorter or longer.
 */
export function workSpans(member: CrewMember, day: string, timeZone: string): readonly WorkSpan[] {
  if (isDayOff(member, day)) return [];
  return (member.hours[weekdayOf(day)] ?? []).map(({ from_min, to_min }) => ({
    from_ms: momentOf(timeZone, day, from_min),
    to_ms: momentOf(timeZone, day, to_min),
  }));
}

/** How long somebody works in the shifts that begin on a local day [s]. */
export function workTime_s(member: CrewMember, day: string, timeZone: string): number {
  return workSpans(member, day, timeZone).reduce((sum, { from_ms, to_ms }) => sum + (to_ms - from_ms) / 1000, 0);
}
