import type { StepChange } from "../conversation/state.ts";
import { toldInMessage } from "../conversation/told-in-message.ts";
import type { Show, Turn } from "../conversation/turn.ts";
import { POST_TRAIL } from "../faults/topic/fault-facts.ts";
import type { Job, JobChange, JobEntry, JobEvent } from "../jobs/job.ts";
import type { JobAct } from "../jobs/job-act.ts";
import type { JobRecord } from "../jobs/job-record.ts";
import { type JobRefusal, refuseEntry } from "../jobs/job-rules.ts";
import { addToJob, projectJob } from "../jobs/project-job.ts";
import { buildNoticeCard } from "../messages/build-notice-card.ts";
import type { Card, TextBlock } from "../messages/card.ts";
import { problem, quiet } from "../messages/notes.ts";
import { JOB_TEXTS, sayJobRefusal, sayWritten } from "../messages/say-job.ts";
import { voiceFor } from "../messages/voice.ts";
import type { KeptFile } from "../ports/files.ts";
import type { Post } from "../ports/outbox.ts";
import type { Door, KeptMark, Person } from "../ports/store.ts";
import { type JobBackground, withMarks } from "./job-background.ts";
import { summaryPosts } from "./summary-post.ts";
import { trailPosts, wordTrail } from "./trail-post.ts";

/** A message that may write into a job: who says it, and the job as it stands. */
export interface JobWriting {
  readonly turn: Turn;
  readonly person: Person;
  readonly door: Door;
  readonly workspace: string;
  readonly now_ms: number;
  /** Everything that happened to the open job. */
  readonly events: readonly JobEvent[];
  /** Other jobs that the answer wants changed, as they stand. */
  readonly others: readonly Job[];
  /** Photos and papers that came with the message and are kept. */
  readonly files: readonly KeptFile[];
  /** What is kept about these jobs besides, by their numbers. */
  readonly background: ReadonlyMap<string, JobBackground>;
}
/** What is to be shown and saved. */
export interface Written {
  readonly shown: Show;
  readonly jobs: readonly JobEntry[];
  readonly posts: readonly Post[];
  /** The open job with its record, as the message leaves it. */
  readonly record?: JobRecord;
  /** Posts that the record of a job is handed over with. */
  readonly papers: readonly { readonly post: string; readonly record: JobRecord }[];
}

/**
 * Settles what a message writes into jobs: what was told, what the answer wants done, and what undo takes back. Nothing is
 * written that the card does not say; what the rules refuse is said instead.
 */
export function writeJob(writing: JobWriting, shown: Show): Written {
  const { turn, files } = writing;
  if (shown.takesBack !== undefined) return takeBack(writing, shown, shown.takesBack);
  const { acts = [] } = shown;
  const told = turn.job === undefined ? [] : toldInMessage(turn, shown, turn.job);
  const isAnything = told.length + acts.length + files.length + (shown.marks ?? []).length > 0;
  if (!isAnything) return { shown, jobs: [], posts: [], papers: [] };
  const draft = told.reduce(tell, startDraft(writing));
  const done = acts.reduce(act, draft);
  if (done.stopped !== undefined) return refused(writing, shown, addFiles(draft), done.stopped);
  return finishDraft(writing, shown, addFiles(done));
}

/** What was told is taken back in the job too; what closed or began a job stays there, and that is said. */
function takeBack(writing: JobWriting, shown: Show, taken: NonNullable<Show["takesBack"]>): Written {
  const { person, turn } = writing;
  const texts = JOB_TEXTS[person.language];
  const entries = taken.events.map((amends): JobEntry => ({ job: taken.job, change: { kind: "withdrawn" }, amends }));
  const note = entries.length === 0 ? problem(texts.staysInJob(taken.job)) : quiet(texts.takenBack(taken.job));
  const isOpen = taken.job === turn.job?.number;
  const done = isOpen ? finishJob(writing, shown, turn.job, entries, false) : undefined;
  return { shown: withNotes(shown, [note]), jobs: entries, posts: [], papers: [], ...done };
}

/** What the entries come to in the history once they are saved. */
function eventsOf(
  { person, now_ms, door }: JobWriting,
  entries: readonly JobEntry[],
  before: number,
): readonly JobEvent[] {
  const who = { by: person.name, person: person.id, at_ms: now_ms, door };
  return entries.map(({ job, change, amends }, index) => {
    const number = before + index + 1;
    return { number, job, change, ...(amends !== undefined && { amends }), ...who };
  });
}

