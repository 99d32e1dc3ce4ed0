import type { BlockAction, ButtonAction } from "@slack/bolt";
import { readButtonValue } from "./button-value.ts";
import { conversationOf, type Heard, isDirectChannel, type Place } from "./heard.ts";
import { isRecord, readString } from "./read-record.ts";
import { ANSWER_ACTION } from "./render-buttons.ts";

/** A button of ours that was pressed in a message; nothing when it is of another kind or place. */
export function readPress(body: BlockAction<ButtonAction>): Heard | undefined {
  const pressed = readButtonValue(body.actions[0]?.value);
  const place = placeOf(body);
  if (pressed === undefined || place === undefined) return undefined;
  const { user } = body;
  return {
    place,
    inbound: {
      caller: { door: "slack", organisation: place.team, user: user.id, name: user.name ?? user.username },
      conversation: conversationOf(place),
      delivery: `trigger/${body.trigger_id}`,
      text: pressed.say,
      ...(pressed.aim && { aim: pressed.aim }),
    },
  };
}

function placeOf(body: BlockAction<ButtonAction>): Place | undefined {
  const { user, team, channel, message, container, actions } = body;
  const id = channel?.id ?? readString(container, "channel_id");
  const organisation = user.team_id ?? team?.id;
  if (id === undefined || organisation === undefined) return undefined;
  const isEphemeral = isRecord(container) && container["is_ephemeral"] === true;
  const thread = readString(message, "thread_ts") ?? readString(container, "thread_ts");
  return {
    team: organisation,
    channel: id,
    user: user.id,
    isDirect: isDirectChannel(id),
    isOwnQuestion: isEphemeral && ANSWER_ACTION.test(actions[0]?.action_id ?? ""),
    trigger: body.trigger_id,
    ...(body.response_url && { responseUrl: body.response_url }),
    ...(thread !== undefined && { thread }),
  };
}
