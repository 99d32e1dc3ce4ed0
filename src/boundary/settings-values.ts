import { z } from "zod";

export type Environment = Readonly<Record<string, string | undefined>>;

/** What the settings say about one door. */
export type DoorSettings<T> =
  | { readonly kind: "ready"; readonly settings: T }
  /** Nobody has set it up; the line says how to. */
  | { readonly kind: "unset"; readonly because: string }
  /** Somebody has begun to; each line says what to put right. */
  | { readonly kind: "faulty"; readonly because: readonly string[] };

/** Settings whose value is never shown. */
const SECRET = /SECRET|TOKEN|PASSWORD|KEY/;
const MOST_PORT = 65_535;

/** Drops what is empty: a line without a value in `.env` is a setting that was not made. */
export function onlyFilled(environment: Environment): Environment {
  const filled = Object.entries(environment).map(([name, value]) => [name, value?.trim()] as const);
  return Object.fromEntries(filled.filter(([, value]) => value !== undefined && value !== ""));
}

/** One line a fault: the name, the value unless it is secret, and what to write. */
export function faultsOf(error: z.ZodError, filled: Environment): readonly string[] {
  return error.issues.map((issue) => {
    const name = String(issue.path[0] ?? "");
    const value = filled[name];
    if (value === undefined) return `${name} is not set: ${issue.message}.`;
    return SECRET.test(name)
      ? `${name} is not right: ${issue.message}.`
      : `${name} is ${JSON.stringify(value)}: ${issue.message}.`;
  });
}

/** Words on one line. */
export function text(what: string, example: string): z.ZodString {
  const advice = `write ${what}, such as ${example}`;
  return z.string({ error: advice }).regex(/^[^\n\r]+$/, advice);
}

/** A port number; 0 takes any free port. */
export function port(example: number) {
  const advice = `write a whole number from 1 to ${MOST_PORT}, such as ${example}`;
  return z
    .string({ error: advice })
    .regex(/^\d{1,5}$/, advice)
    .transform(Number)
    .refine((number) => number <= MOST_PORT, advice);
}

/** A line for each of these ports that another door has. */
export function portTaken(name: string, mine: number, taken: readonly number[]): readonly string[] {
  return mine !== 0 && taken.includes(mine)
    ? [`${name} is ${mine}: another door has this port; write a free one.`]
    : [];
}
