import type { Span } from "./lex-request.ts";
import type { Lexeme, PlainText } from "./lexeme.ts";
import { type Notebook, noteFact } from "./notebook.ts";
import type { TopicWords } from "./topic-words.ts";

/** The fact of a topic that takes what somebody says in their own words, if it has one. */
export function ownWordsFact({ facts }: Pick<TopicWords, "facts">): string | undefined {
  return Object.keys(facts).find((fact) => facts[fact]?.type === "text" && facts[fact]?.unlisted !== true);
}

/** Notes what is left of a request, without the topic's word and its pairs, as somebody's own words. */
export function noteOwnWords(
  { text }: PlainText,
  lexemes: readonly Lexeme[],
  topic: Span | undefined,
  fact: string,
  notebook: Notebook,
): void {
  const pairs = lexemes.flatMap((lexeme): Span[] => (lexeme.kind === "pair" ? [lexeme] : []));
  const read = [...(topic ? [topic] : []), ...pairs].sort((a, b) => a.start - b.start);
  let at = 0;
  let left = "";
  for (const { start, end } of read) {
    left += ` ${text.slice(at, start)}`;
    at = Math.max(at, end);
  }
  const words = `${left} ${text.slice(at)}`.replace(/\s+/g, " ").replace(/^[\s,;:.]+|[\s,;:]+$/g, "");
  if (/[\p{L}\p{N}]/u.test(words) && !notebook.told.has(fact)) noteFact(notebook, fact, words, words);
}
