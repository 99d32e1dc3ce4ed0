import { isDeepStrictEqual } from "node:util";
import { parseCommand } from "../conversation/commands.ts";
import { finish } from "../conversation/finish.ts";
import type { Run, Show, Turn } from "../conversation/turn.ts";
import { runTopic } from "../declaration/run-topic.ts";
import type { ReportProgress } from "../declaration/topic.ts";
import type { DeskParts, Inbound, Reply, ShowProgress } from "../desk.ts";
import { buildCancelledCard, buildFaultCard } from "../messages/build-link-card.ts";
import { buildCalledOffCard, buildProgressCard } from "../messages/build-progress-card.ts";
import type { Card } from "../messages/card.ts";
import { COMMON, type Reader, speakOf, type TopicVoice, voiceFor } from "../messages/voice.ts";
import type { Fault } from "../ports/fault-log.ts";
import type { Exchange, Person, WorkspaceStore } from "../ports/store.ts";
import { normaliseText } from "../units/normalise-text.ts";
import { ownerOf } from "./call-off.ts";
import { handPapers } from "./hand-papers.ts";
import type { Turns } from "./in-turn.ts";
import { markForJob, readBackground } from "./job-background.ts";
import { isChangedMeanwhile, jobOfRun, lendRecords, otherEvents, otherJobs } from "./job-desk.ts";
import { type FilesTaken, keepFiles } from "./keep-files.ts";
import type { KeptCards } from "./kept-cards.ts";
import { linkDoors, recordLink } from "./link-doors.ts";
import type { RunInFlight, RunsInFlight } from "./runs-in-flight.ts";
import { shortId } from "./short-id.ts";
import { takeTurn } from "./take-turn.ts";
import type { TryLimit } from "./try-limit.ts";
import type { BookShelf, WorkspaceBooks } from "./workspace-books.ts";
import { isWriting, type JobWriting, type Written, writeJob } from "./write-job.ts";

/** The desk's parts with what it remembers between messages. */
export interface DeskRoom extends DeskParts {
  readonly turns: Turns;
  readonly tries: TryLimit;
  readonly runs: RunsInFlight;
  readonly kept: KeptCards;
  readonly shelf: BookShelf;
}

/** One message while it is served. */
export interface Service {
  readonly room: DeskRoom;
  readonly inbound: Inbound;
  readonly show: ShowProgress;
  readonly signal: AbortSignal;
  readonly workspace: WorkspaceStore;
  /** Ids as they are stored: a door's own ids mean nothing in another door, nor from another user. */
  readonly delivery: string;
  readonly conversation: string;
  /** Keeps the photos and papers that came with it; however often it is asked, once. */
  readonly files: () => Promise<FilesTaken>;
}

/** More than this is no message of a person [characters]. */
const LONGEST_LOGGED = 2000;

/** Serves one message: finds the person, waits for their turn, and answers. */
export async function serve(room: DeskRoom, inbound: Inbound, show: ShowProgress, signal: AbortSignal): Promise<Reply> {
  const { caller } = inbound;
  try {
    const workspace = await room.store.openWorkspace(caller);
    const { id } = await workspace.findPerson(caller);
    const delivery = JSON.stringify([caller.door, caller.user, inbound.delivery]);
    const conversation = JSON.stringify([caller.door, inbound.conversation]);
    let taken: Promise<FilesTaken> | undefined;
    const files = () => {
      taken ??= keepFiles(room, workspace.workspace, inbound);
      return taken;
    };
    const service: Service = { room, inbound, show, signal, workspace, delivery, conversation, files };
    return await room.turns.take(JSON.stringify([workspace.workspace, id]), () => answerOnce(service));
  } catch (error) {
    // Who reads is not known yet: the company's own language is the best guess.
    return fail(room, inbound, room.books.company, { doing: "open", error });
  }
}

async function answerOnce(service: Service): Promise<Reply> {
  const { room, inbound, workspace, delivery } = service;
  const given = await workspace.findDelivery(delivery);
  // What was called off is not begun again when its door sends it again.
  const known = given ?? room.kept.find(keptKey(service));
  if (known !== undefined) return { card: known, isRepeat: true };
  // Read again: the message before this one may have changed the language or joined two doors.
  const person = await workspace.findPerson(inbound.caller);
  if (service.signal.aborted) return cancelled(person);
  try {
    const command = inbound.form ? undefined : parseCommand(normaliseText(inbound.text));
    if (command?.kind === "link") return await answerLink(service, person, command.what);
    return await decideAndSave(service, person);
  } catch (error) {
    if (service.signal.aborted) return cancelled(person);
    return fail(room, inbound, person, { doing: "answer", workspace: workspace.workspace, error });
  }
}

/** When a colleague changed the job in the same moment, the message is taken once more on what is there now. */
async function decideAndSave(service: Service, person: Person, mayRepeat = true): Promise<Reply> {
  const decided = await decide(service, person);
  if (service.signal.aborted) return cancelled(person);
  if (decided === undefined) return calledOff(service, person);
  const reply = await save(service, person, decided, mayRepeat);
  return reply ?? (await decideAndSave(service, person, false));
}

