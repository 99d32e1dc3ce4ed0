/** The kinds of conversation that Teams knows. */
export const CONVERSATION_KINDS = ["personal", "groupChat", "channel"] as const;

/** How a conversation of Teams is reached while nobody asks anything in it: what the platform last said of it. */
export interface ConversationReference {
  /** The tenant that it belongs to, in small letters. */
  readonly tenant: string;
  /** The platform's own id; of a channel the channel itself, not one of its threads. */
  readonly conversation: string;
  readonly kind: (typeof CONVERSATION_KINDS)[number];
  /** The address that the platform takes messages at; it moves. */
  readonly serviceUrl: string;
  /** The platform's own id of the bot in this conversation. */
  readonly bot: string;
  /** The team that a channel belongs to. */
  readonly team?: string;
}

/** Where the bot is not any more: one conversation, or all channels of a team. */
export interface LeftPlace {
  readonly tenant: string;
  readonly conversation: string;
  readonly team?: string;
}

/** The conversations that posts may go to, each in the workspace of its tenant. */
export interface ConversationReferences {
  /** Keeps the reference, in the place of an earlier one of the same conversation. */
  keep(reference: ConversationReference): Promise<void>;
  find(workspace: string, conversation: string): Promise<ConversationReference | undefined>;
  /** Forgets this reference, unless a newer one has taken its place. */
  drop(reference: ConversationReference): Promise<void>;
  /** Forgets every reference to a place that the bot has left. */
  leave(place: LeftPlace): Promise<void>;
}
