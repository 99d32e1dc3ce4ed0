import { type Kysely, sql } from "kysely";

/** What people did about cautions: seen and done, skipped with a reason, taken back. Rows are only ever added. */
export async function addCautionMarks(db: Kysely<unknown>): Promise<void> {
  await db.schema
    .createTable("caution_mark")
    .addColumn("number", "integer", (column) => column.primaryKey().autoIncrement())
    .addColumn("workspace", "text", (column) => column.notNull())
    .addColumn("person", "text", (column) => column.notNull())
    .addColumn("door", "text", (column) => column.notNull())
    .addColumn("conversation", "text", (column) => column.notNull())
    .addColumn("caution", "text", (column) => column.notNull())
    .addColumn("about", "text", (column) => column.notNull())
    .addColumn("act", "text", (column) => column.notNull())
    .addColumn("because", "text")
    .addColumn("at_ms", "bigint", (column) => column.notNull())
    .addForeignKeyConstraint("caution_mark_person", ["workspace", "person"], "person", ["workspace", "id"])
    .execute();
  await db.schema
    .createIndex("caution_mark_by_conversation")
    .on("caution_mark")
    .columns(["workspace", "conversation"])
    .execute();
  for (const change of ["update", "delete"])
    await sql`
      create trigger ${sql.raw(`caution_mark_no_${change}`)} before ${sql.raw(change)} on caution_mark
      begin select raise(abort, 'what was done about a caution is only ever added'); end
    `.execute(db);
}
