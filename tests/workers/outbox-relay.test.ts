import { beforeEach, describe, expect, test } from "vitest";
import { createOutboxRelay, type OutboxRelay } from "../../adapters/workers/outbox-relay.ts";
import { type CompletePost, createPostPapers } from "../../adapters/workers/post-papers.ts";
import type { Block } from "../../src/messages/card.ts";
import type { PaperType } from "../../src/ports/files.ts";
import type { Post } from "../../src/ports/outbox.ts";
import type { WorkspaceStore } from "../../src/ports/store.ts";
import { createFakeChat, type FakeChat } from "../support/fake-chat.ts";
import { createMemoryStore, type MemoryStore } from "../support/memory-store.ts";
import { ANN, card, exchangeOf, SAMPLE_PAPER } from "../support/store-samples.ts";

const MINUTE_ms = 60_000;

let now_ms = 0;
let store: MemoryStore;
let workspace: WorkspaceStore;
let slack: FakeChat;
let teams: FakeChat;
let relay: OutboxRelay;
const reported: unknown[] = [];

beforeEach(async () => {
  now_ms = 2_000_000_000_000;
  reported.length = 0;
  store = createMemoryStore();
  workspace = await store.openWorkspace(ANN);
  slack = createFakeChat(true);
  teams = createFakeChat(false);
  relay = openRelay();
});

function openRelay(complete?: CompletePost): OutboxRelay {
  return createOutboxRelay({
    ...(complete && { complete }),
    outbox: store.outbox,
    ports: { slack, teams, web: store.houseChat, terminal: store.houseChat },
    clock: { now_ms: () => now_ms },
    language: "en",
    jitter: () => 0,
    report: (error) => reported.push(error),
  });
}

const post = (id: string, change: Partial<Post> = {}): Post => ({
  id,
  channel: { door: "slack", id: "C1" },
  card: card(id),
  language: "en",
  ...change,
});

async function write(...posts: readonly Post[]): Promise<void> {
  const person = await workspace.findPerson(ANN);
  await workspace.commit(exchangeOf(person, { posts }));
}

/** Lets time pass, a second a turn, until nothing more is sent. */
async function run(for_ms = MINUTE_ms): Promise<void> {
  for (const end_ms = now_ms + for_ms; now_ms < end_ms; now_ms += 1000) await relay.runOnce();
}
const titles = (chat: FakeChat) => chat.messages.map((sent) => sent.card.title);
const notes = (chat: FakeChat) =>
  chat.messages.map(({ card: { blocks } }) => blocks.some((one) => one.kind === "text" && /repeat/.test(one.text)));

describe("what is in the outbox", () => {
  test("is sent once, in the order in which it was written", async () => {
    await write(post("p1"), post("p2"));
    await write(post("p3"));
    await run();
    expect(titles(slack)).toEqual(["p1", "p2", "p3"]);
    expect(reported).toEqual([]);
  });

  test("is sent once a second in a channel, at the same time in others", async () => {
    await write(post("p1"), post("p2"), post("q1", { channel: { door: "slack", id: "C2" } }));
    await relay.runOnce();
    expect(titles(slack)).toEqual(["p1", "q1"]);
    now_ms += 999;
    expect(await relay.runOnce()).toBe(0);
    now_ms += 1;
    expect(await relay.runOnce()).toBe(1);
    expect(titles(slack)).toEqual(["p1", "q1", "p2"]);
  });

  test("waits for its time, and holds nobody else up meanwhile", async () => {
    await write(post("later", { notBefore_ms: now_ms + 30_000 }), post("now"));
    await run(29_000);
    expect(titles(slack)).toEqual(["now"]);
    await run(5_000);
    expect(titles(slack)).toEqual(["now", "later"]);
  });

  test("takes the place of the message of an earlier post", async () => {
    await write(post("first"));
    await run();
    await write(post("second", { updates: "first" }));
    await run();
    expect(slack.messages.map(({ updatesMessage }) => updatesMessage)).toEqual([undefined, "m0"]);
  });

  test("is taken by one relay of two", async () => {
    await write(post("p1"));
    const other = openRelay();
    await Promise.all([relay.runOnce(), other.runOnce()]);
    expect(slack.sends).toHaveLength(1);
  });

  test("stands once in a channel of our own", async () => {
    await write(post("p1", { channel: { door: "terminal", id: "crew" } }));
    await run();
    expect(await workspace.channelCards("crew", 9)).toMatchObject([{ id: "p1", card: { title: "p1" } }]);
  });
});

