import { QUANTITY_KINDS, type QuantityKind } from "./quantity-kinds.ts";
import { describeUnit, type UnitId } from "./unit-table.ts";

/** Bases that measure the same thing in two sizes: 1 of the first is `times` of the second (SI prefixes, exact). */
const SAME_MEASURE: readonly { readonly big: string; readonly small: string; readonly times: number }[] = [
  { big: "m3", small: "L", times: 1000 },
  { big: "kPa", small: "Pa", times: 1000 },
  { big: "m3_s", small: "L_s", times: 1000 },
];
/** Kinds of pure number that may be written in percent. */
const PERCENT_KINDS: readonly QuantityKind[] = ["share", "ratio"];

/**
 * Converts a value that somebody typed to the base unit of its unit.
 * @param value number in `unit`
 * @param unit what the number is in
 * @returns number in the unit's base unit
 * @source factors: the table of units
 */
export function toBase(value: number, unit: UnitId): number {
  const { offset, perBase, scale } = describeUnit(unit);
  const fromZero = value - (offset ?? 0);
  return perBase === undefined ? fromZero * scale : fromZero / perBase;
}

/**
 * Converts a value in the base unit to the unit that a reader wants.
 * @param value number in the unit's base unit
 * @param unit the unit to be read
 * @returns number in `unit`
 * @source factors: the table of units
 */
export function fromBase(value: number, unit: UnitId): number {
  const { offset, perBase, scale } = describeUnit(unit);
  return (perBase === undefined ? value / scale : value * perBase) + (offset ?? 0);
}

/** Converts to the base unit of a kind; nothing when the unit does not measure that kind. */
export function toBaseOf(kind: QuantityKind, value: number, unit: UnitId): number | undefined {
  const from = describeUnit(unit).base;
  const to = QUANTITY_KINDS[kind].base;
  if (unit === "percent" && !PERCENT_KINDS.includes(kind)) return undefined;
  if (from === to) return toBase(value, unit);
  for (const { big, small, times } of SAME_MEASURE) {
    if (from === big && to === small) return toBase(value, unit) * times;
    if (from === small && to === big) return toBase(value, unit) / times;
  }
  return undefined;
}
