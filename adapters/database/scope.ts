import type { Insertable, Kysely, Transaction, Updateable } from "kysely";
import type { Tables } from "./tables.ts";

/** A row as the caller writes it: which workspace it belongs to is not theirs to say. */
type Own<T extends keyof Tables> = Omit<Insertable<Tables[T]>, "workspace">;
type Change<T extends keyof Tables> = Omit<Updateable<Tables[T]>, "workspace">;

/** Every query of one workspace's rows; there is no other way to them, and none of these reaches another workspace. */
export type Scope = ReturnType<typeof scopeTo>;

/** The queries of one workspace. This is the one place that names the tables which belong to a workspace. */
export function scopeTo(db: Kysely<Tables> | Transaction<Tables>, workspace: string) {
  return {
    workspace,
    people: () => db.selectFrom("person").where("person.workspace", "=", workspace),
    addPerson: (row: Own<"person">) => db.insertInto("person").values({ ...row, workspace }),
    changePeople: (change: Change<"person">) =>
      db
        .updateTable("person")
        .set({ ...change, workspace })
        .where("workspace", "=", workspace),
    personDoors: () => db.selectFrom("person_door").where("person_door.workspace", "=", workspace),
    addPersonDoor: (row: Own<"person_door">) => db.insertInto("person_door").values({ ...row, workspace }),
    conversations: () => db.selectFrom("conversation").where("conversation.workspace", "=", workspace),
    addConversation: (row: Own<"conversation">) => db.insertInto("conversation").values({ ...row, workspace }),
    deliveries: () => db.selectFrom("delivery").where("delivery.workspace", "=", workspace),
    addDelivery: (row: Own<"delivery">) => db.insertInto("delivery").values({ ...row, workspace }),
    linkCodes: () => db.selectFrom("link_code").where("link_code.workspace", "=", workspace),
    addLinkCode: (row: Own<"link_code">) => db.insertInto("link_code").values({ ...row, workspace }),
    changeLinkCodes: (change: Change<"link_code">) =>
      db
        .updateTable("link_code")
        .set({ ...change, workspace })
        .where("workspace", "=", workspace),
    addExchange: (row: Own<"exchange">) => db.insertInto("exchange").values({ ...row, workspace }),
    cautionMarks: () =>
      db
        .selectFrom("caution_mark")
        .innerJoin("person", (join) =>
          join.onRef("person.workspace", "=", "caution_mark.workspace").onRef("person.id", "=", "caution_mark.person"),
        )
        .where("caution_mark.workspace", "=", workspace),
    addCautionMark: (row: Own<"caution_mark">) => db.insertInto("caution_mark").values({ ...row, workspace }),
    ...scopeWork(db, workspace),
    /** Forgets what nobody can ask for again: the cards of old deliveries, and codes that have expired. */
    forget: async (answeredBefore_ms: number, expiredBefore_ms: number): Promise<void> => {
      await db
        .deleteFrom("delivery")
        .where("workspace", "=", workspace)
        .where("at_ms", "<", answeredBefore_ms)
        .execute();
      await db
        .deleteFrom("link_code")
        .where("workspace", "=", workspace)
        .where("expires_ms", "<", expiredBefore_ms)
        .execute();
    },
  };
}

/** The queries of jobs, the crew and posts. */
function scopeWork(db: Kysely<Tables> | Transaction<Tables>, workspace: string) {
  return {
    jobs: () => db.selectFrom("job").where("job.workspace", "=", workspace),
    addJob: (row: Own<"job">) => db.insertInto("job").values({ ...row, workspace }),
    jobEvents: () => db.selectFrom("job_event").where("job_event.workspace", "=", workspace),
    addJobEvent: (row: Own<"job_event">) => db.insertInto("job_event").values({ ...row, workspace }),
    jobCounters: () => db.selectFrom("job_counter").where("job_counter.workspace", "=", workspace),
    addJobCounter: (row: Own<"job_counter">) => db.insertInto("job_counter").values({ ...row, workspace }),
    crewEvents: () => db.selectFrom("crew_event").where("crew_event.workspace", "=", workspace),
    addCrewEvent: (row: Own<"crew_event">) => db.insertInto("crew_event").values({ ...row, workspace }),
    posts: () => db.selectFrom("post").where("post.workspace", "=", workspace),
    addPost: (row: Own<"post">) => db.insertInto("post").values({ ...row, workspace }),
    changePosts: (change: Change<"post">) =>
      db
        .updateTable("post")
        .set({ ...change, workspace })
        .where("workspace", "=", workspace),
    channelCards: () => db.selectFrom("channel_card").where("channel_card.workspace", "=", workspace),
    addChannelCard: (row: Own<"channel_card">) => db.insertInto("channel_card").values({ ...row, workspace }),
    teamsConversations: () => db.selectFrom("teams_conversation").where("teams_conversation.workspace", "=", workspace),
    addTeamsConversation: (row: Own<"teams_conversation">) =>
      db.insertInto("teams_conversation").values({ ...row, workspace }),
    dropTeamsConversations: () => db.deleteFrom("teams_conversation").where("workspace", "=", workspace),
  };
}
