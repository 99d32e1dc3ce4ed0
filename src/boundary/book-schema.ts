import { z } from "zod";

/** One thing wrong in a file: where in it, and what to write instead. */
export interface BookFault {
  readonly path: readonly PropertyKey[];
  readonly reason: string;
}
export type BookRead<T> =
  | { readonly ok: true; readonly value: T }
  | { readonly ok: false; readonly faults: readonly BookFault[] };

export const say =
  (advice: string): ((issue: { readonly input?: unknown }) => string) =>
  ({ input }) =>
    input === undefined ? `is missing: ${advice}` : advice;
export const words = (example: string) => {
  const advice = `write words, such as ${example}`;
  return z
    .string({ error: say(advice) })
    .trim()
    .min(1, advice);
};
export const oneOf = <const O extends readonly [string, ...string[]]>(options: O) =>
  z.enum(options, { error: say(`write one of ${options.join(", ")}`) });
/** A group of named values; an unknown name is a fault. */
export const file = <S extends z.ZodRawShape>(shape: S) =>
  z.strictObject(shape, {
    error: (issue) => (issue.code === "invalid_type" ? "is not a list of names and values" : undefined),
  });

/** Reads a file by its schema, and shapes it for the engine. */
export function read<F, T>(schema: z.ZodType<F>, contents: unknown, shape: (file: F) => T): BookRead<T> {
  const parsed = schema.safeParse(contents);
  if (parsed.success) return { ok: true, value: shape(parsed.data) };
  return { ok: false, faults: parsed.error.issues.flatMap(nameFault) };
}

function nameFault(issue: z.core.$ZodIssue): readonly BookFault[] {
  if (issue.code !== "unrecognized_keys") return [{ path: issue.path, reason: issue.message }];
  return issue.keys.map((key) => ({ path: [...issue.path, key], reason: "is not known here; check the spelling" }));
}
