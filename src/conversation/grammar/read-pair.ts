import type { FactSpec } from "../../declaration/facts.ts";
import { endsWord, matchPhrase } from "../../units/phrase-book.ts";
import { readQuantityAt, startsValue } from "../../units/read-quantity.ts";
import type { QuantityToken } from "../../units/written-value.ts";
import { fitFact } from "./fit-fact.ts";
import { matchName } from "./known-names.ts";
import type { PlainText } from "./lexeme.ts";
import { readDay } from "./read-day.ts";
import { decimalMark, type TypedOptions } from "./read-typed.ts";
import type { Meaning, TopicWords } from "./topic-words.ts";

export interface PairValue {
  readonly text: string;
  readonly end: number;
}

const QUOTED = /"([^"\n]*)"|'([^'\n]*)'(?![\p{L}\d])/uy;
const TO_GAP = /[^ ,;\n()[\]?!|]*/y;
const NAME_ENDS = ",;\n";
const KEY = /[\p{L}\p{N}_]+ ?=/uy;
/** A word of a fact ends a name when a value follows it: "model HX 50 tank 80". */
const VALUE_FOLLOWS = / ?[=:]? ?[$-]?\.?\d/y;

/** Reads what stands behind the name of a fact and its equals sign: as much as that kind of fact takes. */
export function readPairValue(
  plain: PlainText,
  at: number,
  facts: readonly string[],
  words: TopicWords,
  options: TypedOptions,
): PairValue {
  const start = plain.folded.charAt(at) === " " ? at + 1 : at;
  const quoted = matchAt(QUOTED, plain.text, start);
  if (quoted) return { text: (quoted[1] ?? quoted[2] ?? "").trim(), end: start + quoted[0].length };
  const types = facts.map((fact) => words.facts[fact]?.type);
  if (types.includes("text")) {
    const isShort = facts.every((fact) => isShortText(words.facts[fact]));
    const end = endOfText(plain.folded, start, (at) => isShort && endsShortText(plain.folded, at, words, options));
    return { text: plain.text.slice(start, end).trim(), end };
  }
  const end = types.every((type) => type === "name")
    ? endOfName(plain, start, words, options)
    : (endOfDay(plain, start, types, options) ??
      endOfQuantity(plain, start, facts, words, options) ??
      endOfWords(plain, start, words));
  return { text: plain.text.slice(start, end).trim(), end };
}

/** Own words go on to the next key, what else may end them, or the end of the line. */
function endOfText(folded: string, start: number, endsAt: (at: number) => boolean): number {
  for (let at = start; at < folded.length; at++) {
    if (folded.charAt(at) === "\n") return at;
    const beginsWord = at === start || " ,;".includes(folded.charAt(at - 1));
    if (beginsWord && (matchAt(KEY, folded, at) || (at > start && endsAt(at)))) return at;
  }
  return folded.length;
}

function isShortText(spec: FactSpec | undefined): boolean {
  return spec?.type === "text" && spec.isShort === true;
}

function endsShortText(folded: string, at: number, words: TopicWords, { names }: TypedOptions): boolean {
  if (matchName(folded, at, words, names) !== undefined) return true;
  const meanings = matchPhrase(words.book, folded, at, endsWord)?.meanings ?? [];
  return meanings.some((meaning) => meaning.as === "fact" && words.facts[meaning.fact]?.type === "flag");
}

/** What stands behind the word of a fact that takes the rest, up to the next word of a fact with an equals sign. */
export function readRest(
  { text, folded }: PlainText,
  at: number,
  [fact = ""]: readonly string[],
  words: TopicWords,
): PairValue | undefined {
  const spec = words.facts[fact];
  if (spec?.type !== "text" || spec.takesRest !== true) return undefined;
  let end = at;
  while (end < folded.length && folded.charAt(end) !== "\n" && !(end > at && startsKey(folded, end, words))) end++;
  const rest = text.slice(at, end).replace(/^[\s:,=-]+|[\s,;]+$/g, "");
  return /[\p{L}\p{N}]/u.test(rest) ? { text: rest, end } : undefined;
}

/** True for a word of a fact with an equals sign. */
function startsKey(folded: string, at: number, { book }: TopicWords): boolean {
  if (!" ,;".includes(folded.charAt(at - 1)) || folded.charAt(at) === " ") return false;
  const phrase = matchPhrase(book, folded, at, (text, end) => /^ ?=/.test(text.slice(end, end + 2)));
  return phrase?.meanings.some(({ as }) => as === "fact") === true;
}

