import { endsWord, matchPhrase, type PhraseMatch } from "../../units/phrase-book.ts";
import { readQuantityAt, startsValue } from "../../units/read-quantity.ts";
import { isUnitWord } from "../../units/read-unit.ts";
import type { QuantityToken } from "../../units/written-value.ts";
import { type KnownName, matchName } from "./known-names.ts";
import type { Lexeme, PlainText } from "./lexeme.ts";
import { readDay } from "./read-day.ts";
import { readPairValue, readRest } from "./read-pair.ts";
import { decimalMark, type TypedOptions } from "./read-typed.ts";
import type { Meaning, TopicWords } from "./topic-words.ts";

/** A stretch of the text that is already understood, such as the topic's word. */
export interface Span {
  readonly start: number;
  readonly end: number;
}
interface Step {
  readonly end: number;
  readonly lexeme?: Lexeme;
}

const BREAK: Lexeme = { kind: "break" };
const BREAK_SIGNS = ",;()[]{}?!¿¡\n|";
const WORD = /[\p{L}\p{N}\p{M}_]+(?:['/&-][\p{L}\p{N}\p{M}_]+)*/uy;
const KEY_SIGN = / ?= ?| ?: /y;
const TO_GAP = /[^ ,;\n()[\]?!|]*/y;

/** Cuts a request into values, known words, key=value pairs, unknown words and breaks; fillers are dropped. */
export function lexRequest(
  plain: PlainText,
  words: TopicWords,
  options: TypedOptions,
  done: Span | undefined,
): readonly Lexeme[] {
  const lexemes: Lexeme[] = [];
  for (let at = 0; at < plain.text.length; ) {
    const step = done?.start === at ? { end: done.end } : stepAt(plain, at, words, options);
    if (step.lexeme) lexemes.push(step.lexeme);
    at = Math.max(step.end, at + 1);
  }
  return lexemes;
}

function stepAt(plain: PlainText, at: number, words: TopicWords, options: TypedOptions): Step {
  const { folded } = plain;
  const character = folded.charAt(at);
  if (character === " ") return { end: at + 1 };
  if (BREAK_SIGNS.includes(character) || isFullStop(folded, at)) return { end: at + 1, lexeme: BREAK };
  const phrase = matchWords(words, folded, at);
  const value = readDayValue(plain, at, words, options) ?? readValue(plain, at, options);
  const name = matchName(folded, at, words, options.names);
  if (name && name.end > Math.max(phrase?.end ?? 0, rivalEnd(value, words))) return stepName(plain, at, name);
  if (value && isLonger(value, phrase)) return { end: value.end, lexeme: { kind: "value", ...value } };
  return phrase ? stepPhrase(plain, at, phrase, words, options) : stepUnknown(plain, at, words);
}

/** Where a value ends that a name must outdo; a topic without quantities takes a bare number for a name: "job 1001". */
function rivalEnd(value: FoundValue | undefined, { facts }: TopicWords): number {
  const isMeant = value?.day !== undefined || Object.values(facts).some(({ type }) => type === "quantity");
  return isMeant ? (value?.end ?? 0) : 0;
}

/** A name of the books needs no word before it. */
function stepName({ text }: PlainText, at: number, { fact, end }: KnownName): Step {
  const typed = text.slice(at, end);
  return { end, lexeme: { kind: "pair", key: typed, facts: [fact], text: typed, start: at, end } };
}

/** True when a value says more than the phrase that begins at the same place: "3/4" is a value, "12/2" a cable. */
function isLonger({ end, token, day }: FoundValue, phrase: PhraseMatch<Meaning> | undefined): boolean {
  if (phrase === undefined || end > phrase.end) return true;
  return end === phrase.end && (day !== undefined || token.value.form !== "unreadable");
}

/** Finds the longest known phrase at a place; a plural s may follow it. */
export function matchWords(words: TopicWords, folded: string, at: number): PhraseMatch<Meaning> | undefined {
  const match = matchPhrase(words.book, folded, at, endsWordOrPlural);
  if (match === undefined) return undefined;
  return folded.charAt(match.end) === "s" && !endsWord(folded, match.end) ? { ...match, end: match.end + 1 } : match;
}

function endsWordOrPlural(folded: string, end: number): boolean {
  return endsWord(folded, end) || (folded.charAt(end) === "s" && endsWord(folded, end + 1));
}

/** The sign that makes a key of the word before it, or nothing. */
function keySignAt(folded: string, at: number): string | undefined {
  KEY_SIGN.lastIndex = at;
  const sign = KEY_SIGN.exec(folded)?.[0];
  if (sign !== undefined) return sign;
  return folded.charAt(at) === ":" && folded.charAt(at + 1) !== "/" ? ":" : undefined;
}

interface FoundValue {
  readonly end: number;
  readonly token: QuantityToken;
  readonly day?: string;
}

function readValue({ text, folded }: PlainText, at: number, options: TypedOptions): FoundValue | undefined {
  if (!startsValue(folded, at)) return undefined;
  const token = readQuantityAt(text, folded, at, { decimal: decimalMark(options.language), isAlone: false });
  return token && { end: token.end, token };
}

function readDayValue(
  { text, folded }: PlainText,
  at: number,
  words: TopicWords,
  { today }: TypedOptions,
): FoundValue | undefined {
  if (!Object.values(words.facts).some((spec) => spec.type === "day")) return undefined;
  const match = readDay(folded, at, today);
  if (match === undefined) return undefined;
  const { day, end } = match;
  const token: QuantityToken = { start: at, end, text: text.slice(at, end), value: { form: "unreadable" } };
  return { end, token, day };
}

function stepPhrase(
  plain: PlainText,
  at: number,
  phrase: PhraseMatch<Meaning>,
  words: TopicWords,
  options: TypedOptions,
): Step {
  const { meanings, end } = phrase;
  const text = plain.text.slice(at, end);
  const facts = meanings.flatMap((meaning) => (meaning.as === "fact" ? [meaning.fact] : []));
  const sign = facts.length > 0 ? keySignAt(plain.folded, end) : undefined;
  if (sign !== undefined) {
    const value = readPairValue(plain, end + sign.length, facts, words, options);
    return { end: value.end, lexeme: { kind: "pair", key: text, facts, start: at, ...value } };
  }
  const names = facts.filter((fact) => words.facts[fact]?.type === "name");
  if (names.length > 0 && names.length === facts.length) {
    const value = readPairValue(plain, end + 1, names, words, options);
    return { end: value.end, lexeme: { kind: "pair", key: text, facts: names, start: at, ...value } };
  }
  const rest = facts.length === 1 ? readRest(plain, end, facts, words) : undefined;
  if (rest !== undefined) return { end: rest.end, lexeme: { kind: "pair", key: text, facts, start: at, ...rest } };
  // "call back" with nothing behind it is what is wanted; what the customer said is asked for.
  const wanted = meanings.filter(({ as }) => as === "option");
  if (wanted.length > 0 && facts.length === 1 && takesRest(words, facts))
    return { end, lexeme: { kind: "word", start: at, end, text, meanings: wanted } };
  if (meanings.every(({ as }) => as === "filler" || as === "yes")) return { end };
  if (meanings.every(({ as }) => as === "filler" || as === "yes" || as === "break")) return { end, lexeme: BREAK };
  return { end, lexeme: { kind: "word", start: at, end, text, meanings } };
}

function takesRest({ facts }: TopicWords, [fact = ""]: readonly string[]): boolean {
  const spec = facts[fact];
  return spec?.type === "text" && spec.takesRest === true;
}

function stepUnknown({ text, folded }: PlainText, at: number, words: TopicWords): Step {
  WORD.lastIndex = at;
  const single = WORD.exec(text)?.[0];
  if (single === undefined) return { end: at + 1 };
  const phrase = matchPhrase(words.elsewhere, folded, at, endsWordOrPlural);
  const end = Math.max(at + single.length, phrase?.end ?? 0);
  const word = text.slice(at, end);
  // A unit without a number: "how many feet".
  if (isUnitWord(word)) return { end };
  const sign = /^ ?=/.exec(folded.slice(end, end + 2))?.[0];
  if (sign === undefined) return { end, lexeme: { kind: "unknown", word, start: at, isKey: false } };
  TO_GAP.lastIndex = end + sign.length + (folded.charAt(end + sign.length) === " " ? 1 : 0);
  const value = TO_GAP.exec(text)?.[0] ?? "";
  return { end: TO_GAP.lastIndex + value.length, lexeme: { kind: "unknown", word, start: at, isKey: true } };
}

function isFullStop(folded: string, at: number): boolean {
  const next = folded.charAt(at + 1);
  return folded.charAt(at) === "." && (next === "" || next === " " || next === "\n");
}
