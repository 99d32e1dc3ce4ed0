import type { FormField, NumberInput } from "./card.ts";

/** A day as fields for days take and give it. */
const DAY = /^\d{4}-(0[1-9]|1[0-2])-(0[1-9]|[12]\d|3[01])$/;
/** A plain decimal number; the length keeps it within what a double tells apart. */
const NUMBER = /^-?\d{1,15}(\.\d{1,9})?$/;

/** True for YYYY-MM-DD of a day that there is. */
export function isDay(text: string): boolean {
  if (!DAY.test(text)) return false;
  const [year = 0, month = 0, day = 0] = text.split("-").map(Number);
  const isLeap = (year % 4 === 0 && year % 100 !== 0) || year % 400 === 0;
  const lengths = [31, isLeap ? 29 : 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];
  return year > 0 && day <= (lengths[month - 1] ?? 0);
}

/** True for a number that this field takes. */
export function isNumberFor({ min, max, whole }: NumberInput, text: string): boolean {
  const value = Number(text);
  const isInside = value >= (min ?? value) && value <= (max ?? value);
  return NUMBER.test(text) && isInside && (whole !== true || Number.isInteger(value));
}

/**
 * What a field asks for, so that the value in it can be shown: what somebody typed that is no day or number stands in a
 * field for text, where it can be put right, instead of being lost.
 */
export function inputThatShows({ input, value }: Pick<FormField, "input" | "value">): FormField["input"] {
  if (value === undefined || value === "") return input;
  if (input.type === "day" && !isDay(value)) return { type: "text" };
  if (input.type === "number" && !isNumberFor(input, value)) return { type: "text" };
  return input;
}
