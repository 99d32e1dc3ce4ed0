import type { Kysely } from "kysely";

/** For which job a caution was seen to, and how it was shown, so that the record of the job can say it. */
export async function addCautionMarkJob(db: Kysely<unknown>): Promise<void> {
  await db.schema.alterTable("caution_mark").addColumn("job", "text").execute();
  await db.schema.alterTable("caution_mark").addColumn("shown", "text").execute();
  await db.schema.createIndex("caution_mark_by_job").on("caution_mark").columns(["workspace", "job"]).execute();
}