describe("trouble", () => {
  test("a platform that asks to wait is not asked again sooner, and those behind keep their place", async () => {
    slack.fates.push({ kind: "retryLater", after_ms: 20_000, because: "busy" });
    await write(post("p1"), post("p2"));
    await run(20_000);
    expect(slack.sends).toHaveLength(1);
    await run(5_000);
    expect(titles(slack)).toEqual(["p1", "p2"]);
  });

  test("each wait is twice as long as the one before, with a share of chance on top", async () => {
    slack.fates.push(...Array.from({ length: 4 }, () => ({ kind: "retryLater", after_ms: 0, because: "x" }) as const));
    await write(post("p1"));
    const sentAt: number[] = [];
    const start_ms = now_ms;
    for (; now_ms < start_ms + MINUTE_ms; now_ms += 1000) {
      const before = slack.sends.length;
      await relay.runOnce();
      if (slack.sends.length > before) sentAt.push((now_ms - start_ms) / 1000);
    }
    expect(sentAt).toEqual([0, 2, 6, 14, 30]);
  });

  test.each(["answer_lost", "never_arrives"] as const)(
    "where a platform can be looked through, a post whose answer is lost (%s) stands there once",
    async (fate) => {
      slack.fates.push(fate);
      await write(post("p1"));
      await run();
      expect(titles(slack)).toEqual(["p1"]);
      expect(notes(slack)).toEqual([false]);
      expect(reported).toHaveLength(1);
    },
  );

  test.each([
    { fate: "answer_lost", arrived: 2 },
    { fate: "never_arrives", arrived: 1 },
  ] as const)("elsewhere it is sent again with a note that it may be a repeat ($fate)", async ({ fate, arrived }) => {
    teams.fates.push(fate);
    await write(post("p1", { channel: { door: "teams", id: "T1" } }));
    await run();
    expect(teams.messages).toHaveLength(arrived);
    expect(notes(teams).at(-1)).toBe(true);
  });

  test("what the platform refuses is given up, told to the owner, and lets the next one through", async () => {
    slack.fates.push({ kind: "refused", because: "is_archived" });
    await write(post("p1"), post("p2"));
    await run();
    expect(titles(slack)).toEqual(["p2"]);
    expect(await workspace.lostPosts()).toMatchObject([{ post: { id: "p1" }, because: "is_archived" }]);
    const [told] = await workspace.channelCards("owner", 9);
    expect(told?.card.summary).toBe("“p1” did not reach slack C1: is_archived");
  });

  test("what cannot be sent for hours is given up and told to the owner", async () => {
    slack.fates.push(...Array.from({ length: 40 }, () => "never_arrives" as const));
    await write(post("p1"));
    for (let hour = 0; hour < 12 * 60; hour += 1) {
      await relay.runOnce();
      now_ms += MINUTE_ms;
    }
    expect(slack.sends).toHaveLength(30);
    expect(await workspace.lostPosts()).toMatchObject([{ post: { id: "p1" }, because: "no answer" }]);
    expect(await workspace.channelCards("owner", 9)).toHaveLength(1);
  });

  test("a post whose sender died is not touched while it may still be on its way, and then looked for", async () => {
    await write(post("p1"));
    const [due] = await store.outbox.due(now_ms);
    if (due === undefined) throw new Error("nothing is due");
    await store.outbox.claim(due, now_ms + 60_000);
    await slack.send({ workspace: due.workspace, ...due.post, written_ms: 0 });
    await run(59_000);
    expect(slack.sends).toHaveLength(1);
    await run(5_000);
    expect(titles(slack)).toEqual(["p1"]);
    expect(await store.outbox.due(now_ms + 24 * 60 * MINUTE_ms)).toEqual([]);
  });
});

describe("a post with a paper", () => {
  const blocksOf = (chat: FakeChat): readonly Block[] => chat.messages.flatMap((sent) => sent.card.blocks);
  /** Papers are made as the test says; what is kept is noted. */
  function openPapers(draw: () => Promise<Uint8Array>) {
    const kept: string[] = [];
    const put = async (workspaceOf: string, name: string, type: PaperType, bytes: Uint8Array) => {
      kept.push(`${workspaceOf} ${name} ${type}`);
      return { hash: "c".repeat(64), name, type, size_B: bytes.length };
    };
    const papers = { drawRecord: draw };
    relay = openRelay(createPostPapers({ files: { put, read: async () => undefined }, papers }));
    return kept;
  }

  test("hands it over as a file, kept before it is sent, and others go as they are", async () => {
    const kept = openPapers(async () => Buffer.from("%PDF-"));
    await write(post("p1", { paper: SAMPLE_PAPER }), post("p2"));
    await run();
    expect(kept).toEqual([`${workspace.workspace} job-1001-record.pdf application/pdf`]);
    const file = { hash: "c".repeat(64), name: "job-1001-record.pdf", type: "application/pdf", size_B: 5 };
    expect(slack.messages[0]?.card.blocks.at(-1)).toEqual({ kind: "file", file, text: "Record of job 1001" });
    expect(slack.messages[1]?.card).toEqual(card("p2"));
  });

  test("is made once, however often the platform asks to wait", async () => {
    const kept = openPapers(async () => Buffer.from("%PDF-"));
    slack.fates.push({ kind: "retryLater", after_ms: 5_000, because: "busy" }, "answer_lost");
    await write(post("p1", { paper: SAMPLE_PAPER }));
    await run(10 * MINUTE_ms);
    expect([kept.length, slack.messages.length]).toEqual([1, 1]);
  });

  test("waits for a paper that cannot be made now, and nothing is sent meanwhile", async () => {
    let tries = 0;
    openPapers(async () => {
      tries += 1;
      if (tries === 1) throw new Error("the disk is full");
      return Buffer.from("%PDF-");
    });
    await write(post("p1", { paper: SAMPLE_PAPER }));
    await relay.runOnce();
    expect([slack.sends.length, reported.length]).toEqual([0, 1]);
    await run();
    expect(blocksOf(slack).map(({ kind }) => kind)).toEqual(["headline", "file"]);
  });

  test("goes without a paper that cannot be made at all, and says so", async () => {
    openPapers(async () => {
      throw new Error("no paper left");
    });
    await write(post("p1", { paper: SAMPLE_PAPER, language: "es" }));
    await run();
    expect(reported).toHaveLength(3);
    const text =
      "No pude preparar el papel en este momento. Todo quedó guardado; pida el registro otra vez en un rato.";
    expect(blocksOf(slack).at(-1)).toEqual({ kind: "text", tone: "problem", text });
    expect(slack.messages).toHaveLength(1);
  });
});
