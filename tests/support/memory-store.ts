import type { ConversationState } from "../../src/conversation/state.ts";
import type { Card } from "../../src/messages/card.ts";
import type { Caller, Exchange, OpenWalk, Person, Store, WorkspaceStore } from "../../src/ports/store.ts";

interface Conversation {
  readonly person: string;
  readonly conversation: string;
  readonly state: ConversationState;
  readonly at_ms: number;
}
interface Rows {
  readonly people: Map<string, Person>;
  readonly callers: Map<string, string>;
  readonly conversations: Map<string, Conversation>;
  readonly deliveries: Map<string, Card>;
  readonly codes: Map<string, { readonly person: string; readonly expires_ms: number }>;
}

/** Ways to make the store fail, for tests of what people are told then. */
interface StoreFaults {
  /** Thrown by the next commit before anything is kept. */
  failCommit?: Error | undefined;
  /** Thrown by the next commit after everything is kept, as when a confirmation is lost. */
  loseConfirmation?: Error | undefined;
  failOpen?: Error | undefined;
}

export interface MemoryStore extends Store {
  readonly faults: StoreFaults;
  /** Every exchange that was committed, oldest first. */
  readonly commits: Exchange[];
}

/**
 * A store in memory for tests. Callers whose organisations have the same name share a workspace. Everything goes
 * through JSON, as in a database.
 */
export function createMemoryStore(): MemoryStore {
  const workspaces = new Map<string, Rows>();
  const faults: StoreFaults = {};
  const commits: Exchange[] = [];
  return {
    faults,
    commits,
    openWorkspace: async ({ organisation }) => {
      if (faults.failOpen) throw faults.failOpen;
      const rows = workspaces.get(organisation) ?? emptyRows();
      workspaces.set(organisation, rows);
      return openRows(organisation, rows, faults, commits);
    },
    close: async () => workspaces.clear(),
  };
}

function openRows(workspace: string, rows: Rows, faults: StoreFaults, commits: Exchange[]): WorkspaceStore {
  const conversationKey = (person: string, conversation: string) => JSON.stringify([person, conversation]);
  return {
    workspace,
    findPerson: async (caller) => findPerson(rows, caller),
    loadConversation: async (person, conversation) =>
      copy(rows.conversations.get(conversationKey(person, conversation))?.state),
    findOpenWalk: async (person, except): Promise<OpenWalk | undefined> => {
      const open = [...rows.conversations.values()]
        .filter((one) => one.person === person && one.conversation !== except && one.state.walk !== undefined)
        .sort((a, b) => b.at_ms - a.at_ms)[0];
      return copy(open && { conversation: open.conversation, state: open.state });
    },
    findDelivery: async (delivery) => copy(rows.deliveries.get(delivery)),
    commit: async (exchange) => {
      throwOnce(faults, "failCommit");
      if (rows.deliveries.has(exchange.delivery)) throw new Error("this delivery is there already");
      const { person, conversation, state, delivery, card, at_ms, carriedFrom } = copy(exchange);
      rows.people.set(person.id, person);
      rows.conversations.set(conversationKey(person.id, conversation), {
        person: person.id,
        conversation,
        state,
        at_ms,
      });
      if (carriedFrom)
        rows.conversations.set(conversationKey(person.id, carriedFrom.conversation), {
          person: person.id,
          at_ms,
          ...carriedFrom,
        });
      rows.deliveries.set(delivery, card);
      commits.push(exchange);
      throwOnce(faults, "loseConfirmation");
    },
    offerLink: async (person, code, expires_ms) => {
      rows.codes.set(code, { person, expires_ms });
    },
    acceptLink: async (caller, code, now_ms) => {
      const offered = rows.codes.get(code);
      if (offered === undefined || offered.expires_ms <= now_ms) return undefined;
      rows.codes.delete(code);
      rows.callers.set(callerKey(caller), offered.person);
      return copy(rows.people.get(offered.person));
    },
  };
}

function throwOnce(faults: StoreFaults, which: "failCommit" | "loseConfirmation"): void {
  const error = faults[which];
  if (error === undefined) return;
  faults[which] = undefined;
  throw error;
}

function findPerson(rows: Rows, caller: Caller): Person {
  const id = rows.callers.get(callerKey(caller)) ?? `p${rows.people.size + 1}`;
  const known = rows.people.get(id);
  if (known !== undefined) return copy(known);
  const person: Person = { id, name: caller.name, role: "technician", language: "en", units: "us" };
  rows.people.set(id, person);
  rows.callers.set(callerKey(caller), id);
  return copy(person);
}

function callerKey({ door, user }: Caller): string {
  return JSON.stringify([door, user]);
}

function emptyRows(): Rows {
  return {
    people: new Map(),
    callers: new Map(),
    conversations: new Map(),
    deliveries: new Map(),
    codes: new Map(),
  };
}

function copy<T>(value: T): T {
  return value === undefined ? value : JSON.parse(JSON.stringify(value));
}
