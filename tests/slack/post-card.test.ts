import { afterEach, beforeEach, describe, expect, test } from "vitest";
import { createSlackPosts } from "../../adapters/slack/post-card.ts";
import { renderCard } from "../../adapters/slack/render-card.ts";
import type { Card } from "../../src/messages/card.ts";
import type { ChatPort, Outgoing } from "../../src/ports/chat.ts";
import { type FakeSlack, openFakeSlack } from "./fake-slack.ts";
import { plainCard, sample } from "./slack-harness.ts";

let slack: FakeSlack;
let port: ChatPort;
beforeEach(async () => {
  slack = await openFakeSlack();
  const tokens: Readonly<Record<string, string>> = { local: "xoxb-invented" };
  port = createSlackPosts({ tokenOf: async (workspace) => tokens[workspace], call_ms: 300, apiUrl: slack.apiUrl });
});
afterEach(() => slack.close());

const out = (card: Card = plainCard("Job 1001 is complete"), more: Partial<Outgoing> = {}): Outgoing => ({
  workspace: "local",
  id: "p1",
  channel: { door: "slack", id: "C1" },
  card,
  written_ms: 1_767_229_000_000,
  ...more,
});
const find = async (outgoing: Outgoing) => await port.find?.(outgoing);
const posted = () => slack.calls.filter(({ method }) => method === "chat.postMessage").map(({ body }) => body);

/** What Slack says was posted: every message with its metadata, newest first, among those of others. */
function history(...except: readonly number[]) {
  const own = posted().flatMap(({ metadata }, index) =>
    except.includes(index) ? [] : [{ type: "message", ts: `1767229000.${index}`, metadata }],
  );
  const others = [
    { type: "message", ts: "1767229001.1", text: "lunch?" },
    {
      type: "message",
      ts: "1767229001.2",
      metadata: { event_type: "oldhand_post", event_payload: { id: "p2", part: 0 } },
    },
    {
      type: "message",
      ts: "1767229001.3",
      metadata: { event_type: "other_app", event_payload: { id: "p1", part: 0 } },
    },
  ];
  return { ok: true, messages: [...others, ...own].reverse() };
}

describe("sending", () => {
  test("a post carries its id, so that it can be found", async () => {
    const sent = await port.send(out(undefined, { thread: "17.1" }));
    expect(sent).toEqual({ kind: "sent", messageId: "1767229000.000001" });
    expect(posted()).toMatchObject([
      {
        channel: "C1",
        thread_ts: "17.1",
        metadata: { event_type: "oldhand_post", event_payload: { id: "p1", part: 0 } },
      },
    ]);
  });

  test("a post that takes the place of a message updates it", async () => {
    expect(await port.send(out(undefined, { updatesMessage: "17.2" }))).toEqual({ kind: "sent", messageId: "17.2" });
    expect(slack.calls.map(({ method, body }) => [method, body["ts"]])).toEqual([["chat.update", "17.2"]]);
  });

  test("Slack's own time to wait is passed on, and the client does not try by itself", async () => {
    slack.script("chat.postMessage", () => ({ status: 429, headers: { "retry-after": "7" } }));
    expect(await port.send(out())).toEqual({ kind: "retryLater", after_ms: 7000, because: "Slack asks to wait" });
    expect(slack.count("chat.postMessage")).toBe(1);
  });

  test.each(["is_archived", "channel_not_found", "not_in_channel"])("a refusal (%s) is final", async (error) => {
    slack.script("chat.postMessage", () => ({ body: { ok: false, error } }));
    expect(await port.send(out())).toEqual({ kind: "refused", because: error });
  });

  test("blocks that Slack does not take are sent as words, under the same id", async () => {
    slack.script("chat.postMessage", (_, nth) =>
      nth === 0 ? { body: { ok: false, error: "invalid_blocks" } } : undefined,
    );
    expect(await port.send(out())).toMatchObject({ kind: "sent" });
    expect(posted().map(({ metadata }) => metadata)).toMatchObject([{}, { event_payload: { id: "p1" } }]);
  });

  test.each([
    { name: "nothing", answer: { hangs: true } },
    { name: "an error of its own", answer: { body: { ok: false, error: "internal_error" } } },
    { name: "a broken page", answer: { status: 502, body: "bad gateway" } },
  ])("when Slack answers $name nobody knows whether it arrived, and it is sent once", async ({ answer }) => {
    slack.script("chat.postMessage", () => answer);
    await expect(port.send(out())).rejects.toThrow();
    expect(slack.count("chat.postMessage")).toBe(1);
  });

  test("where the app is not installed a post is refused", async () => {
    expect(await port.send(out(undefined, { workspace: "elsewhere" }))).toMatchObject({ kind: "refused" });
    expect(slack.calls).toEqual([]);
  });
});

describe("looking for a post", () => {
  test("one that is there is found, and none of others", async () => {
    await port.send(out());
    slack.script("conversations.history", () => ({ body: history() }));
    expect(await find(out())).toEqual({ kind: "found", messageId: "1767229000.0" });
    expect(await find(out(undefined, { id: "p9" }))).toEqual({ kind: "absent" });
    const { body } = await slack.call("conversations.history");
    expect(body).toMatchObject({ channel: "C1", include_all_metadata: true, oldest: "1767228400" });
  });

  test("one in a thread is looked for in the thread", async () => {
    await port.send(out(undefined, { thread: "17.1" }));
    slack.script("conversations.replies", () => ({ body: history() }));
    expect(await find(out(undefined, { thread: "17.1" }))).toMatchObject({ kind: "found" });
    expect((await slack.call("conversations.replies")).body["ts"]).toBe("17.1");
  });

  test("it is looked for on every page", async () => {
    await port.send(out());
    slack.script("conversations.history", ({ body }) =>
      body["cursor"] === "two"
        ? { body: history() }
        : { body: { ok: true, messages: [], response_metadata: { next_cursor: "two" } } },
    );
    expect(await find(out())).toMatchObject({ kind: "found" });
  });

  test.each(["missing_scope", "not_in_channel"])("where the app may not read (%s) nobody can look", async (error) => {
    slack.script("conversations.history", () => ({ body: { ok: false, error } }));
    expect(await find(out())).toEqual({ kind: "cannot_look" });
  });

  test("when Slack does not answer, it is not taken for absent", async () => {
    slack.script("conversations.history", () => ({ status: 503, body: "down" }));
    await expect(find(out())).rejects.toThrow();
  });
});

describe("a card that takes several messages", () => {
  const long = sample("big");
  const wanted = renderCard(long).messages.length;

  test("goes on where it was cut off, and posts no part twice", async () => {
    expect(wanted).toBeGreaterThan(2);
    slack.script("chat.postMessage", (_, nth) =>
      nth === 2 ? { status: 429, headers: { "retry-after": "1" } } : undefined,
    );
    expect(await port.send(out(long))).toMatchObject({ kind: "retryLater", isPartly: true });
    slack.script("conversations.history", () => ({ body: history(2) }));
    const there = await find(out(long));
    expect(there).toEqual({ kind: "partly", messageId: "1767229000.0", parts: 2 });
    await port.send(out(long, { there: { messageId: "1767229000.0", parts: 2 } }));
    const parts = posted().map(({ metadata }) => (metadata as { event_payload: { part: number } }).event_payload.part);
    expect(parts).toEqual([0, 1, 2, ...Array.from({ length: wanted - 2 }, (_, part) => part + 2)]);
    slack.script("conversations.history", () => ({ body: history(2) }));
    expect(await find(out(long))).toEqual({ kind: "found", messageId: "1767229000.0" });
  });
});
