import fc from "fast-check";
import { expect, expectTypeOf, test } from "vitest";
import type { z } from "zod";
import { parseCard, type storedCard } from "../../src/boundary/stored-card.ts";
import { type conversationState, parseConversation } from "../../src/boundary/stored-conversation.ts";
import { type ConversationState, EMPTY_STATE } from "../../src/conversation/state.ts";
import type { Card } from "../../src/messages/card.ts";
import { SAMPLE_CARDS } from "../support/sample-cards.ts";
import { stateWith } from "../support/store-samples.ts";

type DeepReadonly<T> = T extends readonly (infer E)[]
  ? readonly DeepReadonly<E>[]
  : T extends object
    ? { readonly [K in keyof T]: DeepReadonly<T[K]> }
    : T;

test("what is read back has exactly the parts of a state and of a card (held by the compiler)", () => {
  expectTypeOf<DeepReadonly<z.infer<typeof conversationState>>>().toEqualTypeOf<DeepReadonly<ConversationState>>();
  expectTypeOf<DeepReadonly<z.infer<typeof storedCard>>>().toEqualTypeOf<DeepReadonly<Card>>();
  expect(parseConversation(JSON.stringify(EMPTY_STATE))).toEqual({ ok: true, value: EMPTY_STATE });
});

test.each(Object.entries(SAMPLE_CARDS))("the card %s is read back as it was", (_name, card) => {
  expect(parseCard(JSON.stringify(card))).toEqual({ ok: true, value: card });
});

test.each([stateWith(), stateWith("w1"), EMPTY_STATE])("a state is read back as it was (%#)", (state) => {
  expect(parseConversation(JSON.stringify(state))).toEqual({ ok: true, value: state });
});

test.each([
  { json: "", reason: "is no JSON" },
  { json: "null", reason: /^: Invalid input: expected object/ },
  { json: `{"walksStarted":0}`, reason: /^past: / },
  { json: `{"walksStarted":-1,"past":[]}`, reason: /^walksStarted: / },
  { json: `{"walksStarted":0,"past":[],"future":[]}`, reason: /Unrecognized key: "future"/ },
  { json: `{"walksStarted":0,"past":[{"units":"metric"}]}`, reason: /^past\.0\.units: / },
])("$json is no state of a conversation", ({ json, reason }) => {
  expect(parseConversation(json)).toEqual({ ok: false, reason: expect.stringMatching(reason) });
});

test("no text at all makes the readers throw", () => {
  const anything = fc.oneof(
    fc.string(),
    fc.json(),
    fc.anything().map((value) => JSON.stringify(value) ?? ""),
  );
  fc.assert(
    fc.property(anything, (json) => {
      expect(typeof parseCard(json).ok).toBe("boolean");
      expect(typeof parseConversation(json).ok).toBe("boolean");
    }),
  );
});
