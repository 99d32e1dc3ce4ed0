import type { FactSpec } from "../../declaration/facts.ts";
import { buildPhraseBook, type PhraseBook } from "../../units/phrase-book.ts";
import type { FactWords } from "./fact-words.ts";
import { type NumberedOption, numberOptions } from "./numbered-options.ts";

/** What a phrase may mean beside the value of a fact. */
export type FactMeaning =
  /** It names the fact. */
  | { readonly as: "fact"; readonly fact: string }
  /** A little word that names it only just before, or just after, its value. */
  | { readonly as: "before" | "after"; readonly fact: string }
  | { readonly as: "option"; readonly fact: string; readonly option: string };
export type PhraseEntry<M> = readonly [phrase: string, meaning: M];

/** A fact with every word for it, in both languages. */
export interface FactReader {
  readonly fact: string;
  readonly spec: FactSpec;
  readonly entries: readonly PhraseEntry<FactMeaning>[];
  readonly book: PhraseBook<FactMeaning>;
  readonly numbered: readonly NumberedOption[];
  /** True: the first bare number of a request is this fact. */
  readonly isFirst: boolean;
}

/** Signs that crews type for a little word. */
const SHORT_FORMS: Readonly<Record<string, readonly string[]>> = {
  at: ["@"],
  to: ["→", ">"],
  a: ["@", "→", ">"],
  with: ["w/"],
  con: ["c/"],
};

/** Gathers the words of a fact. */
export function makeFactReader(fact: string, spec: FactSpec, texts: readonly FactWords[]): FactReader {
  const named: FactMeaning = { as: "fact", fact };
  const little = (as: "before" | "after", words: readonly string[]): readonly PhraseEntry<FactMeaning>[] =>
    words.flatMap((word) => [word, ...(SHORT_FORMS[word] ?? [])]).map((word) => [word, { as, fact }] as const);
  const entries: readonly PhraseEntry<FactMeaning>[] = [
    [fact, named],
    ...texts.flatMap(({ label, words }) => [label, ...words].map((word) => [word, named] as const)),
    ...texts.flatMap(({ before, after }) => [...little("before", before ?? []), ...little("after", after ?? [])]),
    ...(spec.type === "choice" ? spec.options.flatMap((option) => optionEntries(fact, option, texts)) : []),
  ];
  return {
    fact,
    spec,
    entries,
    book: buildPhraseBook(entries),
    numbered: spec.type === "choice" ? numberOptions(fact, spec, texts) : [],
    isFirst: texts.some(({ first }) => first === true),
  };
}

function optionEntries(fact: string, option: string, texts: readonly FactWords[]): readonly PhraseEntry<FactMeaning>[] {
  const meaning: FactMeaning = { as: "option", fact, option };
  const said = texts.flatMap(({ options }) => options?.[option] ?? []);
  return [option, ...said.flatMap(({ label, words }) => [label, ...words])].map((word) => [word, meaning] as const);
}
