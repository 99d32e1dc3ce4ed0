import type { NameLists } from "../../books/books.ts";
import type { ChoiceFact, FactValue, QuantityFact } from "../../declaration/facts.ts";
import type { Language } from "../../messages/language.ts";
import { foldText } from "../../units/fold-text.ts";
import { normaliseText } from "../../units/normalise-text.ts";
import { takeQuantity } from "../../units/parse-quantity.ts";
import { buildPhraseBook, endsWord, matchPhrase, type PhraseBook } from "../../units/phrase-book.ts";
import type { UnitSystem } from "../../units/quantity-kinds.ts";
import type { DecimalMark } from "../../units/read-number.ts";
import { readQuantityAt, startsValue } from "../../units/read-quantity.ts";
import type { UnitId } from "../../units/unit-table.ts";
import type { FactReader } from "./fact-reader.ts";
import type { PlainText } from "./lexeme.ts";
import { optionsNamed } from "./numbered-options.ts";
import type { BadValueReason } from "./parsed-request.ts";
import { readDay } from "./read-day.ts";
import { FILLERS, NEGATIONS, NO, OPTION_WORDS, YES } from "./trade-words-table.ts";

export interface TypedOptions {
  readonly language: Language;
  readonly units: UnitSystem;
  readonly names?: NameLists;
  /** The day where the company is, YYYY-MM-DD; without it only dates are days. */
  readonly today?: string;
}
/** The value of one fact, or why the text is none. */
export type TypedValue =
  | { readonly ok: true; readonly value: FactValue; readonly readAs?: UnitId }
  | { readonly ok: false; readonly problem: BadValueReason };

type Little = "filler" | "yes" | "no";
const LITTLE_WORDS: PhraseBook<Little> = buildPhraseBook<Little>([
  ...FILLERS.map((word) => [word, "filler"] as const),
  ...YES.map((word) => [word, "yes"] as const),
  ...[...NO, ...NEGATIONS].map((word) => [word, "no"] as const),
]);
const OPTION_PREFIXES: PhraseBook<"option"> = buildPhraseBook(OPTION_WORDS.map((word) => [word, "option"] as const));
const BETWEEN = " ,.;:!?¡¿~≈=()";
const OPTION_NUMBER = /^ ?(\d{1,2}) ?[).:]?$/;
const QUOTES = /^(["'])(.*)\1$/s;

/** How people who read this language mark decimals. */
export function decimalMark(language: Language): DecimalMark {
  return language === "es" ? "comma" : "point";
}

/** Reads a text that is the value of one fact, with the fact's own words and little words around it or not. */
export function readTyped(text: string, reader: FactReader, options: TypedOptions): TypedValue {
  const normal = normaliseText(text);
  const plain: PlainText = { text: normal, folded: foldText(normal) };
  const { spec } = reader;
  switch (spec.type) {
    case "quantity":
      return readQuantity(plain, spec, reader, options);
    case "choice":
      return readChoice(plain, spec, reader);
    case "flag":
      return readFlag(plain, reader);
    case "day":
      return readDayOf(plain, reader, options.today);
    case "text":
    case "name": {
      const name = normal.replace(QUOTES, "$2").trim();
      return name === "" ? { ok: false, problem: "unknown-option" } : { ok: true, value: name };
    }
  }
}

function readQuantity(plain: PlainText, spec: QuantityFact, reader: FactReader, options: TypedOptions): TypedValue {
  const { text, folded } = plain;
  const at = skipWords(folded, 0, reader);
  const isValue = startsValue(folded, at);
  const token = isValue
    ? readQuantityAt(text, folded, at, { decimal: decimalMark(options.language), isAlone: true })
    : undefined;
  if (token === undefined) return { ok: false, problem: "not-a-number" };
  if (skipWords(folded, token.end, reader) < folded.length) return { ok: false, problem: "left-over" };
  return takeQuantity(token, spec.quantity, { units: options.units, range: spec });
}

function readChoice(plain: PlainText, spec: ChoiceFact, reader: FactReader): TypedValue {
  const { text, folded } = plain;
  for (const at of [0, skipWords(folded, 0, reader)]) {
    const match = matchPhrase(reader.book, folded, at, endsWord);
    const options = new Set(match?.meanings.flatMap((meaning) => (meaning.as === "option" ? [meaning.option] : [])));
    const [option] = options;
    if (match && option !== undefined && options.size === 1 && skipWords(folded, match.end, reader) === folded.length)
      return { ok: true, value: option };
  }
  const at = skipWords(folded, 0, reader);
  const token = startsValue(folded, at)
    ? readQuantityAt(text, folded, at, { decimal: "point", isAlone: true })
    : undefined;
  const [named, ...others] = token ? optionsNamed(reader.numbered, reader.fact, token) : [];
  if (token && named !== undefined && others.length === 0 && skipWords(folded, token.end, reader) === folded.length)
    return { ok: true, value: named };
  const place = spec.options[optionNumber(folded) - 1];
  return place === undefined ? { ok: false, problem: "unknown-option" } : { ok: true, value: place };
}

/** The number of an option in its list: "2", "2)", "#2", "option 2". */
function optionNumber(folded: string): number {
  const start = matchPhrase(OPTION_PREFIXES, folded, 0, () => true)?.end ?? 0;
  return Number(OPTION_NUMBER.exec(folded.slice(start))?.[1] ?? 0);
}

function readFlag({ folded }: PlainText, reader: FactReader): TypedValue {
  const said = new Set<"yes" | "no" | "named">();
  for (let at = 0; at < folded.length; ) {
    if (BETWEEN.includes(folded.charAt(at))) {
      at++;
      continue;
    }
    const own = matchPhrase(reader.book, folded, at, endsWord);
    const little = matchPhrase(LITTLE_WORDS, folded, at, endsWord);
    if (own === undefined && little === undefined) return { ok: false, problem: "unknown-option" };
    if (own && own.end >= (little?.end ?? 0)) said.add("named");
    else if (little?.meanings.includes("yes")) said.add("yes");
    else if (little?.meanings.includes("no")) said.add("no");
    at = Math.max(own?.end ?? 0, little?.end ?? 0);
  }
  const isUnclear = said.size === 0 || (said.has("yes") && said.has("no"));
  return isUnclear ? { ok: false, problem: "unknown-option" } : { ok: true, value: !said.has("no") };
}

function readDayOf({ folded }: PlainText, reader: FactReader, today: string | undefined): TypedValue {
  // "The day after tomorrow" begins with words that say nothing elsewhere, or name the fact.
  const match = readDay(folded, 0, today) ?? readDay(folded, skipWords(folded, 0, reader), today);
  const day = match && skipWords(folded, match.end, reader) === folded.length ? match.day : undefined;
  return day === undefined ? { ok: false, problem: "not-a-day" } : { ok: true, value: day };
}

/** The place behind any gaps, little words and words for the fact itself. */
function skipWords(folded: string, start: number, { book }: FactReader): number {
  let at = start;
  while (at < folded.length) {
    if (BETWEEN.includes(folded.charAt(at))) {
      // The point of .5 belongs to the number.
      if (folded.charAt(at) === "." && startsValue(folded, at)) return at;
      at++;
      continue;
    }
    const own = matchPhrase(book, folded, at, endsWord);
    const isOwn = own?.meanings.every(({ as }) => as !== "option") === true;
    const little = matchPhrase(LITTLE_WORDS, folded, at, endsWord);
    const end = Math.max(isOwn ? (own?.end ?? 0) : 0, little?.meanings.includes("filler") ? little.end : 0);
    if (end === 0) return at;
    at = end;
  }
  return at;
}
