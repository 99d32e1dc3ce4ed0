import { mkdtemp, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, describe, expect, test } from "vitest";
import { openStore } from "../../adapters/database/open-store.ts";
import { createDigestClock } from "../../adapters/workers/digest-clock.ts";
import type { Books } from "../../src/books/books.ts";
import type { Caller, Store } from "../../src/ports/store.ts";
import { library } from "../support/ask-library.ts";
import { createMemoryStore } from "../support/memory-store.ts";
import { BOOKS as SAMPLE } from "../support/sample-books.ts";

const OWN: Caller = { door: "web", organisation: "local", user: "", name: "" };
const DAY_ms = 86_400_000;
const channel = { door: "web", id: "managers" } as const;

const BOOKS: Books = {
  ...SAMPLE,
  company: {
    ...SAMPLE.company,
    timeZone: "America/Chicago",
    digest: { channel, daily_min: 390, weekly: { day: "monday", at_min: 390 } },
  },
};

const folders: string[] = [];
afterEach(async () => {
  for (const folder of folders.splice(0)) await rm(folder, { recursive: true });
});

const stores = {
  "in memory": async () => createMemoryStore(),
  "in a database": async () => {
    const folder = await mkdtemp(join(tmpdir(), "digests-"));
    folders.push(folder);
    return await openStore({ path: join(folder, "db.sqlite"), books: BOOKS, ownOrganisations: [] });
  },
};
function clockOn(store: Store, now: { ms: number }, books: Books = BOOKS) {
  return createDigestClock({
    library,
    books,
    openOwn: () => store.openWorkspace(OWN),
    clock: { now_ms: () => now.ms },
    report: (error) => {
      throw error;
    },
  });
}
async function postedIn(store: Store, now_ms: number) {
  const ids: string[] = [];
  for (let left = 20; left > 0; left--) {
    const [kept] = await store.outbox.due(now_ms);
    if (kept === undefined) return ids;
    await store.outbox.claim(kept, now_ms + 1);
    await store.outbox.settle(kept, { state: "sent", messageId: kept.post.id });
    ids.push(kept.post.id);
  }
  return ids;
}

describe.each(Object.entries(stores))("digests at their hour, kept %s", (_, open) => {
  // Monday, 06:30 in Chicago.
  const MONDAY = Date.parse("2026-11-30T12:30:00Z");

  test("are written once, however often it is looked, and by however many processes, restarted or not", async () => {
    const store = await open();
    const now = { ms: MONDAY };
    const clocks = [clockOn(store, now), clockOn(store, now), clockOn(store, now)];
    const first = await Promise.all(clocks.map((clock) => clock.runOnce()));
    const workspace = (await store.openWorkspace(OWN)).workspace;
    const ids = [`${workspace}-digest-day-2026-11-29`, `${workspace}-digest-week-2026-11-23`];
    expect(first.flat().sort()).toEqual(ids);
    now.ms += 60_000;
    expect(await clocks[0]?.runOnce()).toEqual([]);
    expect(await clockOn(store, now).runOnce()).toEqual([]);
    expect((await postedIn(store, now.ms)).sort()).toEqual(ids);
    await store.close();
  });

  test("a machine that was off for ten days posts the last day and the last week, and says for when", async () => {
    const store = await open();
    const now = { ms: MONDAY };
    await clockOn(store, now).runOnce();
    await postedIn(store, now.ms);
    now.ms += 10 * DAY_ms;
    await clockOn(store, now).runOnce();
    const due = await store.outbox.due(now.ms);
    expect(due[0]?.post.card.summary).toContain("2026-12-09: ");
    expect((await postedIn(store, now.ms)).map((id) => id.replace(/^.*-digest/, "digest"))).toEqual([
      "digest-day-2026-12-09",
      "digest-week-2026-11-30",
    ]);
    await store.close();
  });

  test("every day of a month with a change of the clocks gets one post", async () => {
    const store = await open();
    const now = { ms: Date.parse("2026-10-20T00:00:00Z") };
    const posted: string[] = [];
    for (let hour = 0; hour < 24 * 20; hour += 3) {
      now.ms += (3 * DAY_ms) / 24;
      // Restarted every three hours.
      posted.push(...(await clockOn(store, now).runOnce()));
    }
    const days = posted.filter((id) => id.includes("-day-")).map((id) => id.slice(-10));
    expect(days).toEqual([...new Set(days)].sort());
    expect(days.length).toBe(21);
    await store.close();
  });
});

test("the post is for its channel alone, and its buttons name the period and lean on no conversation", async () => {
  const store = createMemoryStore();
  const now = { ms: Date.parse("2026-11-30T12:30:00Z") };
  await clockOn(store, now).runOnce();
  const [first] = await store.outbox.due(now.ms);
  expect(first?.post).toMatchObject({ channel, language: BOOKS.company.language });
  const buttons = first?.post.card.blocks.flatMap((block) => (block.kind === "buttons" ? block.buttons : [])) ?? [];
  expect(buttons.length).toBeGreaterThan(0);
  for (const { say, aim } of buttons) {
    expect(aim).toBeUndefined();
    expect(say).toMatch(/day=2026-11-29|from=2026-11-23 to=2026-11-29/);
  }
});

test("a company without a schedule posts nothing, and its workspace is not even opened", async () => {
  const { digest: _, ...company } = BOOKS.company;
  const clock = createDigestClock({
    library,
    books: { ...BOOKS, company },
    openOwn: () => Promise.reject(new Error("opened")),
    clock: { now_ms: () => Date.parse("2026-11-30T12:30:00Z") },
    report: () => undefined,
  });
  expect(await clock.runOnce()).toEqual([]);
});

test("what failed is written at the next look", async () => {
  const store = createMemoryStore();
  const now = { ms: Date.parse("2026-11-30T12:30:00Z") };
  let isBroken = true;
  const clock = createDigestClock({
    library,
    books: BOOKS,
    openOwn: () => (isBroken ? Promise.reject(new Error("busy")) : store.openWorkspace(OWN)),
    clock: { now_ms: () => now.ms },
    report: () => undefined,
  });
  await expect(clock.runOnce()).rejects.toThrow("busy");
  isBroken = false;
  expect((await clock.runOnce()).length).toBe(2);
});
