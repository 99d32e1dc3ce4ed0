import type { Kysely } from "kysely";

/** Posts that are to be sent to channels, and the channels of our own with what was posted there. */
export async function addOutbox(db: Kysely<unknown>): Promise<void> {
  await db.schema
    .createTable("post")
    .addColumn("number", "integer", (column) => column.primaryKey().autoIncrement())
    .addColumn("workspace", "text", (column) => column.notNull().references("workspace.id"))
    .addColumn("id", "text", (column) => column.notNull())
    .addColumn("door", "text", (column) => column.notNull())
    .addColumn("channel", "text", (column) => column.notNull())
    .addColumn("thread", "text")
    .addColumn("card", "text", (column) => column.notNull())
    .addColumn("language", "text", (column) => column.notNull())
    .addColumn("updates", "text")
    .addColumn("not_before_ms", "bigint")
    .addColumn("state", "text", (column) => column.notNull())
    .addColumn("tries", "integer", (column) => column.notNull())
    .addColumn("due_ms", "bigint", (column) => column.notNull())
    .addColumn("written_ms", "bigint", (column) => column.notNull())
    .addColumn("message", "text")
    .addColumn("because", "text")
    .addUniqueConstraint("post_id", ["workspace", "id"])
    .execute();
  await db.schema.createIndex("post_by_state").on("post").columns(["workspace", "state", "number"]).execute();
  await db.schema
    .createTable("channel_card")
    .addColumn("number", "integer", (column) => column.primaryKey().autoIncrement())
    .addColumn("workspace", "text", (column) => column.notNull().references("workspace.id"))
    .addColumn("channel", "text", (column) => column.notNull())
    .addColumn("id", "text", (column) => column.notNull())
    .addColumn("card", "text", (column) => column.notNull())
    .addColumn("at_ms", "bigint", (column) => column.notNull())
    .addUniqueConstraint("channel_card_id", ["workspace", "channel", "id"])
    .execute();
  await db.schema
    .createIndex("channel_card_by_channel")
    .on("channel_card")
    .columns(["workspace", "channel", "number"])
    .execute();
}
