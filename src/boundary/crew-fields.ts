import { z } from "zod";
import { dayNumber, dayOfNumber } from "../crew/days.ts";
import { say } from "./book-schema.ts";

/** Ids that other books have, so that one book can be held against them. */
export interface KnownIds {
  readonly people?: ReadonlySet<string>;
  readonly trucks?: ReadonlySet<string>;
  readonly parts?: ReadonlySet<string>;
  readonly tools?: ReadonlySet<string>;
}

const DAY_ADVICE = "write a day of the calendar as year-month-day, such as 2027-03-31";

/** A day that the calendar has. */
export const bookDay = z
  .string({ error: say(DAY_ADVICE) })
  .refine((day) => /^\d{4}-\d{2}-\d{2}$/.test(day) && dayOfNumber(dayNumber(day)) === day, DAY_ADVICE);

export function shortName(example: string) {
  const advice = `write a short name of small letters, digits, hyphens and underscores, such as ${example}`;
  return z.string({ error: say(advice) }).regex(/^[a-z][a-z0-9_-]{0,39}$/, advice);
}

export function listOf<T extends z.ZodType>(entry: T, what: string) {
  return z.array(entry, { error: say(`write a list of ${what}`) });
}

/** A fault where a name does not stand in the book that it points to. */
export function nameKnown(
  known: ReadonlySet<string> | undefined,
  name: string,
  path: (string | number)[],
  where: string,
  context: z.RefinementCtx,
): void {
  if (known === undefined || known.has(name)) return;
  context.addIssue({ code: "custom", path, message: `${name} does not stand in ${where}` });
}

export function refuseUnknown(
  known: ReadonlySet<string> | undefined,
  names: readonly string[],
  pathOf: (place: number) => (string | number)[],
  where: string,
  context: z.RefinementCtx,
): void {
  for (const [place, name] of names.entries()) nameKnown(known, name, pathOf(place), where, context);
}
