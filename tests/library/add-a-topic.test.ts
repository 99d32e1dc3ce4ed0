import { execFile } from "node:child_process";
import { rm } from "node:fs/promises";
import { join } from "node:path";
import { promisify } from "node:util";
import { afterAll, beforeAll, expect, test } from "vitest";
import { loadLibrary } from "../../adapters/library/load-library.ts";
import { createInlineRunner } from "../../adapters/workers/inline-runner.ts";
import { createDesk, type Desk, type Inbound } from "../../src/desk.ts";
import type { Library } from "../../src/library.ts";
import type { Card } from "../../src/messages/card.ts";
import { addFixtureTopic, copySources } from "../support/library-tree.ts";
import { createMemoryStore } from "../support/memory-store.ts";
import { BOOKS } from "../support/sample-books.ts";

/*
 * The recipe "add a topic": three new files in a copy of the sources and not one changed line. The engine that then
 * answers is the one in this repository; only the library comes from the copy.
 */
let copy = "";
let library: Library;
let desk: Desk;
let added: readonly string[] = [];
let deliveries = 0;
beforeAll(async () => {
  copy = await copySources(["src"]);
  added = await addFixtureTopic(copy);
  library = await loadLibrary(join(copy, "src"));
  const runner = createInlineRunner(library, BOOKS);
  const newId = () => {
    deliveries += 1;
    return `id-${String(deliveries).padStart(8, "0")}`;
  };
  const faults = {
    report: ({ error }: { readonly error: unknown }) => {
      throw error;
    },
  };
  const clock = { now_ms: () => 1_700_000_000_000 };
  desk = createDesk({
    library,
    books: BOOKS,
    store: createMemoryStore(),
    runner,
    clock,
    newId,
    newCode: newId,
    faults,
  });
});
afterAll(() => rm(copy, { recursive: true }));

async function say(text: string, more: Partial<Inbound> = {}): Promise<Card> {
  deliveries += 1;
  const caller = { door: "terminal", organisation: "local", user: "teo", name: "Teo" } as const;
  const inbound = { caller, conversation: "c", delivery: `d${deliveries}`, text, ...more };
  return (await desk.receive(inbound, () => undefined, new AbortController().signal)).card;
}

test("adding a topic is adding three files", () => {
  expect(added).toEqual([
    "src/messages/en/topics/bucket.ts",
    "src/messages/es/topics/bucket.ts",
    "src/topics/bucket.ts",
  ]);
});

test("the topic is in the library with its sentences in both languages", () => {
  expect(library.topics.get("bucket")?.results).toEqual(["fill_time"]);
  expect(library.texts.en.topics.get("bucket")?.title).toBe("Bucket");
  expect(library.texts.es.topics.get("bucket")?.title).toBe("Cubeta");
});

test("a request is answered: 5 gal at 2 gpm is full after 150 s", async () => {
  const card = await say("bucket size 5 gal flow 2 gpm");
  expect(card.blocks[0]).toEqual({ kind: "headline", text: "The bucket is full after 2 min 30 s." });
});

test("what is missing is asked for, and the answer to that finishes the walk", async () => {
  const asked = await say("bucket size 10 gal");
  expect(JSON.stringify(asked)).toContain("How fast does it run?");
  expect(JSON.stringify(await say("2 gpm"))).toContain("The bucket is full after 5 min.");
});

test("help lists it and explains it", async () => {
  expect(JSON.stringify(await say("help"))).toContain("bucket");
  expect(JSON.stringify(await say("help bucket"))).toContain("how long a bucket takes to fill");
});

test("its form has a field for each fact, and a sent form is answered", async () => {
  const form = (await say("form bucket")).blocks.find((block) => block.kind === "form");
  expect(form?.kind === "form" && form.fields.map(({ fact }) => fact)).toEqual(["size", "flow", "colour"]);
  const sent = { topic: "bucket", fields: { size: "20 L", flow: "10 L/min", colour: "grey" } };
  expect(JSON.stringify(await say("", { form: sent }))).toContain("The bucket is full after 2 min.");
});

test("it speaks Spanish", async () => {
  expect(JSON.stringify(await say("idioma es"))).toBeTruthy();
  expect(JSON.stringify(await say("cubeta tamaño 5 gal caudal 2 gpm"))).toContain("La cubeta se llena en 2 min 30 s.");
});

test("the command line answers it as JSON", { timeout: 60_000 }, async () => {
  const whole = await copySources(["src", "adapters", "seeds"]);
  await addFixtureTopic(whole);
  const words = ["--import", "tsx", "adapters/main.ts", "ask", "bucket size 5 gal flow 2 gpm", "--json"];
  const { stdout } = await promisify(execFile)(process.execPath, words, { cwd: whole });
  await rm(whole, { recursive: true });
  expect(JSON.parse(stdout)).toMatchObject({
    topic: "bucket",
    kind: "answer",
    quantities: { fill_time: { value: expect.closeTo(150, 6), unit: "s" } },
  });
});
