import type { SlashCommand } from "@slack/bolt";
import { conversationOf, type Heard, isDirectChannel, type Place } from "./heard.ts";
import { readTypedText } from "./read-typed-text.ts";

/** A slash command. Whatever the workspace calls it, a command that arrives here is ours. */
export function readCommand(command: SlashCommand): Heard {
  const { team_id: team, channel_id: channel, user_id: user } = command;
  const place: Place = {
    team,
    channel,
    user,
    isDirect: isDirectChannel(channel),
    responseUrl: command.response_url,
    trigger: command.trigger_id,
  };
  return {
    place,
    inbound: {
      caller: { door: "slack", organisation: team, user, name: command.user_name },
      conversation: conversationOf(place),
      channel: place.channel,
      delivery: `trigger/${command.trigger_id}`,
      text: readTypedText(command.text),
    },
  };
}
