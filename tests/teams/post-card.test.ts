import { afterEach, beforeEach, describe, expect, test } from "vitest";
import { openCourier } from "../../adapters/teams/botbuilder/courier.ts";
import { createTeamsPosts } from "../../adapters/teams/post-card.ts";
import { checkSettings } from "../../adapters/teams/settings.ts";
import { createOutboxRelay } from "../../adapters/workers/outbox-relay.ts";
import type { Card } from "../../src/messages/card.ts";
import type { ChatPort, Outgoing } from "../../src/ports/chat.ts";
import type { ConversationReference } from "../../src/ports/conversation-references.ts";
import type { Post } from "../../src/ports/outbox.ts";
import { createMemoryStore, type MemoryStore } from "../support/memory-store.ts";
import { exchangeOf } from "../support/store-samples.ts";
import { FakeCredentials, FakePlatform, OUTBOUND_TOKEN, TENANT_ID } from "./fake-platform.ts";
import { echoCard, SETTINGS } from "./open-test-door.ts";

const CHANNEL = "19:jobs@thread.tacv2";
const NOW_ms = 1_000_000;
let platform: FakePlatform;
let store: MemoryStore;
let posts: ChatPort;
let reference: ConversationReference;

beforeEach(async () => {
  platform = await FakePlatform.start();
  store = createMemoryStore();
  const { url: serviceUrl } = platform;
  reference = {
    tenant: TENANT_ID,
    conversation: CHANNEL,
    kind: "channel",
    serviceUrl,
    bot: "28:oldhand",
    team: "19:t",
  };
  await store.conversations.keep(reference);
  const courier = openCourier(checkSettings(SETTINGS), {
    credentials: new FakeCredentials(),
    openIdMetadataUrl: platform.openIdMetadataUrl,
  });
  posts = createTeamsPosts({ courier, references: store.conversations, language: "en", now_ms: () => NOW_ms });
});
afterEach(async () => platform.stop());

const out = (more: Partial<Outgoing> = {}): Outgoing => ({
  workspace: TENANT_ID,
  id: "p1",
  channel: { door: "teams", id: CHANNEL },
  card: echoCard("job 1001 is closed"),
  written_ms: 0,
  ...more,
});
/** A card of three messages. */
const long: Card = {
  title: "Long",
  summary: "long",
  blocks: Array.from({ length: 6 }, (_, i) => ({ kind: "text", tone: "plain", text: `${i} ${"word ".repeat(1_700)}` })),
};
const sentTo = () => platform.sent.map(({ method, path }) => `${method} ${decodeURIComponent(path)}`);
const kept = async () => await store.conversations.find(TENANT_ID, CHANNEL);

describe("a post", () => {
  test("begins a thread in its channel, with the bot's token and address", async () => {
    expect(await posts.send(out())).toEqual({ kind: "sent", messageId: "sent-1" });
    expect(sentTo()).toEqual(["POST /v3/conversations"]);
    const [sent] = platform.sent;
    expect(sent?.headers.authorization).toBe(`Bearer ${OUTBOUND_TOKEN}`);
    expect(sent?.body).toMatchObject({
      isGroup: true,
      tenantId: TENANT_ID,
      channelData: { channel: { id: CHANNEL }, tenant: { id: TENANT_ID } },
      activity: { type: "message", summary: "echo job 1001 is closed", from: { id: "28:oldhand" } },
    });
  });

  test("answers in the thread that it belongs to", async () => {
    expect(await posts.send(out({ thread: "1700" }))).toEqual({ kind: "sent", messageId: "sent-1" });
    expect(sentTo()).toEqual([`POST /v3/conversations/${CHANNEL};messageid=1700/activities`]);
  });

  test("takes the place of an earlier one", async () => {
    expect(await posts.send(out({ updatesMessage: "1700" }))).toEqual({ kind: "sent", messageId: "1700" });
    expect(sentTo()).toEqual([`PUT /v3/conversations/${CHANNEL};messageid=1700/activities/1700`]);
  });

  test.each(["personal", "groupChat"] as const)("goes into a conversation of kind %s as it is", async (kind) => {
    await store.conversations.keep({ ...reference, conversation: "a:one", kind });
    await posts.send(out({ channel: { door: "teams", id: "a:one" } }));
    expect(sentTo()).toEqual(["POST /v3/conversations/a:one/activities"]);
  });

  test("too long for one message goes on in the thread that it began", async () => {
    expect(await posts.send(out({ card: long }))).toEqual({ kind: "sent", messageId: "sent-1" });
    const inThread = `POST /v3/conversations/${CHANNEL};messageid=sent-1/activities`;
    expect(sentTo().slice(0, 3)).toEqual(["POST /v3/conversations", inThread, inThread]);
    expect(JSON.stringify(platform.sent.map(({ body }) => body))).toContain("5 word");
  });

  test("to a conversation that the bot is not in is refused with what to do", async () => {
    const sent = await posts.send(out({ channel: { door: "teams", id: "19:other" } }));
    expect(sent).toMatchObject({ kind: "refused", because: expect.stringMatching(/add it there.*where/) });
    expect(platform.sent).toEqual([]);
  });

  test("of another workspace does not reach the channel", async () => {
    expect(await posts.send(out({ workspace: "00000000-8888-4777-8666-555555555555" }))).toMatchObject({
      kind: "refused",
    });
    expect(platform.sent).toEqual([]);
  });
});

