import type { ConversationState } from "../conversation/state.ts";
import type { CrewEntry, CrewEvent } from "../crew/crew-event.ts";
import type { RaisedCaution } from "../declaration/answer.ts";
import type { Job, JobEntry, JobEvent, JobStatus } from "../jobs/job.ts";
import type { Card } from "../messages/card.ts";
import type { Language } from "../messages/language.ts";
import type { UnitSystem } from "../units/quantity-kinds.ts";
import type { ChatPort } from "./chat.ts";
import type { ConversationReferences } from "./conversation-references.ts";
import type { KeptPost, Outbox, Post } from "./outbox.ts";

export const ROLES = ["technician", "dispatcher", "manager", "owner"] as const;
export type Role = (typeof ROLES)[number];
export const DOORS = ["slack", "teams", "web", "terminal"] as const;
export type Door = (typeof DOORS)[number];

export interface Person {
  readonly id: string;
  readonly name: string;
  readonly role: Role;
  readonly language: Language;
  readonly units: UnitSystem;
}

/** Who a platform says is speaking, and in which of its organisations. */
export interface Caller {
  readonly door: Door;
  /** The platform's own id of the organisation: Slack team, Teams tenant, "local". */
  readonly organisation: string;
  /** The platform's own id of the person. */
  readonly user: string;
  /** How the platform calls the person, for a first greeting. */
  readonly name: string;
}

/** Finds whose workspace a caller belongs to. Everything else goes through the workspace. */
export interface Store {
  openWorkspace(caller: Caller): Promise<WorkspaceStore>;
  /** For the relay that sends posts, and for nobody who answers people. */
  readonly outbox: Outbox;
  /** Channels of our own, which the web and the terminal read. */
  readonly houseChat: ChatPort;
  /** Conversations of Teams that posts may go to. */
  readonly conversations: ConversationReferences;
  close(): Promise<void>;
}

/** Everything of one workspace; nothing of any other can be reached through it. */
export interface WorkspaceStore {
  readonly workspace: string;
  /** The person behind a caller, added as a technician when first seen. */
  findPerson(caller: Caller): Promise<Person>;
  /** What this person was doing in this conversation. */
  loadConversation(person: string, conversation: string): Promise<ConversationState | undefined>;
  /** The walk that this person last touched in any other conversation, with the conversation it is in. */
  findOpenWalk(person: string, exceptConversation: string): Promise<OpenWalk | undefined>;
  /** The card that was given for this delivery, if it was answered before. */
  findDelivery(delivery: string): Promise<Card | undefined>;
  /** What was last done in this conversation about each caution and the data that it was shown with, by whom and when. */
  cautionMarks(conversation: string): Promise<readonly KeptMark[]>;
  /** What was last done about each caution and its data while this job was talked about, wherever that was. */
  jobMarks(job: string): Promise<readonly KeptMark[]>;
  /** A job as it stands. */
  findJob(number: string): Promise<Job | undefined>;
  /** Jobs that match all of this, by day and number; those without a day last. */
  listJobs(filter: JobFilter): Promise<readonly Job[]>;
  /** Everything that happened to a job, oldest first. */
  jobHistory(number: string): Promise<readonly JobEvent[]>;
  /** Everything that happened to all jobs, job by job, oldest first. */
  allHistory(): Promise<readonly JobEvent[]>;
  /** Everybody who was ever met or stands in the books. */
  listPeople(): Promise<readonly Person[]>;
  /** What was said of people, trucks and stock after the event of this number, 0 for all; oldest first. */
  crewHistory(after: number): Promise<readonly CrewEvent[]>;
  /** A job number that nobody else is given; numbers may be left out. */
  nextJobNumber(): Promise<string>;
  /** True when a post of this id was ever written, whatever became of it. */
  hasPost(id: string): Promise<boolean>;
  /** Posts that could not be delivered, newest first. */
  lostPosts(): Promise<readonly KeptPost[]>;
  /** The newest messages of a channel of our own, oldest first. */
  channelCards(channel: string, most: number): Promise<readonly ChannelCard[]>;
  /**
   * Commits one exchange: all of it or nothing. An error with the code "job_changed" says that a job is no longer the
   * version that the person saw, "crew_changed" the same of the crew; "job_refused" that an entry has no job or event to
   * go to. Whose role changes may do from then on what the new role may.
   */
  commit(exchange: Exchange): Promise<void>;
  /**
   * Writes posts that belong to no exchange, such as those at a fixed hour: all of them or none. One whose id is there
   * already is left as it is, so that of several writers of the same post one counts.
   * @returns the ids of those that were written
   */
  writePosts(posts: readonly Post[], at_ms: number): Promise<readonly string[]>;
  /** A one-time code that joins another door's caller to this person. */
  offerLink(person: string, code: string, expires_ms: number): Promise<void>;
  /** Joins a caller to the person who was offered this code; nothing when it is unknown, used or expired. */
  acceptLink(caller: Caller, code: string, now_ms: number): Promise<Person | undefined>;
}

export interface OpenWalk {
  readonly conversation: string;
  readonly state: ConversationState;
}

/** What somebody did about a caution that was shown to them. */
export interface CautionMark {
  readonly caution: string;
  /** The data that it was shown with, written down: with other data it must be seen anew. */
  readonly about: string;
  readonly act: "seen" | "unseen" | "skipped";
  /** Why it was skipped, in the person's own words. */
  readonly because?: string;
  /** How it was shown, so that a record can say it in any language. */
  readonly shown?: SeenAs;
  /** Number of the job that was talked about. */
  readonly job?: string;
}
/** As much of a caution as its sentence needs. */
export type SeenAs = Pick<RaisedCaution, "severity" | "data" | "local">;
export interface KeptMark extends CautionMark {
  /** Name of the person. */
  readonly by: string;
  readonly at_ms: number;
  readonly door: Door;
}

export interface JobFilter {
  readonly statuses?: readonly JobStatus[];
  /** First and last day, YYYY-MM-DD, both counted in. */
  readonly from?: string;
  readonly to?: string;
  /** Id of somebody who does it. */
  readonly person?: string;
  /** Jobs that were told a fact whose id begins so. */
  readonly told?: string;
}
export interface ChannelCard {
  readonly id: string;
  /** Id of the message whose thread it stands in. */
  readonly follows?: string;
  readonly card: Card;
  readonly at_ms: number;
}

export interface Exchange {
  readonly person: Person;
  readonly conversation: string;
  readonly state: ConversationState;
  readonly delivery: string;
  readonly card: Card;
  readonly at_ms: number;
  /** What was said, for the log; left out where it is secret. */
  readonly text?: string;
  /** A conversation whose walk was carried over to this one, with what is left of it there. */
  readonly carriedFrom?: OpenWalk;
  /** What this message did about cautions. */
  readonly marks?: readonly CautionMark[];
  /** What this message wrote into jobs, in this order. */
  readonly jobs?: readonly JobEntry[];
  /** What this message says of people, trucks and stock; without entries it only holds while nobody else says more. */
  readonly crew?: CrewWriting;
  /** What is to be told to channels once this is committed. */
  readonly posts?: readonly Post[];
}

export interface CrewWriting {
  /** Number of the last event that the person saw, 0 for none. */
  readonly version: number;
  readonly entries: readonly CrewEntry[];
}
