import type { WrittenNumber } from "./read-number.ts";
import type { WrittenUnit } from "./read-unit.ts";

/** One number with its unit, or none. */
export interface OneValue {
  readonly form: "one";
  readonly number: WrittenNumber;
  readonly unit?: WrittenUnit;
}
/** Feet and inches, or hours and minutes: already added up, in metres or seconds. */
export interface SumValue {
  readonly form: "sum";
  readonly base: "m" | "s";
  readonly total: number;
}
/** Sides of a room or an opening: 7 x 10 x 10 ft. */
export interface ProductValue {
  readonly form: "product";
  readonly factors: readonly (OneValue | SumValue)[];
}
/** Figures that are no number. */
export interface UnreadableValue {
  readonly form: "unreadable";
}
export type WrittenValue = OneValue | SumValue | ProductValue | UnreadableValue;

/** A value found in text: `start` and `end` are places in that text. */
export interface QuantityToken {
  readonly start: number;
  readonly end: number;
  readonly text: string;
  readonly value: WrittenValue;
  /** What else it can be: 6ft3 is six feet three inches, or six cubic feet. */
  readonly orElse?: WrittenValue;
  /** Where its unit stands, when that is a word that may also be no unit (50 in). */
  readonly unitAt?: { readonly start: number; readonly end: number };
  /** The two values that "60 ft 1 in" also is, when a space stands between them. */
  readonly apart?: readonly [QuantityToken, QuantityToken];
}
