import type { Books } from "../../books/books.ts";
import { CURED_BY } from "../../faults/topic/fault-facts.ts";
import type { Job, JobEvent, JobStatus, OpenItem } from "../job.ts";
import { type Effect, effectsOf } from "../project-job.ts";
import { beginsVisit } from "../time-on-site.ts";

/** A job with what happened to it, amendments counted in: what all figures are counted from. */
export interface Story {
  readonly job: Job;
  readonly effects: readonly Effect[];
  /** Everything that was written, as it was written. */
  readonly events: readonly JobEvent[];
  /** From the start of the work to the end of the visit, oldest first. */
  readonly visits: readonly Visit[];
  readonly closings: readonly Closing[];
  readonly callBacks: readonly CallBack[];
}
/** A stretch in which the crew was at work; no end where it still is. */
export interface Visit {
  readonly from_ms: number;
  readonly until_ms?: number;
}
/** The crew closed the job, with something left to see to or not. */
export interface Closing {
  readonly at_ms: number;
  readonly isComplete: boolean;
  /** How many visits it took until then, since the job was opened. */
  readonly visits: number;
}
export interface CallBack {
  readonly at_ms: number;
  /** In the words of whoever wrote it down. */
  readonly because?: string;
  /** The cause that was found since, by its id. */
  readonly cause?: string;
}

const CLOSED: readonly JobStatus[] = ["open_items", "complete"];

/** The story of every job of the records. */
export function tellStories({ jobs, jobEvents }: Pick<Books, "jobs" | "jobEvents">): readonly Story[] {
  const byJob = new Map<string, JobEvent[]>();
  for (const event of jobEvents) {
    const events = byJob.get(event.job) ?? [];
    events.push(event);
    byJob.set(event.job, events);
  }
  return jobs.map((job) => tellStory(job, byJob.get(job.number) ?? []));
}

function tellStory(job: Job, events: readonly JobEvent[]): Story {
  const effects = effectsOf(events);
  const visits: Visit[] = [];
  const closings: Closing[] = [];
  const callBacks: CallBack[] = [];
  let status: JobStatus = "planned";
  for (const { change, at_ms } of effects) {
    if (!isOnSite(visits) && beginsVisit(change, status)) visits.push({ from_ms: at_ms });
    if (change.kind !== "status" || change.status === status) continue;
    const isClosing = CLOSED.includes(change.status) && !CLOSED.includes(status);
    if (status === "under_way" || isClosing) endVisit(visits, at_ms);
    if (isClosing) closings.push({ at_ms, isComplete: change.status === "complete", visits: visits.length });
    if (change.status === "called_back") callBacks.push(tellCallBack(change.because, at_ms, effects));
    status = change.status;
  }
  return { job, effects, events, visits, closings, callBacks };
}

function isOnSite(visits: readonly Visit[]): boolean {
  const last = visits.at(-1);
  return last !== undefined && last.until_ms === undefined;
}

function endVisit(visits: Visit[], until_ms: number): void {
  if (!isOnSite(visits)) return;
  const last = visits.pop();
  if (last !== undefined) visits.push({ ...last, until_ms });
}

function tellCallBack(because: string | undefined, at_ms: number, effects: readonly Effect[]): CallBack {
  const found = effects.flatMap(({ change, at_ms: told_ms }) => {
    if (change.kind !== "facts" || told_ms < at_ms) return [];
    return Object.entries(change.facts).flatMap(([fact, value]) =>
      fact.startsWith(CURED_BY) && value === true ? [fact.slice(CURED_BY.length)] : [],
    );
  });
  const cause = found.at(-1);
  return { at_ms, ...(because !== undefined && { because }), ...(cause !== undefined && { cause }) };
}

/** What was left to see to at a moment. A job that is cancelled by then leaves nothing. */
export function openItemsAt({ effects }: Story, at_ms: number): readonly OpenItem[] {
  const open = new Map<string, OpenItem>();
  let isCancelled = false;
  for (const { change, at_ms: said_ms } of effects) {
    if (said_ms >= at_ms) continue;
    if (change.kind === "item_opened") open.set(change.item.id, change.item);
    if (change.kind === "item_closed") open.delete(change.item);
    if (change.kind === "status") isCancelled = change.status === "cancelled";
  }
  return isCancelled ? [] : [...open.values()];
}
