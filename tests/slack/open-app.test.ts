import { AuthorizationError, HTTPReceiver } from "@slack/bolt";
import { expect, test } from "vitest";
import { createChannelQueue } from "../../adapters/slack/channel-queue.ts";
import { rememberDeliveries } from "../../adapters/slack/deliveries.ts";
import { toBoltLogger } from "../../adapters/slack/door-log.ts";
import { Hearing } from "../../adapters/slack/hearing.ts";
import { HomeTab } from "../../adapters/slack/home-tab.ts";
import { openApp } from "../../adapters/slack/open-app.ts";
import { USUAL_PACE } from "../../adapters/slack/settings.ts";
import { watchWork } from "../../adapters/slack/work-in-flight.ts";
import { openFakeSlack } from "./fake-slack.ts";
import { fakeDesk, fixture, type Json, WALKS } from "./slack-harness.ts";

const log = { info: () => {}, warn: () => {}, error: () => {} };

/** The app without a server, installed in T1 and T2 with a token each. */
function appOf(apiUrl: string) {
  const tokens = new Map([
    ["T1", "xoxb-one"],
    ["T2", "xoxb-two"],
  ]);
  const work = watchWork();
  const desk = fakeDesk();
  const app = openApp({
    receiver: new HTTPReceiver({ signingSecret: "s", logger: toBoltLogger(log) }),
    tokens: { find: async (team) => tokens.get(team ?? ""), fresh: async (token) => token },
    hearing: new Hearing({ desk, pace: USUAL_PACE, log, work }),
    home: new HomeTab({ desk, work, log }),
    work,
    walksFor: async () => WALKS,
    queue: createChannelQueue({ wait: async () => {}, jitter: () => 0 }),
    pace: USUAL_PACE,
    log,
    apiUrl,
  });
  const send = async (body: Json) => {
    let acks = 0;
    await app.processEvent({
      body,
      ack: async () => {
        acks += 1;
      },
    });
    return acks;
  };
  return { desk, send };
}
const mentionIn = (team: string) =>
  fixture("app-mention", { team_id: team, authorizations: [{ team_id: team, user_id: "UBOT" }] });

test("each organisation is answered with its own token", async () => {
  const slack = await openFakeSlack();
  const { send } = appOf(slack.apiUrl);
  expect(await send(mentionIn("T1"))).toBe(1);
  expect((await slack.call("chat.postMessage", 0)).token).toBe("Bearer xoxb-one");
  const other = fixture("app-mention", { ...mentionIn("T2"), event: { ts: "7.7" } });
  await send(other);
  expect((await slack.call("chat.postMessage", 1)).token).toBe("Bearer xoxb-two");
  await slack.close();
});

test("an organisation that has not installed the app is an authorization error, unheard", async () => {
  const { desk, send } = appOf("http://127.0.0.1:1/");
  await expect(send(mentionIn("T3"))).rejects.toThrow(AuthorizationError);
  expect(desk.asked).toEqual([]);
});

test("a delivery is remembered among 1,000 others and worked on again after that", () => {
  const deliveries = rememberDeliveries<number>();
  const isFirst = (delivery: string) => deliveries.once(delivery, async () => 1).isFirst;
  expect(isFirst("a")).toBe(true);
  for (let other = 0; other < 999; other += 1) isFirst(String(other));
  expect(isFirst("a")).toBe(false);
  isFirst("one more");
  expect(isFirst("a")).toBe(true);
});