function endOfDay(
  { folded }: PlainText,
  start: number,
  types: readonly (string | undefined)[],
  { today }: TypedOptions,
): number | undefined {
  return types.includes("day") ? readDay(folded, start, today)?.end : undefined;
}

function endOfQuantity(
  plain: PlainText,
  start: number,
  facts: readonly string[],
  words: TopicWords,
  { language, units }: TypedOptions,
): number | undefined {
  const { text, folded } = plain;
  if (!startsValue(folded, start)) return undefined;
  const token = readQuantityAt(text, folded, start, { decimal: decimalMark(language), isAlone: false });
  if (token === undefined) return undefined;
  if (isTwoValues(token, words)) return token.apart?.[0].end ?? token.end;
  // "cold=50 in": what would be inches is a word here, because no inches are wanted.
  const isUnit = facts.some((fact) => fitFact(words, fact, { kind: "value", token }, units) !== undefined);
  if (token.unitAt && !isUnit && matchPhrase(words.book, folded, token.unitAt.start, endsBeforeGap))
    return token.unitAt.start;
  // What stands at the value without a gap belongs to it, wrong as it may be: tank=80galx.
  return token.end + (matchAt(TO_GAP, text, token.end)?.[0].length ?? 0);
}

/** True when "60 ft 3/4 in" is a length and a pipe size here, not a length of feet and inches. */
export function isTwoValues(token: QuantityToken, words: TopicWords): boolean {
  const second = token.apart?.[1].value;
  const takesInches = Object.values(words.facts).some(
    (spec) => spec.type === "quantity" && spec.quantity === "dimension" && spec.byNameOnly !== true,
  );
  const hasSizes = words.numbered.some(({ unit }) => unit === undefined || unit === "in");
  return second?.form === "one" && second.number.isFraction === true && second.number.value < 1
    ? takesInches || hasSizes
    : false;
}

function endOfWords(plain: PlainText, start: number, words: TopicWords): number {
  const { text, folded } = plain;
  const isValue = ({ as }: Meaning) => as === "option" || as === "yes" || as === "no" || as === "not";
  const phrase = matchPhrase(words.book, folded, start, endsBeforeGap);
  if (phrase?.meanings.some(isValue)) return phrase.end;
  return start + (matchAt(TO_GAP, text, start)?.[0].length ?? 0);
}

function endsBeforeGap(folded: string, end: number): boolean {
  const next = folded.charAt(end);
  return next === "" || " ,;.\n".includes(next);
}

function endOfName(plain: PlainText, start: number, words: TopicWords, options: TypedOptions): number {
  const { folded } = plain;
  const known = matchName(folded, start, words, options.names);
  if (known) return known.end;
  for (let at = start; at < folded.length; at++) {
    if (NAME_ENDS.includes(folded.charAt(at))) return at;
    const startsWord = at === start || folded.charAt(at - 1) === " ";
    if (at > start && startsWord && (startsNextFact(folded, at, words) || startsMeasure(plain, at, words, options)))
      return at;
  }
  return folded.length;
}

function startsNextFact(folded: string, at: number, words: TopicWords): boolean {
  if (matchAt(KEY, folded, at)) return true;
  const phrase = matchPhrase(words.book, folded, at, endsBeforeValue);
  return phrase?.meanings.some(({ as }) => as === "fact" || as === "before") === true;
}

/** True for a number with a unit that a fact here has: "model HX 50 125F" names the HX 50, and 125 °F. */
function startsMeasure(
  { text, folded }: PlainText,
  at: number,
  words: TopicWords,
  { language, units }: TypedOptions,
): boolean {
  if (!startsValue(folded, at)) return false;
  const token = readQuantityAt(text, folded, at, { decimal: decimalMark(language), isAlone: false });
  if (token?.value.form !== "one" || token.value.unit === undefined) return false;
  return Object.keys(words.facts).some(
    (fact) => fitFact(words, fact, { kind: "value", token }, units)?.closeness === "natural",
  );
}

function endsBeforeValue(folded: string, end: number): boolean {
  return matchAt(VALUE_FOLLOWS, folded, end) !== undefined;
}

function matchAt(pattern: RegExp, text: string, at: number): RegExpExecArray | undefined {
  pattern.lastIndex = at;
  return pattern.exec(text) ?? undefined;
}
