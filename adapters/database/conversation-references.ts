import { isDeepStrictEqual } from "node:util";
import type { Kysely } from "kysely";
import type { ConversationReference, ConversationReferences } from "../../src/ports/conversation-references.ts";
import type { Door } from "../../src/ports/store.ts";
import { type Scope, scopeTo } from "./scope.ts";
import type { Tables } from "./tables.ts";

type FindWorkspace = (at: { readonly door: Door; readonly organisation: string }) => string | Promise<string>;

/** The conversations of Teams, each in the workspace that its tenant belongs to. */
export function createConversationReferences(db: Kysely<Tables>, findWorkspace: FindWorkspace): ConversationReferences {
  const scopeOf = async (tenant: string) => scopeTo(db, await findWorkspace({ door: "teams", organisation: tenant }));
  return {
    async keep(reference) {
      const { tenant, conversation } = reference;
      const workspace = await findWorkspace({ door: "teams", organisation: tenant });
      const there = await ofConversation(scopeTo(db, workspace), conversation);
      // Every message says it again; only what is new is written.
      if (there && isDeepStrictEqual(readRow(there), reference)) return;
      await db.transaction().execute(async (change) => {
        const scope = scopeTo(change, workspace);
        await scope
          .dropTeamsConversations()
          .where("tenant", "=", tenant)
          .where("conversation", "=", conversation)
          .execute();
        await scope.addTeamsConversation(toRow(reference)).execute();
      });
    },
    async find(workspace, conversation) {
      const row = await ofConversation(scopeTo(db, workspace), conversation);
      return row && readRow(row);
    },
    async drop(reference) {
      const { service_url, bot } = toRow(reference);
      await (await scopeOf(reference.tenant))
        .dropTeamsConversations()
        .where("tenant", "=", reference.tenant)
        .where("conversation", "=", reference.conversation)
        .where("service_url", "=", service_url)
        .where("bot", "=", bot)
        .execute();
    },
    async leave({ tenant, conversation, team }) {
      const left = (await scopeOf(tenant)).dropTeamsConversations().where("tenant", "=", tenant);
      await left
        .where((row) =>
          row.or([
            row("conversation", "=", conversation),
            ...(team === undefined ? [] : [row("team", "=", team), row("conversation", "=", team)]),
          ]),
        )
        .execute();
    },
  };
}

function ofConversation(scope: Scope, conversation: string) {
  return scope.teamsConversations().selectAll().where("conversation", "=", conversation).executeTakeFirst();
}

type Row = NonNullable<Awaited<ReturnType<typeof ofConversation>>>;

function readRow({ tenant, conversation, kind, service_url, bot, team }: Row): ConversationReference {
  return { tenant, conversation, kind, serviceUrl: service_url, bot, ...(team !== null && { team }) };
}

function toRow({ tenant, conversation, kind, serviceUrl, bot, team }: ConversationReference) {
  return { tenant, conversation, kind, service_url: serviceUrl, bot, team: team ?? null };
}
