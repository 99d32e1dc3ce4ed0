import { type ChildProcess, spawn } from "node:child_process";
import { once } from "node:events";
import { mkdtemp, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import Database from "better-sqlite3";
import { afterAll, beforeAll, expect, test } from "vitest";
import { connect } from "../../adapters/database/open-database.ts";
import { openStore } from "../../adapters/database/open-store.ts";
import { BOOKS } from "../support/sample-books.ts";
import { stateWith } from "../support/store-samples.ts";

const ROOT = new URL("../..", import.meta.url).pathname;
const CHILD = join(ROOT, "tests/support/store-child.ts");
const KILLS = 8;

let folder = "";
beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), "oldhand-durable-"));
});
afterAll(() => rm(folder, { recursive: true }));

interface Child {
  readonly process: ChildProcess;
  /** Lines printed so far; a line cut off by death does not count. */
  readonly lines: () => readonly string[];
  readonly ended: Promise<unknown>;
}

function startChild(path: string, name: string, count: number): Child {
  const child = spawn(process.execPath, ["--import", "tsx", CHILD, path, name, `${count}`], { cwd: ROOT });
  let printed = "";
  child.stdout.on("data", (bytes) => {
    printed += String(bytes);
  });
  return { process: child, lines: () => printed.split("\n").slice(0, -1), ended: once(child, "close") };
}

/** Resolves when this many lines have come, or the child has ended. */
function untilLines(child: Child, count: number): Promise<unknown> {
  const reached = new Promise<void>((resolve) => {
    child.process.stdout?.on("data", () => child.lines().length >= count && resolve());
  });
  return Promise.race([reached, child.ended]);
}

test(`a process killed ${KILLS} times while it writes loses nothing that it acknowledged`, {
  timeout: 120_000,
}, async () => {
  const path = join(folder, "killed.sqlite");
  const acknowledged: string[] = [];
  for (let kill = 0; kill < KILLS; kill += 1) {
    const child = startChild(path, `run ${kill}`, 1_000_000);
    await untilLines(child, 2 + Math.floor(Math.random() * 150));
    child.process.kill("SIGKILL");
    await child.ended;
    const numbers = child.lines().slice(1);
    expect(numbers.length).toBeGreaterThan(0);
    acknowledged.push(...numbers.map((number) => `run ${kill} ${number}`));
  }
  await expectAllThere(path, acknowledged);
});

test("three processes that start on one new file and write at once lose nothing", { timeout: 60_000 }, async () => {
  const path = join(folder, "shared.sqlite");
  const names = ["a", "b", "c"];
  const children = names.map((name) => startChild(path, name, 40));
  await Promise.all(children.map(({ ended }) => ended));
  expect(children.map((child) => child.lines().length)).toEqual([41, 41, 41]);
  await expectAllThere(
    path,
    names.flatMap((name) => Array.from({ length: 40 }, (_, number) => `${name} ${number}`)),
  );
});

/** Each acknowledged exchange has its card, its state and its line in the log, and the file is sound. */
async function expectAllThere(path: string, acknowledged: readonly string[]): Promise<void> {
  const caller = { door: "terminal", organisation: "local", user: "teo", name: "Teo" } as const;
  const store = await openStore({ path, books: BOOKS, ownOrganisations: [] });
  const workspace = await store.openWorkspace(caller);
  const { id } = await workspace.findPerson(caller);
  for (const name of acknowledged) {
    expect((await workspace.findDelivery(name))?.title).toBe(name);
    expect(await workspace.loadConversation(id, name)).toEqual(stateWith(name.split(" ").at(-1)));
  }
  await store.close();
  const file = new Database(path);
  expect(file.pragma("integrity_check", { simple: true })).toBe("ok");
  expect(file.pragma("foreign_key_check")).toEqual([]);
  const counts = file.prepare(
    "select (select count(*) from exchange) as log, (select count(*) from delivery) as cards, (select count(*) from conversation) as states",
  );
  const { log, cards, states } = counts.get() as { log: number; cards: number; states: number };
  file.close();
  expect(log).toBeGreaterThanOrEqual(acknowledged.length);
  expect({ cards, states }).toEqual({ cards: log, states: log });
}

test("a commit is on the disk before it is acknowledged: write-ahead log, full sync, foreign keys", () => {
  const file = connect(join(folder, "pragmas.sqlite"));
  const told = ["journal_mode", "synchronous", "foreign_keys", "busy_timeout"].map((name) =>
    file.pragma(name, { simple: true }),
  );
  file.close();
  const FULL = 2; // https://www.sqlite.org/pragma.html#pragma_synchronous
  expect(told).toEqual(["wal", FULL, 1, 5000]);
});
