import type { Books, OpenRecord } from "../books/books.ts";
import type { Run, Show, Turn } from "../conversation/turn.ts";
import { dayAt } from "../crew/zone-time.ts";
import type { Loan } from "../declaration/topic.ts";
import type { Job, JobEvent } from "../jobs/job.ts";
import { LIVE } from "../jobs/job-rules.ts";
import type { WorkspaceStore } from "../ports/store.ts";
import { readTypedFor } from "./read-typed-for.ts";
import type { DeskRoom, Service } from "./serve.ts";
import type { WorkspaceBooks } from "./workspace-books.ts";

/** What may be the number of a job, and how many of them a message is looked through for. */
const NUMBER = /\b\d{3,9}\b/g;
const MOST_NUMBERS = 3;
const SAYS_JOB = /^\s*(job|trabajo|record|registro)\b/i;

/** Topics whose own question names the job that they are about. */
const NAME_JOBS = ["job", "record"];

/** The job that a message is about: the one that it names, else the one that is talked about. */
export async function jobOfRun({ workspace }: Service, decision: Run | Show, turn: Turn): Promise<Job | undefined> {
  if (decision.kind !== "run") return turn.job;
  const named = NAME_JOBS.includes(decision.topic) ? decision.facts["number"]?.value : decision.job;
  if (typeof named !== "string" || named === turn.job?.number) return turn.job;
  return await workspace.findJob(named);
}

/** What a topic that is about the records gets to see besides the books of its workspace. */
export async function lendRecords(
  service: Service,
  decision: Run,
  turn: Turn,
  loan: Loan,
  { books, crewEvents }: WorkspaceBooks,
): Promise<Books> {
  const job = await jobOfRun(service, decision, turn);
  const { room, workspace, inbound } = service;
  const begins = decision.facts["task"]?.value === "new";
  const { id, name, role } = await workspace.findPerson(inbound.caller);
  const isOffice = loan === "office";
  const own = { ...books, today: today(room), asker: { id, name, role } };
  if (loan === "crew") return { ...own, crewEvents, met: await workspace.listPeople() };
  return {
    ...own,
    jobs: await workspace.listJobs(isOffice ? {} : { statuses: LIVE }),
    ...(isOffice && { jobEvents: await workspace.allHistory() }),
    ...(isOffice && room.openSolver && { solve: await room.openSolver() }),
    ...(job && { openJob: job, ...(decision.topic === "record" && { openRecord: await readRecord(service, job) }) }),
    ...(job && decision.topic === "job" && { openHistory: await workspace.jobHistory(job.number) }),
    ...(turn.state.job !== undefined && { talkedJob: turn.state.job }),
    readTyped: readTypedFor(room.library, decision.reader, room.books),
    ...(begins && { nextJob: await workspace.nextJobNumber() }),
  };
}

async function readRecord({ workspace }: Service, { number }: Job): Promise<OpenRecord> {
  return {
    job: number,
    events: await workspace.jobHistory(number),
    marks: await workspace.jobMarks(number),
  };
}

/** The jobs that an answer wants changed besides the one that is talked about, as they stand. */
export async function otherJobs({ workspace }: Service, { acts = [] }: Show, job?: Job): Promise<readonly Job[]> {
  const named = acts.flatMap((act) => (act.kind === "change" && act.job !== undefined ? [act.job] : []));
  const others = [...new Set(named)].filter((number) => number !== job?.number);
  const found = await Promise.all(others.map((number) => workspace.findJob(number)));
  return found.flatMap((one) => (one === undefined ? [] : [one]));
}

/** Everything that happened to the other jobs that an answer wants changed. */
export async function otherEvents({ workspace }: Service, others: readonly Job[]): Promise<readonly JobEvent[]> {
  return (await Promise.all(others.map(({ number }) => workspace.jobHistory(number)))).flat();
}

/**
 * Numbers of jobs that a message may name: those of the books, and those in the message that the store knows. Whoever says
 * that it is a job means one, known or not.
 */
export async function jobNumbers(
  text: string,
  ofBooks: readonly string[],
  workspace: WorkspaceStore,
): Promise<readonly string[]> {
  const typed = [...new Set(text.match(NUMBER) ?? [])].filter((number) => !ofBooks.includes(number));
  if (SAYS_JOB.test(text)) return [...ofBooks, ...typed];
  const found = await Promise.all(typed.slice(0, MOST_NUMBERS).map((number) => workspace.findJob(number)));
  return [...ofBooks, ...found.flatMap((job) => (job ? [job.number] : []))];
}

/** Today's date where the company is. */
export function today({ books, clock }: DeskRoom): string {
  return dayAt(books.company.timeZone, clock.now_ms());
}

/** True: somebody else wrote in the same moment, and the message may be taken once more on what is there now. */
export function isChangedMeanwhile(error: unknown): boolean {
  return error instanceof Error && "code" in error && (error.code === "job_changed" || error.code === "crew_changed");
}
