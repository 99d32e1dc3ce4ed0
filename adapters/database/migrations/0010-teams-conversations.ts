import type { Kysely } from "kysely";

/** Conversations of Teams that posts may go to. */
export async function addTeamsConversations(db: Kysely<unknown>): Promise<void> {
  await db.schema
    .createTable("teams_conversation")
    .addColumn("workspace", "text", (column) => column.notNull().references("workspace.id"))
    .addColumn("conversation", "text", (column) => column.notNull())
    .addColumn("tenant", "text", (column) => column.notNull())
    .addColumn("kind", "text", (column) => column.notNull())
    .addColumn("service_url", "text", (column) => column.notNull())
    .addColumn("bot", "text", (column) => column.notNull())
    .addColumn("team", "text")
    .addPrimaryKeyConstraint("teams_conversation_key", ["workspace", "tenant", "conversation"])
    .execute();
}
