import { mkdtemp, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import Database from "better-sqlite3";
import { afterAll, beforeAll, expect, test } from "vitest";
import { connect, openDatabase, openOn } from "../../adapters/database/open-database.ts";
import { crashBefore } from "../support/crashing-database.ts";

let folder = "";
beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), "oldhand-migrate-"));
});
afterAll(() => rm(folder, { recursive: true }));

interface Shape {
  readonly schema: readonly unknown[];
  readonly migrations: readonly unknown[];
}

function shapeOf(path: string): Shape {
  const file = new Database(path, { readonly: true });
  const schema = file.prepare("select type, name, tbl_name, sql from sqlite_master order by type, name").all();
  const hasMigrations = schema.some((row) => JSON.stringify(row).includes('"kysely_migration"'));
  const migrations = hasMigrations ? file.prepare("select name from kysely_migration order by name").all() : [];
  file.close();
  return { schema, migrations };
}

/** What the first and the last statement of each migration leave in the schema. */
const MIGRATIONS: readonly { readonly first: RegExp; readonly last: RegExp }[] = [
  { first: /"workspace"/, last: /"person_door"/ },
  { first: /"conversation"/, last: /"link_code"/ },
  { first: /"exchange"/, last: /"exchange_no_delete"/ },
  { first: /"caution_mark"/, last: /"caution_mark_no_delete"/ },
  { first: /"job"/, last: /"job_event_no_delete"/ },
  { first: /"post"/, last: /"channel_card_by_channel"/ },
  { first: /"name":"post"[^{}]*follows/, last: /"name":"channel_card"[^{}]*follows/ },
  { first: /"crew_event"/, last: /"crew_event_no_delete"/ },
  { first: /"slack_installation"/, last: /"slack_installation"/ },
  { first: /"teams_conversation"/, last: /"teams_conversation"/ },
  { first: /"name":"caution_mark"[^{}]*"job\\" text/, last: /"name":"caution_mark_by_job"/ },
  { first: /"name":"post"[^{}]*paper/, last: /"name":"post"[^{}]*paper/ },
];

/** The schema after each number of whole migrations, told apart by which migrations are recorded. */
function isWhole(shape: Shape, whole: Shape): boolean {
  const tables = JSON.stringify(shape.schema);
  const recorded = shape.migrations.length;
  const built = MIGRATIONS.filter(({ last }) => last.test(tables)).length;
  const started = MIGRATIONS.filter(({ first }) => first.test(tables)).length;
  return built === recorded && started === recorded && recorded <= whole.migrations.length;
}

/** A start and a crash before every statement of every migration, each on the disk: minutes on a busy machine. */
const MANY_STARTS_ms = 240_000;

test(
  "a process that dies before any statement leaves whole migrations, and the next start finishes",
  async () => {
    const finished = join(folder, "finished.sqlite");
    const counting = crashBefore(Number.POSITIVE_INFINITY, finished, "");
    await (await openOn(counting)).destroy();
    const whole = shapeOf(finished);
    expect(whole.migrations).toHaveLength(MIGRATIONS.length);
    expect(counting.begun()).toBeGreaterThan(25);
    const seen = new Set<number>();
    for (let at = 0; at < counting.begun(); at += 1) {
      const image = join(folder, `image-${at}.sqlite`);
      await expect(openOn(crashBefore(at, join(folder, `run-${at}.sqlite`), image))).rejects.toThrow();
      const left = shapeOf(image);
      expect({ at, whole: isWhole(left, whole) }).toEqual({ at, whole: true });
      seen.add(left.migrations.length);
      await (await openDatabase(image)).destroy();
      expect({ at, ...shapeOf(image) }).toEqual({ at, ...whole });
    }
    expect(seen).toEqual(new Set([0, ...MIGRATIONS.keys()].concat(MIGRATIONS.length)));
  },
  MANY_STARTS_ms,
);

test("opening a finished database again changes nothing", async () => {
  const path = join(folder, "again.sqlite");
  await (await openDatabase(path)).destroy();
  const before = shapeOf(path);
  await (await openDatabase(path)).destroy();
  expect(shapeOf(path)).toEqual(before);
});

test("a clock that ran backwards between two starts does not stop the next", async () => {
  const path = join(folder, "clock.sqlite");
  await (await openDatabase(path)).destroy();
  const file = connect(path);
  file.prepare("update kysely_migration set timestamp = '1999-01-01T00:00:00.000Z' where name like '0003%'").run();
  file.close();
  await expect(openDatabase(path).then((db) => db.destroy())).resolves.toBeUndefined();
});
