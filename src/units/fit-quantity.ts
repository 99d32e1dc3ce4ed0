import { toBaseOf } from "./convert.ts";
import { QUANTITY_KINDS, type QuantityKind, type UnitSystem } from "./quantity-kinds.ts";
import { describeUnit, readersUnit, type UnitId } from "./unit-table.ts";
import type { OneValue, ProductValue, QuantityToken, SumValue, WrittenValue } from "./written-value.ts";

/** A written value as one kind of quantity, in its base unit. */
export interface Reading {
  readonly value: number;
  /** The unit that was taken because none was typed. */
  readonly readAs?: UnitId;
}
export interface FittingValue {
  readonly ok: true;
  /** natural: what one thinks of first; possible: it measures the same thing; bare: a number without a unit. */
  readonly closeness: "natural" | "possible" | "bare";
  readonly readings: readonly [Reading, ...Reading[]];
  /** True: no reading is the usual one. */
  readonly isOpen: boolean;
}
export type Fit = FittingValue | { readonly ok: false; readonly problem: "not-a-number" | "wrong-unit" };

const WRONG_UNIT: Fit = { ok: false, problem: "wrong-unit" };
/** Shares up to this are written as a fraction of one as often as in percent: 0.7 is 70 %, or 0.7 %. */
const MOST_AS_FRACTION = 1;
const KINDS_OF_PRODUCT: Readonly<Record<number, readonly QuantityKind[]>> = {
  2: ["area", "opening_area"],
  3: ["room_volume", "volume"],
};

/** Reads a written value as one kind of quantity; a bare number takes the reader's unit. */
export function fitQuantity(token: QuantityToken, kind: QuantityKind, units: UnitSystem): Fit {
  const fit = fitValue(token.value, kind, units);
  return fit.ok || token.orElse === undefined ? fit : fitValue(token.orElse, kind, units);
}

/** The reading to take: the usual one, or the only one within the range; nothing when either may be meant. */
export function chooseReading(
  { readings, isOpen }: FittingValue,
  range?: { readonly min: number; readonly max: number },
): Reading | undefined {
  const inRange = range ? readings.filter(({ value }) => value >= range.min && value <= range.max) : [];
  if (isOpen) return inRange.length === 1 && readings.length > 1 ? inRange[0] : undefined;
  return inRange[0] ?? readings[0];
}

function fitValue(value: WrittenValue, kind: QuantityKind, units: UnitSystem): Fit {
  switch (value.form) {
    case "one":
      return value.unit ? fitWithUnit(value, kind, units) : fitBare(value, kind, units);
    case "sum":
      return fitSum(value, kind);
    case "product":
      return fitProduct(value, kind, units);
    case "unreadable":
      return { ok: false, problem: "not-a-number" };
  }
}

function fitWithUnit({ number, unit }: OneValue, kind: QuantityKind, units: UnitSystem): Fit {
  if (unit === undefined) return WRONG_UNIT;
  const readers = readersUnit(kind, units);
  const ids = unit.isReaders ? unit.ids.filter((id) => id === readers) : unit.ids;
  for (const id of ids) {
    const convert = (typed: number): Reading | undefined => {
      const value = toBaseOf(kind, typed, id);
      return value === undefined ? undefined : { value, ...(unit.isReaders && { readAs: id }) };
    };
    const first = convert(number.value);
    const other = number.other === undefined ? undefined : convert(number.other);
    if (first === undefined) continue;
    const isNatural = id === unit.ids[0] || unit.isReaders === true;
    const closeness = isNatural && describeUnit(id).kinds.includes(kind) ? "natural" : "possible";
    return { ok: true, closeness, readings: other ? [first, other] : [first], isOpen: number.isOpen === true };
  }
  return WRONG_UNIT;
}

function fitBare({ number }: OneValue, kind: QuantityKind, units: UnitSystem): Fit {
  // Pipe sizes are named in fractions of an inch wherever people live.
  const isPipeSize = kind === "dimension" && number.isFraction === true;
  const unit = isPipeSize ? "in" : readersUnit(kind, units);
  // Seconds, minutes or hours: nobody can tell.
  if (unit === "time") return WRONG_UNIT;
  const convert = (typed: number): Reading => {
    const value = toBaseOf(kind, typed, unit) ?? typed;
    return unit === "one" ? { value } : { value, readAs: unit };
  };
  const readings: [Reading, ...Reading[]] = [convert(number.value)];
  if (number.other !== undefined) readings.push(convert(number.other));
  const mayBeFraction = unit === "percent" && number.value > 0 && number.value <= MOST_AS_FRACTION;
  if (mayBeFraction) readings.push({ value: number.value });
  const isOpen = number.isOpen === true || mayBeFraction;
  return { ok: true, closeness: isPipeSize ? "natural" : "bare", readings, isOpen };
}

function fitSum({ base, total }: SumValue, kind: QuantityKind): Fit {
  if (QUANTITY_KINDS[kind].base !== base) return WRONG_UNIT;
  const closeness = kind === "dimension" ? "possible" : "natural";
  return { ok: true, closeness, readings: [{ value: total }], isOpen: false };
}

/** Multiplies sides; a side without a unit takes that of the next side that has one, else of the one before. */
function fitProduct({ factors }: ProductValue, kind: QuantityKind, units: UnitSystem): Fit {
  const kinds = KINDS_OF_PRODUCT[factors.length] ?? [];
  if (!kinds.includes(kind)) return WRONG_UNIT;
  const side = kind === "opening_area" ? "dimension" : "length";
  const readers = readersUnit(side, units);
  const typed = factors.map(lengthUnit);
  let product = 1;
  for (const [index, factor] of factors.entries()) {
    const unit = typed.slice(index).find(isGiven) ?? typed.slice(0, index).findLast(isGiven) ?? readers;
    const length_m = sideLength(factor, unit);
    if (length_m === undefined) return WRONG_UNIT;
    product *= length_m;
  }
  const value = kind === "volume" ? product * 1000 : product;
  const isBare = !typed.some(isGiven);
  const isOpening = typed.some((unit) => unit !== undefined && describeUnit(unit).kinds.includes("dimension"));
  const expected = factors.length === 2 && isOpening ? "opening_area" : kinds[0];
  return {
    ok: true,
    closeness: kind === expected ? "natural" : "possible",
    readings: [isBare ? { value, readAs: readers } : { value }],
    isOpen: factors.some((factor) => factor.form === "one" && factor.number.isOpen === true),
  };
}

function lengthUnit(factor: OneValue | SumValue): UnitId | undefined {
  if (factor.form === "sum") return "ft";
  return factor.unit?.ids[0];
}

function isGiven(unit: UnitId | undefined): unit is UnitId {
  return unit !== undefined;
}

function sideLength(factor: OneValue | SumValue, unit: UnitId): number | undefined {
  if (factor.form === "sum") return factor.base === "m" ? factor.total : undefined;
  return toBaseOf("length", factor.number.value, unit);
}
