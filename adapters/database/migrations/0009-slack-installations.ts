import type { Kysely } from "kysely";

/** The Slack organisations that let Oldhand in, with their sealed tokens. */
export async function addSlackInstallations(db: Kysely<unknown>): Promise<void> {
  await db.schema
    .createTable("slack_installation")
    .addColumn("team", "text", (column) => column.primaryKey().notNull())
    .addColumn("name", "text", (column) => column.notNull())
    .addColumn("bot_user", "text", (column) => column.notNull())
    .addColumn("scopes", "text", (column) => column.notNull())
    .addColumn("installed_by", "text", (column) => column.notNull())
    .addColumn("installed_ms", "bigint", (column) => column.notNull())
    .addColumn("token", "text", (column) => column.notNull())
    .addColumn("refresh_token", "text")
    .addColumn("expires_ms", "bigint")
    .addColumn("version", "integer", (column) => column.notNull())
    .execute();
}
