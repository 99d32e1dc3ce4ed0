import type { AppHomeOpenedEvent } from "@slack/types";
import { parseJson } from "./button-value.ts";
import type { Heard, Place } from "./heard.ts";
import { conversationOf } from "./heard.ts";
import type { HomeOwner } from "./home-tab.ts";
import type { Envelope } from "./read-message.ts";
import { type Press, readPressed } from "./read-press.ts";
import { readString } from "./read-record.ts";

/** Somebody opened the home tab; nothing for another tab. */
export function readHomeOpened(event: AppHomeOpenedEvent, { team_id: team }: Envelope): HomeOwner | undefined {
  if (event.tab !== "home") return undefined;
  const hash = readString(event.view, "hash");
  return {
    // The event does not tell the name; the one that is known already stays.
    caller: { door: "slack", organisation: team, user: event.user, name: event.user },
    channel: event.channel,
    ...(hash !== undefined && { hash }),
  };
}

/** A button of the home tab: what it says in the person's direct messages, and whose tab is shown anew after it. */
export function readHomePress(body: Press): { readonly heard: Heard; readonly owner: HomeOwner } | undefined {
  const { user, team, view } = body;
  const pressed = readPressed(body.actions[0]);
  const channel = readString(parseJson(view?.private_metadata), "channel");
  const organisation = user.team_id ?? team?.id;
  if (pressed === undefined || channel === undefined || organisation === undefined) return undefined;
  const caller = { door: "slack", organisation, user: user.id, name: user.name ?? user.username } as const;
  const place: Place = { team: organisation, channel, user: user.id, isDirect: true, trigger: body.trigger_id };
  const delivery = `trigger/${body.trigger_id}`;
  const inbound = { caller, conversation: conversationOf(place), delivery, text: pressed.say };
  const hash = readString(view, "hash");
  return { heard: { place, inbound }, owner: { caller, channel, ...(hash !== undefined && { hash }) } };
}
