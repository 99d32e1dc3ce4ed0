import type { Inbound } from "../../src/desk.ts";
import type { FileRef } from "./fetch-file.ts";

/** Where somebody spoke, so that the answer finds its way back. */
export interface Place {
  /** The organisation of the person who spoke. */
  readonly team: string;
  readonly channel: string;
  readonly thread?: string;
  readonly user: string;
  /** True in a direct message: nobody else reads there. */
  readonly isDirect: boolean;
  /** Where to send answers without being a member of the channel: 30 minutes, 5 times. */
  readonly responseUrl?: string;
  /** Allows to open one modal, for 3 s. */
  readonly trigger?: string;
  /** True where everything that follows is for this person alone. */
  readonly isForAsker?: boolean;
  /** True when the pressed button stands in a question, or under work that goes on, that only this person sees. */
  readonly isOwnQuestion?: boolean;
}

export interface Heard {
  readonly inbound: Inbound;
  readonly place: Place;
  /** Photos and papers that came with it; fetched only when the desk wants them. */
  readonly files?: readonly FileRef[];
}

/** A channel, or one thread of it; in a direct message and for a slash command always the channel. */
export function conversationOf({ team, channel, thread, isDirect }: Place): string {
  return thread === undefined || isDirect ? `${team}/${channel}` : `${team}/${channel}/${thread}`;
}

/** Direct messages have channel ids that begin so. */
export function isDirectChannel(channel: string): boolean {
  return channel.startsWith("D");
}
