import { expect, test } from "vitest";
import { printSlackManifest, SLACK_EVENTS, SLACK_SCOPES, slackManifest } from "../../adapters/slack/manifest.ts";
import { ASK_ABOUT, START_WALK } from "../../adapters/slack/shortcuts.ts";

/**
 * Longest texts and lists, from the JSON schema of slackapi/manifest-schema (version 2) and the comments of
 * `AppsManifestCreateArguments` in @slack/web-api 8.2.0, which agree.
 */
const LONGEST: readonly (readonly [path: string, most: number])[] = [
  ["display_information.name", 35],
  ["display_information.description", 140],
  ["display_information.long_description", 4000],
  ["display_information.background_color", 7],
  ["features.bot_user.display_name", 80],
  ["features.shortcuts", 10],
  ["features.shortcuts.0.name", 24],
  ["features.shortcuts.0.callback_id", 255],
  ["features.shortcuts.0.description", 150],
  ["features.shortcuts.1.name", 24],
  ["features.shortcuts.1.callback_id", 255],
  ["features.shortcuts.1.description", 150],
  ["features.slash_commands", 50],
  ["features.slash_commands.0.command", 32],
  ["features.slash_commands.0.url", 3000],
  ["features.slash_commands.0.description", 2000],
  ["features.slash_commands.0.usage_hint", 1000],
  ["oauth_config.scopes.bot", 255],
  ["settings.event_subscriptions.bot_events", 100],
];

const manifest: unknown = JSON.parse(printSlackManifest("https://hand.example.com/"));

function find(path: string): unknown {
  return path
    .split(".")
    .reduce<unknown>((at, key) => (typeof at === "object" && at !== null ? Reflect.get(at, key) : undefined), manifest);
}

test.each(LONGEST)("%s is there and at most %d long", (path, most) => {
  const found = find(path);
  const length = typeof found === "string" || Array.isArray(found) ? found.length : 0;
  expect(length).toBeGreaterThan(0);
  expect(length).toBeLessThanOrEqual(most);
});

const PATTERNS: readonly (readonly [path: string, pattern: RegExp])[] = [
  ["features.slash_commands.0.command", /^\/[a-z]+$/],
  ["features.bot_user.display_name", /^[a-z0-9._-]+$/],
  ["display_information.background_color", /^#[0-9a-f]{6}$/],
  ["features.slash_commands.0.url", /^https:\/\/hand\.example\.com\/slack\/events$/],
  ["settings.interactivity.request_url", /^https:\/\/hand\.example\.com\/slack\/events$/],
  ["settings.event_subscriptions.request_url", /^https:\/\/hand\.example\.com\/slack\/events$/],
];
test.each(PATTERNS)("%s is written like %s", (path, pattern) => {
  expect(find(path)).toMatch(pattern);
});

test("every event that needs a scope is allowed by one that is asked for", () => {
  const scopes = SLACK_SCOPES.map(({ scope }) => scope);
  for (const { scope } of SLACK_EVENTS) if (scope !== undefined) expect(scopes).toContain(scope);
  expect(find("settings.event_subscriptions.bot_events")).toEqual([
    "app_mention",
    "message.im",
    "app_home_opened",
    "app_uninstalled",
    "tokens_revoked",
  ]);
});

test("every scope and event has a reason of its own, and no event tells of what is said in a channel", () => {
  const reasons = [...SLACK_SCOPES, ...SLACK_EVENTS].map(({ why }) => why);
  for (const why of reasons) expect(why.length).toBeGreaterThan(20);
  expect(new Set(reasons).size).toBe(reasons.length);
  expect(SLACK_EVENTS.filter(({ event }) => /^message\.(channels|groups|mpim)$/.test(event))).toEqual([]);
  expect(find("oauth_config.scopes.bot")).toEqual([
    ...["commands", "chat:write", "files:write", "files:read", "app_mentions:read", "im:history"],
    // What `conversations.history` and `conversations.replies` ask for (docs.slack.dev, both methods), where it posts.
    ...["channels:history", "groups:history"],
  ]);
});

test("the shortcuts are those that are heard", () => {
  expect(find("features.shortcuts")).toMatchObject([
    { type: "global", name: "Start a walk", callback_id: START_WALK },
    { type: "message", name: "Ask Oldhand about this", callback_id: ASK_ABOUT },
  ]);
});

test("over a socket Slack is given no address to call; the token of one workspace does not expire", () => {
  const text = printSlackManifest(undefined, { isSocket: true });
  expect(JSON.parse(text)).toMatchObject({ settings: { socket_mode_enabled: true, token_rotation_enabled: false } });
  expect(text).not.toContain("https://");
});

test("an app that many may install comes back to this program, and its tokens are renewed", () => {
  const { oauth_config, settings } = slackManifest("https://hand.example.com/", { isForMany: true });
  expect(oauth_config?.redirect_urls).toEqual(["https://hand.example.com/slack/oauth_redirect"]);
  expect(settings).toMatchObject({ token_rotation_enabled: true, org_deploy_enabled: false });
});

test("people may write to it directly", () => {
  expect(slackManifest().features?.app_home).toMatchObject({
    messages_tab_enabled: true,
    messages_tab_read_only_enabled: false,
  });
});

test("the address is one reserved for examples until it is given", () => {
  expect(slackManifest().settings?.interactivity?.request_url).toBe("https://oldhand.example.com/slack/events");
});
