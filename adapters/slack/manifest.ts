import type { AppsManifestCreateArguments } from "@slack/web-api";
import { ASK_ABOUT, START_WALK } from "./shortcuts.ts";
import { EVENTS_PATH, REDIRECT_PATH } from "./slack-server.ts";

export type SlackManifest = AppsManifestCreateArguments["manifest"];
type BotScope = NonNullable<NonNullable<NonNullable<SlackManifest["oauth_config"]>["scopes"]>["bot"]>[number];
type BotEvent = NonNullable<
  NonNullable<NonNullable<SlackManifest["settings"]>["event_subscriptions"]>["bot_events"]
>[number];

/** What the app may do, and why it must. Nothing else is asked for. */
export const SLACK_SCOPES: readonly { readonly scope: BotScope; readonly why: string }[] = [
  { scope: "commands", why: "To offer the /oldhand command and the two shortcuts." },
  { scope: "chat:write", why: "To answer where somebody mentioned it or wrote to it, and to update its own messages." },
  { scope: "files:write", why: "To put the picture of a chart under its answer, and to send the papers of a job." },
  { scope: "files:read", why: "To keep a photo that somebody sends to it with a message; no other file is opened." },
  { scope: "app_mentions:read", why: "To hear a message that mentions it; no other message in a channel is an event." },
  { scope: "im:history", why: "To hear what somebody writes to it in a direct message." },
  {
    scope: "channels:history",
    why:
      "When it is not sure that a post of its own arrived in a public channel that it is a member of, it looks for that " +
      "post before it sends it again. It keeps nothing of what it reads there.",
  },
  { scope: "groups:history", why: "The same look for a post of its own, in a private channel that it is a member of." },
];

/** What Slack tells the app, and the scope that allows it where one is needed. */
export const SLACK_EVENTS: readonly { readonly event: BotEvent; readonly scope?: BotScope; readonly why: string }[] = [
  { event: "app_mention", scope: "app_mentions:read", why: "Somebody asks in a channel." },
  { event: "message.im", scope: "im:history", why: "Somebody asks in a direct message." },
  { event: "app_home_opened", why: "Somebody opens its home tab, which is drawn at that moment." },
  { event: "app_uninstalled", why: "The workspace took it out: its tokens are deleted." },
  { event: "tokens_revoked", why: "The workspace took its tokens back: they are deleted here too." },
];

/** How the app reaches this program, and how its token does. */
export interface ManifestWays {
  /** Over a socket that this program opens; requests over https otherwise. */
  readonly isSocket?: boolean;
  /** Any workspace may install it by itself, and its tokens are renewed; one workspace with a fixed token otherwise. */
  readonly isForMany?: boolean;
}

/** Stands in for the address at which Slack reaches this program; a name that is reserved for examples. */
const EXAMPLE_ADDRESS = "https://oldhand.example.com";

/**
 * The app as Slack's "create from manifest" page takes it.
 * @param address public https address of this program, without a path
 */
export function slackManifest(address: string = EXAMPLE_ADDRESS, ways: ManifestWays = {}): SlackManifest {
  const { isSocket = false, isForMany = false } = ways;
  const base = address.replace(/\/+$/, "");
  const url = `${base}${EVENTS_PATH}`;
  return {
    _metadata: { major_version: 2, minor_version: 1 },
    display_information: {
      name: "Oldhand",
      description: "The experienced hand for heat-pump water heater crews: short questions, computed answers.",
      long_description: LONG_DESCRIPTION,
      background_color: "#1f3a4d",
    },
    features: {
      app_home: { home_tab_enabled: true, messages_tab_enabled: true, messages_tab_read_only_enabled: false },
      bot_user: { display_name: "oldhand", always_online: true },
      shortcuts: SHORTCUTS,
      slash_commands: [
        {
          command: "/oldhand",
          ...(!isSocket && { url }),
          description: "Ask about the water heater in front of you",
          usage_hint: "help · expansion 80 gal 50F to 140F 60 psi · form circuit · back · stop",
          should_escape: false,
        },
      ],
    },
    oauth_config: {
      ...(isForMany && { redirect_urls: [`${base}${REDIRECT_PATH}`] }),
      scopes: { bot: SLACK_SCOPES.map(({ scope }) => scope) },
    },
    settings: {
      event_subscriptions: {
        ...(!isSocket && { request_url: url }),
        bot_events: SLACK_EVENTS.map(({ event }) => event),
      },
      interactivity: { is_enabled: true, ...(!isSocket && { request_url: url }) },
      org_deploy_enabled: false,
      socket_mode_enabled: isSocket,
      token_rotation_enabled: isForMany,
    },
  };
}

const SHORTCUTS: NonNullable<NonNullable<SlackManifest["features"]>["shortcuts"]> = [
  {
    type: "global",
    name: "Start a walk",
    callback_id: START_WALK,
    description: "Be led through a question, one step at a time",
  },
  {
    type: "message",
    name: "Ask Oldhand about this",
    callback_id: ASK_ABOUT,
    description: "Take this message as a question to Oldhand",
  },
];

const LONG_DESCRIPTION = [
  "Oldhand answers short questions of crews that install and repair heat-pump water heaters, with the number first,",
  "what it went by, and where each figure comes from. Ask with /oldhand, by mentioning it, or in a direct message; what",
  "is missing is asked for. It answers only what is addressed to it. Local code, the authority having jurisdiction and",
  "licensed people decide; an answer never replaces them.",
].join(" ");

/** The manifest as text, to be pasted or saved. */
export function printSlackManifest(address?: string, ways?: ManifestWays): string {
  return JSON.stringify(slackManifest(address, ways), null, 2);
}
