import type { Kysely } from "kysely";
import { parseCard } from "../../src/boundary/stored-card.ts";
import type { ChatPort, Outgoing } from "../../src/ports/chat.ts";
import type { ChannelCard } from "../../src/ports/store.ts";
import { type Scope, scopeTo } from "./scope.ts";
import { readBack, writeDown } from "./stored-rows.ts";
import type { Tables } from "./tables.ts";

/** Channels of our own: what is posted stands there once, under the id of its post. */
export function createHouseChat(db: Kysely<Tables>): ChatPort {
  return {
    send: async ({ workspace, id, channel, card, thread, updatesMessage, written_ms }) => {
      const scope = scopeTo(db, workspace);
      const messageId = updatesMessage ?? id;
      const written = writeDown(card, parseCard);
      await scope
        .addChannelCard({
          channel: channel.id,
          id: messageId,
          follows: thread ?? null,
          card: written,
          at_ms: written_ms,
        })
        .onConflict((conflict) => conflict.columns(["workspace", "channel", "id"]).doUpdateSet({ card: written }))
        .execute();
      return { kind: "sent", messageId };
    },
    find: async ({ workspace, channel, id }: Outgoing) => {
      const row = await scopeTo(db, workspace)
        .channelCards()
        .select("id")
        .where("channel", "=", channel.id)
        .where("id", "=", id)
        .executeTakeFirst();
      return row === undefined ? { kind: "absent" } : { kind: "found", messageId: row.id };
    },
  };
}

/** The newest messages of a channel of our own, oldest first. */
export async function channelCards(scope: Scope, channel: string, most: number): Promise<readonly ChannelCard[]> {
  const rows = await scope
    .channelCards()
    .select(["id", "follows", "card", "at_ms"])
    .where("channel", "=", channel)
    .orderBy("number", "desc")
    .limit(most)
    .execute();
  return rows.toReversed().map(({ card, follows, id, at_ms }) => ({
    id,
    at_ms,
    card: readBack(parseCard(card), `message ${id} of ${channel}`),
    ...(follows !== null && { follows }),
  }));
}
