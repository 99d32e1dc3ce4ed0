import type { StepChange } from "../conversation/state.ts";
import { toldInMessage } from "../conversation/told-in-message.ts";
import type { Show, Turn } from "../conversation/turn.ts";
import { type CrewRefusal, isCrewRefusal } from "../crew/crew-rules.ts";
import { POST_TRAIL } from "../faults/topic/fault-facts.ts";
import type { Job, JobChange, JobEntry, JobEvent } from "../jobs/job.ts";
import type { JobRecord } from "../jobs/job-record.ts";
import type { JobRefusal } from "../jobs/job-rules.ts";
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
import { act, addFiles, type Draft, startDraft, tell } from "./draft-job.ts";
import { finishJob } from "./finish-job.ts";
import type { JobBackground } from "./job-background.ts";
import { planPosts } from "./plan-post.ts";
import { trailPosts } from "./trail-post.ts";
import type { WorkspaceBooks } from "./workspace-books.ts";
import { type CrewDraft, crewNotes, crewWriting, enteredCrew, startCrew, takeBackCrew } from "./write-crew.ts";

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
  readonly crew?: CrewWriting;
}

/** True: the message says, does or brings something that may belong into a job. */
export function isWriting({ job, ...turn }: Turn, shown: Show, files: readonly KeptFile[]): boolean {
  const { acts = [], marks = [], takesBack } = shown;
  if (takesBack !== undefined || acts.length + marks.length + files.length > 0) return true;
  return job !== undefined && toldInMessage({ ...turn, job }, shown, job).length > 0;
}

/**
 * Settles what a message writes into jobs: what was told, what the answer wants done, and what undo takes back. Nothing is
 * written that the card does not say; what the rules refuse is said instead.
 */
export function writeJob(writing: JobWriting, shown: Show): Written {
  const { turn, files } = writing;
  if (shown.takesBack !== undefined) return takeBack(writing, shown, shown.takesBack);
  if (!isWriting(turn, shown, files)) return { shown, jobs: [], posts: [] };
  const { acts = [] } = shown;
  const told = turn.job === undefined ? [] : toldInMessage(turn, shown, turn.job);
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
  const { person, turn } = writing;
  const { language } = person;
  const texts = JOB_TEXTS[language];
  const jobs = events.map((amends): JobEntry => ({ job, change: { kind: "withdrawn" }, amends }));
  const jobNote = jobs.length === 0 ? problem(texts.staysInJob(job)) : quiet(texts.takenBack(job));
  const said = takeBackCrew(startCrew(writing), crew);
  const crewNote = "code" in said ? problem(sayCrewRefusal(language, said)) : quiet(CREW_TEXTS[language].takenBack);
  const notes = [...(job === "" ? [] : [jobNote]), ...(crew.length === 0 ? [] : [crewNote])];
  const taken = "code" in said ? undefined : crewWriting(said, []);
  const left = job === turn.job?.number ? finishJob(writing, shown, turn.job, jobs, false) : undefined;
  return { shown: withNotes(shown, notes), jobs, posts: [], ...left, ...(taken && { crew: taken }) };
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
  const trail = job === undefined || draft.posted === undefined ? [] : trailPosts(writing, draft.posted, job.number);
  const summaries = finished.flatMap((one) => one.posts);
  const plans = planPosts(writing, draft);
  const crew = crewWriting(draft.crew, entries);
  const texts = JOB_TEXTS[person.language];
  const notes = [
    ...sayWritten(voice, entries, writing.events).filter(isNews(shown.card, entries)).map(quiet),
    ...(lost === undefined
      ? []
      : [problem(texts.notSaved(turn.job?.number ?? "", sayJobRefusal(person.language, lost)))]),
    ...crewNotes(draft.crew).map(quiet),
    ...(summaries.length > 0 ? [quiet(texts.posted)] : []),
    ...(trail.length > 0 ? [quiet(texts.postedTrail)] : []),
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
    posts: [...summaries, ...trail, ...plans],
    ...(own?.record && { record: own.record }),
    ...(crew && { crew }),
  };
}

/** A plan that the headline says in full is not said again under the card. */
function isNews({ blocks }: Card, entries: readonly JobEntry[]): (line: string) => boolean {
  const isPlan = entries.every(({ change }) => change.kind === "planned");
  return (line) => !(isPlan && blocks.some((block) => block.kind === "headline" && block.text === line));
}

/** Can be taken back by undo whatever else the message did. */
const TOLD: readonly JobChange["kind"][] = ["facts", "reading", "trail"];
/** Cannot be taken back by undo, nor can anything else that came with them. */
const LASTING: readonly JobChange["kind"][] = ["opened", "status", "withdrawn", "item_closed", "file"];

/** What was told or added can be taken back by undo; what begins, moves or closes a job cannot, nor what puts an entry right. */
function enteredBy(job: Job | undefined, entries: readonly JobEntry[], said: CrewDraft): StepChange["entered"] {
  const [first] = entries;
  const crew = enteredCrew(said);
  if (first === undefined) return crew.length === 0 ? undefined : { job: "", events: [], crew };
  const version = first.job === job?.number ? job.version : 0;
  const isLasting = entries.some(({ change, amends }) => amends !== undefined || LASTING.includes(change.kind));
  const events = entries.flatMap(({ change, amends }, index) =>
    amends === undefined && (TOLD.includes(change.kind) || !isLasting) ? [version + index + 1] : [],
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
