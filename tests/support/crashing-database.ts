import { copyFileSync, existsSync } from "node:fs";
import type { SqliteDatabase, SqliteStatement } from "kysely";
import { connect } from "../../adapters/database/open-database.ts";

/** What a process says no more after it has died. */
class Crash extends Error {}

export interface CrashingDatabase extends SqliteDatabase {
  /** Statements begun so far. */
  readonly begun: () => number;
}

/**
 * A database whose process dies just before statement number `at` (counted from 0): what stands on the disk at that
 * moment is copied to `image`, and nothing is carried out any more, not even a rollback. The shared-memory file is left
 * out because it does not outlive the processes that map it.
 */
export function crashBefore(at: number, path: string, image: string): CrashingDatabase {
  const real = connect(path);
  let begun = 0;
  const step = () => {
    if (begun === at) for (const end of ["", "-wal"]) if (existsSync(path + end)) copyFileSync(path + end, image + end);
    if (begun >= at) throw new Crash();
    begun += 1;
  };
  return {
    begun: () => begun,
    close: () => {
      real.close();
    },
    prepare: (sql): SqliteStatement => {
      step();
      const statement = real.prepare(sql);
      return {
        reader: statement.reader,
        all: (parameters) => statement.all(parameters),
        run: (parameters) => statement.run(parameters),
        iterate: (parameters) => statement.iterate(parameters),
      };
    },
  };
}
