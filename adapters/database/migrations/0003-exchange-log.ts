import { type Kysely, sql } from "kysely";

/** The log of every exchange. The database itself refuses to change or remove a row of it. */
export async function addExchangeLog(db: Kysely<unknown>): Promise<void> {
  await db.schema
    .createTable("exchange")
    .addColumn("number", "integer", (column) => column.primaryKey().autoIncrement())
    .addColumn("workspace", "text", (column) => column.notNull())
    .addColumn("person", "text", (column) => column.notNull())
    .addColumn("door", "text", (column) => column.notNull())
    .addColumn("conversation", "text", (column) => column.notNull())
    .addColumn("delivery", "text", (column) => column.notNull())
    .addColumn("at_ms", "bigint", (column) => column.notNull())
    .addColumn("said", "text", (column) => column.notNull())
    .addColumn("card_title", "text", (column) => column.notNull())
    .addForeignKeyConstraint("exchange_person", ["workspace", "person"], "person", ["workspace", "id"])
    .execute();
  for (const change of ["update", "delete"])
    await sql`
      create trigger ${sql.raw(`exchange_no_${change}`)} before ${sql.raw(change)} on exchange
      begin select raise(abort, 'rows of the exchange log are only ever added'); end
    `.execute(db);
}
