import { type Kysely, sql } from "kysely";

/** Jobs as they stand, and everything that happened to them. The database itself refuses to change or remove an event. */
export async function addJobs(db: Kysely<unknown>): Promise<void> {
  await db.schema
    .createTable("job")
    .addColumn("workspace", "text", (column) => column.notNull().references("workspace.id"))
    .addColumn("number", "text", (column) => column.notNull())
    .addColumn("status", "text", (column) => column.notNull())
    .addColumn("day", "text")
    .addColumn("people", "text", (column) => column.notNull())
    .addColumn("state", "text", (column) => column.notNull())
    .addColumn("version", "integer", (column) => column.notNull())
    .addPrimaryKeyConstraint("job_key", ["workspace", "number"])
    .execute();
  await db.schema.createIndex("job_by_day").on("job").columns(["workspace", "day"]).execute();
  await db.schema
    .createTable("job_counter")
    .addColumn("workspace", "text", (column) => column.primaryKey().notNull().references("workspace.id"))
    .addColumn("last", "integer", (column) => column.notNull())
    .execute();
  await db.schema
    .createTable("job_event")
    .addColumn("workspace", "text", (column) => column.notNull())
    .addColumn("job", "text", (column) => column.notNull())
    .addColumn("number", "integer", (column) => column.notNull())
    .addColumn("person", "text", (column) => column.notNull())
    .addColumn("by", "text", (column) => column.notNull())
    .addColumn("door", "text", (column) => column.notNull())
    .addColumn("at_ms", "bigint", (column) => column.notNull())
    .addColumn("change", "text", (column) => column.notNull())
    .addColumn("amends", "integer")
    .addPrimaryKeyConstraint("job_event_key", ["workspace", "job", "number"])
    .addForeignKeyConstraint("job_event_person", ["workspace", "person"], "person", ["workspace", "id"])
    .execute();
  for (const change of ["update", "delete"])
    await sql`
      create trigger ${sql.raw(`job_event_no_${change}`)} before ${sql.raw(change)} on job_event
      begin select raise(abort, 'what happened to a job is only ever added'); end
    `.execute(db);
}
