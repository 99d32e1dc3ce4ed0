import { foldText } from "./fold-text.ts";
import { isWordCharacter } from "./phrase-book.ts";
import { type NumberOptions, negate, readNumber } from "./read-number.ts";
import { addParts, trimEnd } from "./read-parts.ts";
import { readUnit } from "./read-unit.ts";
import type { OneValue, QuantityToken, SumValue, UnreadableValue } from "./written-value.ts";

const CURRENCY = /[-+]?(?:us ?)?\$ ?/y;
const TIMES = / ?[x*] ?(?=\.?\d)| (?:by|por) (?=\.?\d)/y;
/** Words, and models such as HX50-2, whose figures are no values. */
const WORD = /\p{L}+(?:\d[\p{L}\d]*(?:-[\p{L}\d]+)*)?/uy;
/** Rooms have three sides. */
const MOST_FACTORS = 3;

/**
 * Reads every value in running text, from left to right.
 * @param text text that `normaliseText` has made plain
 */
export function readQuantities(text: string, options: NumberOptions): readonly QuantityToken[] {
  const folded = foldText(text);
  const found: QuantityToken[] = [];
  for (let at = 0; at < text.length; ) {
    const token = startsValue(folded, at) ? readQuantityAt(text, folded, at, options) : undefined;
    if (token) found.push(token);
    at = token?.end ?? at + (isAt(WORD, folded, at)?.length ?? 1);
  }
  return found;
}

/** True when a value may begin here: not in the middle of a word, and not at the end of another number. */
export function startsValue(folded: string, at: number): boolean {
  const before = folded.charAt(at - 1);
  const next = folded.charAt(at);
  if (isWordCharacter(before) || before === "_" || (before === "." && isWordCharacter(folded.charAt(at - 2))))
    return false;
  if (isAt(CURRENCY, folded, at) !== undefined) return true;
  return next === "-" || next === "+" ? before !== "-" && isFigure(folded, at + 1) : isFigure(folded, at);
}

/** Reads the value that starts at a place; nothing when none does. */
export function readQuantityAt(
  text: string,
  folded: string,
  start: number,
  options: NumberOptions,
): QuantityToken | undefined {
  const first = readFactor(text, folded, start, options);
  if (first === undefined) return undefined;
  const factors = [first];
  let end = first.end;
  for (;;) {
    const times = isAt(TIMES, folded, end);
    const next = times === undefined ? undefined : readFactor(text, folded, end + times.length, options);
    if (next === undefined) break;
    factors.push(next);
    end = next.end;
  }
  return factors.length === 1 ? first : multiply(text, start, end, factors);
}

function multiply(text: string, start: number, end: number, tokens: readonly QuantityToken[]): QuantityToken {
  const factors = tokens.flatMap(({ value }): (OneValue | SumValue)[] =>
    value.form === "one" || value.form === "sum" ? [value] : [],
  );
  const isReadable = factors.length === tokens.length && factors.length <= MOST_FACTORS;
  const value = isReadable ? { form: "product" as const, factors } : UNREADABLE;
  return { start, end, text: text.slice(start, end), value };
}

const UNREADABLE: UnreadableValue = { form: "unreadable" };

/** Reads one number with its unit, and what is added to it: the inches after feet, the minutes after hours. */
function readFactor(text: string, folded: string, start: number, options: NumberOptions): QuantityToken | undefined {
  const one = readOne(text, folded, start, options);
  return one && addParts(text, folded, one, (at) => readOne(text, folded, at, options), options.isAlone);
}

function readOne(text: string, folded: string, start: number, options: NumberOptions): QuantityToken | undefined {
  const currency = isAt(CURRENCY, folded, start) ?? "";
  const figures = readNumber(text, start + currency.length, options);
  if (figures === undefined) return undefined;
  // Letters that hang on unreadable figures were read with them: 120/240V.
  const hasUnit = figures.number === undefined && !isFigure(folded, figures.end - 1);
  const unit = hasUnit ? undefined : readUnit(folded, figures.end, currency === "" ? "" : "$");
  if (figures.number === undefined) {
    const end = unit?.end ?? figures.end;
    return { start, end, text: trimEnd(text.slice(start, end)), value: UNREADABLE };
  }
  const number = currency.startsWith("-") ? negate(figures.number) : figures.number;
  const end = unit?.end ?? figures.end;
  return {
    start,
    end,
    text: trimEnd(text.slice(start, end)),
    value: { form: "one", number, ...(unit && { unit: unit.unit }) },
    ...(unit && unit.start > figures.end && { unitAt: { start: unit.start, end: unit.end } }),
  };
}

function isFigure(folded: string, at: number): boolean {
  const character = folded.charAt(at) === "." ? folded.charAt(at + 1) : folded.charAt(at);
  return character >= "0" && character <= "9";
}

function isAt(pattern: RegExp, text: string, at: number): string | undefined {
  pattern.lastIndex = at;
  return pattern.exec(text)?.[0];
}
