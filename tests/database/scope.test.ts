import { readdirSync, readFileSync } from "node:fs";
import { mkdtemp, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import Database from "better-sqlite3";
import type { Compilable } from "kysely";
import ts from "typescript";
import { expect, test } from "vitest";
import { openDatabase } from "../../adapters/database/open-database.ts";
import { scopeTo } from "../../adapters/database/scope.ts";

const ROOM = new URL("../../adapters/database/", import.meta.url).pathname;
const SCOPED = [
  "person",
  "person_door",
  "conversation",
  "delivery",
  "link_code",
  "exchange",
  "caution_mark",
  "job",
  "job_event",
  "job_counter",
  "crew_event",
  "post",
  "channel_card",
  "teams_conversation",
];
/** The one place, the list of column types, and the history of the schema. */
const MAY_NAME_TABLES = /^(scope\.ts|tables\.ts|migrations\/.*)$/;
/** Whatever begins a query or joins a table to one. */
const QUERY_METHOD =
  /^(selectFrom|insertInto|replaceInto|updateTable|deleteFrom|mergeInto|from|using|(inner|left|right|full|cross)?join\w*)$/i;

/** Queries in this text that name a table which belongs to a workspace, and any query written as raw SQL. */
function findUnscoped(text: string): readonly string[] {
  const tree = ts.createSourceFile("a.ts", text, ts.ScriptTarget.ES2023, true);
  const found: string[] = [];
  const look = (node: ts.Node): void => {
    if (ts.isCallExpression(node) && ts.isPropertyAccessExpression(node.expression)) {
      const method = node.expression.name.text;
      const [table] = node.arguments;
      const named = table && ts.isStringLiteralLike(table) ? (table.text.split(/\s/)[0] ?? "") : undefined;
      const isQuery = QUERY_METHOD.test(method) && !/^(Array|Buffer)$/.test(node.expression.expression.getText());
      if (isQuery && (named === undefined || SCOPED.includes(named))) found.push(node.getText());
      if (method === "raw") found.push(node.getText());
    }
    if (ts.isTaggedTemplateExpression(node) && node.tag.getText().startsWith("sql")) found.push(node.getText());
    ts.forEachChild(node, look);
  };
  look(tree);
  return found;
}

test("no query outside scope.ts names a table that belongs to a workspace", () => {
  const files = readdirSync(ROOM, { recursive: true, encoding: "utf8" }).filter((name) => name.endsWith(".ts"));
  const others = files.filter((name) => !MAY_NAME_TABLES.test(name));
  expect(others.length).toBeGreaterThan(5);
  const found = others.flatMap((name) =>
    findUnscoped(readFileSync(join(ROOM, name), "utf8")).map((query) => `${name}: ${query}`),
  );
  expect(found).toEqual(['sqlite-dialect.ts: CompiledQuery.raw("begin immediate")']);
});

test.each([
  `db.selectFrom("person").selectAll()`,
  `db.selectFrom("workspace").innerJoin("person", "a", "b")`,
  `db.updateTable("delivery as d").set({})`,
  `db.selectFrom(anyTable)`,
  `db.deleteFrom(["exchange"])`,
  "sql`delete from person`.execute(db)",
  `db.executeQuery(CompiledQuery.raw("delete from person"))`,
])("the reader of sources finds %s", (query) => {
  expect(findUnscoped(query)).not.toEqual([]);
});

/** Arguments for the queries that take a row or a change. */
const ROW = { id: "x", person: "x", workspace: "somebody else's" };

test("every query of a scope is bound to its workspace, whatever it is given", async () => {
  const folder = await mkdtemp(join(tmpdir(), "oldhand-scope-"));
  const db = await openDatabase(join(folder, "a.sqlite"));
  const { workspace, forget, ...queries } = scopeTo(db, "mine");
  expect(workspace).toBe("mine");
  const named = Object.entries(queries) as readonly (readonly [string, (row: unknown) => Compilable])[];
  expect(named.length).toBeGreaterThan(10);
  for (const [name, query] of named) {
    const { sql, parameters } = query(ROW).compile();
    const isBound = sql.startsWith("insert")
      ? parameters[columnsOf(sql).indexOf('"workspace"')] === "mine"
      : /where (".*"\.)?"workspace" = \?/.test(sql) && parameters.at(-1) === "mine";
    expect({ name, sql, isBound }).toEqual({ name, sql, isBound: true });
    expect(parameters).not.toContain(ROW.workspace);
  }
  expect(forget).toBeTypeOf("function");
  await db.destroy();
  await rm(folder, { recursive: true });
});

function columnsOf(insert: string): readonly string[] {
  return /\(([^)]*)\)/.exec(insert)?.[1]?.split(", ") ?? [];
}

test("the tables that belong to a workspace are those with a column for it, the list of doors apart", async () => {
  const folder = await mkdtemp(join(tmpdir(), "oldhand-scope-"));
  const path = join(folder, "a.sqlite");
  await (await openDatabase(path)).destroy();
  const file = new Database(path);
  const rows = file
    .prepare("select m.name from sqlite_master m join pragma_table_info(m.name) c where c.name = 'workspace'")
    .pluck()
    .all();
  file.close();
  await rm(folder, { recursive: true });
  expect(new Set(rows)).toEqual(new Set([...SCOPED, "workspace_door"]));
});
