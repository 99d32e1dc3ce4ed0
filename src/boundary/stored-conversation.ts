import { z } from "zod";
import type { ConversationState } from "../conversation/state.ts";
import { LANGUAGES } from "../messages/language.ts";
import { quantityKind } from "./quantity-kind.ts";
import { seenAs } from "./stored-caution.ts";
import { parseStored, type Stored } from "./stored-json.ts";

const numbers = z.array(z.number().int().min(1));
const text = z.string();
const facts = z.record(
  text,
  z.strictObject({
    value: z.union([z.number(), text, z.boolean()]),
    from: z.enum(["asked", "assumed", "job", "catalogue"]),
    typed: text.exactOptional(),
  }),
);
const unsettled = z.discriminatedUnion("kind", [
  z.strictObject({ kind: z.literal("unknown-word"), word: text, nearest: z.array(text), text }),
  z.strictObject({ kind: z.literal("ambiguous"), typed: text, candidates: z.array(text) }),
]);
const walk = z.strictObject({
  id: text,
  topic: text,
  facts,
  toAsk: z.array(text),
  asked: z.array(text),
  unsettled: z.array(unsettled).exactOptional(),
  revises: text.exactOptional(),
  job: text.exactOptional(),
});
const lastAnswer = z.strictObject({
  topic: text,
  facts,
  walk: text.exactOptional(),
  numbers: z.record(text, z.strictObject({ kind: quantityKind, value: z.number() })).exactOptional(),
  job: text.exactOptional(),
});
const shown = z.strictObject({
  id: text,
  ...seenAs,
  walk: text,
  isPast: z.literal(true).exactOptional(),
});
const pastState = z.strictObject({
  walk: walk.exactOptional(),
  parked: z.array(walk).exactOptional(),
  last: lastAnswer.exactOptional(),
  job: text.exactOptional(),
  units: z.enum(["us", "si"]).exactOptional(),
  language: z.enum(LANGUAGES).exactOptional(),
  marked: z.array(z.strictObject({ caution: text, about: text })).exactOptional(),
  entered: z.strictObject({ job: text, events: numbers, crew: numbers.exactOptional() }).exactOptional(),
});

/** What a conversation remembers, as it is stored. */
export const conversationState = z.strictObject({
  walk: walk.exactOptional(),
  parked: z.array(walk).exactOptional(),
  last: lastAnswer.exactOptional(),
  shown: z.array(shown).exactOptional(),
  job: text.exactOptional(),
  walksStarted: z.number().int().min(0),
  past: z.array(pastState),
});

/** Reads back what was stored of a conversation. */
export function parseConversation(json: string): Stored<ConversationState> {
  return parseStored(conversationState, json);
}