describe("what the platform says of a post", () => {
  test.each([
    { status: 403, code: "BotNotInConversationRoster" },
    { status: 403, code: "BotDisabledByAdmin" },
    { status: 404, code: "ConversationNotFound" },
  ])("$code forgets the conversation and says why", async (refusal) => {
    platform.refusals = [refusal];
    expect(await posts.send(out())).toMatchObject({ kind: "refused", because: expect.stringMatching(/not in this/) });
    expect(await kept()).toBeUndefined();
    expect(platform.sent).toHaveLength(1);
  });

  test("that a message was deleted keeps the conversation", async () => {
    platform.refusals = [{ status: 404, code: "ActivityNotFoundInConversation" }];
    expect(await posts.send(out({ updatesMessage: "1700" }))).toMatchObject({
      kind: "refused",
      because: expect.stringMatching(/deleted/),
    });
    expect(await kept()).toEqual(reference);
  });

  test("429 is kept for later, for as long as it asks", async () => {
    platform.refusals = [{ status: 429, headers: { "retry-after": "7" } }];
    expect(await posts.send(out())).toEqual({ kind: "retryLater", after_ms: 7_000, because: "Teams answers 429 Busy" });
    expect(platform.sent).toHaveLength(1);
  });

  test.each([412, 429, 503, 401])("%i without a time is kept for later", async (status) => {
    platform.refusals = [{ status }];
    expect(await posts.send(out())).toMatchObject({ kind: "retryLater", after_ms: 0 });
    expect(await kept()).toEqual(reference);
  });

  test.each([500, 502, 504, 0])("%i leaves nobody sure, which is an error", async (status) => {
    platform.refusals = [{ status }];
    await expect(posts.send(out())).rejects.toThrow();
    expect(await posts.find?.(out())).toEqual({ kind: "cannot_look" });
    expect(await kept()).toEqual(reference);
  });

  test.each([400, 413])("%i is refused for good", async (status) => {
    platform.refusals = [{ status, code: "MessageSizeTooBig" }];
    expect(await posts.send(out())).toEqual({
      kind: "refused",
      because: `Teams answers ${status} MessageSizeTooBig`,
    });
    expect(await kept()).toEqual(reference);
  });

  test("an address where nobody listens was never reached", async () => {
    await store.conversations.keep({ ...reference, serviceUrl: "http://127.0.0.1:9" });
    expect(await posts.send(out())).toMatchObject({ kind: "retryLater" });
  });
});

test("a long card that was cut off by 429 goes on where it stopped", async () => {
  const refuseSecond = platform
    .until((sent) => sent.length === 1)
    .then(() => void platform.refusals.push({ status: 429 }));
  expect(await posts.send(out({ card: long }))).toMatchObject({ kind: "retryLater", isPartly: true });
  await refuseSecond;
  const found = await posts.find?.(out({ card: long }));
  expect(found).toEqual({ kind: "partly", messageId: "sent-1", parts: 1 });
  expect(await posts.send(out({ card: long, there: { messageId: "sent-1", parts: 1 } }))).toEqual({
    kind: "sent",
    messageId: "sent-1",
  });
  const begun = sentTo().filter((to) => to === "POST /v3/conversations");
  expect(begun).toHaveLength(1);
});

test("the relay begins a thread with a post, answers in it, and changes it", async () => {
  const post = (id: string, more: Partial<Post> = {}): Post => ({
    id,
    channel: { door: "teams", id: CHANNEL },
    card: echoCard(id),
    language: "en",
    ...more,
  });
  const workspace = await store.openWorkspace({ door: "teams", organisation: TENANT_ID, user: "ana", name: "Ana" });
  const person = await workspace.findPerson({ door: "teams", organisation: TENANT_ID, user: "ana", name: "Ana" });
  const written = [post("first"), post("second", { follows: "first" }), post("third", { updates: "first" })];
  await workspace.commit(exchangeOf(person, { at_ms: 0, posts: written }));
  let now_ms = 10_000;
  const failed: unknown[] = [];
  const relay = createOutboxRelay({
    outbox: store.outbox,
    ports: { slack: posts, teams: posts, web: store.houseChat, terminal: store.houseChat },
    clock: { now_ms: () => now_ms },
    language: "en",
    jitter: () => 0,
    report: (error) => failed.push(error),
  });
  for (let turn = 0; turn < written.length; turn++) {
    await relay.runOnce();
    now_ms += 10_000;
  }
  expect([sentTo(), failed]).toEqual([
    [
      "POST /v3/conversations",
      `POST /v3/conversations/${CHANNEL};messageid=sent-1/activities`,
      `PUT /v3/conversations/${CHANNEL};messageid=sent-1/activities/sent-1`,
    ],
    [],
  ]);
});
