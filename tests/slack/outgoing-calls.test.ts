import nock from "nock";
import { afterEach, beforeEach, expect, test } from "vitest";
import { openSlackDoor } from "../../adapters/slack/open-slack-door.ts";
import { fakeDesk, fixture, sendEvent } from "./slack-harness.ts";

/** Only this machine answers; anything else that is called without being expected fails at once. */
beforeEach(() => {
  nock.disableNetConnect();
  nock.enableNetConnect("127.0.0.1");
});
afterEach(() => {
  nock.cleanAll();
  nock.enableNetConnect();
});

test("without a test address, an answer goes to slack.com with the bot's token, and nowhere else", async () => {
  const bodies: string[] = [];
  const answered = new Promise<void>((resolve) => {
    nock("https://slack.com", { reqheaders: { authorization: "Bearer xoxb-invented" } })
      .post("/api/chat.postMessage", (body) => {
        bodies.push(JSON.stringify(body));
        return true;
      })
      .reply(200, () => {
        resolve();
        return { ok: true, ts: "1.1", channel: "C1" };
      });
  });
  const quiet = { info: () => undefined, warn: () => undefined, error: () => undefined };
  const door = await openSlackDoor({
    desk: fakeDesk(),
    log: quiet,
    settings: {
      signingSecret: "0123456789abcdef0123456789abcdef",
      botToken: "xoxb-invented",
      host: "127.0.0.1",
      port: 0,
    },
  });
  try {
    await sendEvent(door, fixture("app-mention"));
    await answered;
    expect(bodies).toHaveLength(1);
    expect(bodies[0]).toContain("unfurl_links");
    expect(nock.isDone()).toBe(true);
  } finally {
    await door.close();
  }
});
