import { fromBase } from "../units/convert.ts";
import { QUANTITY_KINDS, type Quantity } from "../units/quantity-kinds.ts";

/** Digits that a button's request carries: enough to land on the same answer, few enough to read. */
const DIGITS = 6;

/**
 * Writes a request that could have been typed, with US units so that it reads the same for everybody:
 * "mix setpoint=140F cold=50F". Facts that are not known are left out.
 */
export function writeRequest(
  topic: string,
  facts: Readonly<Record<string, Quantity | string | boolean | undefined>>,
): string {
  const pairs = Object.entries(facts).flatMap(([fact, value]) =>
    value === undefined ? [] : [`${fact}=${writeValue(value)}`],
  );
  return [topic, ...pairs].join(" ");
}

function writeValue(value: Quantity | string | boolean): string {
  if (typeof value === "string") return value;
  if (typeof value === "boolean") return value ? "yes" : "no";
  const unit = QUANTITY_KINDS[value.kind].us;
  if (unit === "time") return `${round(value.value)}s`;
  const shown = round(fromBase(value.value, unit));
  if (unit === "one") return String(shown);
  return unit === "percent" ? `${shown}%` : `${shown}${unit}`;
}

function round(value: number): number {
  return Number(value.toPrecision(DIGITS));
}
