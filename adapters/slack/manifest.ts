import type { AppsManifestCreateArguments } from "@slack/web-api";
import { EVENTS_PATH } from "./slack-server.ts";

export type SlackManifest = AppsManifestCreateArguments["manifest"];
type BotScope = NonNullable<NonNullable<NonNullable<SlackManifest["oauth_config"]>["scopes"]>["bot"]>[number];
type BotEvent = NonNullable<
  NonNullable<NonNullable<SlackManifest["settings"]>["event_subscriptions"]>["bot_events"]
>[number];

/** What the app may do, and why it must. Nothing else is asked for. */
export const SLACK_SCOPES: readonly { readonly scope: BotScope; readonly why: string }[] = [
  { scope: "commands", why: "To offer the /oldhand command." },
  { scope: "chat:write", why: "To answer where somebody mentioned it or wrote to it, and to update its own messages." },
  { scope: "files:write", why: "To put the picture of a chart under its answer; it cannot read anybody's files." },
  { scope: "app_mentions:read", why: "To hear a message that mentions it; no other message in a channel is read." },
  { scope: "im:history", why: "To hear what somebody writes to it in a direct message." },
];

/** What Slack tells the app, and the scope that allows it. */
export const SLACK_EVENTS: readonly { readonly event: BotEvent; readonly scope: BotScope; readonly why: string }[] = [
  { event: "app_mention", scope: "app_mentions:read", why: "Somebody asks in a channel." },
  { event: "message.im", scope: "im:history", why: "Somebody asks in a direct message." },
];

/** Stands in for the address at which Slack reaches this program; a name that is reserved for examples. */
const EXAMPLE_ADDRESS = "https://oldhand.example.com";

/**
 * The app as Slack's "create from manifest" page takes it.
 * @param address public https address of this program, without a path
 */
export function slackManifest(address: string = EXAMPLE_ADDRESS): SlackManifest {
  const url = `${address.replace(/\/+$/, "")}${EVENTS_PATH}`;
  return {
    _metadata: { major_version: 2, minor_version: 1 },
    display_information: {
      name: "Oldhand",
      description: "The experienced hand for heat-pump water heater crews: short questions, computed answers.",
      long_description: LONG_DESCRIPTION,
      background_color: "#1f3a4d",
    },
    features: {
      app_home: { home_tab_enabled: false, messages_tab_enabled: true, messages_tab_read_only_enabled: false },
      bot_user: { display_name: "oldhand", always_online: true },
      slash_commands: [
        {
          command: "/oldhand",
          url,
          description: "Ask about the water heater in front of you",
          usage_hint: "help · expansion 80 gal 50F to 140F 60 psi · form circuit · back · stop",
          should_escape: false,
        },
      ],
    },
    oauth_config: { scopes: { bot: SLACK_SCOPES.map(({ scope }) => scope) } },
    settings: {
      event_subscriptions: { request_url: url, bot_events: SLACK_EVENTS.map(({ event }) => event) },
      interactivity: { is_enabled: true, request_url: url },
      org_deploy_enabled: false,
      socket_mode_enabled: false,
      token_rotation_enabled: false,
    },
  };
}

const LONG_DESCRIPTION = [
  "Oldhand answers short questions of crews that install and repair heat-pump water heaters, with the number first,",
  "what it went by, and where each figure comes from. Ask with /oldhand, by mentioning it, or in a direct message; what",
  "is missing is asked for. It reads only what is addressed to it. Local code, the authority having jurisdiction and",
  "licensed people decide; an answer never replaces them.",
].join(" ");

/** The manifest as text, to be pasted or saved. */
export function printSlackManifest(address?: string): string {
  return JSON.stringify(slackManifest(address), null, 2);
}