/** A job with its record as the message leaves it, and what the team is told of that. */
function finishJob(
  writing: JobWriting,
  { marks = [] }: Show,
  left: Job,
  written: readonly JobEntry[],
  wantsSummary: boolean,
): Pick<Written, "record" | "posts" | "papers"> {
  const { person, now_ms, door, turn } = writing;
  const { number } = left;
  const entries = written.filter(({ job }) => job === number);
  const before = number === turn.job?.number ? writing.events : [];
  const events = [...before, ...eventsOf(writing, entries, before.length)];
  // What is put right or taken back is only told by all events.
  const job = (entries.some(({ amends }) => amends !== undefined) ? projectJob(events) : undefined) ?? left;
  const seen = marks
    .filter((mark) => mark.job === number)
    .map((mark): KeptMark => ({ ...mark, by: person.name, at_ms: now_ms, door }));
  const { marks: kept = [], isSummaryPosted = false } = writing.background.get(number) ?? {};
  const record: JobRecord = { job, events, marks: withMarks(kept, seen) };
  const isSeenTo = seen.length > 0;
  return { record, ...summaryPosts(writing, { record, entries, isSeenTo, wantsSummary, isSummaryPosted }) };
}

/** A job while a message writes into it. */
interface Draft {
  readonly writing: JobWriting;
  readonly job: Job | undefined;
  /** Other jobs, as the message leaves them. */
  readonly others: readonly Job[];
  readonly entries: readonly JobEntry[];
  /** What was told could not be kept, and why. */
  readonly lost?: JobRefusal;
  /** An act that the rules refuse: then nothing of the answer is done. */
  readonly stopped?: JobRefusal;
  /** Number of the job that is talked about from now on; null where none is. */
  readonly open?: string | null;
  readonly wantsSummary?: true;
  /** What the team is to read of a fault. */
  readonly posted?: Extract<JobAct, { readonly kind: "trail" }>;
}

function startDraft(writing: JobWriting): Draft {
  return { writing, job: writing.turn.job, others: writing.others, entries: [] };
}

/** Photos and papers go to the job that is talked about once the message is done; without one they were refused before. */
function addFiles(draft: Draft): Draft {
  if (draft.job === undefined) return draft;
  return draft.writing.files.reduce((soFar, file) => tell(soFar, { kind: "file", file }), draft);
}

function tell(draft: Draft, change: JobChange): Draft {
  const added = add(draft, change);
  return "code" in added ? { ...draft, lost: added } : added;
}

function act(draft: Draft, wanted: JobAct): Draft {
  if (draft.stopped !== undefined) return draft;
  switch (wanted.kind) {
    case "open":
      return { ...draft, open: wanted.job };
    case "leave":
      return { ...draft, open: null };
    case "summary":
      return { ...draft, wantsSummary: true };
    case "paper":
      return draft;
    case "trail":
      return addTrail(draft, wanted);
    case "begin": {
      const { job, kind: _, ...opening } = wanted;
      const begun = add({ ...draft, job: undefined }, { kind: "opened", ...opening }, job);
      return "code" in begun ? { ...draft, stopped: begun } : { ...begun, open: job };
    }
    case "change": {
      const isOther = wanted.job !== undefined && wanted.job !== draft.job?.number;
      const added = isOther
        ? addToOther(draft, wanted.change, wanted.job)
        : addOwn(draft, wanted.change, wanted.amends);
      return "code" in added ? { ...draft, stopped: added } : added;
    }
  }
}

/** How a cause was found stands in the record once, however often it is looked at. */
function addTrail(draft: Draft, trail: Extract<JobAct, { readonly kind: "trail" }>): Draft {
  const text = wordTrail(draft.writing, trail);
  if (!trail.wantsPost && draft.job?.trail.at(-1)?.text === text) return draft;
  const added = tell(draft, { kind: "trail", text });
  return trail.wantsPost && added.lost === undefined ? { ...added, posted: trail } : added;
}

/** The draft with one more change of a job that is not talked about, or why the rules refuse it. */
function addToOther(draft: Draft, change: JobChange, number: string): Draft | JobRefusal {
  const { writing, others, entries } = draft;
  const seen = writing.others.find((one) => one.number === number);
  const added = add({ ...draft, job: others.find((one) => one.number === number) }, change, number, seen?.version);
  if ("code" in added) return added;
  const { job } = added;
  const rest = others.filter((one) => one.number !== number);
  return {
    ...draft,
    entries: [...entries, ...added.entries.slice(entries.length)],
    others: job ? [...rest, job] : rest,
  };
}

/** The draft with one more change of the job that is talked about, which may put an earlier entry right. */
function addOwn(draft: Draft, change: JobChange, amends: number | undefined): Draft | JobRefusal {
  if (amends === undefined) return add(draft, change);
  const { writing, job, entries } = draft;
  const { person, now_ms, door, events } = writing;
  if (job === undefined) return { code: "unknown_job", job: "" };
  const entry: JobEntry = { job: job.number, change, amends, version: writing.turn.job?.version ?? 0 };
  const refusal = refuseEntry(job, events, entry, person);
  if (refusal !== undefined) return refusal;
  const who = { by: person.name, person: person.id, at_ms: now_ms, door };
  const next = projectJob([...events, { number: job.version + 1, job: job.number, change, amends, ...who }]);
  return { ...draft, job: next, entries: [...entries, entry] };
}

