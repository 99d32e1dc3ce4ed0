import { loadLibrary } from "../../adapters/library/load-library.ts";
import { openHighsSolver } from "../../adapters/solver/highs-solver.ts";
import { type Books, listNames } from "../../src/books/books.ts";
import { converse } from "../../src/conversation/converse.ts";
import { finish } from "../../src/conversation/finish.ts";
import { type ConversationState, EMPTY_STATE } from "../../src/conversation/state.ts";
import type { Turn } from "../../src/conversation/turn.ts";
import type { Answered } from "../../src/declaration/answer.ts";
import { runTopic } from "../../src/declaration/run-topic.ts";
import type { Card } from "../../src/messages/card.ts";
import type { Reader } from "../../src/messages/voice.ts";

export const library = await loadLibrary();
const solve = await openHighsSolver();

export interface Said {
  readonly card: Card;
  readonly state: ConversationState;
  readonly answered?: Answered;
}

/** What one message comes to, with the real topics and sentences and nothing stored. */
export function say(
  text: string,
  reader: Reader,
  books: Books,
  state: ConversationState = EMPTY_STATE,
  more: Pick<Turn, "record"> = {},
): Said {
  const decision = converse({
    ...more,
    text,
    state,
    reader,
    newId: "w1",
    company: books.company,
    names: listNames(books),
    books,
    library,
  });
  if (decision.kind === "show") return { card: decision.card, state: decision.state };
  const topic = library.topics.get(decision.topic);
  if (topic === undefined) throw new Error(`no topic ${decision.topic}`);
  const answered = runTopic(
    topic,
    decision.facts,
    topic.uses === "office" ? { ...books, solve } : books,
    library.cautions,
    () => undefined,
  );
  const shown = finish(decision, answered, library, books);
  return { card: shown.card, state: shown.state, answered };
}
