import type { ConversationState } from "../../src/conversation/state.ts";
import { type CrewEvent, standingEvents } from "../../src/crew/crew-event.ts";
import { projectRoles } from "../../src/crew/project-crew.ts";
import { pickDue } from "../../src/jobs/due-posts.ts";
import type { Job, JobEntry, JobEvent } from "../../src/jobs/job.ts";
import { refuseStandIn } from "../../src/jobs/job-rules.ts";
import { projectJob } from "../../src/jobs/project-job.ts";
import type { Card } from "../../src/messages/card.ts";
import type { ChatPort } from "../../src/ports/chat.ts";
import type { ConversationReference, ConversationReferences } from "../../src/ports/conversation-references.ts";
import type { KeptPost, Outbox, Post } from "../../src/ports/outbox.ts";
import type {
  Caller,
  ChannelCard,
  Door,
  Exchange,
  KeptMark,
  OpenWalk,
  Person,
  Role,
  Store,
  WorkspaceStore,
} from "../../src/ports/store.ts";

interface Conversation {
  readonly person: string;
  readonly conversation: string;
  readonly state: ConversationState;
  readonly at_ms: number;
}
interface Rows {
  readonly roles: Readonly<Record<string, Role>>;
  readonly people: Map<string, Person>;
  readonly callers: Map<string, string>;
  readonly conversations: Map<string, Conversation>;
  readonly deliveries: Map<string, Card>;
  /** Newest first. */
  readonly marks: (KeptMark & { readonly conversation: string })[];
  readonly codes: Map<string, { readonly person: string; readonly expires_ms: number }>;
  /** Events by the number of their job. */
  readonly jobs: Map<string, readonly JobEvent[]>;
  /** Oldest first. */
  readonly crew: CrewEvent[];
  lastJob: number;
  /** Oldest first. */
  readonly posts: KeptPost[];
  readonly channels: Map<string, ChannelCard[]>;
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
/** @param roles of callers by their id at the door; everybody else is a technician */
export function createMemoryStore(roles: Readonly<Record<string, Role>> = {}): MemoryStore {
  const workspaces = new Map<string, Rows>();
  const faults: StoreFaults = {};
  const commits: Exchange[] = [];
  return {
    faults,
    commits,
    openWorkspace: async ({ organisation, door }) => {
      if (faults.failOpen) throw faults.failOpen;
      const rows = workspaces.get(organisation) ?? { ...emptyRows(), roles };
      workspaces.set(organisation, rows);
      return openRows(organisation, rows, door, faults, commits);
    },
    outbox: memoryOutbox(workspaces),
    houseChat: memoryChat(workspaces),
    conversations: memoryReferences(),
    close: async () => workspaces.clear(),
  };
}

function openRows(workspace: string, rows: Rows, door: Door, faults: StoreFaults, commits: Exchange[]): WorkspaceStore {
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
    cautionMarks: async (conversation) => newestOf(rows.marks.filter((mark) => mark.conversation === conversation)),
    jobMarks: async (job) => newestOf(rows.marks.filter((mark) => mark.job === job)),
    findJob: async (number) => copy(projectJob(rows.jobs.get(number) ?? [])),
    listJobs: async ({ statuses, from, to, person: doer, told }) => {
      const jobs = [...rows.jobs.values()].flatMap((events) => projectJob(events) ?? []);
      const key = ({ day = "9999", number }: Job) => `${day} ${number.padStart(9, "0")}`;
      return copy(
        jobs
          .filter(({ status }) => statuses?.includes(status) ?? true)
          .filter(
            ({ day = "" }) => (from === undefined || day >= from) && (to === undefined || (day !== "" && day <= to)),
          )
          .filter(({ people }) => doer === undefined || people.includes(doer))
          .filter(({ facts }) => told === undefined || Object.keys(facts).some((fact) => fact.startsWith(told)))
          .sort((a, b) => key(a).localeCompare(key(b))),
      );
    },
    jobHistory: async (number) => copy(rows.jobs.get(number) ?? []),
    allHistory: async () => copy([...rows.jobs].sort(([a], [b]) => (a < b ? -1 : 1)).flatMap(([, events]) => events)),
    listPeople: async () => copy([...rows.people.values()].sort((a, b) => a.name.localeCompare(b.name))),
    crewHistory: async (after) => copy(rows.crew.filter(({ number }) => number > after)),
    nextJobNumber: async () => {
      do rows.lastJob += 1;
      while (rows.jobs.has(String(rows.lastJob)));
      return String(rows.lastJob);
    },
    hasPost: async (id) => rows.posts.some(({ post }) => post.id === id),
    lostPosts: async () => copy(rows.posts.filter(({ state }) => state === "given_up").reverse()),
    channelCards: async (channel, most) => copy((rows.channels.get(channel) ?? []).slice(-most)),
    commit: async (exchange) => {
      throwOnce(faults, "failCommit");
      const jobs = withEntries(rows.jobs, exchange.jobs ?? [], exchange, door);
      const crew = withCrew(rows.crew, exchange, door);
      if (rows.deliveries.has(exchange.delivery)) throw new Error("this delivery is there already");
      const { person, conversation, state, delivery, card, at_ms, carriedFrom, marks = [] } = copy(exchange);
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
      for (const mark of marks) rows.marks.unshift({ ...mark, by: person.name, at_ms, door, conversation });
      rows.deliveries.set(delivery, card);
      for (const [number, events] of jobs) rows.jobs.set(number, copy(events));
      rows.crew.push(...copy(crew));
      for (const [id, role] of projectRoles([], rows.crew)) {
        const known = rows.people.get(id);
        if (known !== undefined) rows.people.set(id, { ...known, role });
      }
      for (const post of copy(exchange.posts ?? [])) rows.posts.push(newPost(workspace, post, at_ms));
      commits.push(exchange);
      throwOnce(faults, "loseConfirmation");
    },
    writePosts: async (posts, at_ms) => {
      const fresh = copy(posts).filter(({ id }) => !rows.posts.some((kept) => kept.post.id === id));
      for (const post of fresh) rows.posts.push(newPost(workspace, post, at_ms));
      return fresh.map(({ id }) => id);
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

function newPost(workspace: string, post: Post, written_ms: number): KeptPost {
  return { workspace, post, state: "waiting", tries: 0, due_ms: post.notBefore_ms ?? written_ms, written_ms };
}

function newestOf(marks: Rows["marks"]): readonly KeptMark[] {
  const isNewest = ({ caution, about }: KeptMark, place: number) =>
    marks.findIndex((other) => other.caution === caution && other.about === about) === place;
  return copy(marks.filter(isNewest).map(({ conversation: _, ...mark }) => mark));
}

/** All jobs as they are with these entries; nothing is changed when one of them is refused. */
function withEntries(
  before: ReadonlyMap<string, readonly JobEvent[]>,
  entries: readonly JobEntry[],
  { person, at_ms }: Exchange,
  door: Door,
): ReadonlyMap<string, readonly JobEvent[]> {
  const jobs = new Map(before);
  for (const { job, change, amends, version } of entries) {
    const events = jobs.get(job) ?? [];
    const opens = change.kind === "opened" && amends === undefined;
    if (version !== undefined && version !== (before.get(job)?.length ?? 0)) throw coded("job_changed");
    if (opens && events.length > 0) throw coded("job_changed");
    if (!opens && events.length === 0) throw coded("job_refused");
    if (amends !== undefined && refuseStandIn(events, change, amends)) throw coded("job_refused");
    const who = { by: person.name, person: person.id, at_ms, door };
    const event = { number: events.length + 1, job, change, ...(amends !== undefined && { amends }), ...who };
    jobs.set(job, [...events, event]);
  }
  return jobs;
}

/** What an exchange adds to what was said of the crew; nothing is changed when one of it is refused. */
function withCrew(before: readonly CrewEvent[], { crew, person, at_ms }: Exchange, door: Door): readonly CrewEvent[] {
  if (crew === undefined) return [];
  if (crew.version !== before.length) throw coded("crew_changed");
  const standing = standingEvents(before);
  return crew.entries.map(({ change, amends }, index): CrewEvent => {
    if (amends !== undefined && !standing.some(({ number }) => number === amends)) throw coded("job_refused");
    const who = { by: person.name, said_by: person.id, at_ms, door };
    return { number: before.length + index + 1, change, ...(amends !== undefined && { amends }), ...who };
  });
}

function coded(code: string): Error {
  return Object.assign(new Error(code), { code });
}

function memoryOutbox(workspaces: ReadonlyMap<string, Rows>): Outbox {
  const postsOf = (workspace: string) => workspaces.get(workspace)?.posts ?? [];
  const place = ({ workspace, post }: KeptPost) => postsOf(workspace).findIndex((one) => one.post.id === post.id);
  return {
    due: async (now_ms) =>
      copy(
        [...workspaces.values()].flatMap(({ posts }) =>
          pickDue(
            posts
              .filter(({ state }) => state !== "sent" && state !== "given_up")
              .map((kept) => ({ ...kept, channel: JSON.stringify(kept.post.channel) })),
            now_ms,
          ).map(({ channel: _, ...kept }) => {
            const updatesMessage = posts.find(({ post }) => post.id === kept.post.updates)?.messageId;
            const followsMessage = posts.find(({ post }) => post.id === kept.post.follows)?.messageId;
            return {
              ...kept,
              ...(updatesMessage !== undefined && { updatesMessage }),
              ...(followsMessage !== undefined && { followsMessage }),
            };
          }),
        ),
      ),
    claim: async (kept, due_ms) => {
      const now = postsOf(kept.workspace)[place(kept)];
      if (now === undefined || now.state !== kept.state || now.tries !== kept.tries) return false;
      postsOf(kept.workspace)[place(kept)] = { ...now, state: "trying", tries: now.tries + 1, due_ms };
      return true;
    },
    settle: async (kept, result) => {
      const now = postsOf(kept.workspace)[place(kept)];
      if (now === undefined || now.state === "sent") return;
      if (result.state !== "sent" && (now.state !== "trying" || now.tries !== kept.tries + 1)) return;
      const { because: _, ...rest } = now;
      postsOf(kept.workspace)[place(kept)] = { ...rest, ...result };
    },
  };
}

function memoryChat(workspaces: ReadonlyMap<string, Rows>): ChatPort {
  const cardsOf = (workspace: string, channel: string): ChannelCard[] => {
    const channels = workspaces.get(workspace)?.channels ?? new Map<string, ChannelCard[]>();
    const cards = channels.get(channel) ?? [];
    channels.set(channel, cards);
    return cards;
  };
  return {
    send: async ({ workspace, id, channel, card, thread: follows, updatesMessage = id, written_ms: at_ms }) => {
      const cards = cardsOf(workspace, channel.id);
      const at = cards.findIndex((one) => one.id === updatesMessage);
      const shown = { id: updatesMessage, card, ...(follows !== undefined && { follows }) };
      if (at < 0) cards.push({ ...shown, at_ms });
      else cards[at] = { ...shown, at_ms: cards[at]?.at_ms ?? at_ms };
      return { kind: "sent", messageId: updatesMessage };
    },
    find: async ({ workspace, id, channel }) =>
      cardsOf(workspace, channel.id).some((one) => one.id === id)
        ? { kind: "found", messageId: id }
        : { kind: "absent" },
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
  const person: Person = {
    id,
    name: caller.name,
    role: rows.roles[caller.user] ?? "technician",
    language: "en",
    units: "us",
  };
  rows.people.set(id, person);
  rows.callers.set(callerKey(caller), id);
  return copy(person);
}

function callerKey({ door, user }: Caller): string {
  return JSON.stringify([door, user]);
}

function emptyRows(): Rows {
  return {
    roles: {},
    people: new Map(),
    callers: new Map(),
    conversations: new Map(),
    deliveries: new Map(),
    marks: [],
    codes: new Map(),
    jobs: new Map(),
    crew: [],
    lastJob: 1000,
    posts: [],
    channels: new Map(),
  };
}

function copy<T>(value: T): T {
  return value === undefined ? value : JSON.parse(JSON.stringify(value));
}

/** Each tenant is a workspace of its own name. */
function memoryReferences(): ConversationReferences {
  const kept = new Map<string, ConversationReference>();
  const key = (tenant: string, conversation: string) => JSON.stringify([tenant, conversation]);
  return {
    keep: async (reference) => void kept.set(key(reference.tenant, reference.conversation), copy(reference)),
    find: async (workspace, conversation) => copy(kept.get(key(workspace, conversation))),
    drop: async ({ tenant, conversation, serviceUrl, bot }) => {
      const there = kept.get(key(tenant, conversation));
      if (there?.serviceUrl === serviceUrl && there.bot === bot) kept.delete(key(tenant, conversation));
    },
    leave: async ({ tenant, conversation, team }) => {
      for (const [at, one] of kept)
        if (one.tenant === tenant && [conversation, team].includes(one.conversation)) kept.delete(at);
        else if (one.tenant === tenant && team !== undefined && one.team === team) kept.delete(at);
    },
  };
}
