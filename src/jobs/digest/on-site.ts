import { dayAt } from "../../crew/zone-time.ts";
import { type Bounds, isWithin } from "./period.ts";
import type { Story } from "./story.ts";

/**
 * Time from the first to the last entry of each day while a job was under way, by the people who are down for it [s].
 * Nothing runs on overnight because nobody said that they had left.
 * @limits counts from when things were written down, so it is a lower bound; a job's time is counted once however many
 * people were there
 */
export function timeOnSite_s({ job, events, visits }: Story, bounds: Bounds, timeZone: string): number {
  const days = new Map<string, { first_ms: number; last_ms: number }>();
  for (const { at_ms, person } of events) {
    const isCrew = job.people.length === 0 || job.people.includes(person);
    const isThere = visits.some(
      ({ from_ms, until_ms = Number.POSITIVE_INFINITY }) => at_ms >= from_ms && at_ms <= until_ms,
    );
    if (!isCrew || !isThere || !isWithin(bounds, at_ms)) continue;
    const day = dayAt(timeZone, at_ms);
    const known = days.get(day);
    days.set(day, {
      first_ms: Math.min(known?.first_ms ?? at_ms, at_ms),
      last_ms: Math.max(known?.last_ms ?? at_ms, at_ms),
    });
  }
  const sum_ms = [...days.values()].reduce((sum, { first_ms, last_ms }) => sum + last_ms - first_ms, 0);
  return Math.round(sum_ms / 1000);
}
