import type { Kysely } from "kysely";

/** What conversations remember, what deliveries were answered with, and codes that join a second door. */
export async function addConversations(db: Kysely<unknown>): Promise<void> {
  await db.schema
    .createTable("conversation")
    .addColumn("workspace", "text", (column) => column.notNull())
    .addColumn("person", "text", (column) => column.notNull())
    .addColumn("conversation", "text", (column) => column.notNull())
    .addColumn("state", "text", (column) => column.notNull())
    .addColumn("has_walk", "integer", (column) => column.notNull())
    .addColumn("touched", "bigint", (column) => column.notNull())
    .addPrimaryKeyConstraint("conversation_key", ["workspace", "person", "conversation"])
    .addForeignKeyConstraint("conversation_person", ["workspace", "person"], "person", ["workspace", "id"])
    .execute();
  await db.schema
    .createTable("delivery")
    .addColumn("workspace", "text", (column) => column.notNull().references("workspace.id"))
    .addColumn("delivery", "text", (column) => column.notNull())
    .addColumn("card", "text", (column) => column.notNull())
    .addColumn("at_ms", "bigint", (column) => column.notNull())
    .addPrimaryKeyConstraint("delivery_key", ["workspace", "delivery"])
    .execute();
  await db.schema.createIndex("delivery_by_age").on("delivery").columns(["workspace", "at_ms"]).execute();
  await db.schema
    .createTable("link_code")
    .addColumn("workspace", "text", (column) => column.notNull())
    .addColumn("code", "text", (column) => column.notNull())
    .addColumn("person", "text", (column) => column.notNull())
    .addColumn("expires_ms", "bigint", (column) => column.notNull())
    .addColumn("used_ms", "bigint")
    .addPrimaryKeyConstraint("link_code_key", ["workspace", "code"])
    .addForeignKeyConstraint("link_code_person", ["workspace", "person"], "person", ["workspace", "id"])
    .execute();
}
