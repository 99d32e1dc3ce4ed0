import { parseJob, parseJobChange } from "../../src/boundary/stored-job.ts";
import type { Job, JobEntry, JobEvent } from "../../src/jobs/job.ts";
import { refuseStandIn } from "../../src/jobs/job-rules.ts";
import { addToJob, projectJob } from "../../src/jobs/project-job.ts";
import type { Door } from "../../src/ports/store.ts";
import { DatabaseFault } from "./database-fault.ts";
import { findJob, jobHistory } from "./job-look-up.ts";
import type { Scope } from "./scope.ts";
import { writeDown } from "./stored-rows.ts";

/** Who wrote into jobs, when and where. */
interface WrittenBy {
  readonly person: string;
  readonly by: string;
  readonly door: Door;
  readonly at_ms: number;
}

/** Adds what was written into jobs, in order, and brings each job up to date; called inside one transaction. */
export async function addEntries(scope: Scope, entries: readonly JobEntry[], who: WrittenBy): Promise<void> {
  const seen = new Map<string, number>();
  for (const entry of entries) {
    const job = await findJob(scope, entry.job);
    const before = seen.get(entry.job) ?? job?.version ?? 0;
    seen.set(entry.job, before);
    if (entry.version !== undefined && entry.version !== before) throw changed(entry.job, entry.version, before);
    await addEntry(scope, job, entry, who);
  }
}

/** Adds events that happened elsewhere, as the books tell them. */
export async function addEvents(scope: Scope, events: readonly JobEvent[]): Promise<void> {
  for (const { job, change, amends, person, by, door, at_ms } of events) {
    const entry: JobEntry = { job, change, ...(amends !== undefined && { amends }) };
    await addEntry(scope, await findJob(scope, job), entry, { person, by, door, at_ms });
  }
}

async function addEntry(scope: Scope, job: Job | undefined, entry: JobEntry, who: WrittenBy): Promise<void> {
  const { change, amends } = entry;
  const opens = change.kind === "opened" && amends === undefined;
  if (opens && job !== undefined) throw changed(entry.job, 0, job.version);
  if (!opens && job === undefined) throw new DatabaseFault("job_refused", `there is no job ${entry.job}`);
  const number = (job?.version ?? 0) + 1;
  const event: JobEvent = { number, job: entry.job, change, ...(amends !== undefined && { amends }), ...who };
  const next = amends === undefined ? addToJob(job, event) : await amend(scope, event, amends);
  if (next === undefined) throw new DatabaseFault("job_refused", `job ${entry.job} cannot be opened so`);
  await scope
    .addJobEvent({ ...who, job: entry.job, number, change: writeDown(change, parseJobChange), amends: amends ?? null })
    .execute();
  await saveJob(scope, next);
}

async function amend(scope: Scope, event: JobEvent, amends: number): Promise<Job | undefined> {
  const events = await jobHistory(scope, event.job);
  const refused = refuseStandIn(events, event.change, amends);
  if (refused === undefined) return projectJob([...events, event]);
  throw new DatabaseFault("job_refused", `event ${amends} of job ${event.job} cannot be put right so: ${refused.code}`);
}

async function saveJob(scope: Scope, job: Job): Promise<void> {
  const { number, status, day = null, version } = job;
  const kept = { status, day, people: JSON.stringify(job.people), state: writeDown(job, parseJob), version };
  await scope
    .addJob({ number, ...kept })
    .onConflict((conflict) => conflict.columns(["workspace", "number"]).doUpdateSet(kept))
    .execute();
}

function changed(job: string, seen: number, now: number): DatabaseFault {
  return new DatabaseFault(
    "job_changed",
    `job ${job} was changed meanwhile: version ${seen} was seen, ${now} is there`,
  );
}