/** The draft with one more change, or why the rules refuse it. */
function add(draft: Draft, change: JobChange, number = draft.job?.number ?? "", seen = 0): Draft | JobRefusal {
  const { writing, job, entries } = draft;
  const { person, now_ms, door, events, turn } = writing;
  const version = number === turn.job?.number ? turn.job.version : seen;
  const entry: JobEntry = { job: number, change, version };
  const refusal = refuseEntry(job, events, entry, person);
  if (refusal !== undefined) return refusal;
  const who = { by: person.name, person: person.id, at_ms: now_ms, door };
  const next = addToJob(job, { number: (job?.version ?? 0) + 1, job: number, change, ...who });
  return { ...draft, job: next, entries: [...entries, entry] };
}

function finishDraft(writing: JobWriting, shown: Show, draft: Draft): Written {
  const { person, turn } = writing;
  const { entries, lost, open, job } = draft;
  const voice = { ...voiceFor(turn.library, person), ...(turn.books && { books: turn.books }) };
  const own = job && finishJob(writing, shown, job, entries, draft.wantsSummary === true);
  const others = draft.others
    .filter(({ number }) => entries.some((entry) => entry.job === number))
    .map((other) => finishJob(writing, shown, other, entries, false));
  const finished = [...(own === undefined ? [] : [own]), ...others];
  const trail =
    job === undefined || draft.posted === undefined ? [] : trailPosts(writing, draft.posted, job.number, job.version);
  const summaries = finished.flatMap((one) => one.posts);
  const texts = JOB_TEXTS[person.language];
  const notes = [
    ...sayWritten(voice, entries, writing.events).map(quiet),
    ...(lost === undefined
      ? []
      : [problem(texts.notSaved(turn.job?.number ?? "", sayJobRefusal(person.language, lost)))]),
    ...(summaries.length > 0 ? [quiet(texts.posted)] : []),
    ...(trail.length > 0 ? [quiet(texts.postedTrail)] : []),
    ...(draft.wantsSummary && summaries.length === 0 ? [problem(texts.noTeamChannel)] : []),
  ];
  const entered = enteredBy(turn.job, entries);
  const noted = withNotes(entered === undefined ? shown : markStep(turn, shown, entered), notes);
  const { job: _, ...left } = noted.state;
  const state = open === null ? left : { ...noted.state, ...(open !== undefined && { job: open }) };
  return {
    shown: { ...noted, state: askedOnce(state) },
    jobs: entries,
    posts: job === undefined ? [] : [...summaries, ...trail],
    papers: finished.flatMap((one) => one.papers),
    ...(own?.record && { record: own.record }),
  };
}

/** Can be taken back by undo whatever else the message did. */
const TOLD: readonly JobChange["kind"][] = ["facts", "reading", "trail"];
/** Cannot be taken back by undo, nor can anything else that came with them. */
const LASTING: readonly JobChange["kind"][] = ["opened", "status", "withdrawn", "item_closed", "file"];

/** What was told or added can be taken back by undo; what begins, moves or closes a job cannot, nor what puts an entry right. */
function enteredBy(job: Job | undefined, entries: readonly JobEntry[]): StepChange["entered"] {
  const [first] = entries;
  if (first === undefined) return undefined;
  const version = first.job === job?.number ? job.version : 0;
  const isLasting = entries.some(({ change, amends }) => amends !== undefined || LASTING.includes(change.kind));
  const events = entries.flatMap(({ change, amends }, index) =>
    amends === undefined && (TOLD.includes(change.kind) || !isLasting) ? [version + index + 1] : [],
  );
  return { job: first.job, events };
}

/** That the team is to read something is done once, not again with every answer that follows. */
function askedOnce({ last, ...rest }: Show["state"]): Show["state"] {
  if (last === undefined) return rest;
  const { [POST_TRAIL]: _, ...facts } = last.facts;
  return { ...rest, last: { ...last, facts } };
}

/** Remembers with the step, where it is one, what it wrote. */
function markStep(turn: Turn, shown: Show, entered: NonNullable<StepChange["entered"]>): Show {
  const { past } = shown.state;
  const step = past.at(-1);
  if (step === undefined || JSON.stringify(past) === JSON.stringify(turn.state.past)) return shown;
  return { ...shown, state: { ...shown.state, past: [...past.slice(0, -1), { ...step, entered }] } };
}

/** Nothing of the answer is done; what was told before is kept all the same. */
function refused(writing: JobWriting, shown: Show, draft: Draft, stopped: JobRefusal): Written {
  const { language } = writing.person;
  const card = buildNoticeCard(shown.card.title, [sayJobRefusal(language, stopped)], [], "problem");
  const { acts: _, ...rest } = shown;
  return finishDraft(writing, { ...rest, card }, draft);
}

function withNotes(shown: Show, notes: readonly TextBlock[]): Show {
  if (notes.length === 0) return shown;
  const card: Card = { ...shown.card, blocks: [...shown.card.blocks, ...notes] };
  return { ...shown, card };
}
