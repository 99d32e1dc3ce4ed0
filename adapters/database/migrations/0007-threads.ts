import type { Kysely } from "kysely";

/** Posts that stand in the thread of an earlier one. */
export async function addThreads(db: Kysely<unknown>): Promise<void> {
  await db.schema.alterTable("post").addColumn("follows", "text").execute();
  await db.schema.alterTable("channel_card").addColumn("follows", "text").execute();
}
