import type { Kysely } from "kysely";

/** The paper that goes with a post and is made when it is sent. */
export async function addPostPaper(db: Kysely<unknown>): Promise<void> {
  await db.schema.alterTable("post").addColumn("paper", "text").execute();
}
