import type { Stored } from "../../src/boundary/stored-json.ts";
import { DatabaseFault } from "./database-fault.ts";

/** Writes JSON only when it can be read back: what was acknowledged must not turn out unreadable later. */
export function writeDown<T>(value: T, parse: (json: string) => Stored<unknown>): string {
  const json = JSON.stringify(value);
  const read = parse(json);
  if (!read.ok) throw new DatabaseFault("stored_data", `cannot be stored: ${read.reason}`);
  return json;
}

/** The value of a stored row, or a fault that says which row cannot be read. */
export function readBack<T>(stored: Stored<T>, what: string): T {
  if (stored.ok) return stored.value;
  throw new DatabaseFault("stored_data", `${what} cannot be read back: ${stored.reason}`);
}
