import type { StepChange } from "../conversation/state.ts";
import { toldInMessage } from "../conversation/told-in-message.ts";
import type { Show, Turn } from "../conversation/turn.ts";
import { type CrewRefusal, isCrewRefusal } from "../crew/crew-rules.ts";
import { POST_TRAIL } from "../faults/topic/fault-facts.ts";
import type { Job, JobChange, JobEntry, JobEvent } from "../jobs/job.ts";
import type { JobAct } from "../jobs/job-act.ts";
import { type JobRefusal, refuseEntry } from "../jobs/job-rules.ts";
import { addToJob, projectJob } from "../jobs/project-job.ts";
import { buildNoticeCard } from "../messages/build-notice-card.ts";
import type { Card, TextBlock } from "../messages/card.ts";
import { CREW_TEXTS, sayCrewRefusal } from "../messages/crew-texts.ts";
import type { Language } from "../messages/language.ts";
import { problem, quiet } from "../messages/notes.ts";
import { JOB_TEXTS, sayJobRefusal, sayWritten } from "../messages/say-job.ts";
import { voiceFor } from "../messages/voice.ts";
import type { KeptFile } from "../ports/files.ts";
import type { Post } from "../ports/outbox.ts";
import type { CrewWriting, Door, Person } from "../ports/store.ts";
import { planPosts } from "./plan-post.ts";
import { summaryPosts } from "./summary-post.ts";
import { trailPosts, wordTrail } from "./trail-post.ts";
import type { WorkspaceBooks } from "./workspace-books.ts";
import {
  type CrewDraft,
  crewNotes,
  crewWriting,
  enteredCrew,
  startCrew,
  takeBackCrew,
  tellCrew,
  useParts,
} from "./write-crew.ts";

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
  /** Everything that happened to those of which it puts something right. */
  readonly otherEvents: readonly JobEvent[];
  /** The books of the workspace, and what was said of its crew. */
  readonly own: WorkspaceBooks;
  /** Photos and papers that came with the message and are kept. */
  readonly files: readonly KeptFile[];
}
/** What is to be shown and saved. */
export interface Written {
  readonly shown: Show;
  readonly jobs: readonly JobEntry[];
  readonly posts: readonly Post[];
  readonly crew?: CrewWriting;
}

/**
 * Settles what a message writes into jobs: what was told, what the answer wants done, and what undo takes back. Nothing is
 * written that the card does not say; what the rules refuse is said instead.
 */
export function writeJob(writing: JobWriting, shown: Show): Written {
  const { turn } = writing;
  if (shown.takesBack !== undefined) return takeBack(writing, shown, shown.takesBack);
  const { acts = [] } = shown;
  const told = turn.job === undefined ? [] : toldInMessage(turn, shown, turn.job);
  if (told.length === 0 && acts.length === 0 && writing.files.length === 0) return { shown, jobs: [], posts: [] };
  const draft = told.reduce(tell, startDraft(writing));
  const done = acts.reduce(act, draft);
  if (done.stopped !== undefined) return refused(writing, shown, addFiles(draft), done.stopped);
  return finishDraft(writing, shown, addFiles(done));
}

