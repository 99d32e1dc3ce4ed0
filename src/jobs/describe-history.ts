import type { Door } from "../ports/store.ts";
import type { JobChange, JobEvent } from "./job.ts";

/** One line of a job's history, before any words: what was done, by whom, when and where, and what became of it. */
export interface HistoryLine {
  readonly number: number;
  readonly at_ms: number;
  readonly by: string;
  readonly door: Door;
  readonly change: JobChange;
  /** The event that it puts right, with what was said there. */
  readonly amends?: { readonly number: number; readonly change: JobChange };
  /** The newest event that put this one right; this one no longer counts. */
  readonly amendedBy?: number;
}

/**
 * The full history of a job for a card: every event, amended ones too.
 * @param events all of one job, oldest first
 * @returns newest first
 */
export function describeHistory(events: readonly JobEvent[]): readonly HistoryLine[] {
  const byNumber = new Map(events.map((event) => [event.number, event]));
  const amendedBy = new Map<number, number>();
  const rootOf = (event: JobEvent): number => {
    const before = event.amends === undefined ? undefined : byNumber.get(event.amends);
    return before === undefined || before.number >= event.number ? event.number : rootOf(before);
  };
  const newest = new Map(events.map((event) => [rootOf(event), event.number]));
  for (const event of events) {
    const last = newest.get(rootOf(event));
    if (last !== undefined && last !== event.number) amendedBy.set(event.number, last);
  }
  return events
    .map(({ number, at_ms, by, door, change, amends }): HistoryLine => {
      const before = amends === undefined ? undefined : byNumber.get(amends);
      const after = amendedBy.get(number);
      return {
        number,
        at_ms,
        by,
        door,
        change,
        ...(before && { amends: { number: before.number, change: before.change } }),
        ...(after !== undefined && { amendedBy: after }),
      };
    })
    .toReversed();
}