/** @returns what to show and write, or nothing when the person called it off meanwhile */
async function decide(service: Service, person: Person): Promise<Written | undefined> {
  const { room, inbound, workspace } = service;
  const files = await service.files();
  const own = await room.shelf.booksOf(workspace);
  const { turn, decision } = await takeTurn(service, person, files, own);
  const shown = decision.kind === "show" ? decision : await runInFlight(service, decision, turn, own);
  if (shown === undefined) return undefined;
  const job = await jobOfRun(service, decision, turn);
  const written = markForJob(shown, turn);
  const ofJob: Turn = { ...turn, ...(job && { job }) };
  // Most messages write nothing, and then nothing more is read.
  if (!isWriting(ofJob, written, files.kept)) return { shown: written, jobs: [], posts: [] };
  const events = job === undefined ? [] : await workspace.jobHistory(job.number);
  const others = await otherJobs(service, shown, job);
  const writing: JobWriting = {
    turn: ofJob,
    person: { ...person, ...shown.reader },
    door: inbound.caller.door,
    workspace: workspace.workspace,
    now_ms: room.clock.now_ms(),
    events,
    others,
    otherEvents: await otherEvents(service, others),
    own,
    background: await readBackground(workspace, room.books.company, job === undefined ? others : [job, ...others]),
    files: files.kept,
  };
  return await handPapers(service, writing, writeJob(writing, written));
}

async function runInFlight(
  service: Service,
  decision: Run,
  turn: Turn,
  own: WorkspaceBooks,
): Promise<Show | undefined> {
  const { cautions } = turn;
  const { room, inbound, signal } = service;
  const voice = speakOf(voiceFor(room.library, decision.reader), decision.topic);
  const run = room.runs.start({
    owner: ownerOf(inbound.caller),
    conversation: inbound.conversation,
    id: shortId(room),
    signal,
    calledOff: buildCalledOffCard(voice),
  });
  try {
    const report = reportProgress(service, voice, run);
    const { topic } = voice;
    if (topic.uses !== undefined) {
      // Short work on the records, which no worker thread has.
      const lent = await lendRecords(service, decision, turn, topic.uses, own);
      const answered = runTopic(topic, decision.facts, lent, room.library.cautions, report);
      return run.end() ? undefined : finish(decision, answered, room.library, lent, cautions);
    }
    const answered = await room.runner.run(decision.topic, decision.facts, report, run.signal);
    return run.end() ? undefined : finish(decision, answered, room.library, own.books, cautions);
  } catch (error) {
    if (run.end()) return undefined;
    throw error;
  }
}

function reportProgress(
  { room, inbound, show, workspace }: Service,
  voice: TopicVoice,
  run: RunInFlight,
): ReportProgress {
  return (done, total, soFar) => {
    // A thread that is being stopped may still have reports under way.
    if (run.signal.aborted) return;
    try {
      show(buildProgressCard(voice, done, total, run.id, soFar));
    } catch (error) {
      // A door that cannot show progress must not cost the person the answer.
      const { door } = inbound.caller;
      room.faults.report({ id: shortId(room), doing: "progress", door, workspace: workspace.workspace, error });
    }
  };
}

/** @returns nothing when a job was changed meanwhile and the message may be taken once more */
async function save(
  service: Service,
  person: Person,
  { shown: decided, jobs, posts, crew }: Written,
  mayRepeat: boolean,
): Promise<Reply | undefined> {
  const { room, inbound, workspace } = service;
  const { card, state, carriedFrom, marks } = decided;
  const exchange: Exchange = {
    ...recordOf(service),
    person: { ...person, ...decided.reader },
    state,
    card,
    text: inbound.text.slice(0, LONGEST_LOGGED),
    ...(carriedFrom !== undefined && { carriedFrom }),
    ...(marks !== undefined && { marks }),
    ...(jobs.length > 0 && { jobs }),
    ...(posts.length > 0 && { posts }),
    ...(crew && { crew }),
  };
  try {
    await workspace.commit(exchange);
    return { card, isRepeat: false };
  } catch (error) {
    const kept = await workspace.findDelivery(service.delivery).catch(() => undefined);
    // The commit may have held although its confirmation was lost, or another process may have answered first.
    if (kept !== undefined) return { card: kept, isRepeat: !isDeepStrictEqual(kept, card) };
    if (mayRepeat && isChangedMeanwhile(error)) return undefined;
    return fail(room, inbound, person, { doing: "save", workspace: workspace.workspace, error });
  }
}

async function answerLink(service: Service, person: Person, what: string): Promise<Reply> {
  const { room, inbound, workspace } = service;
  const now_ms = room.clock.now_ms();
  const { newCode, tries } = room;
  const linked = await linkDoors({ workspace, person, caller: inbound.caller, now_ms, what, newCode, tries });
  try {
    await recordLink(workspace, linked, recordOf(service));
  } catch (error) {
    // The code or the join itself is saved already; only the record of this message is missing.
    report(room, inbound, { doing: "save", workspace: workspace.workspace, error });
  }
  return { card: linked.card, isRepeat: false };
}

function recordOf({ room, conversation, delivery }: Service): Pick<Exchange, "conversation" | "delivery" | "at_ms"> {
  return { conversation, delivery, at_ms: room.clock.now_ms() };
}

function calledOff(service: Service, person: Person): Reply {
  const reply = cancelled(person);
  service.room.kept.keep(keptKey(service), reply.card);
  return reply;
}

function keptKey({ workspace, delivery }: Service): string {
  return JSON.stringify([workspace.workspace, delivery]);
}

function cancelled(reader: Reader): Reply {
  return { card: buildCancelledCard(COMMON[reader.language]), isRepeat: false };
}

type Failure = Pick<Fault, "doing" | "error" | "workspace">;

function fail(room: DeskRoom, inbound: Inbound, reader: Reader, failure: Failure): Reply {
  const card: Card = buildFaultCard(COMMON[reader.language], report(room, inbound, failure));
  return { card, isRepeat: false };
}

function report(room: DeskRoom, inbound: Inbound, failure: Failure): string {
  const id = shortId(room);
  room.faults.report({ id, door: inbound.caller.door, ...failure });
  return id;
}
