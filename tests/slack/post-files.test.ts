import { afterEach, beforeEach, describe, expect, test } from "vitest";
import { createSlackPosts } from "../../adapters/slack/post-card.ts";
import type { Block, Card } from "../../src/messages/card.ts";
import type { ChatPort, Outgoing } from "../../src/ports/chat.ts";
import { judgeMessage } from "./block-kit-judge.ts";
import { type FakeSlack, openFakeSlack } from "./fake-slack.ts";

let slack: FakeSlack;
let port: ChatPort;
let refused: unknown[];
const PHOTO = "a1b2c3d4e5f6".padEnd(64, "0");
const PLAN = "0f1e2d3c4b5a".padEnd(64, "0");

beforeEach(async () => {
  slack = await openFakeSlack();
  refused = [];
  port = createSlackPosts({
    tokenOf: async () => "xoxb-invented",
    call_ms: 2_000,
    apiUrl: slack.apiUrl,
    readKept: async (workspace, hash) => (workspace === "local" ? Buffer.from(hash) : undefined),
    report: (error) => refused.push(error),
  });
});
afterEach(() => slack.close());

const fileBlock = (hash: string, name: string, type: string): Block => ({
  kind: "file",
  file: { hash, name, type, size_B: 64 },
  text: `<!channel> ${name} from Wren`,
});
const summary = (...files: readonly Block[]): Card => ({
  title: "Job 1003",
  summary: "Job 1003 is complete.",
  blocks: [{ kind: "headline", text: "Done" }, ...files],
});
const photo = fileBlock(PHOTO, "IMG_1.jpg", "image/jpeg");
const plan = fileBlock(PLAN, "plan.pdf", "application/pdf");
const out = (card: Card = summary(photo, plan), more: Partial<Outgoing> = {}): Outgoing => ({
  workspace: "local",
  id: "p1",
  channel: { door: "slack", id: "C1" },
  card,
  written_ms: 1_767_229_000_000,
  ...more,
});
const posts = () => slack.calls.filter(({ method }) => method === "chat.postMessage").map(({ body }) => body);
const shares = () =>
  slack.calls.filter(
    ({ method, body }) => method === "files.completeUploadExternal" && body["channel_id"] !== undefined,
  );
/** What Slack says stands in the thread: the messages that were posted, and the files that were shared. */
function thread(...names: readonly string[]) {
  const messages = posts().map(({ metadata }, index) => ({ ts: `1.${index}`, metadata }));
  return { body: { ok: true, messages: [...messages, { ts: "1.9", files: names.map((name) => ({ name })) }] } };
}
const namesAsked = () =>
  slack.calls
    .filter(({ method }) => method === "files.getUploadURLExternal")
    .map(({ body }) => String(body["filename"]));

describe("the files of a post", () => {
  test("pictures are uploaded unseen and shown by one message in its thread, papers are shared there", async () => {
    expect(await port.send(out())).toMatchObject({ kind: "sent" });
    const [first, shown] = posts();
    expect(first?.["thread_ts"]).toBeUndefined();
    expect(shown).toMatchObject({
      thread_ts: "1767229000.000001",
      metadata: { event_type: "oldhand_pictures", event_payload: { id: "p1", files: "a1b2c3d4e5f6" } },
    });
    expect(judgeMessage(shown)).toEqual([]);
    expect(JSON.stringify(shown?.["blocks"])).toMatch(/"slack_file":\{"id":"F\d{9}"\}/);
    expect(namesAsked()).toEqual(["IMG_1 (a1b2c3d4e5f6).jpg", "plan (0f1e2d3c4b5a).pdf"]);
    expect(shares().map(({ body }) => [body["channel_id"], body["thread_ts"]])).toEqual([["C1", "1767229000.000001"]]);
  });

  test("a post that follows another has its files in the same thread", async () => {
    await port.send(out(undefined, { thread: "17.1" }));
    expect(posts().map((body) => body["thread_ts"])).toEqual(["17.1", "17.1"]);
    expect(shares()[0]?.body["thread_ts"]).toBe("17.1");
  });

  test("a picture that Slack has not looked through yet is shown later, uploaded once", async () => {
    slack.script("chat.postMessage", (_, nth) =>
      nth === 1
        ? {
            body: {
              ok: false,
              error: "invalid_blocks",
              response_metadata: { messages: ["[ERROR] invalid slack file [json-pointer:/blocks/0/slack_file]"] },
            },
          }
        : undefined,
    );
    const first = await port.send(out(summary(photo)));
    expect(first).toEqual({ kind: "retryLater", after_ms: 5000, because: "Slack asks to wait", isPartly: true });
    slack.script("conversations.replies", () => ({ body: { ok: true, messages: [] } }));
    const there = { messageId: "1767229000.000001", parts: 1 };
    expect(await port.send(out(summary(photo), { there }))).toMatchObject({ kind: "sent" });
    expect(namesAsked()).toHaveLength(1);
  });

  test("after an end that nobody knows only what is missing is sent", async () => {
    await port.send(out());
    slack.script("conversations.history", () => thread());
    slack.script("conversations.replies", () => thread());
    const found = await port.find?.(out());
    expect(found).toEqual({ kind: "partly", messageId: "1.0", parts: 1 });
    await port.send(out(undefined, { there: { messageId: "1.0", parts: 1 } }));
    expect([posts().length, namesAsked().slice(2)]).toEqual([2, ["plan (0f1e2d3c4b5a).pdf"]]);
    slack.script("conversations.replies", () => thread("plan (0f1e2d3c4b5a).pdf"));
    expect(await port.find?.(out())).toEqual({ kind: "found", messageId: "1.0" });
  });

  test("a message that takes the place of another brings only files that are new", async () => {
    await port.send(out(summary(photo)));
    slack.script("conversations.replies", () => thread());
    await port.send(out(undefined, { id: "p2", updatesMessage: "1767229000.000001" }));
    expect(posts()).toHaveLength(2);
    expect(namesAsked()).toEqual(["IMG_1 (a1b2c3d4e5f6).jpg", "plan (0f1e2d3c4b5a).pdf"]);
  });

  test("where nobody can look, files that may be there are not sent again", async () => {
    slack.script("conversations.replies", () => ({ body: { ok: false, error: "missing_scope" } }));
    await port.send(out(undefined, { updatesMessage: "17.2" }));
    expect(slack.calls.map(({ method }) => method)).toEqual(["chat.update", "conversations.replies"]);
  });

  test("a file that Slack refuses takes nothing from the message, and is told", async () => {
    slack.script("files.getUploadURLExternal", () => ({ body: { ok: false, error: "missing_scope" } }));
    expect(await port.send(out())).toEqual({ kind: "sent", messageId: "1767229000.000001" });
    expect(refused).toMatchObject([{ reason: "missing_scope" }]);
  });

  test("a file of another workspace is not there", async () => {
    await port.send(out(undefined, { workspace: "elsewhere" }));
    expect(slack.calls.map(({ method }) => method)).toEqual(["chat.postMessage"]);
  });
});
