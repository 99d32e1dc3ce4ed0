/** How this reader's language marks decimals. */
export type DecimalMark = "point" | "comma";

/** A number as it was written. */
export interface WrittenNumber {
  readonly value: number;
  /** What else the same figures can mean: 1,250 may be twelve hundred and fifty or one and a quarter. */
  readonly other?: number;
  /** True: neither reading is the usual one, so that only the fact's range can tell, or the person. */
  readonly isOpen?: true;
  /** True: written as a fraction (3/4, 1-1/2), the way pipe sizes are. */
  readonly isFraction?: true;
}
export type NumberMatch =
  | { readonly end: number; readonly number: WrittenNumber }
  /** Figures that are no number: 120/240, 120-140, 1.2.3. */
  | { readonly end: number; readonly number: undefined };

export interface NumberOptions {
  readonly decimal: DecimalMark;
  /** True: the text is one answer, so that a comma in it cannot part two numbers. */
  readonly isAlone: boolean;
}

// Every pattern below is sticky and has bounded or single-class repeats, so that no text makes it slow.
const MIXED = /(\d{1,4})(?: ?- ?| )(\d{1,2}) ?\/ ?(\d{1,2})(?![\d/])/y;
const FRACTION = /(\d{1,2}) ?\/ ?(\d{1,2})(?![\d/])/y;
const FIGURES = /(?:\d|\.(?=\d))\d*(?:[.,]\d+)*/y;
const GOES_ON = /[/:,-]\d|\d/y;
const REST_OF_FIGURES = /[\d./:,-]*\p{L}*/uy;
/** Divisors of the rule and of pipe sizes; anything else with a slash (120/240 V, 12/2 cable) is no fraction. */
const DIVISORS: readonly number[] = [2, 3, 4, 5, 6, 8, 10, 16, 32, 64];
/** Longer runs of figures are telephone or serial numbers. */
const MOST_FIGURES = 15;
const GROUP = 3;

/** Reads the number that starts at a place in the text; nothing when none starts there. */
export function readNumber(text: string, at: number, options: NumberOptions): NumberMatch | undefined {
  const sign = readSign(text, at);
  const start = sign === undefined ? at : at + 1;
  const match = readMixed(text, start) ?? readFraction(text, start) ?? readFigures(text, start, options);
  if (match?.number === undefined || sign !== "-") return match;
  return { end: match.end, number: negate(match.number) };
}

function readSign(text: string, at: number): string | undefined {
  const character = text.charAt(at);
  return character === "-" || character === "+" ? character : undefined;
}

/** The same figures with a minus before them. */
export function negate(number: WrittenNumber): WrittenNumber {
  return { ...number, value: -number.value, ...(number.other === undefined ? {} : { other: -number.other }) };
}

function readMixed(text: string, at: number): NumberMatch | undefined {
  const match = matchAt(MIXED, text, at);
  const part = match && properFraction(match[2], match[3]);
  if (match === undefined || part === undefined) return undefined;
  return { end: at + match[0].length, number: { value: Number(match[1]) + part, isFraction: true } };
}

function readFraction(text: string, at: number): NumberMatch | undefined {
  const match = matchAt(FRACTION, text, at);
  const part = match && properFraction(match[1], match[2]);
  if (match === undefined || part === undefined) return undefined;
  return { end: at + match[0].length, number: { value: part, isFraction: true } };
}

function properFraction(top: string | undefined, bottom: string | undefined): number | undefined {
  const [numerator, divisor] = [Number(top), Number(bottom)];
  return DIVISORS.includes(divisor) && numerator > 0 && numerator < divisor ? numerator / divisor : undefined;
}

function readFigures(text: string, at: number, options: NumberOptions): NumberMatch | undefined {
  const figures = matchAt(FIGURES, text, at)?.[0];
  if (figures === undefined) return undefined;
  const end = at + figures.length;
  const number = matchAt(GOES_ON, text, end) ? undefined : readSeparators(figures, options);
  return number === undefined
    ? { end: end + (matchAt(REST_OF_FIGURES, text, end)?.[0].length ?? 0), number }
    : { end, number };
}

/**
 * Decides what the points and commas of a number mean. Both present: the last is the decimal mark. The same one twice:
 * grouping. One, with anything but three digits behind it: a decimal mark. One comma with exactly three digits: grouping
 * (that is how every number here is printed), unless only the other reading fits the fact. One point with exactly three
 * digits: a decimal mark for readers of the point; open for readers of the comma.
 */
function readSeparators(figures: string, options: NumberOptions): WrittenNumber | undefined {
  if (figures.replace(/[.,]/g, "").length > MOST_FIGURES) return undefined;
  const marks = figures.replace(/\d/g, "");
  if (marks === "") return { value: Number(figures) };
  const last = marks.at(-1) ?? "";
  const first = marks.at(0) ?? "";
  if (first !== last) return readBothMarks(figures, first, last);
  if (marks.length > 1) return isGrouped(figures, first) ? { value: Number(without(figures, first)) } : undefined;
  return readOneMark(figures, first, options);
}

function readBothMarks(figures: string, group: string, decimal: string): WrittenNumber | undefined {
  const [whole, part, ...more] = figures.split(decimal);
  if (whole === undefined || part === undefined || more.length > 0 || !isGrouped(whole, group)) return undefined;
  return { value: Number(`${without(whole, group)}.${part}`) };
}

function readOneMark(figures: string, mark: string, { decimal, isAlone }: NumberOptions): WrittenNumber {
  const asDecimal = Number(figures.replace(mark, "."));
  if (isGrouped(figures, mark)) {
    const asGroups = Number(without(figures, mark));
    if (mark === ",") return decimal === "comma" ? { value: asGroups, other: asDecimal } : { value: asGroups };
    return decimal === "comma" ? { value: asGroups, other: asDecimal, isOpen: true } : { value: asDecimal };
  }
  // In a point reader's sentence "50,60" may be two numbers.
  const mayBeList = mark === "," && decimal === "point" && !isAlone && !figures.startsWith("0");
  return mayBeList ? { value: asDecimal, isOpen: true } : { value: asDecimal };
}

function isGrouped(figures: string, mark: string): boolean {
  const [first = "", ...groups] = figures.split(mark);
  const startsWell = first.length >= 1 && first.length <= GROUP && !first.startsWith("0");
  return startsWell && groups.length > 0 && groups.every((group) => group.length === GROUP);
}

function without(figures: string, mark: string): string {
  return figures.replaceAll(mark, "");
}

function matchAt(pattern: RegExp, text: string, at: number): RegExpExecArray | undefined {
  pattern.lastIndex = at;
  return pattern.exec(text) ?? undefined;
}
