import { loadLibrary } from "../../adapters/library/load-library.ts";
import { type Books, listNames } from "../../src/books/books.ts";
import { converse } from "../../src/conversation/converse.ts";
import { finish } from "../../src/conversation/finish.ts";
import { type ConversationState, EMPTY_STATE } from "../../src/conversation/state.ts";
import type { Answered } from "../../src/declaration/answer.ts";
import { runTopic } from "../../src/declaration/run-topic.ts";
import type { Card } from "../../src/messages/card.ts";
import type { Reader } from "../../src/messages/voice.ts";

export const library = await loadLibrary();

export interface Said {
  readonly card: Card;
  readonly state: ConversationState;
  readonly answered?: Answered;
}

/** What one message comes to, with the real topics and sentences and nothing stored. */
export function say(text: string, reader: Reader, books: Books, state: ConversationState = EMPTY_STATE): Said {
  const decision = converse({
    text,
    state,
    reader,
    newId: "w1",
    company: books.company,
    names: listNames(books),
    library,
  });
  if (decision.kind === "show") return { card: decision.card, state: decision.state };
  const topic = library.topics.get(decision.topic);
  if (topic === undefined) throw new Error(`no topic ${decision.topic}`);
  const answered = runTopic(topic, decision.facts, books, library.cautions, () => undefined);
  const shown = finish(decision, answered, library, listNames(books));
  return { card: shown.card, state: shown.state, answered };
}
