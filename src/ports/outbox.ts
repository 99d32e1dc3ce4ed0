import type { Card } from "../messages/card.ts";
import type { Language } from "../messages/language.ts";
import type { RecordPaper } from "./papers.ts";
import type { Door } from "./store.ts";

/** A place that posts go to: a channel of a chat platform, or a log of our own that the web and the terminal read. */
export interface Channel {
  readonly door: Door;
  /** The door's own id of it. */
  readonly id: string;
}

/** Where the owner reads what could not be delivered. */
export const OWNER_CHANNEL: Channel = { door: "web", id: "owner" };

/** Where managers read the company's digests, if the books name no other place; for managers and the owner alone. */
export const MANAGER_CHANNEL: Channel = { door: "web", id: "managers" };

/** A message that somebody was promised, written in the same commit as what it is about. */
export interface Post {
  /** Unlike any other; it travels with the message, so that the message can be found again. */
  readonly id: string;
  readonly channel: Channel;
  readonly card: Card;
  /** What the card is written in, for a note that the relay may have to add. */
  readonly language: Language;
  /** The platform's own id of the thread. */
  readonly thread?: string;
  /** Id of an earlier post to the same channel: this one stands in the thread that it begins, where there are threads. */
  readonly follows?: string;
  /** Id of an earlier post to the same channel whose message this one takes the place of. */
  readonly updates?: string;
  /** Not to be sent before this moment. */
  readonly notBefore_ms?: number;
  /** Handed over with the card; made when the post is sent, so that nobody waits for it. */
  readonly paper?: PostPaper;
}

/** A paper to be made: what it says stands fast with the post, so that it is the same file however often it is made. */
export interface PostPaper {
  readonly name: string;
  /** What is said of it where it is handed over. */
  readonly text: string;
  readonly record: RecordPaper;
}

/**
 * waiting: not there for certain. trying: somebody is sending it until `due_ms`, or died doing so. unsure: it may have
 * arrived. sent and given_up are the end.
 */
export type PostState = "waiting" | "trying" | "unsure" | "sent" | "given_up";

/** A post as the outbox keeps it. */
export interface KeptPost {
  readonly workspace: string;
  readonly post: Post;
  readonly state: PostState;
  /** How often sending was begun. */
  readonly tries: number;
  /** Next moment at which there is something to do about it. */
  readonly due_ms: number;
  readonly written_ms: number;
  /** The platform's own id of the message, once it is known. */
  readonly messageId?: string;
  /** The platform's own id of the message that this one takes the place of. */
  readonly updatesMessage?: string;
  /** The platform's own id of the message that it follows. */
  readonly followsMessage?: string;
  /** Why it waits or was given up, in a word of the platform. */
  readonly because?: string;
}

/** How an attempt ended. */
export type PostResult =
  | { readonly state: "sent"; readonly messageId: string }
  | { readonly state: "waiting" | "unsure"; readonly due_ms: number; readonly because: string }
  | { readonly state: "given_up"; readonly because: string };

/** The posts of all workspaces that are still to be sent. */
export interface Outbox {
  /**
   * The next post of each channel that is due. A channel keeps its order: while one is tried again, those after it
   * wait; one that is only planned for later does not hold up the rest.
   */
  due(now_ms: number): Promise<readonly KeptPost[]>;
  /**
   * Written before anything is sent, so that after a crash it is known that it may have arrived.
   * @returns false when somebody else has taken it meanwhile
   */
  claim(kept: KeptPost, until_ms: number): Promise<boolean>;
  settle(kept: KeptPost, result: PostResult): Promise<void>;
}
