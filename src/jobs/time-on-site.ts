import type { JobEvent, JobStatus } from "./job.ts";
import { effectsOf } from "./project-job.ts";

/** Statuses that end a visit. */
const ENDS: readonly JobStatus[] = ["open_items", "complete", "planned", "surveyed", "cancelled"];

/**
 * Time that the crew was at it: from each time the work went under way to when it was closed or put off, all visits
 * together. Amendments are counted in; a visit that is not over yet counts nothing.
 * @param events all of one job, oldest first
 * @returns time [ms] and number of visits; nothing when no visit is over
 */
export function timeOnSite(
  events: readonly JobEvent[],
): { readonly total_ms: number; readonly visits: number } | undefined {
  let begun_ms: number | undefined;
  let total_ms = 0;
  let visits = 0;
  for (const { change, at_ms } of effectsOf(events)) {
    if (change.kind !== "status") continue;
    if (change.status === "under_way") begun_ms ??= at_ms;
    if (begun_ms === undefined || !ENDS.includes(change.status)) continue;
    total_ms += at_ms - begun_ms;
    visits += 1;
    begun_ms = undefined;
  }
  return visits === 0 ? undefined : { total_ms, visits };
}
