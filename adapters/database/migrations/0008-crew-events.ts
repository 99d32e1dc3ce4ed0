import { type Kysely, sql } from "kysely";

/** What was said of people, trucks and stock since the books. The database itself refuses to change or remove an event. */
export async function addCrewEvents(db: Kysely<unknown>): Promise<void> {
  await db.schema
    .createTable("crew_event")
    .addColumn("workspace", "text", (column) => column.notNull().references("workspace.id"))
    .addColumn("number", "integer", (column) => column.notNull())
    .addColumn("person", "text", (column) => column.notNull())
    .addColumn("by", "text", (column) => column.notNull())
    .addColumn("door", "text", (column) => column.notNull())
    .addColumn("at_ms", "bigint", (column) => column.notNull())
    .addColumn("change", "text", (column) => column.notNull())
    .addColumn("amends", "integer")
    .addPrimaryKeyConstraint("crew_event_key", ["workspace", "number"])
    .addForeignKeyConstraint("crew_event_person", ["workspace", "person"], "person", ["workspace", "id"])
    .execute();
  for (const change of ["update", "delete"])
    await sql`
      create trigger ${sql.raw(`crew_event_no_${change}`)} before ${sql.raw(change)} on crew_event
      begin select raise(abort, 'what was said of the crew is only ever added'); end
    `.execute(db);
}
