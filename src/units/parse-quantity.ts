import { chooseReading, fitQuantity } from "./fit-quantity.ts";
import { foldText } from "./fold-text.ts";
import { normaliseText } from "./normalise-text.ts";
import type { QuantityKind, UnitSystem } from "./quantity-kinds.ts";
import type { DecimalMark } from "./read-number.ts";
import { readQuantityAt, startsValue } from "./read-quantity.ts";
import type { UnitId } from "./unit-table.ts";
import type { QuantityToken } from "./written-value.ts";

export interface QuantityOptions {
  readonly units: UnitSystem;
  readonly decimal: DecimalMark;
  /** Range of the fact, in the base unit, where it can tell which of two readings is meant. */
  readonly range?: { readonly min: number; readonly max: number };
}
export type QuantityProblem =
  /** No number stands there, or figures that are none (120/240). */
  | "not-a-number"
  /** The unit measures something else, or none was typed where none can be taken (times). */
  | "wrong-unit"
  /** Something stands behind the value that is no part of it. */
  | "left-over"
  /** The figures can be read two ways, and nothing tells which. */
  | "two-readings";
export type ParsedQuantity =
  /** `value` in the base unit of the kind; `readAs` when the unit was not typed and the reader's was taken. */
  | { readonly ok: true; readonly value: number; readonly readAs?: UnitId }
  | { readonly ok: false; readonly problem: QuantityProblem; readonly rest?: string };

const LEADING = /^[ ~≈=]+/;
const TRAILING = /^[ .!?;,]*$/;

/**
 * Reads a text that is one value of a known kind, as people type it.
 * @param text what was typed, as it came from the keyboard
 */
export function parseQuantity(text: string, kind: QuantityKind, options: QuantityOptions): ParsedQuantity {
  const plain = normaliseText(text).replace(LEADING, "");
  const folded = foldText(plain);
  const token = startsValue(folded, 0)
    ? readQuantityAt(plain, folded, 0, { decimal: options.decimal, isAlone: true })
    : undefined;
  if (token === undefined) return { ok: false, problem: "not-a-number" };
  const rest = plain.slice(token.end);
  if (!TRAILING.test(rest)) return { ok: false, problem: "left-over", rest: rest.trim() };
  return takeQuantity(token, kind, options);
}

/** Takes a value that was found in text as one kind of quantity. */
export function takeQuantity(
  token: QuantityToken,
  kind: QuantityKind,
  { units, range }: Omit<QuantityOptions, "decimal">,
): ParsedQuantity {
  const fit = fitQuantity(token, kind, units);
  if (!fit.ok) return { ok: false, problem: fit.problem };
  const reading = chooseReading(fit, range);
  return reading === undefined ? { ok: false, problem: "two-readings" } : { ok: true, ...reading };
}
