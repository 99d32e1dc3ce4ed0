import { readFileSync, writeFileSync } from "node:fs";
import { mkdtemp, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import Database from "better-sqlite3";
import { expect, test } from "vitest";
import { openStore } from "../../adapters/database/open-store.ts";
import { fillAdminPage } from "../../adapters/slack/admin-page.ts";
import { SLACK_NAMES } from "../../src/boundary/settings-slack.ts";
import type { Caller } from "../../src/ports/store.ts";
import { BOOKS } from "../support/sample-books.ts";
import { exchangeOf } from "../support/store-samples.ts";

const FILE = new URL("../../adapters/slack/ADMIN.md", import.meta.url).pathname;
const page = readFileSync(FILE, "utf8");

test("the tables of the admin page are what the code asks for (UPDATE_GOLDEN=1 writes them anew)", () => {
  const filled = fillAdminPage(page);
  if (process.env["UPDATE_GOLDEN"] !== undefined) writeFileSync(FILE, filled);
  else expect(page).toBe(filled);
  expect(filled).toContain("| `channels:history` |");
  expect(filled).toContain("| `app_uninstalled` | no scope |");
});

test("every setting that the admin page names exists", () => {
  const named = new Set(page.match(/\b(SLACK|OLDHAND)_[A-Z_]+\b/g));
  expect([...named].filter((name) => ![...SLACK_NAMES, "OLDHAND_DATA"].includes(name))).toEqual([]);
  expect(named.size).toBeGreaterThan(5);
});

const ONE: Caller = { door: "slack", organisation: "T0123ABCD", user: "U1", name: "Ann" };
const TWO: Caller = { ...ONE, organisation: "T2" };

/** Rows of each table that belong to this workspace. */
function rowsOf(file: Database.Database, workspace: string): Readonly<Record<string, number>> {
  const tables = file
    .prepare("select m.name from sqlite_master m join pragma_table_info(m.name) c where c.name = 'workspace'")
    .pluck()
    .all() as string[];
  const count = (table: string) =>
    file.prepare(`select count(*) from "${table}" where workspace = ?`).pluck().get(workspace) as number;
  return Object.fromEntries(tables.map((table) => [table, count(table)]));
}

test("what the admin page says to type removes all of one workspace and nothing of another", async () => {
  const folder = await mkdtemp(join(tmpdir(), "oldhand-admin-"));
  const path = join(folder, "oldhand.sqlite");
  const store = await openStore({ path, books: BOOKS, ownOrganisations: [], secretKeys: [new Uint8Array(32)] });
  const workspaces: string[] = [];
  for (const caller of [ONE, TWO]) {
    const given = { name: "Crew", botUser: "UBOT", scopes: [], installedBy: "U1", installed_ms: 0 };
    await store.installations.save({ ...given, team: caller.organisation, access: { token: "xoxb-1" } });
    const workspace = await store.openWorkspace(caller);
    await workspace.commit(exchangeOf(await workspace.findPerson(caller)));
    workspaces.push(workspace.workspace);
  }
  await store.close();
  const [one = "", two = ""] = workspaces;
  const file = new Database(path);
  const before = rowsOf(file, two);
  expect(rowsOf(file, one)).toEqual(before);
  expect(before).toMatchObject({ person: 1, exchange: 1, delivery: 1, workspace_door: 1 });

  const [, typed = ""] = /```sql\n([\s\S]*?)```/.exec(page) ?? [];
  // What `.dbconfig enable_trigger off` does in the shell: the triggers that keep the log whole do not run.
  const triggers = file.prepare("select name from sqlite_master where type = 'trigger'").pluck().all() as string[];
  for (const trigger of triggers) file.exec(`drop trigger "${trigger}"`);
  file.exec(typed.replace(/^\..*$/m, ""));

  expect(Object.values(rowsOf(file, one)).filter((count) => count > 0)).toEqual([]);
  const tables = file.prepare("select name from sqlite_master where type = 'table'").pluck().all() as string[];
  const unnamed = Object.keys(before).filter((table) => !typed.includes(`delete from ${table} `));
  expect([unnamed, tables.includes("slack_installation")]).toEqual([[], true]);
  expect(rowsOf(file, two)).toEqual(before);
  expect(file.prepare("select team from slack_installation").pluck().all()).toEqual(["T2"]);
  expect(file.prepare("select count(*) from workspace where id = ?").pluck().get(one)).toBe(0);
  file.close();
  await rm(folder, { recursive: true });
});
