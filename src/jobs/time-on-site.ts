import type { JobChange, JobEvent, JobStatus } from "./job.ts";
import { effectsOf } from "./project-job.ts";

/** Statuses that end a visit. */
const ENDS: readonly JobStatus[] = ["open_items", "complete", "planned", "surveyed", "cancelled"];

/** Statuses in which the next thing that is looked at, measured or used begins a visit, though nobody says so. */
const COME_BACK_TO: readonly JobStatus[] = ["open_items", "called_back"];
const WORK: readonly JobChange["kind"][] = ["facts", "reading", "parts", "trail"];
/** Nobody is on site for so long without a word; a night is longer. Common practice [ms]. */
const LONGEST_SILENCE_ms = 8 * 3_600_000;

/** The visit that goes on, as far as it is known. */
interface Visit {
  readonly begun_ms: number;
  readonly last_ms: number;
  /** Earlier stretches of it, before a night or a long silence [ms]. */
  readonly before_ms: number;
}

/**
 * Time that the crew was at it: from each time the work went under way, or went on at a job that came back, to when it was
 * closed or put off, all visits together, without nights. Amendments are counted in; a visit that is not over yet counts
 * nothing.
 * @param events all of one job, oldest first
 * @returns time [ms] and number of visits; nothing when no visit is over
 */
export function timeOnSite(
  events: readonly JobEvent[],
): { readonly total_ms: number; readonly visits: number } | undefined {
  let visit: Visit | undefined;
  let status: JobStatus = "planned";
  let total_ms = 0;
  let visits = 0;
  for (const { change, at_ms } of effectsOf(events)) {
    if (visit !== undefined) visit = goOn(visit, at_ms);
    else if (beginsVisit(change, status)) visit = { begun_ms: at_ms, last_ms: at_ms, before_ms: 0 };
    if (change.kind !== "status") continue;
    status = change.status;
    if (visit === undefined || !ENDS.includes(status)) continue;
    total_ms += visit.before_ms + visit.last_ms - visit.begun_ms;
    visits += 1;
    visit = undefined;
  }
  return visits === 0 ? undefined : { total_ms, visits };
}

/** Whether a change begins a visit where none goes on. */
export function beginsVisit(change: JobChange, before: JobStatus): boolean {
  if (change.kind === "status") return change.status === "under_way";
  return COME_BACK_TO.includes(before) && WORK.includes(change.kind);
}

function goOn({ begun_ms, last_ms, before_ms }: Visit, at_ms: number): Visit {
  if (at_ms - last_ms <= LONGEST_SILENCE_ms) return { begun_ms, last_ms: at_ms, before_ms };
  return { begun_ms: at_ms, last_ms: at_ms, before_ms: before_ms + last_ms - begun_ms };
}
