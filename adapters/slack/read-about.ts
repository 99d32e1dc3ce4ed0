import type { MessageShortcut } from "@slack/bolt";
import { conversationOf, type Heard, isDirectChannel, type Place } from "./heard.ts";
import { readFiles } from "./read-files.ts";
import { readString } from "./read-record.ts";
import { readTypedText } from "./read-typed-text.ts";

/**
 * "Ask about this" under somebody's message: its words and files are the question of the person who chose it, and the
 * answer is for that person alone.
 */
export function readAbout(shortcut: MessageShortcut): Heard | undefined {
  const { user, team, channel, message, trigger_id: trigger, response_url: responseUrl } = shortcut;
  const organisation = user.team_id ?? team?.id;
  if (organisation === undefined) return undefined;
  const isDirect = isDirectChannel(channel.id);
  const place: Place = {
    team: organisation,
    channel: channel.id,
    thread: readString(message, "thread_ts") ?? message.ts,
    user: user.id,
    isDirect,
    isForAsker: !isDirect,
    trigger,
    responseUrl,
  };
  const files = readFiles(message["files"]);
  return {
    place,
    ...(files.length > 0 && { files }),
    inbound: {
      caller: { door: "slack", organisation, user: user.id, name: user.name },
      conversation: conversationOf(place),
      delivery: `trigger/${trigger}`,
      text: readTypedText(message.text ?? ""),
    },
  };
}
