import type { Language } from "../../messages/language.ts";
import { fitQuantity } from "../../units/fit-quantity.ts";
import type { UnitSystem } from "../../units/quantity-kinds.ts";
import { unitSpellings } from "../../units/read-unit.ts";
import type { Lexeme, PairLexeme, ValueLexeme } from "./lexeme.ts";
import { knowWords, nearestWords } from "./nearest-words.ts";
import { type Notebook, noteFact, noteProblem } from "./notebook.ts";
import type { BadValueReason, RequestOptions } from "./parsed-request.ts";
import { readTyped } from "./read-typed.ts";
import type { TopicWords } from "./topic-words.ts";

/** Looking for near words takes longest, and nobody reads on after so many. */
const MOST_UNKNOWN = 5;
const UNIT_WORDS = knowWords(unitSpellings());

/** Notes every key=value pair; a key that several facts share goes to the only one that its value fits. */
export function notePairs(
  lexemes: readonly Lexeme[],
  words: TopicWords,
  options: RequestOptions,
  notebook: Notebook,
): void {
  for (const [index, pair] of lexemes.entries()) {
    if (pair.kind !== "pair" || pair.text === "") continue;
    const next = lexemes[index + 1];
    // "tank=80 galons": the unknown word is asked about first.
    if (next?.kind === "unknown" && next.start <= pair.end + 1 && isBareNumber(pair)) continue;
    notePair(pair, words, options, notebook);
  }
}

function notePair(pair: PairLexeme, words: TopicWords, options: RequestOptions, notebook: Notebook): void {
  const read = pair.facts.flatMap((fact) => {
    const reader = words.readers.get(fact);
    return reader ? [{ fact, typed: readTyped(pair.text, reader, options) }] : [];
  });
  const good = read.flatMap(({ fact, typed }) => (typed.ok ? [{ fact, typed }] : []));
  const [only, ...others] = good;
  if (only !== undefined && others.length === 0) {
    noteFact(notebook, only.fact, only.typed.value, pair.text, only.typed.readAs);
    return;
  }
  const [first] = read;
  if (only !== undefined || read.length > 1)
    noteProblem(notebook, { kind: "ambiguous", typed: `${pair.key}=${pair.text}`, candidates: pair.facts });
  else if (first !== undefined && !first.typed.ok)
    noteProblem(notebook, { kind: "bad-value", fact: first.fact, typed: pair.text, because: first.typed.problem });
}

/** True for a number without a unit, after which a unit may be misspelt. */
export function isBareNumber(lexeme: Lexeme | undefined): boolean {
  if (lexeme?.kind === "pair") return /\d$/.test(lexeme.text);
  const value = lexeme?.kind === "value" ? lexeme.token.value : undefined;
  return value?.form === "one" && value.unit === undefined;
}

/** Notes the words that are not known here, with known ones that look like them. */
export function noteUnknownWords(
  lexemes: readonly Lexeme[],
  words: TopicWords,
  language: Language,
  notebook: Notebook,
): void {
  const seen = new Set<string>();
  for (const [index, lexeme] of lexemes.entries()) {
    if (lexeme.kind !== "unknown" || seen.has(lexeme.word)) continue;
    if (seen.size === MOST_UNKNOWN) return;
    seen.add(lexeme.word);
    const before = lexemes[index - 1];
    const mayBeUnit = !lexeme.isKey && isBareNumber(before);
    const other: Language = language === "en" ? "es" : "en";
    const known = [...words.offered[language], ...(mayBeUnit ? UNIT_WORDS : []), ...words.offered[other]];
    noteProblem(notebook, { kind: "unknown-word", word: lexeme.word, nearest: nearestWords(lexeme.word, known) });
  }
}

/** Notes the values that fit nothing: wrong for the fact named beside them, or of no use here. */
export function noteStrays(
  strays: readonly ValueLexeme[],
  lexemes: readonly Lexeme[],
  words: TopicWords,
  units: UnitSystem,
  notebook: Notebook,
): void {
  const waiting = new Set<Lexeme>(strays);
  for (const [index, stray] of lexemes.entries()) {
    if (stray.kind !== "value" || !waiting.has(stray)) continue;
    const typed = stray.token.text;
    const fact = factBeside(lexemes[index - 1], words, notebook) ?? factBeside(lexemes[index + 1], words, notebook);
    if (fact === undefined) noteProblem(notebook, { kind: "ambiguous", typed, candidates: [] });
    else noteProblem(notebook, { kind: "bad-value", fact, typed, because: whyNot(stray, fact, words, units) });
  }
}

function factBeside(lexeme: Lexeme | undefined, words: TopicWords, notebook: Notebook): string | undefined {
  if (lexeme?.kind !== "word") return undefined;
  return lexeme.meanings.flatMap((meaning) => {
    const isOpen = meaning.as === "fact" && !notebook.told.has(meaning.fact);
    return isOpen && words.facts[meaning.fact]?.type !== "flag" ? [meaning.fact] : [];
  })[0];
}

function whyNot({ token }: ValueLexeme, fact: string, words: TopicWords, units: UnitSystem): BadValueReason {
  const spec = words.facts[fact];
  if (spec?.type === "choice") return "unknown-option";
  if (spec?.type === "day") return "not-a-day";
  if (spec?.type !== "quantity") return "left-over";
  const fit = fitQuantity(token, spec.quantity, units);
  return fit.ok ? "two-readings" : fit.problem;
}
