import { parseCard } from "../../src/boundary/stored-card.ts";
import { parseConversation } from "../../src/boundary/stored-conversation.ts";
import type { ConversationState } from "../../src/conversation/state.ts";
import type { Door, Exchange } from "../../src/ports/store.ts";
import { addMarks } from "./caution-marks.ts";
import { addCrewEntries } from "./crew-records.ts";
import { DatabaseFault } from "./database-fault.ts";
import { addEntries } from "./job-records.ts";
import { addPosts } from "./outbox.ts";
import type { Scope } from "./scope.ts";
import { writeDown } from "./stored-rows.ts";
import type { WorkspaceParts } from "./workspace-store.ts";

const HOUR_ms = 3_600_000;
/**
 * How long the card of a delivery is kept. Platforms send again within hours (from memory); a phone without signal
 * may hold a message over a long weekend.
 */
const KEPT_ms = 14 * 24 * HOUR_ms;

/** An exchange with what the log wants besides: at which door it was. */
type LoggedExchange = Exchange & { readonly door: Door };

/** Writes one exchange. A delivery that was answered before is refused and changes nothing. */
export async function commitExchange(
  scope: Scope,
  exchange: LoggedExchange,
  { forgotten, people }: Pick<WorkspaceParts, "forgotten" | "people">,
): Promise<void> {
  const { person, conversation, delivery, card, at_ms, carriedFrom, marks = [], door } = exchange;
  const added = await scope
    .addDelivery({ delivery, card: writeDown(card, parseCard), at_ms })
    .onConflict((conflict) => conflict.columns(["workspace", "delivery"]).doNothing())
    .executeTakeFirst();
  if (added.numInsertedOrUpdatedRows === 0n)
    throw new DatabaseFault("delivery_answered", "this delivery was answered before");
  const number = await logExchange(scope, exchange);
  const { language, units } = person;
  await scope.changePeople({ language, units }).where("id", "=", person.id).execute();
  await saveState(scope, person.id, conversation, exchange.state, number);
  if (carriedFrom) await saveState(scope, person.id, carriedFrom.conversation, carriedFrom.state, number);
  await addMarks(scope, marks, { person: person.id, door, conversation, at_ms });
  const who = { person: person.id, by: person.name, door, at_ms };
  await addEntries(scope, exchange.jobs ?? [], who);
  if (exchange.crew !== undefined) await addCrewEntries(scope, exchange.crew, who, people);
  await addPosts(scope, exchange.posts ?? [], at_ms);
  await forgetNowAndThen(scope, at_ms, forgotten);
}

async function logExchange(scope: Scope, exchange: LoggedExchange): Promise<number> {
  const { person, conversation, delivery, at_ms, card, door, text } = exchange;
  const row = { person: person.id, door, conversation, delivery, at_ms, said: text ?? "", card_title: card.title };
  return (await scope.addExchange(row).returning("number").executeTakeFirstOrThrow()).number;
}

async function saveState(
  scope: Scope,
  person: string,
  conversation: string,
  state: ConversationState,
  touched: number,
): Promise<void> {
  const kept = { state: writeDown(state, parseConversation), has_walk: state.walk ? 1 : 0, touched } as const;
  await scope
    .addConversation({ person, conversation, ...kept })
    .onConflict((conflict) => conflict.columns(["workspace", "person", "conversation"]).doUpdateSet(kept))
    .execute();
}

async function forgetNowAndThen(scope: Scope, now_ms: number, forgotten: Map<string, number>): Promise<void> {
  const last_ms = forgotten.get(scope.workspace);
  if (last_ms !== undefined && now_ms - last_ms < HOUR_ms) return;
  forgotten.set(scope.workspace, now_ms);
  await scope.forget(now_ms - KEPT_ms, now_ms);
}
