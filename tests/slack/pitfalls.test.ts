import { HTTPReceiver } from "@slack/bolt";
import { afterEach, describe, expect, test } from "vitest";
import { createChannelQueue } from "../../adapters/slack/channel-queue.ts";
import { toBoltLogger } from "../../adapters/slack/door-log.ts";
import { Hearing } from "../../adapters/slack/hearing.ts";
import { HomeTab } from "../../adapters/slack/home-tab.ts";
import { openApp } from "../../adapters/slack/open-app.ts";
import { USUAL_PACE } from "../../adapters/slack/settings.ts";
import { oneTeam } from "../../adapters/slack/team-tokens.ts";
import { watchWork } from "../../adapters/slack/work-in-flight.ts";
import { openFakeSlack } from "./fake-slack.ts";
import { type ManyHarness, openMany } from "./installed-harness.ts";
import { closeOpened, fakeDesk, fixture, opened, sendEvent, sendForm, slash } from "./slack-harness.ts";

/*
 * What is known to go wrong with Slack and its libraries and is tested in no other file of this folder.
 * "Pitfalls and their tests" in DEVELOPERS.md lists all of them.
 */

afterEach(closeOpened);

describe("a Slack that is ill", () => {
  test("the client gives up on a call that nobody answers, and the door goes on", async () => {
    const { door, slack, logged } = await opened(undefined, { call_ms: 300, drain_ms: 15_000 });
    slack.script("chat.postMessage", ({ body }) => (body["channel"] === "C1" ? { hangs: true } : undefined));
    await sendEvent(door, fixture("app-mention"));
    await sendEvent(door, fixture("app-mention", { event: { channel: "C2", ts: "2.2" } }));
    // By itself the client would wait for ever, and try ten times.
    await door.close();
    const channels = slack.calls.map(({ body }) => body["channel"]);
    expect(channels).toContain("C2");
    expect(channels.filter((channel) => channel === "C1").length).toBeLessThanOrEqual(3);
    expect(logged.map(({ message }) => message)).toContain("an answer could not be sent");
  });

  test("a call that fails with 500 is made three times at most, and the failure is logged", async () => {
    const { door, slack, logged } = await opened();
    slack.script("chat.postMessage", ({ body }) =>
      body["channel"] === "C1" ? { status: 500, body: "oops" } : undefined,
    );
    await sendEvent(door, fixture("app-mention"));
    await door.close();
    expect(slack.count("chat.postMessage")).toBe(3);
    expect(logged.map(({ message }) => message)).toContain("an answer could not be sent");
  });

  test("no call leaves the address of the Web API, whatever the method is called", async () => {
    const slack = await openFakeSlack();
    const log = { info: () => {}, warn: () => {}, error: () => {} };
    const work = watchWork();
    const app = openApp({
      receiver: new HTTPReceiver({ signingSecret: "s", logger: toBoltLogger(log) }),
      tokens: oneTeam("xoxb-invented"),
      hearing: new Hearing({ desk: fakeDesk(), pace: USUAL_PACE, log, work }),
      home: new HomeTab({ desk: fakeDesk(), work, log }),
      work,
      walksFor: async () => ({ language: "en", walks: [] }),
      queue: createChannelQueue({ wait: async () => {}, jitter: () => 0 }),
      pace: USUAL_PACE,
      log,
      apiUrl: slack.apiUrl,
    });
    const elsewhere = slack.responseUrl("elsewhere");
    await app.client.apiCall(elsewhere).catch(() => {});
    expect([slack.count("/respond/elsewhere"), slack.count(elsewhere)]).toEqual([0, 1]);
    await slack.close();
  });
});

describe("a token that has expired", () => {
  let many: ManyHarness | undefined;
  afterEach(async () => {
    await many?.close();
    many = undefined;
  });
  async function withExpired(): Promise<ManyHarness> {
    many = await openMany();
    const access = { token: "xoxb-old", refreshToken: "xoxe-old", expires_ms: Date.now() - 1 };
    const given = { team: "T1", name: "One", botUser: "UBOT", scopes: [], installedBy: "U1", installed_ms: 0 };
    await many.store.installations.save({ ...given, access });
    return many;
  }

  test("is renewed before the answer is sent, once for all that ask, and kept", async () => {
    const { door, slack, store } = await withExpired();
    const renewed = { ok: true, access_token: "xoxb-new", refresh_token: "xoxe-new", expires_in: 43_200 };
    slack.script("oauth.v2.access", () => ({ body: renewed }));
    const mentions = ["1.1", "1.2", "1.3"].map((ts) => fixture("app-mention", { event: { ts } }));
    await Promise.all(mentions.map((mention) => sendEvent(door, mention)));
    for (const nth of [0, 1, 2]) expect((await slack.call("chat.postMessage", nth)).token).toBe("Bearer xoxb-new");
    expect(slack.count("oauth.v2.access")).toBe(1);
    expect((await slack.call("oauth.v2.access")).body).toMatchObject({
      grant_type: "refresh_token",
      refresh_token: "xoxe-old",
    });
    expect(await store.installations.find("T1")).toMatchObject({
      access: { token: "xoxb-new", refreshToken: "xoxe-new" },
    });
  });

  test("keeps nobody's acknowledgement waiting while Slack does not answer", async () => {
    const { door, slack } = await withExpired();
    slack.script("oauth.v2.access", () => ({ hangs: true }));
    expect((await sendForm(door, slash(slack))).status).toBe(200);
    expect((await slack.call("/respond/slash")).body["text"]).toBe("expansion 80 gal 50F to 140F");
  });
});
