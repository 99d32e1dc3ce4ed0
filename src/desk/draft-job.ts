import type { CrewRefusal } from "../crew/crew-rules.ts";
import type { Job, JobChange, JobEntry, JobEvent } from "../jobs/job.ts";
import type { JobAct } from "../jobs/job-act.ts";
import { type JobRefusal, refuseEntry } from "../jobs/job-rules.ts";
import { addToJob, projectJob } from "../jobs/project-job.ts";
import { wordTrail } from "./trail-post.ts";
import { type CrewDraft, startCrew, tellCrew, useParts } from "./write-crew.ts";
import type { JobWriting } from "./write-job.ts";

/** A job while a message writes into it. */
export interface Draft {
  readonly writing: JobWriting;
  readonly job: Job | undefined;
  /** Other jobs, as the message leaves them. */
  readonly others: readonly Job[];
  readonly entries: readonly JobEntry[];
  /** What was told could not be kept, and why. */
  readonly lost?: JobRefusal;
  /** An act that the rules refuse: then nothing of the answer is done. */
  readonly stopped?: JobRefusal | CrewRefusal;
  /** What is said of people, trucks and stock. */
  readonly crew: CrewDraft;
  /** Number of the job that is talked about from now on; null where none is. */
  readonly open?: string | null;
  readonly wantsSummary?: true;
  /** What the team is to read of a fault. */
  readonly posted?: Extract<JobAct, { readonly kind: "trail" }>;
  readonly announces?: true;
}

export function startDraft(writing: JobWriting): Draft {
  return { writing, job: writing.turn.job, others: writing.others, entries: [], crew: startCrew(writing) };
}

/** Photos and papers go to the job that is talked about once the message is done; without one they were refused before. */
export function addFiles(draft: Draft): Draft {
  if (draft.job === undefined) return draft;
  return draft.writing.files.reduce((soFar, file) => tell(soFar, { kind: "file", file }), draft);
}

export function tell(draft: Draft, change: JobChange): Draft {
  const added = add(draft, change);
  return "code" in added ? { ...draft, lost: added } : added;
}

export function act(draft: Draft, wanted: JobAct): Draft {
  if (draft.stopped !== undefined) return draft;
  switch (wanted.kind) {
    case "open":
      return { ...draft, open: wanted.job };
    case "leave":
      return { ...draft, open: null };
    case "summary":
      return { ...draft, wantsSummary: true };
    case "announce":
      return { ...draft, announces: true };
    case "crew": {
      const { change, amends } = wanted;
      const said = tellCrew(draft.crew, { change, ...(amends !== undefined && { amends }) });
      return "code" in said ? { ...draft, stopped: said } : { ...draft, crew: said };
    }
    case "paper":
      return draft;
    case "trail":
      return addTrail(draft, wanted);
    case "begin": {
      const { job, kind: _, ...opening } = wanted;
      const begun = add({ ...draft, job: undefined }, { kind: "opened", ...opening }, { number: job });
      return "code" in begun ? { ...draft, stopped: begun } : { ...begun, open: job };
    }
    case "change": {
      const isOther = wanted.job !== undefined && wanted.job !== draft.job?.number;
      const { change, job = "", amends } = wanted;
      const added = isOther ? addToOther(draft, change, job, amends) : add(draft, change, { amends });
      return "code" in added ? { ...draft, stopped: added } : added;
    }
  }
}

/** How a cause was found stands in the record once, however often it is looked at. */
function addTrail(draft: Draft, trail: Extract<JobAct, { readonly kind: "trail" }>): Draft {
  const text = wordTrail(draft.writing, trail);
  const isKept = draft.job?.trail.at(-1)?.text === text;
  const added = isKept ? draft : tell(draft, { kind: "trail", text });
  return trail.wantsPost && added.lost === undefined ? { ...added, posted: trail } : added;
}

/** The draft with one more change of a job that is not talked about, or why the rules refuse it. */
function addToOther(draft: Draft, change: JobChange, number: string, amends?: number): Draft | JobRefusal {
  const { writing, others, entries } = draft;
  const seen = writing.others.find((one) => one.number === number);
  const events = writing.otherEvents.filter((event) => event.job === number);
  const of = { number, seen: seen?.version ?? 0, events, amends };
  const added = add({ ...draft, job: others.find((one) => one.number === number) }, change, of);
  if ("code" in added) return added;
  const { job, crew } = added;
  const rest = others.filter((one) => one.number !== number);
  return {
    ...draft,
    entries: [...entries, ...added.entries.slice(entries.length)],
    others: job ? [...rest, job] : rest,
    crew,
  };
}

/** Which job a change goes to: the one that is talked about where nothing else is said. */
interface Whither {
  readonly number?: string;
  /** Version of another job, as it was seen. */
  readonly seen?: number;
  readonly events?: readonly JobEvent[];
  readonly amends?: number | undefined;
}

/** The draft with one more change, or why the rules refuse it. */
function add(draft: Draft, change: JobChange, of: Whither = {}): Draft | JobRefusal {
  const { writing, job, entries } = draft;
  const { person, now_ms, door, turn } = writing;
  const { number = job?.number ?? "", seen = 0, events = writing.events, amends } = of;
  const version = number === turn.job?.number ? turn.job.version : seen;
  const entry: JobEntry = { job: number, change, ...(amends !== undefined && { amends }), version };
  const refusal = refuseEntry(job, events, entry, person);
  if (refusal !== undefined) return refusal;
  const who = { by: person.name, person: person.id, at_ms: now_ms, door };
  const event: JobEvent = { number: (job?.version ?? 0) + 1, job: number, change, ...who };
  const next = amends === undefined ? addToJob(job, event) : projectJob([...events, { ...event, amends }]);
  return { ...draft, job: next, entries: [...entries, entry], crew: useParts(draft.crew, job, event, amends) };
}
