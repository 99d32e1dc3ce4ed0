import type { UnitSystem } from "../../units/quantity-kinds.ts";
import { closestFacts, type FittingFact, factsByName, fitFact, narrowToRange } from "./fit-fact.ts";
import type { ValueLexeme } from "./lexeme.ts";
import type { NamedValue } from "./name-values.ts";
import { isFull, type Notebook, noteFact, noteProblem } from "./notebook.ts";
import type { TopicWords } from "./topic-words.ts";

/**
 * Notes the values whose fact is named beside them: full words first, then words that several facts share, which go to
 * the one still open, then little words, which say nothing more when their fact was told already.
 * @returns the values that were settled, well or badly
 */
export function placeNamed(
  named: readonly NamedValue[],
  words: TopicWords,
  units: UnitSystem,
  notebook: Notebook,
): ReadonlySet<ValueLexeme> {
  const certain = named.filter(({ facts, isFullWord }) => isFullWord && facts.length === 1);
  const shared = named.filter(({ facts, isFullWord }) => isFullWord && facts.length > 1);
  const settled = new Set<ValueLexeme>([...certain, ...shared].map(({ value }) => value));
  for (const one of [...certain, ...shared]) placeOne(one, words, units, notebook);
  const little = named.filter(({ isFullWord, facts }) => !isFullWord && facts.some((fact) => !notebook.told.has(fact)));
  for (const one of little) {
    placeOne(one, words, units, notebook);
    settled.add(one.value);
  }
  return settled;
}

function placeOne({ facts, value }: NamedValue, words: TopicWords, units: UnitSystem, notebook: Notebook): void {
  const open = facts.filter((fact) => !notebook.told.has(fact));
  const candidates = open.length > 0 ? open : facts;
  const [fact, ...others] = candidates;
  if (fact !== undefined && others.length === 0) takeValue(fact, value, words, units, notebook);
  else noteProblem(notebook, { kind: "ambiguous", typed: value.token.text, candidates });
}

/** Notes the very first number as the fact that the topic names for it, when nothing beside the number says otherwise. */
export function placeFirst(
  first: ValueLexeme | undefined,
  unnamed: readonly ValueLexeme[],
  words: TopicWords,
  units: UnitSystem,
  notebook: Notebook,
): readonly ValueLexeme[] {
  const fact = words.first;
  if (first === undefined || fact === undefined || first !== unnamed[0] || notebook.told.has(fact)) return unnamed;
  if (fitFact(words, fact, first, units) === undefined) return unnamed;
  takeValue(fact, first, words, units, notebook);
  return unnamed.slice(1);
}

interface OpenValue {
  readonly value: ValueLexeme;
  /** Facts of its kind, told or not. */
  readonly fitting: readonly FittingFact[];
}

/**
 * Notes values that nothing names: each goes to its fact when only one fact of its kind is still open. That may settle
 * the next, so it is done until nothing changes; the rest is ambiguous.
 * @returns the values that fit no fact at all
 */
export function placeUnnamed(
  unnamed: readonly ValueLexeme[],
  words: TopicWords,
  units: UnitSystem,
  notebook: Notebook,
): readonly ValueLexeme[] {
  const all = unnamed.map((value): OpenValue => ({ value, fitting: closestFacts(words, value, units) }));
  let open: readonly OpenValue[] = all.filter(({ fitting }) => fitting.length > 0);
  for (let before = -1; before !== open.length; ) {
    before = open.length;
    open = settle(open, words, units, notebook);
  }
  for (const one of open) if (!isFull(notebook)) noteOpen(one, words, units, notebook);
  return all.filter(({ fitting }) => fitting.length === 0).map(({ value }) => value);
}

/** Takes every value that has one open fact to itself; returns the others. */
function settle(
  open: readonly OpenValue[],
  words: TopicWords,
  units: UnitSystem,
  notebook: Notebook,
): readonly OpenValue[] {
  const claims = open.map(({ fitting }) => onlyFact(openFacts(fitting, words, notebook)));
  return open.filter(({ value }, index) => {
    const fact = claims[index];
    if (fact === undefined || claims.indexOf(fact) !== claims.lastIndexOf(fact)) return true;
    takeValue(fact, value, words, units, notebook);
    return false;
  });
}

function onlyFact(facts: readonly string[]): string | undefined {
  return facts.length === 1 ? facts[0] : undefined;
}

function openFacts(fitting: readonly FittingFact[], words: TopicWords, notebook: Notebook): readonly string[] {
  return fitting.flatMap(({ fact }) =>
    notebook.told.has(fact) || words.facts[fact]?.byNameOnly === true ? [] : [fact],
  );
}

/** Asks which fact a value is; where only one could take it and that one is told already, it was said twice. */
function noteOpen({ value, fitting }: OpenValue, words: TopicWords, units: UnitSystem, notebook: Notebook): void {
  const byName = factsByName(words, value, units);
  const all = [...fitting, ...byName.filter(({ fact }) => fitting.every((other) => other.fact !== fact))];
  const open = all.filter(({ fact }) => !notebook.told.has(fact));
  const [only, ...others] = all;
  const isByName = only !== undefined && words.facts[only.fact]?.byNameOnly === true;
  if (only !== undefined && others.length === 0 && !isByName) noteProblem(notebook, { kind: "twice", fact: only.fact });
  else {
    const candidates = narrowToRange(open.length > 0 ? open : fitting);
    noteProblem(notebook, { kind: "ambiguous", typed: value.token.text, candidates });
  }
}

function takeValue(fact: string, value: ValueLexeme, words: TopicWords, units: UnitSystem, notebook: Notebook): void {
  const typed = value.token.text;
  const fit = fitFact(words, fact, value, units);
  if (fit?.value !== undefined) noteFact(notebook, fact, fit.value, typed, fit.readAs);
  else noteProblem(notebook, { kind: "bad-value", fact, typed, because: "two-readings" });
}
