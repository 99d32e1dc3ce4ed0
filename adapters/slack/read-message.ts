import { conversationOf, type Heard, isDirectChannel, type Place } from "./heard.ts";
import { readFiles } from "./read-files.ts";
import { readTypedText } from "./read-typed-text.ts";

/** The fields of `app_mention` and `message` events that are looked at. */
export interface MessageEvent {
  readonly channel: string;
  readonly ts: string;
  readonly text?: string;
  readonly user?: string;
  readonly thread_ts?: string;
  readonly subtype?: string | undefined;
  readonly bot_id?: string;
  readonly edited?: unknown;
  readonly files?: unknown;
  readonly team?: string;
  readonly user_team?: string;
  readonly user_profile?: { readonly display_name: string; readonly real_name: string };
}
export interface Envelope {
  readonly team_id: string;
  readonly authorizations?: readonly { readonly user_id: string }[];
}

/** Kinds of messages in which a person speaks. All others are edits, deletions, joins, or come from programs. */
const SPOKEN = new Set([undefined, "file_share", "thread_broadcast"]);

/** A mention in a channel or a direct message; nothing when no person spoke to the bot. */
export function readMessage(event: MessageEvent, envelope: Envelope): Heard | undefined {
  const botUser = envelope.authorizations?.[0]?.user_id;
  const { user, channel, ts } = event;
  const isFromPerson = event.bot_id === undefined && user !== botUser && SPOKEN.has(event.subtype);
  if (user === undefined || !isFromPerson || event.edited !== undefined) return undefined;
  const place = placeOf(event, user, envelope);
  const files = readFiles(event.files);
  return {
    place,
    ...(files.length > 0 && { files }),
    inbound: {
      caller: { door: "slack", organisation: place.team, user, name: nameOf(event, user) },
      conversation: conversationOf(place),
      channel: place.channel,
      // One message may be told by two events (mention and direct message), each with an event id of its own.
      delivery: `message/${channel}/${ts}`,
      text: readTypedText(event.text ?? "", botUser),
    },
  };
}

function placeOf(event: MessageEvent, user: string, envelope: Envelope): Place {
  const isDirect = isDirectChannel(event.channel);
  // In a channel a mention opens a thread; a direct message is answered beside it, where a phone shows it.
  const thread = event.thread_ts ?? (isDirect ? undefined : event.ts);
  return {
    // In a shared channel a person may belong to another organisation and must not read this one's data.
    team: event.user_team ?? event.team ?? envelope.team_id,
    channel: event.channel,
    user,
    isDirect,
    ...(thread !== undefined && { thread }),
  };
}

function nameOf({ user_profile: profile }: MessageEvent, user: string): string {
  return profile?.display_name || profile?.real_name || user;
}
