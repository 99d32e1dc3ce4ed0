import { fromBase } from "../units/convert.ts";
import { QUANTITY_KINDS, type Quantity, type QuantityKind, type UnitSystem } from "../units/quantity-kinds.ts";
import { UNITS } from "../units/unit-table.ts";
import { formatDuration } from "./format-duration.ts";
import { type Digits, formatNumber, writeNumber } from "./format-number.ts";
import type { Language } from "./language.ts";

type DisplayUnit = (typeof QUANTITY_KINDS)[QuantityKind][UnitSystem];

const USUAL: Digits = { significant: 3 };
const WHOLE: Digits = { decimals: 0 };
/** Digits that a reader can use; everything else is shown with three significant ones. */
const DIGITS: Partial<Readonly<Record<QuantityKind, Digits>>> = {
  temperature: WHOLE,
  temperature_difference: { significant: 2 },
  sound: WHOLE,
  count: WHOLE,
  share: { significant: 2 },
  energy_price: { significant: 4 },
};
/** From here on cents only distract. */
const WHOLE_DOLLARS_FROM = 1000;
/** Sizes up to a foot that are whole sixteenths of an inch are written as the trade writes them: 3/4 in, 1-1/2 in. */
const SIXTEENTHS = 16;
const LARGEST_FRACTION_in = 12;

/** Writes a quantity in the reader's units and language: "80 gal", "140 °F", "1 min 12 s", "3.1 %". */
export function formatQuantity(quantity: Quantity, units: UnitSystem, language: Language): string {
  const unit = QUANTITY_KINDS[quantity.kind][units];
  if (unit === "time") return formatDuration(quantity.value, language);
  return withUnit(numberText(quantity, unit), unit);
}

const BETWEEN: Readonly<Record<Language, string>> = { en: "to", es: "a" };

/** Writes a range, the unit once where both ends share it: "8 to 30 s", "45 s to 2 min". */
export function formatRange(quantity: Quantity, upTo: number, units: UnitSystem, language: Language): string {
  const low = formatQuantity(quantity, units, language);
  const high = formatQuantity({ ...quantity, value: upTo }, units, language);
  if (low === high) return low;
  const unit = sharedUnit(low, high);
  return `${unit === undefined ? low : low.slice(0, -unit.length)} ${BETWEEN[language]} ${high}`;
}

/** Writes a quantity so that it can be sent back as a request and reads the same in both languages: "1234.5 gal". */
export function writeQuantity(quantity: Quantity, units: UnitSystem): string {
  const unit = QUANTITY_KINDS[quantity.kind][units];
  if (unit === "time") return `${writeNumber(quantity.value)} s`;
  const shown = fromBase(quantity.value, unit);
  return withUnit(inchFraction(shown, unit) ?? writeNumber(shown), unit);
}

function numberText(quantity: Quantity, unit: Exclude<DisplayUnit, "time">): string {
  const shown = fromBase(quantity.value, unit);
  if (unit === "usd") return formatMoney(shown);
  return inchFraction(shown, unit) ?? formatNumber(shown, DIGITS[quantity.kind] ?? USUAL);
}

function withUnit(number: string, unit: Exclude<DisplayUnit, "time">): string {
  switch (unit) {
    case "one":
      return number;
    case "usd":
      return withDollar(number);
    case "usd_kWh":
      return `${withDollar(number)}/kWh`;
    default:
      return `${number} ${UNITS[unit].symbol}`;
  }
}

function withDollar(number: string): string {
  return number.startsWith("-") ? `-$${number.slice(1)}` : `$${number}`;
}

function formatMoney(amount: number): string {
  if (Math.abs(amount) >= WHOLE_DOLLARS_FROM) return formatNumber(Math.round(amount), WHOLE);
  const cents = amount.toFixed(2).replace(/\.00$/, "");
  return cents === "-0" ? "0" : cents;
}

function inchFraction(inches: number, unit: DisplayUnit): string | undefined {
  if (unit !== "in" || inches < 0 || inches >= LARGEST_FRACTION_in) return undefined;
  const parts = Math.round(inches * SIXTEENTHS);
  if (Math.abs(parts / SIXTEENTHS - inches) > 1e-6 || parts === 0) return undefined;
  const whole = Math.floor(parts / SIXTEENTHS);
  const rest = parts % SIXTEENTHS;
  if (rest === 0) return String(whole);
  const [top, bottom] = reduce(rest, SIXTEENTHS);
  return whole === 0 ? `${top}/${bottom}` : `${whole}-${top}/${bottom}`;
}

function reduce(top: number, bottom: number): readonly [number, number] {
  return top % 2 === 0 && bottom % 2 === 0 ? reduce(top / 2, bottom / 2) : [top, bottom];
}

function sharedUnit(low: string, high: string): string | undefined {
  const [, unit] = /^-?[\d,./-]+( \D+)$/.exec(low) ?? [];
  return unit !== undefined && /^-?[\d,./-]+ \D+$/.test(high) && high.endsWith(unit) ? unit : undefined;
}
