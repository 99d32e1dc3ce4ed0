import { type Kysely, type Migration, Migrator } from "kysely";
import { addWorkspacesAndPeople } from "./migrations/0001-workspaces-and-people.ts";
import { addConversations } from "./migrations/0002-conversations.ts";
import { addExchangeLog } from "./migrations/0003-exchange-log.ts";
import { addCautionMarks } from "./migrations/0004-caution-marks.ts";
import { addJobs } from "./migrations/0005-jobs.ts";
import { addOutbox } from "./migrations/0006-outbox.ts";
import { addThreads } from "./migrations/0007-threads.ts";
import { addCrewEvents } from "./migrations/0008-crew-events.ts";
import { addSlackInstallations } from "./migrations/0009-slack-installations.ts";
import { addTeamsConversations } from "./migrations/0010-teams-conversations.ts";
import { addCautionMarkJob } from "./migrations/0012-caution-mark-job.ts";
import { addPostPaper } from "./migrations/0013-post-paper.ts";

/** Every change of the schema, in the order of its name. A migration that was ever released is never edited. */
const MIGRATIONS: Readonly<Record<string, Migration>> = {
  "0001-workspaces-and-people": { up: addWorkspacesAndPeople },
  "0002-conversations": { up: addConversations },
  "0003-exchange-log": { up: addExchangeLog },
  "0004-caution-marks": { up: addCautionMarks },
  "0005-jobs": { up: addJobs },
  "0006-outbox": { up: addOutbox },
  "0007-threads": { up: addThreads },
  "0008-crew-events": { up: addCrewEvents },
  "0009-slack-installations": { up: addSlackInstallations },
  "0010-teams-conversations": { up: addTeamsConversations },
  "0012-caution-mark-job": { up: addCautionMarkJob },
  "0013-post-paper": { up: addPostPaper },
};

/**
 * Brings the schema up to date, one transaction a migration: cut off anywhere, the next start finds whole migrations
 * only and goes on from there. Order is told by the numbers in the names, never by a clock that may have run backwards.
 */
export async function migrate<T>(db: Kysely<T>): Promise<void> {
  const provider = { getMigrations: async () => MIGRATIONS };
  const migrator = new Migrator({ db, provider, allowUnorderedMigrations: true });
  for (;;) {
    const { error, results } = await migrator.migrateUp();
    if (error !== undefined) throw error;
    if (results === undefined || results.length === 0) return;
  }
}
