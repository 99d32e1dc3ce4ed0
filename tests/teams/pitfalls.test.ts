import { readFileSync } from "node:fs";
import { ConfigurationBotFrameworkAuthentication } from "botbuilder";
import { describe, expect, test } from "vitest";
import { authenticationOptions, openAuthentication } from "../../adapters/teams/botbuilder/connect.ts";
import { checkSettings } from "../../adapters/teams/settings.ts";
import { APP_ID, FakeCredentials, FakePlatform, messageActivity, signToken } from "./fake-platform.ts";
import { openTestDoor, SETTINGS } from "./open-test-door.ts";

/** What the platform and its library do to those who do not know it, and the test that shows how it is met. */
const PITFALLS: readonly { readonly pitfall: string; readonly file: string; readonly test: string }[] = [
  {
    pitfall: "an empty app id turns authentication off",
    file: "open-teams-door.test.ts",
    test: "the bare library serves unsigned requests when the app id is empty, which is why the door refuses it",
  },
  {
    pitfall: "a missing or misspelt type of app means every tenant",
    file: "open-teams-door.test.ts",
    test: "take the app type $name for $checked",
  },
  {
    pitfall: "forged tokens are answered with 500 and the error's text",
    file: "authentication.test.ts",
    test: "refuses a token %s with 401 and an empty body",
  },
  {
    pitfall: "the signing key is printed when a token is refused",
    file: "quiet-console.test.ts",
    test: "drops signing keys and the errors of tokens, and nothing else",
  },
  {
    pitfall: "an activity without its type is answered with 500",
    file: "authentication.test.ts",
    test: "refuses a signed activity of $name",
  },
  {
    pitfall: "a handler that fails is answered with 200, so that nothing comes again",
    file: "send-patiently.test.ts",
    test: "an answer that was never delivered is given when the same delivery comes again",
  },
  {
    pitfall: "the library does not try 412 again, nor 429 without a time",
    file: "send-patiently.test.ts",
    test: "with %i is sent again after a jittered second",
  },
  {
    pitfall: "a turn over 15 s is delivered again",
    file: "conversation.test.ts",
    test: "does not hold up the request: it is answered by the conversation when the turn has ended",
  },
  {
    pitfall: "the same activity comes twice",
    file: "conversation.test.ts",
    test: "delivered twice are answered once, also at the same time",
  },
  {
    pitfall: "a submit fires twice under two ids",
    file: "conversation.test.ts",
    test: "pressed twice under two ids are answered once",
  },
  {
    pitfall: "a message over 28 KB is refused",
    file: "render-adaptive.test.ts",
    test: "$name stays within the limits, in as many messages as it takes",
  },
  {
    pitfall: "cards read Markdown and macros in what people typed",
    file: "render-adaptive.test.ts",
    test: "is seen as it was typed, and nothing of it goes through Markdown",
  },
  {
    pitfall: "more than ten commands are refused",
    file: "manifest.test.ts",
    test: "stays valid with sixty commands, long names and none at all",
  },
  {
    pitfall: "a stored reference goes stale",
    file: "references.test.ts",
    test: "every message notes how its conversation is reached, a channel without its thread",
  },
  {
    pitfall: "the bot is not in the conversation's roster any more",
    file: "post-card.test.ts",
    test: "$code forgets the conversation and says why",
  },
  {
    pitfall: "an outbound error carries the bearer token",
    file: "send-patiently.test.ts",
    test: "what is logged of a refused answer holds no token and no text of a person",
  },
  {
    pitfall: "the icons are of another size than the store wants",
    file: "app-package.test.ts",
    test: "the outline icon is 32 px wide and high, and of white and transparent pixels alone",
  },
  {
    pitfall: "uploading custom apps is blocked by policy, and nobody knows why",
    file: "admin-page.test.ts",
    test: "names only settings that exist, and every one that has to do with identity",
  },
];

describe("every known pitfall is met by a test that is there", () => {
  test.each(PITFALLS)("$pitfall", ({ file, test: name }) => {
    expect(readFileSync(new URL(file, import.meta.url), "utf8")).toContain(`"${name}"`);
  });
});

/** @source botbuilder-core 4.23.3, ConfigurationBotFrameworkAuthentication: the options that come all together or not at all */
const TOGETHER = [
  ...["ToChannelFromBotLoginUrl", "ToChannelFromBotOAuthScope", "ToBotFromChannelTokenIssuer", "OAuthUrl"],
  ...["ToBotFromChannelOpenIdMetadataUrl", "ToBotFromEmulatorOpenIdMetadataUrl", "CallerId"],
];

describe("options of the library that blank each other", () => {
  test("one alone makes the bare library refuse what is signed rightly", async () => {
    const platform = await FakePlatform.start();
    const options = { MicrosoftAppId: APP_ID, ToBotFromChannelOpenIdMetadataUrl: platform.openIdMetadataUrl };
    const bare = new ConfigurationBotFrameworkAuthentication(options, new FakeCredentials());
    const authenticate = (authentication: ConfigurationBotFrameworkAuthentication) =>
      authentication.authenticateRequest(
        JSON.parse(JSON.stringify(messageActivity(platform))),
        `Bearer ${signToken(platform)}`,
      );
    await expect(authenticate(bare)).rejects.toThrow();
    const { inbound } = openAuthentication(checkSettings(SETTINGS), {
      credentials: new FakeCredentials(),
      openIdMetadataUrl: platform.openIdMetadataUrl,
    });
    expect((await authenticate(inbound)).claimsIdentity.getClaimValue("aud")).toBe(APP_ID);
    await platform.stop();
  });

  test("are set all together or not at all", () => {
    const settings = checkSettings(SETTINGS);
    const set = (options: Record<string, string>) => TOGETHER.filter((name) => options[name] !== undefined);
    expect(set(authenticationOptions(settings, { openIdMetadataUrl: "https://keys.invalid" }))).toEqual(TOGETHER);
    expect(set(authenticationOptions(settings, {}))).toEqual([]);
  });
});

test("a failure inside of the turn is answered with 500, so that the platform delivers it again", async () => {
  const door = await openTestDoor();
  door.platform.refusals = [{ status: 403 }];
  expect(await door.say()).toMatchObject({ status: 500, body: "" });
  expect(await door.say()).toMatchObject({ status: 200 });
  expect(door.platform.messages).toHaveLength(2);
  await door.close();
});

test("the bot library is pinned to the one version that its inner parts were looked at in", () => {
  const { dependencies } = JSON.parse(readFileSync(new URL("../../package.json", import.meta.url), "utf8"));
  expect([dependencies.botbuilder, dependencies["botframework-connector"]]).toEqual(["4.23.3", "4.23.3"]);
});
