import { describe, expect, test } from "vitest";
import type { KeptPost, Post } from "../../src/ports/outbox.ts";
import type { Caller, Person, Store, WorkspaceStore } from "../../src/ports/store.ts";
import { SAMPLE_CARDS } from "../support/sample-cards.ts";
import { ANN, BEN, card, exchangeOf, SAMPLE_PAPER, STRANGER } from "../support/store-samples.ts";

type Meet = (caller: Caller) => Promise<{ readonly workspace: WorkspaceStore; readonly person: Person }>;

const post = (id: string, channel = "C1", more: Partial<Post> = {}): Post => ({
  id,
  channel: { door: "slack", id: channel },
  card: card(id),
  language: "es",
  ...more,
});

/** What every store must do with posts. */
export function describeOutboxContract(meet: Meet, store: () => Store): void {
  const write = async (...posts: readonly Post[]) => {
    const met = await meet(ANN);
    await met.workspace.commit(exchangeOf(met.person, { at_ms: 100, posts }));
    return met;
  };
  const due = async (now_ms: number) => await store().outbox.due(now_ms);
  const first = async (now_ms: number): Promise<KeptPost> => {
    const [kept] = await due(now_ms);
    if (kept === undefined) throw new Error("nothing is due");
    return kept;
  };
  const ids = (kept: readonly KeptPost[]) => kept.map((one) => one.post.id);

  describe("outbox", () => {
    test("a post comes back as it was written, and waits", async () => {
      const whole = post("p1", "C1", {
        thread: "t",
        notBefore_ms: 150,
        card: SAMPLE_CARDS["answer"] ?? card(""),
        paper: SAMPLE_PAPER,
      });
      const { workspace } = await write(whole);
      expect(await due(149)).toEqual([]);
      expect(await due(150)).toEqual([
        { workspace: workspace.workspace, post: whole, state: "waiting", tries: 0, due_ms: 150, written_ms: 100 },
      ]);
    });

    test("a post without an exchange is written once, whoever writes it, and never over what stands there", async () => {
      const { workspace } = await write(post("p1"));
      const other = (await meet(BEN)).workspace;
      const both = await Promise.all(
        [workspace, other].map((one) => one.writePosts([post("p1"), post("q", "C2")], 200)),
      );
      expect(both.flat()).toEqual(["q"]);
      expect(await workspace.writePosts([post("q", "C2", { card: card("another") })], 300)).toEqual([]);
      expect(await due(1000)).toMatchObject([
        { post: { id: "p1" }, written_ms: 100 },
        { post: { id: "q", card: card("q") }, written_ms: 200, due_ms: 200 },
      ]);
    });

    test("it is known for ever that a post was written, whatever became of it, and to its own workspace alone", async () => {
      const { workspace } = await write(post("p1"), post("q1", "C2"));
      const stranger = (await meet(STRANGER)).workspace;
      for (const kept of await due(100)) {
        expect(await workspace.hasPost(kept.post.id)).toBe(true);
        await store().outbox.claim(kept, 200);
        expect(await workspace.hasPost(kept.post.id)).toBe(true);
        const isLost = kept.post.id === "q1";
        const result = isLost
          ? ({ state: "given_up", because: "gone" } as const)
          : ({ state: "sent", messageId: "m" } as const);
        await store().outbox.settle(kept, result);
      }
      await workspace.writePosts([post("w1")], 300);
      const ids = ["p1", "q1", "w1", "p", "P1", ""];
      expect(await Promise.all(ids.map((id) => workspace.hasPost(id)))).toEqual([
        true,
        true,
        true,
        false,
        false,
        false,
      ]);
      expect(await Promise.all(ids.map((id) => stranger.hasPost(id)))).toEqual(ids.map(() => false));
    });

    test("the same id in another workspace is another post", async () => {
      const { workspace } = await write();
      const stranger = (await meet(STRANGER)).workspace;
      expect(await workspace.writePosts([post("p1")], 100)).toEqual(["p1"]);
      expect(await stranger.writePosts([post("p1")], 100)).toEqual(["p1"]);
      expect((await due(100)).map((kept) => kept.workspace).sort()).toEqual(
        [workspace.workspace, stranger.workspace].sort(),
      );
    });

    test("a refused exchange posts nothing", async () => {
      const { workspace, person } = await write(post("p1"));
      const bad = exchangeOf(person, {
        posts: [post("p2", "C2")],
        jobs: [{ job: "none", change: { kind: "note", text: "x" } }],
      });
      await expect(workspace.commit(bad)).rejects.toThrow();
      expect(ids(await due(1000))).toEqual(["p1"]);
    });

    test("a claimed post is nobody else's until its time is over, and is then there as one that was tried", async () => {
      await write(post("p1"), post("p2"));
      const kept = await first(100);
      expect(await Promise.all([1, 2, 3].map(() => store().outbox.claim(kept, 500)))).toEqual([true, false, false]);
      expect(await due(499)).toEqual([]);
      expect(await due(500)).toMatchObject([{ post: { id: "p1" }, state: "trying", tries: 1 }]);
    });

    test("a post that is tried again holds its channel up, one that is sent or given up does not", async () => {
      const { workspace } = await write(post("p1"), post("p2"), post("q1", "C2"), post("p3"));
      for (const kept of await due(100)) {
        await store().outbox.claim(kept, 200);
        await store().outbox.settle(kept, { state: "waiting", due_ms: 900, because: "busy" });
      }
      expect(await due(899)).toEqual([]);
      const [p1, q1] = await due(900);
      if (p1 === undefined || q1 === undefined) throw new Error("two channels are due");
      for (const kept of [p1, q1]) await store().outbox.claim(kept, 1000);
      await store().outbox.settle(p1, { state: "sent", messageId: "m1" });
      await store().outbox.settle(q1, { state: "given_up", because: "gone" });
      expect(ids(await due(900))).toEqual(["p2"]);
      expect(await workspace.lostPosts()).toMatchObject([{ post: { id: "q1" }, because: "gone", state: "given_up" }]);
      expect(await (await meet(STRANGER)).workspace.lostPosts()).toEqual([]);
    });

    test("who took too long only counts when the post arrived", async () => {
      await write(post("p1"));
      const kept = await first(100);
      await store().outbox.claim(kept, 200);
      const again = await first(200);
      await store().outbox.claim(again, 300);
      await store().outbox.settle(kept, { state: "given_up", because: "late" });
      expect(await due(300)).toMatchObject([{ state: "trying", tries: 2 }]);
      await store().outbox.settle(kept, { state: "sent", messageId: "m1" });
      await store().outbox.settle(again, { state: "unsure", due_ms: 400, because: "late" });
      expect(await due(10_000)).toEqual([]);
    });

    test("a post that takes the place of another knows the message of that one", async () => {
      await write(post("p1"), post("p2", "C1", { updates: "p1" }));
      const kept = await first(100);
      await store().outbox.claim(kept, 200);
      await store().outbox.settle(kept, { state: "sent", messageId: "m1" });
      expect((await first(100)).updatesMessage).toBe("m1");
    });

    test("posts of two workspaces may have the same id and channel", async () => {
      await write(post("p1"));
      const { workspace, person } = await meet(STRANGER);
      await workspace.commit(exchangeOf(person, { at_ms: 100, posts: [post("p1")] }));
      const both = await due(100);
      expect(new Set(both.map((kept) => kept.workspace)).size).toBe(2);
      const mine = both.find((kept) => kept.workspace === workspace.workspace);
      if (mine === undefined) throw new Error("the post is not there");
      await store().outbox.claim(mine, 500);
      expect(await due(100)).toHaveLength(1);
    });

    test("a channel of our own holds a post once, takes updates in place, and is closed to others", async () => {
      const { workspace } = await meet(ANN);
      const out = { workspace: workspace.workspace, channel: { door: "web", id: "crew" }, written_ms: 5 } as const;
      const send = (id: string, title: string, more = {}) =>
        store().houseChat.send({ ...out, id, card: card(title), ...more });
      await send("a", "one");
      await send("a", "one");
      await send("b", "two");
      await send("c", "one, put right", { updatesMessage: "a" });
      const cards = await workspace.channelCards("crew", 9);
      expect(cards.map((one) => one.card.title)).toEqual(["one, put right", "two"]);
      expect((await workspace.channelCards("crew", 1)).map(({ id }) => id)).toEqual(["b"]);
      expect(await store().houseChat.find?.({ ...out, id: "b", card: card("") })).toEqual({
        kind: "found",
        messageId: "b",
      });
      expect(await store().houseChat.find?.({ ...out, id: "z", card: card("") })).toEqual({ kind: "absent" });
      expect(await (await meet(STRANGER)).workspace.channelCards("crew", 9)).toEqual([]);
    });
  });
}
