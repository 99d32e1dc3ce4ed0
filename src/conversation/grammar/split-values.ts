import type { UnitSystem } from "../../units/quantity-kinds.ts";
import type { QuantityToken } from "../../units/written-value.ts";
import { closestFacts } from "./fit-fact.ts";
import { matchWords } from "./lex-request.ts";
import type { Lexeme, PlainText, ValueLexeme } from "./lexeme.ts";
import { type Notebook, noteProblem } from "./notebook.ts";
import { isTwoValues } from "./read-pair.ts";
import type { Meaning, TopicWords } from "./topic-words.ts";

/**
 * Takes apart what was read as one value but is not one here: "50 in", where the topic has no inches but "in" names the
 * cold water, and "60 ft 3/4 in", a run and a pipe size. What can be meant either way is noted as ambiguous.
 */
export function splitValues(
  plain: PlainText,
  lexemes: readonly Lexeme[],
  words: TopicWords,
  units: UnitSystem,
  notebook: Notebook,
): readonly Lexeme[] {
  return lexemes.flatMap((lexeme, index): readonly Lexeme[] => {
    if (lexeme.kind !== "value") return [lexeme];
    const whole = splitParts(lexeme, words, units, notebook);
    if (whole.length !== 1) return whole;
    return splitUnit(plain, lexeme, lexemes[index + 1], words, units, notebook);
  });
}

function splitParts(
  lexeme: ValueLexeme,
  words: TopicWords,
  units: UnitSystem,
  notebook: Notebook,
): readonly ValueLexeme[] {
  const { apart } = lexeme.token;
  if (apart === undefined) return [lexeme];
  const parts = apart.map((token): ValueLexeme => ({ kind: "value", token }));
  if (isTwoValues(lexeme.token, words)) return parts;
  const taken = parts.map((part) => naturalFacts(part, words, units));
  if (taken.some((facts) => facts.length === 0)) return [lexeme];
  noteProblem(notebook, { kind: "ambiguous", typed: lexeme.token.text, candidates: [...new Set(taken.flat())] });
  return [];
}

function naturalFacts(value: ValueLexeme, words: TopicWords, units: UnitSystem): readonly string[] {
  return closestFacts(words, value, units).flatMap(({ fact, fit }) => (fit.closeness === "natural" ? [fact] : []));
}

function splitUnit(
  plain: PlainText,
  lexeme: ValueLexeme,
  next: Lexeme | undefined,
  words: TopicWords,
  units: UnitSystem,
  notebook: Notebook,
): readonly Lexeme[] {
  const at = lexeme.token.unitAt;
  const phrase = at && matchWords(words, plain.folded, at.start);
  if (at === undefined || phrase?.end !== at.end) return [lexeme];
  const text = plain.text.slice(at.start, at.end);
  const fitting = closestFacts(words, lexeme, units).flatMap(({ fact, fit }) => (fit.isInRange ? [fact] : []));
  const bare: ValueLexeme = { kind: "value", token: withoutUnit(lexeme.token, at.start) };
  if (fitting.length === 0) {
    return [bare, { kind: "word", start: at.start, end: at.end, text, meanings: phrase.meanings }];
  }
  // A capital letter is the unit: 30 A is never "30 to".
  const isUnit = text !== text.toLowerCase();
  const named = phrase.meanings.flatMap((meaning) => (mayNameHere(meaning, next) ? [meaning] : []));
  if (isUnit || named.length === 0 || named.some(({ fact }) => fitting.includes(fact))) return [lexeme];
  // A word before the next value says nothing of this one: "30 a 208V" is amperes, or something else "to 208 V".
  const candidates = [...fitting, ...named.flatMap(({ as, fact }) => (as === "before" ? [] : [fact]))];
  noteProblem(notebook, { kind: "ambiguous", typed: lexeme.token.text, candidates });
  return [];
}

function mayNameHere(
  meaning: Meaning,
  next: Lexeme | undefined,
): meaning is Extract<Meaning, { readonly as: "fact" | "before" | "after" }> {
  if (meaning.as === "before") return next?.kind === "value";
  return meaning.as === "fact" || meaning.as === "after";
}

function withoutUnit(token: QuantityToken, unitStart: number): QuantityToken {
  const { start, value } = token;
  const text = token.text.slice(0, unitStart - start).trim();
  const bare = value.form === "one" ? { form: "one" as const, number: value.number } : value;
  return { start, end: start + text.length, text, value: bare };
}
