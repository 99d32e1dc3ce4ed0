import { toBase } from "./convert.ts";
import { isWordCharacter } from "./phrase-book.ts";
import type { UnitId } from "./unit-table.ts";
import type { QuantityToken } from "./written-value.ts";

interface Step {
  readonly unit: UnitId;
  /** As the smaller part of a value it must be less than this: 11 in, 59 s. */
  readonly below: number;
}
interface Ladder {
  readonly base: "m" | "s";
  readonly steps: readonly Step[];
}
interface Part {
  readonly token: QuantityToken;
  readonly unit: UnitId;
  readonly value: number;
}

/** Units whose values people write in parts, largest first. */
const LADDERS: readonly Ladder[] = [
  {
    base: "m",
    steps: [
      { unit: "ft", below: Number.POSITIVE_INFINITY },
      { unit: "in", below: 12 },
    ],
  },
  {
    base: "s",
    steps: [
      { unit: "week", below: Number.POSITIVE_INFINITY },
      { unit: "day", below: 7 },
      { unit: "h", below: 24 },
      { unit: "min", below: 60 },
      { unit: "s", below: 60 },
    ],
  },
];
const GAP = / (?:and|y) |, | ?-? ?/y;
/** What stands between feet and inches that are certainly one value: 6'3", 6'-3", 6ft3in. */
const CLOSE_GAPS: readonly string[] = ["", "-"];
const NEXT_FACTOR = /x ?\.?\d/y;
const CLOSE_SQUARE_OR_CUBE = /\dft([23])$/;

/**
 * Adds to a value the smaller parts that follow it. A bare part counts only where it stands close (6'3, 6ft3, 1h30),
 * or when the text is one answer, because in "60 ft 3/4 pex" the figures are the size of the pipe.
 * @param readOne reads one number with its unit at a place
 * @param isAlone true when the text is one answer
 */
export function addParts(
  text: string,
  folded: string,
  first: QuantityToken,
  readOne: (at: number) => QuantityToken | undefined,
  isAlone: boolean,
): QuantityToken {
  for (const ladder of LADDERS) {
    const parts = collectParts(folded, first, ladder, readOne, isAlone);
    if (parts.length > 1) return addUp(text, folded, parts, ladder.base);
  }
  return orFeetInches(folded, first);
}

function collectParts(
  folded: string,
  first: QuantityToken,
  { steps }: Ladder,
  readOne: (at: number) => QuantityToken | undefined,
  isAlone: boolean,
): readonly Part[] {
  let before = asPart(first, steps, false);
  if (before === undefined) return [];
  const parts = [before];
  for (;;) {
    const gap = gapAt(folded, before.token.end, isAlone);
    if (gap === undefined || !Number.isInteger(before.value)) return parts;
    const token = readOne(before.token.end + gap.length);
    const unit = before.unit;
    const smaller = steps.slice(steps.findIndex((step) => step.unit === unit) + 1);
    const mayBeBare = (isAlone || CLOSE_GAPS.includes(gap)) && token !== undefined && !isWordAt(folded, token.end);
    const part = token && asPart(token, smaller, mayBeBare);
    const step = smaller.find((candidate) => candidate.unit === part?.unit);
    if (part === undefined || step === undefined || part.value >= step.below) return parts;
    parts.push(part);
    before = part;
  }
}

/** The value as a part in one of these units; a bare number takes the largest of them. */
function asPart(token: QuantityToken, steps: readonly Step[], mayBeBare: boolean): Part | undefined {
  const { value } = token;
  if (value.form !== "one" || value.number.isOpen || value.number.value < 0) return undefined;
  const { number, unit } = value;
  const step = unit ? steps.find((candidate) => unit.ids.includes(candidate.unit)) : mayBeBare && steps[0];
  return step ? { token, unit: step.unit, value: number.value } : undefined;
}

function gapAt(folded: string, at: number, isAlone: boolean): string | undefined {
  GAP.lastIndex = at;
  const gap = GAP.exec(folded)?.[0] ?? "";
  const next = folded.charAt(at + gap.length);
  const isFigure = (next >= "0" && next <= "9") || next === ".";
  return isFigure && (isAlone || gap !== ", ") ? gap : undefined;
}

/** True when a word goes on at once, except the x of a product. */
function isWordAt(folded: string, at: number): boolean {
  NEXT_FACTOR.lastIndex = at;
  return isWordCharacter(folded.charAt(at)) && !NEXT_FACTOR.test(folded);
}

function addUp(text: string, folded: string, parts: readonly Part[], base: "m" | "s"): QuantityToken {
  const total = parts.reduce((sum, { value, unit }) => sum + toBase(value, unit), 0);
  const [first, second, ...more] = parts.map(({ token }) => token);
  const start = first?.start ?? 0;
  const end = parts.at(-1)?.token.end ?? start;
  const sum: QuantityToken = { start, end, text: trimEnd(text.slice(start, end)), value: { form: "sum", base, total } };
  if (first === undefined || second === undefined || more.length > 0 || base !== "m") return sum;
  const between = folded.slice(first.end, second.start);
  return between.startsWith(" ") && !between.includes("-") ? { ...sum, apart: [first, second] } : sum;
}

/** 6ft3 was read as six cubic feet: it may also be six feet three inches. */
function orFeetInches(folded: string, token: QuantityToken): QuantityToken {
  const { value, start, end } = token;
  const inches = CLOSE_SQUARE_OR_CUBE.exec(folded.slice(start, end))?.[1];
  if (inches === undefined || value.form !== "one") return token;
  const total = toBase(value.number.value, "ft") + toBase(Number(inches), "in");
  return { ...token, orElse: { form: "sum", base: "m", total } };
}

/** The text of a value without the gap or the full stop behind it. */
export function trimEnd(text: string): string {
  return text.replace(/[ .]+$/, "");
}
