import type { Books } from "../books/books.ts";
import type { Job, JobEvent } from "../jobs/job.ts";
import type { JobAct } from "../jobs/job-act.ts";
import { checkPlan, type PlanFault } from "./check-plan.ts";
import type { Plan } from "./plan-model.ts";
import type { ShownPlacement } from "./written-plan.ts";

/** What is to be done in the records, or why nothing is. */
export type Settled = { readonly acts: readonly JobAct[] } | { readonly faults: readonly PlanFault[] };

/** Writes day and people into each job, all of them or none. */
export function confirmPlan(placements: readonly ShownPlacement[], books: Books): Settled {
  const faults = checkPlan(placements, books);
  if (faults.length > 0) return { faults };
  const acts = placements.map(
    ({ job, day, people }): JobAct => ({ kind: "change", job, change: { kind: "planned", day, people } }),
  );
  return { acts: [...acts, { kind: "announce" }] };
}

/** Takes the newest plan of each job back, where it still is the one that is named. */
export function withdrawPlan(placements: readonly ShownPlacement[], { jobEvents }: Books): Settled {
  const found = placements.map((placement) => ({ placement, event: newestPlan(placement.job, jobEvents) }));
  const faults = found.flatMap(({ placement, event }): PlanFault[] =>
    event !== undefined && isSame(event, placement) ? [] : [{ job: placement.job, is: "not_there" }],
  );
  if (faults.length > 0) return { faults };
  const acts = found.flatMap(({ placement, event }): JobAct[] =>
    event === undefined
      ? []
      : [{ kind: "change", job: placement.job, change: { kind: "withdrawn" }, amends: event.number }],
  );
  return { acts: [...acts, { kind: "announce" }] };
}

function newestPlan(job: string, events: readonly JobEvent[]): JobEvent | undefined {
  const own = events.filter((event) => event.job === job);
  const amended = new Set(own.map(({ amends }) => amends));
  return own.findLast(({ number, change }) => change.kind === "planned" && !amended.has(number));
}

function isSame({ change }: JobEvent, { day, people }: ShownPlacement): boolean {
  return change.kind === "planned" && change.day === day && areSame(change.people, people);
}

function areSame(a: readonly string[], b: readonly string[]): boolean {
  return a.length === b.length && a.every((one) => b.includes(one));
}

/** What of a plan does not stand in the records yet, with the versions that it was made for. */
export function unconfirmed({ placed }: Plan, jobs: readonly Job[]): readonly ShownPlacement[] {
  return placed.flatMap((placement): ShownPlacement[] => {
    const job = jobs.find(({ number }) => number === placement.job);
    if (job === undefined || (job.day === placement.day && areSame(job.people, placement.people))) return [];
    return [{ ...placement, version: job.version }];
  });
}
