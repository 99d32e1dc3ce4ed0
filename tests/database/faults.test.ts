import { mkdir, mkdtemp, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import Database from "better-sqlite3";
import { afterEach, beforeEach, expect, test } from "vitest";
import { openDatabase, openOn } from "../../adapters/database/open-database.ts";
import { createStore, openStore } from "../../adapters/database/open-store.ts";
import type { Exchange, Store } from "../../src/ports/store.ts";
import { crashBefore } from "../support/crashing-database.ts";
import { BOOKS } from "../support/sample-books.ts";
import { ANN, card, exchangeOf, stateWith } from "../support/store-samples.ts";

let folder = "";
let path = "";
beforeEach(async () => {
  folder = await mkdtemp(join(tmpdir(), "oldhand-faults-"));
  path = join(folder, "oldhand.sqlite");
});
afterEach(() => rm(folder, { recursive: true }));

const settings = { books: BOOKS, ownOrganisations: [] };
const open = () => openStore({ path, ...settings });

async function annIn(store: Store) {
  const workspace = await store.openWorkspace(ANN);
  return { workspace, person: await workspace.findPerson(ANN) };
}

/** Everything in the database, table by table. */
function dump(file: string): unknown {
  const db = new Database(file, { readonly: true });
  const tables = db.prepare("select name from sqlite_master where type = 'table' order by name").pluck().all();
  const rows = tables.map((table) => [table, db.prepare(`select * from "${String(table)}"`).all()]);
  db.close();
  return rows;
}

test("a process that dies before any statement of a commit leaves all of the exchange or nothing", async () => {
  const store = await open();
  const { workspace, person } = await annIn(store);
  await workspace.commit(exchangeOf(person, { delivery: "first", state: stateWith("w1"), at_ms: 0 }));
  await store.close();
  const before = dump(path);
  const carriedFrom = { conversation: "c1", state: stateWith() };
  const spanish = { ...person, language: "es" as const };
  const exchange = exchangeOf(spanish, { delivery: "second", conversation: "c2", state: stateWith("w1"), carriedFrom });

  const counting = await commitUntil(Number.POSITIVE_INFINITY, exchange, join(folder, "unused"));
  const after = dump(counting.path);
  expect(after).not.toEqual(before);
  expect(counting.statements).toBeGreaterThan(6);
  for (let at = 0; at < counting.statements; at += 1) {
    const image = join(folder, `image-${at}`);
    await commitUntil(at, exchange, image);
    await (await openDatabase(image)).destroy();
    expect({ at, rows: dump(image) }).toEqual({ at, rows: before });
  }
});

/** Commits on a copy of the database that dies before a statement of the commit, counted from its first. */
async function commitUntil(at: number, exchange: Exchange, image: string) {
  const copy = join(folder, `copy-${at}`);
  const original = new Database(path);
  await original.backup(copy);
  original.close();
  const quiet = crashBefore(Number.POSITIVE_INFINITY, copy, "");
  const toOpen = await createStore(await openOn(quiet), settings);
  await toOpen.openWorkspace(ANN);
  await toOpen.close();
  const connection = crashBefore(quiet.begun() + at, copy, image);
  const store = await createStore(await openOn(connection), settings);
  const workspace = await store.openWorkspace(ANN);
  const committed = workspace.commit(exchange);
  if (Number.isFinite(at)) await expect(committed).rejects.toThrow();
  else await committed;
  const statements = connection.begun() - quiet.begun();
  await store.close();
  return { path: copy, statements };
}

test.each([
  { name: "a number that JSON cannot hold", change: { state: { ...stateWith(), walksStarted: Number.NaN } } },
  { name: "a person of nobody's", change: { person: { ...BOOKS.people[0], id: "nobody" } } },
])("$name is refused and leaves nothing behind", async ({ change }) => {
  const store = await open();
  const { workspace, person } = await annIn(store);
  const exchange = { ...exchangeOf(person, { delivery: "bad" }), ...change } as Exchange;
  await expect(workspace.commit(exchange)).rejects.toThrow();
  expect(await workspace.findDelivery("bad")).toBeUndefined();
  await workspace.commit(exchangeOf(person, { delivery: "good" }));
  expect(await workspace.findDelivery("good")).toEqual(card("good"));
  await store.close();
});

test.each([
  {
    table: "conversation",
    change: `state = '{"past":[]}'`,
    reason: /conversation c1 cannot be read back: walksStarted/,
  },
  { table: "conversation", change: `state = '{'`, reason: /conversation c1 cannot be read back: is no JSON/ },
  { table: "delivery", change: `card = '{"title":1}'`, reason: /the card of delivery d cannot be read back: title/ },
])("a stored $table that somebody has changed to $change is told, not guessed", async ({ table, change, reason }) => {
  const store = await open();
  const { workspace, person } = await annIn(store);
  await workspace.commit(exchangeOf(person, { delivery: "d" }));
  const file = new Database(path);
  file.prepare(`update ${table} set ${change}`).run();
  file.close();
  const read = table === "delivery" ? workspace.findDelivery("d") : workspace.loadConversation(person.id, "c1");
  await expect(read).rejects.toThrow(reason);
  await store.close();
});

test("a file that is no database is told in one line and left as it is", async () => {
  await writeFile(path, "These are notes of mine, and they are a good deal longer than a header. ".repeat(20));
  await expect(open()).rejects.toThrow(`${path}: is not a database of Oldhand. Move the file away`);
});

test("a folder that is a file is told in one line", async () => {
  await writeFile(join(folder, "data"), "");
  const settled = openStore({ path: join(folder, "data", "oldhand.sqlite"), ...settings });
  await expect(settled).rejects.toThrow("cannot be made: a file stands where its folder belongs");
});

test("a database in the place of a folder is told in one line", async () => {
  await mkdir(path);
  await expect(open()).rejects.toThrow(`${path}: cannot be written. Give this user the right to, or set OLDHAND_DATA.`);
});

test("a database that a newer Oldhand wrote is refused and left as it is", async () => {
  await (await open()).close();
  const file = new Database(path);
  file.prepare("insert into kysely_migration values ('9999-later', '2999-01-01T00:00:00.000Z')").run();
  file.close();
  const before = dump(path);
  await expect(open()).rejects.toThrow(
    "was written by a newer Oldhand. Start that one, or set OLDHAND_DATA elsewhere.",
  );
  expect(dump(path)).toEqual(before);
});
