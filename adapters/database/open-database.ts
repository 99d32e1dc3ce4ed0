import { mkdirSync } from "node:fs";
import { dirname } from "node:path";
import Database from "better-sqlite3";
import { Kysely, type SqliteDatabase } from "kysely";
import { DatabaseFault } from "./database-fault.ts";
import { migrate } from "./migrate.ts";
import { SafeSqliteDialect } from "./sqlite-dialect.ts";
import type { Tables } from "./tables.ts";

/** How long a write waits for another process to finish its own. */
const BUSY_ms = 5_000;

/** Rights of a folder that is made here: what people say at work is for nobody else on the machine. */
const OWNER_ONLY = 0o700;

/** Opens the database file, making it and bringing its schema up to date where needed. */
export async function openDatabase(path: string): Promise<Kysely<Tables>> {
  try {
    mkdirSync(dirname(path), { recursive: true, mode: OWNER_ONLY });
    return await openOn(connect(path));
  } catch (cause) {
    throw DatabaseFault.opening(path, cause);
  }
}

/** Brings the schema up to date on a connection that is already open; tests put a failing one here. */
export async function openOn(connection: SqliteDatabase): Promise<Kysely<Tables>> {
  const db = new Kysely<Tables>({ dialect: new SafeSqliteDialect({ database: connection }) });
  try {
    await migrate(db);
    return db;
  } catch (error) {
    await db.destroy();
    throw error;
  }
}

/** A connection on which a commit returns only when it is on the disk. */
export function connect(path: string): Database.Database {
  const connection = new Database(path, { timeout: BUSY_ms });
  try {
    connection.pragma("journal_mode = WAL");
    connection.pragma("synchronous = FULL");
    connection.pragma("foreign_keys = ON");
    return connection;
  } catch (error) {
    connection.close();
    throw error;
  }
}
