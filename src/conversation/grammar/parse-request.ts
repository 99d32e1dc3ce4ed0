import type { FactSpec } from "../../declaration/facts.ts";
import type { Library } from "../../library.ts";
import { foldText } from "../../units/fold-text.ts";
import { normaliseText } from "../../units/normalise-text.ts";
import { endsWord, matchPhrase } from "../../units/phrase-book.ts";
import { findTopic, missTopic } from "./find-topic.ts";
import { lexRequest, type Span } from "./lex-request.ts";
import type { Lexeme, PlainText, ValueLexeme } from "./lexeme.ts";
import { nameAmounts } from "./name-amounts.ts";
import { nameValues } from "./name-values.ts";
import { isBareNumber, notePairs, noteStrays, noteUnknownWords } from "./note-problems.ts";
import { closeNotebook, type Notebook, openNotebook } from "./notebook.ts";
import type { ParsedRequest, RequestOptions } from "./parsed-request.ts";
import { placeFirst, placeNamed, placeUnnamed } from "./place-values.ts";
import { readFlagsAndOptions } from "./read-flags.ts";
import { noteOwnWords, ownWordsFact } from "./read-own-words.ts";
import { splitValues } from "./split-values.ts";
import { type TopicWords, wordsOf } from "./topic-words.ts";

export type { BadValueReason, ParsedRequest, RequestOptions, RequestProblem } from "./parsed-request.ts";

/**
 * Reads one message as a request: `key=value` pairs and loose English or Spanish of the trade, in any order, with or
 * without accents. What is not certain becomes a problem, never a guess.
 * @param text the message as it came from the keyboard
 */
export function parseRequest(text: string, library: Library, options: RequestOptions): ParsedRequest {
  const normal = normaliseText(text);
  const plain: PlainText = { text: normal, folded: foldText(normal) };
  const found = findTopic(plain.folded, library, options.topic);
  if (found === undefined) return missTopic(plain.folded, plain.text, library, options.language);
  const words = wordsOf(library, found.topic);
  const done = isFlag(plain, words, found.span) ? undefined : found.span;
  const lexemes = nameAmounts(lexRequest(plain, words, options, done), words);
  const notebook = openNotebook();
  const ownWords = ownWordsFact(words);
  if (ownWords === undefined) readLexemes(plain, lexemes, words, options, notebook);
  else {
    // What was said stands first: an answer that comes with it answers it.
    noteOwnWords(plain, lexemes, found.span, ownWords, notebook);
    notePairs(lexemes, words, options, notebook);
  }
  return closeNotebook(notebook, found.topic.id);
}

/** The word that opened a topic may say more: "jobs" are many. */
function isFlag({ folded }: PlainText, { book, facts }: TopicWords, span: Span | undefined): boolean {
  const match = span && matchPhrase(book, folded, span.start, endsWord);
  return match?.meanings.some((meaning) => meaning.as === "fact" && isSilentFlag(facts[meaning.fact])) === true;
}

function isSilentFlag(spec: FactSpec | undefined): boolean {
  return spec?.type === "flag" && spec.unlisted === true;
}

function readLexemes(
  plain: PlainText,
  lexemes: readonly Lexeme[],
  words: TopicWords,
  options: RequestOptions,
  notebook: Notebook,
): void {
  const { units } = options;
  notePairs(lexemes, words, options, notebook);
  noteUnknownWords(lexemes, words, options.language, notebook);
  const split = splitValues(plain, lexemes, words, units, notebook);
  const values = split.flatMap((lexeme) => (lexeme.kind === "value" ? [lexeme] : []));
  const doubtful = findDoubtful(split);
  const named = nameValues(split, words, units);
  const placed = placeNamed(
    named.filter(({ value }) => !doubtful.has(value)),
    words,
    units,
    notebook,
  );
  readFlagsAndOptions(split, new Set(named.map(({ word }) => word)), words, notebook);
  const unnamed = values.filter((value) => !doubtful.has(value) && !placed.has(value));
  const left = placeFirst(values[0], unnamed, words, units, notebook);
  const strays = placeUnnamed(left, words, units, notebook);
  noteStrays(strays, split, words, units, notebook);
}

/** Bare numbers with an unknown word right behind them: "80 galons" may be anything until the word is known. */
function findDoubtful(lexemes: readonly Lexeme[]): ReadonlySet<ValueLexeme> {
  const doubtful = new Set<ValueLexeme>();
  for (const [index, lexeme] of lexemes.entries()) {
    const next = lexemes[index + 1];
    if (lexeme.kind !== "value" || next?.kind !== "unknown" || next.start > lexeme.token.end + 1) continue;
    if (isBareNumber(lexeme)) doubtful.add(lexeme);
  }
  return doubtful;
}
