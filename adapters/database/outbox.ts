import type { Kysely } from "kysely";
import { parseCard } from "../../src/boundary/stored-card.ts";
import { parsePostPaper } from "../../src/boundary/stored-paper.ts";
import { pickDue } from "../../src/jobs/due-posts.ts";
import type { KeptPost, Outbox, Post, PostResult } from "../../src/ports/outbox.ts";
import { type Scope, scopeTo } from "./scope.ts";
import { readBack, writeDown } from "./stored-rows.ts";
import type { Tables } from "./tables.ts";

const OPEN = ["waiting", "trying", "unsure"] as const;
const MOST_LOST = 50;

/** Writes posts beside what they are about; called inside one transaction. */
export async function addPosts(scope: Scope, posts: readonly Post[], written_ms: number): Promise<void> {
  for (const post of posts) await addPost(scope, post, written_ms).execute();
}

/** Writes those posts whose id is not there yet; called inside one transaction. @returns their ids */
export async function addNewPosts(
  scope: Scope,
  posts: readonly Post[],
  written_ms: number,
): Promise<readonly string[]> {
  const written: string[] = [];
  for (const post of posts) {
    const added = await addPost(scope, post, written_ms)
      .onConflict((conflict) => conflict.columns(["workspace", "id"]).doNothing())
      .executeTakeFirst();
    if (added.numInsertedOrUpdatedRows === 1n) written.push(post.id);
  }
  return written;
}

function addPost(scope: Scope, post: Post, written_ms: number) {
  const { id, channel, card, language, thread, follows, updates, notBefore_ms, paper } = post;
  return scope.addPost({
    id,
    door: channel.door,
    channel: channel.id,
    thread: thread ?? null,
    card: writeDown(card, parseCard),
    language,
    follows: follows ?? null,
    updates: updates ?? null,
    not_before_ms: notBefore_ms ?? null,
    paper: paper === undefined ? null : writeDown(paper, parsePostPaper),
    state: "waiting",
    tries: 0,
    due_ms: notBefore_ms ?? written_ms,
    written_ms,
    message: null,
    because: null,
  });
}

/** The posts of all workspaces, each reached through its own scope. */
export function createOutbox(db: Kysely<Tables>): Outbox {
  return {
    due: async (now_ms) => {
      const workspaces = await db.selectFrom("workspace").select("id").orderBy("id").execute();
      const due: KeptPost[] = [];
      for (const { id } of workspaces) due.push(...(await dueIn(scopeTo(db, id), now_ms)));
      return due;
    },
    claim: async ({ workspace, post, state, tries }, until_ms) => {
      const taken = await scopeTo(db, workspace)
        .changePosts({ state: "trying", tries: tries + 1, due_ms: until_ms })
        .where("id", "=", post.id)
        .where("state", "=", state)
        .where("tries", "=", tries)
        .executeTakeFirst();
      return taken.numUpdatedRows === 1n;
    },
    settle: (kept, result) => settle(scopeTo(db, kept.workspace), kept, result),
  };
}

export async function hasPost(scope: Scope, id: string): Promise<boolean> {
  const row = await scope.posts().select("number").where("id", "=", id).executeTakeFirst();
  return row !== undefined;
}

/** Posts that could not be delivered, newest first. */
export async function lostPosts(scope: Scope): Promise<readonly KeptPost[]> {
  const rows = await scope
    .posts()
    .selectAll()
    .where("state", "=", "given_up")
    .orderBy("number", "desc")
    .limit(MOST_LOST)
    .execute();
  return rows.map((row) => shapePost(row));
}

async function dueIn(scope: Scope, now_ms: number): Promise<readonly KeptPost[]> {
  const queued = await scope
    .posts()
    .select(["number", "tries", "due_ms", "door", "channel"])
    .where("state", "in", OPEN)
    .orderBy("number")
    .execute();
  const heads = pickDue(
    queued.map((row) => ({ ...row, channel: JSON.stringify([row.door, row.channel]) })),
    now_ms,
  );
  const due: KeptPost[] = [];
  for (const { number } of heads) {
    const row = await scope.posts().selectAll().where("number", "=", number).executeTakeFirst();
    if (row === undefined) continue;
    const [updated, followed] = [await messageOf(scope, row.updates), await messageOf(scope, row.follows)];
    due.push(shapePost(row, updated, followed));
  }
  return due;
}

/** The platform's own id of an earlier post's message, once it is there. */
async function messageOf(scope: Scope, post: string | null): Promise<string | undefined> {
  if (post === null) return undefined;
  const row = await scope.posts().select("message").where("id", "=", post).executeTakeFirst();
  return row?.message ?? undefined;
}

/** That a post arrived is true whoever says it; anything else only counts from the one who is trying. */
async function settle(scope: Scope, { post, tries }: KeptPost, result: PostResult): Promise<void> {
  const change = scope.changePosts({
    state: result.state,
    message: result.state === "sent" ? result.messageId : null,
    because: result.state === "sent" ? null : result.because,
    ...("due_ms" in result && { due_ms: result.due_ms }),
  });
  const ofPost = change.where("id", "=", post.id).where("state", "!=", "sent");
  const query = result.state === "sent" ? ofPost : ofPost.where("state", "=", "trying").where("tries", "=", tries + 1);
  await query.execute();
}

type PostRow = Awaited<ReturnType<typeof readRows>>[number];
function readRows(scope: Scope) {
  return scope.posts().selectAll().execute();
}

function shapePost(row: PostRow, updatesMessage?: string, followsMessage?: string): KeptPost {
  const { id, door, channel, thread, language, follows, updates, not_before_ms, paper, message, because } = row;
  return {
    workspace: row.workspace,
    post: {
      id,
      channel: { door, id: channel },
      card: readBack(parseCard(row.card), `the card of post ${id}`),
      language,
      ...(thread !== null && { thread }),
      ...(follows !== null && { follows }),
      ...(updates !== null && { updates }),
      ...(not_before_ms !== null && { notBefore_ms: not_before_ms }),
      ...(paper !== null && { paper: readBack(parsePostPaper(paper), `the paper of post ${id}`) }),
    },
    state: row.state,
    tries: row.tries,
    due_ms: row.due_ms,
    written_ms: row.written_ms,
    ...(message !== null && { messageId: message }),
    ...(updatesMessage !== undefined && { updatesMessage }),
    ...(followsMessage !== undefined && { followsMessage }),
    ...(because !== null && { because }),
  };
}
