import { isOfHouse, readyFor } from "../faults/topic/fault-facts.ts";
import type { KeptMark } from "../ports/store.ts";
import type { Job, JobEvent, JobFact } from "./job.ts";
import { factOfStep } from "./startup-facts.ts";

/** All that is kept of a job: how it stands, what happened to it, and what was done about cautions meanwhile. */
export interface JobRecord {
  readonly job: Job;
  /** Oldest first. */
  readonly events: readonly JobEvent[];
  /** What was last done about each caution, newest first. */
  readonly marks: readonly KeptMark[];
}

/** A kept fact with its id. */
export type NamedFact = JobFact & { readonly id: string };

/** The topic that looks for faults: what was told to it is about the fault, and not about the house. */
const FAULT = "fault";

/** What is known of the house: neither steps of the start-up nor what a fault walk found. */
export function factsOfHouse({ facts }: Job): readonly NamedFact[] {
  return named(facts).filter(({ id, topic }) => (topic !== FAULT || isOfHouse(id)) && !id.startsWith(factOfStep("")));
}

/** What a fault walk asked and heard, oldest first; that somebody was careful before a check is in the history. */
export function factsOfFault({ facts }: Job): readonly NamedFact[] {
  return named(facts)
    .filter(({ id, topic }) => topic === FAULT && !isOfHouse(id) && !id.startsWith(readyFor("")))
    .sort((a, b) => a.at_ms - b.at_ms);
}

function named(facts: Job["facts"]): readonly NamedFact[] {
  return Object.entries(facts).map(([id, fact]) => ({ id, ...fact }));
}

/** Cautions that were seen to or skipped with a reason, oldest first; what counts as not seen again is left out. */
export function cautionsSeenTo(marks: readonly KeptMark[]): readonly KeptMark[] {
  return marks.filter(({ act }) => act !== "unseen").toReversed();
}

/** Whether the crew has closed the job as it stands now. */
export function isClosed({ status }: Pick<Job, "status">): boolean {
  return status === "complete" || status === "open_items";
}
