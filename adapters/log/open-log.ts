import { type DestinationStream, pino } from "pino";
import type { LogLevel } from "../../src/boundary/settings.ts";

/** Where faults and events of the house are written. Never what people say. */
export interface Log {
  info(data: object, message: string): void;
  warn(data: object, message: string): void;
  error(data: object, message: string): void;
}

/** Everything that may stand beside a message. What is not listed is dropped, so that nothing slips through by name. */
const ALLOWED = new Set([
  ...["door", "doing", "id", "from", "because", "status", "code", "cause", "attempt", "retryNum", "signal"],
  ...["workspace", "conversation", "delivery", "channel", "ts", "wait_ms", "took_ms", "working"],
  ...["err", "error", "message"],
]);
const MOST_CHARACTERS = 300;
const MOST_FRAMES = 12;

/** Opens the log: one JSON object a line. */
export function openLog(level: LogLevel, stream: DestinationStream): Log {
  const base = { name: "oldhand" };
  return pino({ level, base, formatters: { log: keepAllowed, level: (label) => ({ level: label }) } }, stream);
}

function keepAllowed(data: Record<string, unknown>): Record<string, unknown> {
  const kept = Object.entries(data).filter(([name]) => ALLOWED.has(name));
  return Object.fromEntries(kept.flatMap(([name, value]) => shorten(name, value)));
}

function shorten(name: string, value: unknown): readonly (readonly [string, unknown])[] {
  if (typeof value === "string") return [[name, hideSecrets(value)]];
  if (typeof value === "number" || typeof value === "boolean") return [[name, value]];
  return value instanceof Error ? [[name, describeError(value)]] : [];
}

/** An error as its kind, code, message and places; never the request or the answer that a library hangs on it. */
function describeError(error: Error): Readonly<Record<string, unknown>> {
  const code = "code" in error && typeof error.code === "string" ? { code: error.code } : {};
  const places = (error.stack ?? "").split("\n").filter((line) => /^\s+at /.test(line));
  const at = places.slice(0, MOST_FRAMES).map((line) => line.trim().replace(/^at /, ""));
  const cause = error.cause instanceof Error ? { cause: describeError(error.cause) } : {};
  return { type: error.name, ...code, message: hideSecrets(error.message), at, ...cause };
}

/** Tokens of the platforms, bearer headers, and any long run of letters and digits that looks like a secret. */
const SECRETS =
  /\bxox[a-z]-[\w-]+|\bxapp-[\w-]+|\bbearer\s+\S+|\beyJ[\w-]+\.[\w-]+\.[\w-]*|[A-Za-z0-9+~_.]{40,}={0,2}/gi;

function hideSecrets(text: string): string {
  return text.replace(SECRETS, "(hidden)").slice(0, MOST_CHARACTERS);
}
