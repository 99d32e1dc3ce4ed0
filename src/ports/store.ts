import type { ConversationState } from "../conversation/state.ts";
import type { Card } from "../messages/card.ts";
import type { Language } from "../messages/language.ts";
import type { UnitSystem } from "../units/quantity-kinds.ts";

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
  /** Commits one exchange: all of it or nothing. */
  commit(exchange: Exchange): Promise<void>;
  /** A one-time code that joins another door's caller to this person. */
  offerLink(person: string, code: string, expires_ms: number): Promise<void>;
  /** Joins a caller to the person who was offered this code; nothing when it is unknown, used or expired. */
  acceptLink(caller: Caller, code: string, now_ms: number): Promise<Person | undefined>;
}

export interface OpenWalk {
  readonly conversation: string;
  readonly state: ConversationState;
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
}
