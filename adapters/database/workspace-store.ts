import { randomUUID } from "node:crypto";
import type { Kysely } from "kysely";
import type { BookPerson, Company } from "../../src/books/books.ts";
import { parseCard } from "../../src/boundary/stored-card.ts";
import { parseConversation } from "../../src/boundary/stored-conversation.ts";
import type { ConversationState } from "../../src/conversation/state.ts";
import type { Caller, Door, OpenWalk, Person, WorkspaceStore } from "../../src/ports/store.ts";
import { marksOfJob, newestMarks } from "./caution-marks.ts";
import { commitExchange } from "./commit-exchange.ts";
import { crewHistory } from "./crew-records.ts";
import { DatabaseFault } from "./database-fault.ts";
import { channelCards } from "./house-chat.ts";
import { allHistory, findJob, jobHistory, listJobs, nextJobNumber } from "./job-look-up.ts";
import { acceptLink, offerLink } from "./link-codes.ts";
import { addNewPosts, hasPost, lostPosts } from "./outbox.ts";
import { joinDoor } from "./register-people.ts";
import { type Scope, scopeTo } from "./scope.ts";
import { readBack } from "./stored-rows.ts";
import type { Tables } from "./tables.ts";

export interface WorkspaceParts {
  readonly db: Kysely<Tables>;
  readonly workspace: string;
  /** The door that this store was opened through. */
  readonly door: Door;
  readonly findWorkspace: (caller: Caller) => string | Promise<string>;
  /** What somebody reads who is met for the first time. */
  readonly company: Pick<Company, "language" | "units">;
  /** Who the books say may do what; nobody in a workspace of others. */
  readonly people: readonly BookPerson[];
  /** When old deliveries were last forgotten, a workspace. */
  readonly forgotten: Map<string, number>;
}

const PERSON_COLUMNS = ["id", "name", "role", "language", "units"] as const;

/** Everything of one workspace, and nothing of any other. */
export function createWorkspaceStore(parts: WorkspaceParts): WorkspaceStore {
  const { db, workspace, door, findWorkspace } = parts;
  const scope = scopeTo(db, workspace);
  const inOneCommit = <T>(work: (change: Scope) => Promise<T>): Promise<T> =>
    db.transaction().execute((transaction) => work(scopeTo(transaction, workspace)));
  const refuseStrangers = async (caller: Caller): Promise<void> => {
    if ((await findWorkspace(caller)) === workspace) return;
    throw new DatabaseFault("wrong_workspace", "a caller was looked up in a workspace of somebody else");
  };
  return {
    workspace,
    findPerson: async (caller) => {
      await refuseStrangers(caller);
      return (await personAt(scope, caller)) ?? inOneCommit((change) => welcome(change, caller, parts.company));
    },
    loadConversation: (person, conversation) => loadConversation(scope, person, conversation),
    findOpenWalk: (person, exceptConversation) => findOpenWalk(scope, person, exceptConversation),
    findDelivery: async (delivery) => {
      const row = await scope.deliveries().select("card").where("delivery", "=", delivery).executeTakeFirst();
      return row && readBack(parseCard(row.card), `the card of delivery ${delivery}`);
    },
    cautionMarks: (conversation) => newestMarks(scope, conversation),
    jobMarks: (job) => marksOfJob(scope, job),
    findJob: (number) => findJob(scope, number),
    listJobs: (filter) => listJobs(scope, filter),
    jobHistory: (number) => jobHistory(scope, number),
    allHistory: () => allHistory(scope),
    listPeople: () => scope.people().select(PERSON_COLUMNS).orderBy("name").execute(),
    crewHistory: (after) => crewHistory(scope, after),
    nextJobNumber: () => inOneCommit(nextJobNumber),
    hasPost: (id) => hasPost(scope, id),
    lostPosts: () => lostPosts(scope),
    channelCards: (channel, most) => channelCards(scope, channel, most),
    commit: (exchange) => inOneCommit((change) => commitExchange(change, { ...exchange, door }, parts)),
    writePosts: (posts, at_ms) => inOneCommit((change) => addNewPosts(change, posts, at_ms)),
    offerLink: (person, code, expires_ms) => inOneCommit((change) => offerLink(change, person, code, expires_ms)),
    acceptLink: async (caller, code, now_ms) => {
      await refuseStrangers(caller);
      return await inOneCommit(async (change) => {
        const person = await acceptLink(change, code, now_ms);
        if (person === undefined) return undefined;
        await joinDoor(change, caller, person);
        return await personAt(change, caller);
      });
    },
  };
}

async function personAt(scope: Scope, { door, organisation, user }: Caller): Promise<Person | undefined> {
  const known = await scope
    .personDoors()
    .select("person")
    .where("door", "=", door)
    .where("organisation", "=", organisation)
    .where("user", "=", user)
    .executeTakeFirst();
  if (known === undefined) return undefined;
  return await scope.people().select(PERSON_COLUMNS).where("id", "=", known.person).executeTakeFirst();
}

/** Adds somebody met for the first time, unless another process has just done so. */
async function welcome(scope: Scope, caller: Caller, company: WorkspaceParts["company"]): Promise<Person> {
  const met = await personAt(scope, caller);
  if (met !== undefined) return met;
  const { language, units } = company;
  const name = caller.name.trim() || caller.user;
  const person: Person = { id: randomUUID(), name, role: "technician", language, units };
  await scope.addPerson({ ...person, in_books: 0 }).execute();
  await joinDoor(scope, caller, person.id);
  return person;
}

async function loadConversation(
  scope: Scope,
  person: string,
  conversation: string,
): Promise<ConversationState | undefined> {
  const row = await scope
    .conversations()
    .select("state")
    .where("person", "=", person)
    .where("conversation", "=", conversation)
    .executeTakeFirst();
  return row && readBack(parseConversation(row.state), `conversation ${conversation}`);
}

async function findOpenWalk(scope: Scope, person: string, exceptConversation: string): Promise<OpenWalk | undefined> {
  const row = await scope
    .conversations()
    .select(["conversation", "state"])
    .where("person", "=", person)
    .where("conversation", "!=", exceptConversation)
    .where("has_walk", "=", 1)
    .orderBy("touched", "desc")
    .executeTakeFirst();
  if (row === undefined) return undefined;
  const { conversation } = row;
  return { conversation, state: readBack(parseConversation(row.state), `conversation ${conversation}`) };
}
