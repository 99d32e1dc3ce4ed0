import type { Card } from "../messages/card.ts";
import type { Channel } from "./outbox.ts";

/** A post on its way out. */
export interface Outgoing {
  readonly workspace: string;
  /** Id of the post. */
  readonly id: string;
  readonly channel: Channel;
  readonly card: Card;
  readonly thread?: string;
  /** The platform's own id of the message whose place it takes: to send this twice changes nothing. */
  readonly updatesMessage?: string;
  /** No trace of it can be older than this. */
  readonly written_ms: number;
  /** What of it is known to be there already. */
  readonly there?: PostedParts;
}
/** Where a long card takes several messages: the first, and how many of them, in order, are there. */
export interface PostedParts {
  readonly messageId: string;
  readonly parts: number;
}

/** How the platform took a post. Whatever else happens is an error, and then nobody knows whether it arrived. */
export type SendOutcome =
  | { readonly kind: "sent"; readonly messageId: string }
  /** Partly: some messages of a long card are there already. */
  | { readonly kind: "retryLater"; readonly after_ms: number; readonly because: string; readonly isPartly?: true }
  | { readonly kind: "refused"; readonly because: string };
export type FindOutcome =
  | { readonly kind: "found"; readonly messageId: string }
  | ({ readonly kind: "partly" } & PostedParts)
  | { readonly kind: "absent" }
  /** The platform does not let us look there. */
  | { readonly kind: "cannot_look" };

/** Posts to one chat platform. */
export interface ChatPort {
  send(outgoing: Outgoing): Promise<SendOutcome>;
  /**
   * Looks whether a post is there already; left out where the platform offers no way to. One that takes the place of a
   * message is absent, as to send it again changes nothing.
   */
  find?(outgoing: Outgoing): Promise<FindOutcome>;
}
