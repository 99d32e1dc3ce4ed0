import type { BlockAction, ButtonAction, DatepickerAction, StaticSelectAction } from "@slack/bolt";
import { type Pressed, readButtonValue, readChosen } from "./button-value.ts";
import { conversationOf, type Heard, isDirectChannel, type Place } from "./heard.ts";
import { isRecord, readString } from "./read-record.ts";
import { ANSWER_ACTION } from "./render-buttons.ts";

/** A button, a list of answers, or a calendar. */
export type Press = BlockAction<ButtonAction | StaticSelectAction | DatepickerAction>;

/** What was pressed or chosen in a message of ours; nothing when it is of another kind or place. */
export function readPress(body: Press): Heard | undefined {
  const pressed = readPressed(body.actions[0]);
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

export function readPressed(action: Press["actions"][number] | undefined): Pressed | undefined {
  if (action?.type === "static_select") return readChosen(action.selected_option?.value, action.block_id);
  // A day that is taken away again says nothing.
  if (action?.type === "datepicker") return readChosen(action.selected_date ?? undefined, action.block_id);
  return readButtonValue(action?.value);
}

function placeOf(body: Press): Place | undefined {
  const { user, team, channel, message, container, actions } = body;
  const id = channel?.id ?? readString(container, "channel_id");
  const organisation = user.team_id ?? team?.id;
  if (id === undefined || organisation === undefined) return undefined;
  const isEphemeral = isRecord(container) && container["is_ephemeral"] === true;
  // What was whispered in a thread goes on there for that person alone.
  const thread = readString(message, "thread_ts") ?? readString(container, "thread_ts");
  return {
    team: organisation,
    channel: id,
    user: user.id,
    isDirect: isDirectChannel(id),
    isForAsker: isEphemeral && thread !== undefined,
    isOwnQuestion: isEphemeral && ANSWER_ACTION.test(actions[0]?.action_id ?? ""),
    trigger: body.trigger_id,
    ...(body.response_url && { responseUrl: body.response_url }),
    ...(thread !== undefined && { thread }),
  };
}
