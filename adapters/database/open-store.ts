import { randomUUID } from "node:crypto";
import type { Kysely, Transaction } from "kysely";
import type { Books } from "../../src/books/books.ts";
import { findStrangers, type Stranger } from "../../src/boundary/jobs-book.ts";
import type { Installations } from "../../src/ports/installations.ts";
import type { Caller, Door, Store } from "../../src/ports/store.ts";
import { createConversationReferences } from "./conversation-references.ts";
import { setRoles } from "./crew-records.ts";
import { DatabaseFault } from "./database-fault.ts";
import { createHouseChat } from "./house-chat.ts";
import { createInstallations, resealInstallations } from "./installations.ts";
import { addEvents } from "./job-records.ts";
import { openDatabase } from "./open-database.ts";
import { createOutbox } from "./outbox.ts";
import { registerPeople } from "./register-people.ts";
import { type Scope, scopeTo } from "./scope.ts";
import { createSecretBox } from "./secret-box.ts";
import type { Tables } from "./tables.ts";
import { createWorkspaceStore } from "./workspace-store.ts";

/** The workspace of the company whose books are loaded. */
export const OWN_WORKSPACE = "local";
/** What the company's own doors, web and terminal, call its organisation. */
const OWN_ORGANISATION = "local";

export interface StoreSettings {
  /** The database file. */
  readonly path: string;
  readonly books: Books;
  /** Organisations of chat platforms that are this company; any other gets a workspace of its own. */
  readonly ownOrganisations: readonly Organisation[];
  /** Keys that tokens are sealed with, 32 bytes each: the first seals, the others only open what is there. */
  readonly secretKeys?: readonly Uint8Array[];
}
/** The store, and what only the doors of chat platforms ask of it. */
export interface HouseStore extends Store {
  readonly installations: Installations;
}
interface Organisation {
  readonly door: Door;
  readonly organisation: string;
}

/** Opens the store and makes the people in the books known to it. */
export async function openStore(settings: StoreSettings): Promise<HouseStore> {
  const db = await openDatabase(settings.path);
  try {
    return await createStore(db, settings);
  } catch (error) {
    await db.destroy();
    throw error;
  }
}

/** The store on a database that is already open. */
export async function createStore(db: Kysely<Tables>, settings: Omit<StoreSettings, "path">): Promise<HouseStore> {
  const { books } = settings;
  const own: readonly Organisation[] = [
    { door: "web", organisation: OWN_ORGANISATION },
    { door: "terminal", organisation: OWN_ORGANISATION },
    ...settings.ownOrganisations,
  ];
  await db.transaction().execute(async (change) => {
    await nameWorkspace(change, OWN_WORKSPACE, books.company.name);
    const scope = scopeTo(change, OWN_WORKSPACE);
    await registerPeople(scope, books.people, own);
    await setRoles(scope, books.people);
    await openJobBook(scope, books);
  });
  const forgotten = new Map<string, number>();
  const box = createSecretBox(settings.secretKeys ?? []);
  await resealInstallations(db, box);
  const findWorkspace = (at: Organisation) => (isOneOf(own, at) ? OWN_WORKSPACE : findOrAddWorkspace(db, at));
  return {
    openWorkspace: async (caller: Caller) => {
      const workspace = await findWorkspace(caller);
      return createWorkspaceStore({
        db,
        workspace,
        door: caller.door,
        findWorkspace,
        company: books.company,
        people: workspace === OWN_WORKSPACE ? books.people : [],
        forgotten,
      });
    },
    outbox: createOutbox(db),
    houseChat: createHouseChat(db),
    installations: createInstallations({
      db,
      box,
      openWorkspace: async (team) => await findWorkspace({ door: "slack", organisation: team }),
      teamsOf: (workspace) => slackTeamsOf(db, own, workspace),
    }),
    conversations: createConversationReferences(db, findWorkspace),
    close: () => db.destroy(),
  };
}

/** The jobs of the books are where the record begins; once there is one, the record alone counts. */
async function openJobBook(scope: Scope, { jobEvents, people, catalogue }: Books): Promise<void> {
  const first = await scope.jobs().select("number").executeTakeFirst();
  if (first !== undefined) return;
  const [known, models] = [people.map(({ id }) => id), catalogue.map(({ id }) => id)];
  const strangers = findStrangers(jobEvents, known, models);
  if (strangers.length > 0) throw new DatabaseFault("job_refused", strangers.map(sayStranger).join("\n"));
  await addEvents(scope, jobEvents);
}

function sayStranger({ job, entry, reason }: Stranger): string {
  return `jobs.yaml, job ${job}, entry ${entry}: ${reason}`;
}

async function findOrAddWorkspace(db: Kysely<Tables>, at: Organisation): Promise<string> {
  const known = await workspaceOf(db, at);
  if (known !== undefined) return known;
  return await db.transaction().execute(async (change) => {
    const addedMeanwhile = await workspaceOf(change, at);
    if (addedMeanwhile !== undefined) return addedMeanwhile;
    const workspace = randomUUID();
    await nameWorkspace(change, workspace, `${at.door} ${at.organisation}`);
    const { door, organisation } = at;
    await change.insertInto("workspace_door").values({ door, organisation, workspace }).execute();
    return workspace;
  });
}

/** The Slack teams of a workspace; one that the settings map onto the company is no other workspace's any more. */
async function slackTeamsOf(
  db: Kysely<Tables>,
  own: readonly Organisation[],
  workspace: string,
): Promise<readonly string[]> {
  const ofCompany = own.filter(({ door }) => door === "slack").map(({ organisation }) => organisation);
  if (workspace === OWN_WORKSPACE) return ofCompany;
  const rows = await db
    .selectFrom("workspace_door")
    .select("organisation")
    .where("door", "=", "slack")
    .where("workspace", "=", workspace)
    .execute();
  return rows.map(({ organisation }) => organisation).filter((team) => !ofCompany.includes(team));
}

async function workspaceOf(db: Kysely<Tables>, { door, organisation }: Organisation): Promise<string | undefined> {
  const row = await db
    .selectFrom("workspace_door")
    .select("workspace")
    .where("door", "=", door)
    .where("organisation", "=", organisation)
    .executeTakeFirst();
  return row?.workspace;
}

async function nameWorkspace(change: Transaction<Tables>, id: string, name: string): Promise<void> {
  await change
    .insertInto("workspace")
    .values({ id, name })
    .onConflict((conflict) => conflict.column("id").doUpdateSet({ name }))
    .execute();
}

function isOneOf(organisations: readonly Organisation[], at: Organisation): boolean {
  return organisations.some(({ door, organisation }) => door === at.door && organisation === at.organisation);
}
