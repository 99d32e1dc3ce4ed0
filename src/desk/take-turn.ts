import { type Books, listNames } from "../books/books.ts";
import { converse } from "../conversation/converse.ts";
import { EMPTY_STATE } from "../conversation/state.ts";
import type { Decision, Turn } from "../conversation/turn.ts";
import type { KnownFacts } from "../declaration/facts.ts";
import type { Topic } from "../declaration/topic.ts";
import { askerRecord } from "../faults/topic/asker-record.ts";
import { CURED_BY } from "../faults/topic/fault-facts.ts";
import { foundBefore } from "../faults/topic/found-before.ts";
import { measuredBefore } from "../faults/topic/measured-before.ts";
import type { Job } from "../jobs/job.ts";
import type { Person } from "../ports/store.ts";
import { jobNumbers, today } from "./job-desk.ts";
import type { FilesTaken } from "./keep-files.ts";
import type { Service } from "./serve.ts";
import { shortId } from "./short-id.ts";
import { takeFiles } from "./take-files.ts";
import type { WorkspaceBooks } from "./workspace-books.ts";

/** A message with everything that decides what it means, and what it means. */
export interface TakenTurn {
  readonly turn: Turn;
  readonly decision: Decision;
}

/**
 * What the message means. Where it goes on with a walk of another job, or is about a topic that asks the records, it is
 * read anew with these at hand.
 */
export async function takeTurn(
  service: Service,
  person: Person,
  files: FilesTaken,
  { books }: WorkspaceBooks,
): Promise<TakenTurn> {
  const turn = await makeTurn(service, person, books);
  if (files.kept.length + files.refused.length > 0) return takeFiles(turn, files);
  const decision = converse(turn);
  const job = await jobOfWalk(service, turn, decision);
  const lacksRecord = asksRecord(turn, decision);
  if (job === undefined && !lacksRecord) return { turn, decision };
  const there: Turn = {
    ...turn,
    ...(job && { job, books: { ...(turn.books ?? books), openJob: job } }),
    ...(lacksRecord && { record: await readRecord(service, person, job ?? turn.job, books) }),
  };
  return { turn: there, decision: converse(there) };
}

async function jobOfWalk({ workspace }: Service, turn: Turn, decision: Decision): Promise<Job | undefined> {
  const wanted = decision.state.job;
  return wanted === undefined || wanted === turn.job?.number ? undefined : await workspace.findJob(wanted);
}

/** A fact that only the records tell, by which the topics that ask them are known. */
const RECORDED = "asker_may";

function asksRecord({ library }: Turn, decision: Decision): boolean {
  const about = decision.kind === "run" ? decision.topic : decision.state.walk?.topic;
  const topic: Topic | undefined = about === undefined ? undefined : library.topics.get(about);
  return topic?.facts[RECORDED] !== undefined;
}

async function readRecord(
  { room, workspace }: Service,
  { id }: Person,
  job: Job | undefined,
  books: Books,
): Promise<KnownFacts> {
  return {
    ...askerRecord(id, today(room), books, room.library.faults),
    ...measuredBefore(job),
    ...foundBefore(await workspace.listJobs({ told: CURED_BY })),
  };
}

async function makeTurn(
  { room, inbound, workspace, conversation }: Service,
  person: Person,
  books: Books,
): Promise<Turn> {
  const state = (await workspace.loadConversation(person.id, conversation)) ?? EMPTY_STATE;
  // A walk elsewhere only matters while none is open here.
  const elsewhere = state.walk ? undefined : await workspace.findOpenWalk(person.id, conversation);
  const job = state.job === undefined ? undefined : await workspace.findJob(state.job);
  const names = listNames(books);
  const { id, name, role } = person;
  return {
    text: inbound.text,
    state,
    reader: { language: person.language, units: person.units },
    newId: shortId(room),
    company: books.company,
    names: { ...names, job: await jobNumbers(inbound.text, names.job ?? [], workspace) },
    books: { ...books, today: today(room), asker: { id, name, role }, ...(job && { openJob: job }) },
    ...(job && { job }),
    library: room.library,
    cautions: {
      marks: await workspace.cautionMarks(conversation),
      timeZone: books.company.timeZone,
      speaker: person.name,
      now_ms: room.clock.now_ms(),
    },
    ...(elsewhere !== undefined && { elsewhere }),
    ...(inbound.channel !== undefined && { channel: { door: inbound.caller.door, id: inbound.channel } }),
    ...(inbound.aim !== undefined && { aim: inbound.aim }),
    ...(inbound.form !== undefined && { form: inbound.form }),
  };
}