/** What was told is taken back in the records too; what closed or began a job stays there, and that is said. */
function takeBack(
  writing: JobWriting,
  shown: Show,
  { job, events, crew = [] }: NonNullable<Show["takesBack"]>,
): Written {
  const { language } = writing.person;
  const texts = JOB_TEXTS[language];
  const jobs = events.map((amends): JobEntry => ({ job, change: { kind: "withdrawn" }, amends }));
  const jobNote = jobs.length === 0 ? problem(texts.staysInJob(job)) : quiet(texts.takenBack(job));
  const said = takeBackCrew(startCrew(writing), crew);
  const crewNote = "code" in said ? problem(sayCrewRefusal(language, said)) : quiet(CREW_TEXTS[language].takenBack);
  const notes = [...(job === "" ? [] : [jobNote]), ...(crew.length === 0 ? [] : [crewNote])];
  const taken = "code" in said ? undefined : crewWriting(said, []);
  return { shown: withNotes(shown, notes), jobs, posts: [], ...(taken && { crew: taken }) };
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

function startDraft(writing: JobWriting): Draft {
  return { writing, job: writing.turn.job, others: writing.others, entries: [], crew: startCrew(writing) };
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
  if (!trail.wantsPost && draft.job?.trail.at(-1)?.text === text) return draft;
  const added = tell(draft, { kind: "trail", text });
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

function finishDraft(writing: JobWriting, shown: Show, draft: Draft): Written {
  const { person, turn } = writing;
  const { entries, lost, open, job } = draft;
  const voice = { ...voiceFor(turn.library, person), ...(turn.books && { books: turn.books }) };
  const summaries = summaryPosts(writing, draft);
  const told =
    job === undefined || draft.posted === undefined ? [] : trailPosts(writing, draft.posted, job.number, job.version);
  const plans = planPosts(writing, draft);
  const crew = crewWriting(draft.crew, entries);
  const texts = JOB_TEXTS[person.language];
  const notes = [
    ...sayWritten(voice, entries).map(quiet),
    ...(lost === undefined
      ? []
      : [problem(texts.notSaved(turn.job?.number ?? "", sayJobRefusal(person.language, lost)))]),
    ...crewNotes(draft.crew).map(quiet),
    ...(summaries.length > 0 ? [quiet(texts.posted)] : []),
    ...(told.length > 0 ? [quiet(texts.postedTrail)] : []),
    ...(draft.wantsSummary && summaries.length === 0 ? [problem(texts.noTeamChannel)] : []),
    ...(draft.announces ? [quiet(CREW_TEXTS[person.language][plans.length > 0 ? "announced" : "notAnnounced"])] : []),
  ];
  const entered = enteredBy(turn.job, entries, draft.crew);
  const noted = withNotes(entered === undefined ? shown : markStep(turn, shown, entered), notes);
  const { job: _, ...left } = noted.state;
  const state = open === null ? left : { ...noted.state, ...(open !== undefined && { job: open }) };
  return {
    shown: { ...noted, state: askedOnce(state) },
    jobs: entries,
    posts: [...summaries, ...told, ...plans],
    ...(crew && { crew }),
  };
}

/** Facts and readings can be taken back by undo; what begins or closes a job cannot. */
function enteredBy(job: Job | undefined, entries: readonly JobEntry[], said: CrewDraft): StepChange["entered"] {
  const [first] = entries;
  const crew = enteredCrew(said);
  if (first === undefined) return crew.length === 0 ? undefined : { job: "", events: [], crew };
  const version = first.job === job?.number ? job.version : 0;
  const events = entries.flatMap(({ change }, index) =>
    change.kind === "facts" || change.kind === "reading" || change.kind === "trail" ? [version + index + 1] : [],
  );
  return { job: first.job, events, ...(crew.length > 0 && { crew }) };
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
function refused(writing: JobWriting, shown: Show, draft: Draft, stopped: JobRefusal | CrewRefusal): Written {
  const card = buildNoticeCard(shown.card.title, [sayRefusal(writing.person.language, stopped)], [], "problem");
  const { acts: _, ...rest } = shown;
  return finishDraft(writing, { ...rest, card }, draft);
}

function sayRefusal(language: Language, stopped: JobRefusal | CrewRefusal): string {
  return isCrewRefusal(stopped) ? sayCrewRefusal(language, stopped) : sayJobRefusal(language, stopped);
}

function withNotes(shown: Show, notes: readonly TextBlock[]): Show {
  if (notes.length === 0) return shown;
  const card: Card = { ...shown.card, blocks: [...shown.card.blocks, ...notes] };
  return { ...shown, card };
}
