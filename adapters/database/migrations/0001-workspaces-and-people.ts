import type { Kysely } from "kysely";

/** Workspaces, the people in them, and how the doors call both. */
export async function addWorkspacesAndPeople(db: Kysely<unknown>): Promise<void> {
  await db.schema
    .createTable("workspace")
    .addColumn("id", "text", (column) => column.primaryKey().notNull())
    .addColumn("name", "text", (column) => column.notNull())
    .execute();
  await db.schema
    .createTable("workspace_door")
    .addColumn("door", "text", (column) => column.notNull())
    .addColumn("organisation", "text", (column) => column.notNull())
    .addColumn("workspace", "text", (column) => column.notNull().references("workspace.id"))
    .addPrimaryKeyConstraint("workspace_door_key", ["door", "organisation"])
    .execute();
  await db.schema
    .createTable("person")
    .addColumn("workspace", "text", (column) => column.notNull().references("workspace.id"))
    .addColumn("id", "text", (column) => column.notNull())
    .addColumn("name", "text", (column) => column.notNull())
    .addColumn("role", "text", (column) => column.notNull())
    .addColumn("language", "text", (column) => column.notNull())
    .addColumn("units", "text", (column) => column.notNull())
    .addColumn("in_books", "integer", (column) => column.notNull())
    .addPrimaryKeyConstraint("person_key", ["workspace", "id"])
    .execute();
  await db.schema
    .createTable("person_door")
    .addColumn("workspace", "text", (column) => column.notNull())
    .addColumn("door", "text", (column) => column.notNull())
    .addColumn("organisation", "text", (column) => column.notNull())
    .addColumn("user", "text", (column) => column.notNull())
    .addColumn("person", "text", (column) => column.notNull())
    .addPrimaryKeyConstraint("person_door_key", ["workspace", "door", "organisation", "user"])
    .addForeignKeyConstraint("person_door_person", ["workspace", "person"], "person", ["workspace", "id"])
    .execute();
}
