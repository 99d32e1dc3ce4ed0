import { expect, test } from "vitest";
import { printSlackManifest, SLACK_EVENTS, SLACK_SCOPES, slackManifest } from "../../adapters/slack/manifest.ts";

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

test("every event is allowed by a scope that is asked for", () => {
  const scopes = SLACK_SCOPES.map(({ scope }) => scope);
  for (const { scope } of SLACK_EVENTS) expect(scopes).toContain(scope);
  expect(find("settings.event_subscriptions.bot_events")).toEqual(["app_mention", "message.im"]);
});

test("every scope has a reason, and no channel's history is asked for", () => {
  for (const { why } of [...SLACK_SCOPES, ...SLACK_EVENTS]) expect(why.length).toBeGreaterThan(20);
  expect(find("oauth_config.scopes.bot")).toEqual([
    "commands",
    "chat:write",
    "files:write",
    "app_mentions:read",
    "im:history",
  ]);
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
