import { parseJob, parseJobChange } from "../../src/boundary/stored-job.ts";
import type { Job, JobEvent } from "../../src/jobs/job.ts";
import type { JobFilter } from "../../src/ports/store.ts";
import type { Scope } from "./scope.ts";
import { readBack } from "./stored-rows.ts";

/** The number before the first that is given out. */
const BEFORE_FIRST = 1000;

export async function findJob(scope: Scope, number: string): Promise<Job | undefined> {
  const row = await scope.jobs().select("state").where("number", "=", number).executeTakeFirst();
  return row && readJob(row.state, number);
}

/** Jobs that match all of a filter, by day and number; those without a day last. */
export async function listJobs(scope: Scope, { statuses, from, to, person, told }: JobFilter): Promise<readonly Job[]> {
  let query = scope.jobs().select(["number", "state"]);
  if (statuses !== undefined) query = query.where("status", "in", [...statuses]);
  if (from !== undefined) query = query.where("day", ">=", from);
  if (to !== undefined) query = query.where("day", "<=", to);
  if (person !== undefined) query = query.where("people", "like", `%${JSON.stringify(person)}%`);
  if (told !== undefined) query = query.where("state", "like", `%"${told}%`);
  const jobs = (await query.execute()).map(({ number, state }) => readJob(state, number));
  // A pattern may match more than the name that it was made of.
  const theirs = person === undefined ? jobs : jobs.filter(({ people }) => people.includes(person));
  return theirs.filter((job) => told === undefined || wasTold(job, told)).sort(byDay);
}

/** Everything that happened to a job, oldest first. */
export async function jobHistory(scope: Scope, job: string): Promise<readonly JobEvent[]> {
  return (await selectEvents(scope).where("job", "=", job).orderBy("number").execute()).map(shapeEvent);
}

/** Everything that happened to all jobs, job by job, oldest first. */
export async function allHistory(scope: Scope): Promise<readonly JobEvent[]> {
  return (await selectEvents(scope).orderBy("job").orderBy("number").execute()).map(shapeEvent);
}

function selectEvents(scope: Scope) {
  return scope.jobEvents().select(["number", "job", "person", "by", "door", "at_ms", "change", "amends"]);
}

type EventRow = Awaited<ReturnType<ReturnType<typeof selectEvents>["execute"]>>[number];
function shapeEvent({ change, amends, ...row }: EventRow): JobEvent {
  return {
    ...row,
    change: readBack(parseJobChange(change), `event ${row.number} of job ${row.job}`),
    ...(amends !== null && { amends }),
  };
}

/** Takes the next number that no job has; called inside one transaction. */
export async function nextJobNumber(scope: Scope): Promise<string> {
  const counter = await scope.jobCounters().select("last").executeTakeFirst();
  let next = (counter?.last ?? BEFORE_FIRST) + 1;
  while ((await findJob(scope, String(next))) !== undefined) next += 1;
  await scope
    .addJobCounter({ last: next })
    .onConflict((conflict) => conflict.column("workspace").doUpdateSet({ last: next }))
    .execute();
  return String(next);
}

function wasTold({ facts }: Job, told: string): boolean {
  return Object.keys(facts).some((fact) => fact.startsWith(told));
}

function readJob(state: string, number: string): Job {
  return readBack(parseJob(state), `job ${number}`);
}

function byDay(one: Job, other: Job): number {
  const [a, b] = [keyOf(one), keyOf(other)];
  if (a === b) return 0;
  return a < b ? -1 : 1;
}

/** Sorts as text; a day that is not set comes after every day. */
function keyOf({ day = "~", number }: Job): string {
  return `${day} ${number.padStart(12, "0")}`;
}
