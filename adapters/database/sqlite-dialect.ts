import {
  CompiledQuery,
  type DatabaseConnection,
  type DialectAdapter,
  type Driver,
  SqliteAdapter,
  SqliteDialect,
  type SqliteDialectConfig,
  SqliteDriver,
} from "kysely";

/**
 * SQLite as it is: changes of the schema belong to a transaction like any other, so a migration that fails or is cut
 * off leaves nothing behind. The stock adapter says otherwise and would let half a migration stand.
 */
class TransactionalAdapter extends SqliteAdapter {
  override get supportsTransactionalDdl(): boolean {
    return true;
  }
}

/**
 * Takes the write lock when a transaction begins. A transaction that reads first and asks for the lock later fails at
 * once when another process has written in between, however long it is willing to wait.
 */
class WriteFirstDriver extends SqliteDriver {
  override async beginTransaction(connection: DatabaseConnection): Promise<void> {
    await connection.executeQuery(CompiledQuery.raw("begin immediate"));
  }
}

/** Kysely's SQLite with whole migrations and early write locks. */
export class SafeSqliteDialect extends SqliteDialect {
  readonly #config: SqliteDialectConfig;

  constructor(config: SqliteDialectConfig) {
    super(config);
    this.#config = config;
  }
  override createDriver(): Driver {
    return new WriteFirstDriver(this.#config);
  }
  override createAdapter(): DialectAdapter {
    return new TransactionalAdapter();
  }
}
