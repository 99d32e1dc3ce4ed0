import { expect, test } from "vitest";
import { runTopic } from "../../src/declaration/run-topic.ts";
import { createDesk } from "../../src/desk.ts";
import type { Caller } from "../../src/ports/store.ts";
import { fixtureBooks } from "../support/fixture-books.ts";
import { fixtureLibrary } from "../support/fixture-library.ts";
import { createMemoryStore } from "../support/memory-store.ts";
import { textsOf } from "../support/talk.ts";

const ANA: Caller = { door: "slack", organisation: "acme", user: "U1", name: "Ana" };
const BEN: Caller = { ...ANA, user: "U2", name: "Ben" };
const FULL = "barrel 55 gal drum, hose 5 gpm";

function openBench() {
  const store = createMemoryStore();
  let ids = 0;
  const desk = createDesk({
    library: fixtureLibrary,
    books: fixtureBooks,
    store,
    runner: {
      run: async (id, facts, report) => {
        const topic = fixtureLibrary.topics.get(id);
        if (topic === undefined) throw new Error(`no topic ${id}`);
        return runTopic(topic, facts, fixtureBooks, fixtureLibrary.cautions, report);
      },
    },
    // November 25, 2026, 14:02 in the time zone of the fixture's company.
    clock: { now_ms: () => Date.UTC(2026, 10, 25, 20, 2) },
    newId: () => `0000-${String(++ids).padStart(8, "0")}`,
    newCode: () => "111111",
    faults: { report: () => undefined },
  });
  const say = async (text: string, caller = ANA, conversation = "c1") => {
    const inbound = { caller, conversation, delivery: `d${++ids}`, text };
    return (await desk.receive(inbound, () => {}, new AbortController().signal)).card;
  };
  return { store, say };
}

test("what is seen is committed with its exchange, and everybody in that conversation reads who saw it when", async () => {
  const { store, say } = openBench();
  await say(FULL);
  await say("seen wet_floor");
  expect(store.commits.at(-1)).toMatchObject({ marks: [{ caution: "wet_floor", act: "seen", about: "{}" }] });
  const line = "Seen by Ana, 25 Nov 14:02. Note: The floor gets wet.";
  expect(textsOf(await say("again"))).toContain(line);
  expect(textsOf(await say(FULL, BEN))).toContain(line);
});

test("another conversation shows the caution in full", async () => {
  const { say } = openBench();
  await say(FULL);
  await say("seen wet_floor");
  const { blocks } = await say(FULL, ANA, "c2");
  expect(blocks).toContainEqual(expect.objectContaining({ kind: "caution", text: "The floor gets wet." }));
});

test("a commit that fails records nothing as seen", async () => {
  const { store, say } = openBench();
  await say(FULL);
  store.faults.failCommit = new Error("the disk is full");
  await say("seen wet_floor").catch(() => undefined);
  const workspace = await store.openWorkspace(ANA);
  expect(await workspace.cautionMarks(JSON.stringify(["slack", "c1"]))).toEqual([]);
});
