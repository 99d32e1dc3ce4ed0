import { textAt, valueAt } from "./payload.ts";
import type { Pause } from "./port.ts";

/**
 * Answers that ask to be tried again.
 * @source Microsoft Teams, "Optimize your bot with rate limiting", handling of 429: 412, 502 and 504 as well;
 * 503 is common practice
 */
const PASSING_STATUSES: ReadonlySet<number> = new Set([412, 429, 502, 503, 504]);
/** Connections that did not come about or broke off: the message most likely never arrived. Common practice. */
const PASSING_CODES: ReadonlySet<string> = new Set(["ECONNREFUSED", "ECONNRESET", "ENOTFOUND", "EAI_AGAIN", "EPIPE"]);
/** Our own choices, within what the same page advises: exponential growth with jitter, from two to twenty seconds. */
const MOST_TRIES = 5;
const FIRST_WAIT_ms = 1_000;
const LONGEST_WAIT_ms = 20_000;
/** A longer request to wait is not waited for: the person has long asked again. Our own choice. */
const LONGEST_RETRY_AFTER_ms = 60_000;

export interface Patience {
  readonly pause: Pause;
  /** @returns a number from 0 up to 1 */
  readonly random: () => number;
  readonly now_ms: () => number;
}

/** Sends, and tries again when the platform is busy: a bounded number of times, each wait longer and jittered. */
export async function sendPatiently<T>(send: () => Promise<T>, patience: Patience, signal: AbortSignal): Promise<T> {
  for (let attempt = 1; ; attempt++) {
    try {
      return await send();
    } catch (error) {
      const wait_ms = attempt < MOST_TRIES ? waitAfter_ms(error, attempt, patience) : undefined;
      if (wait_ms === undefined || signal.aborted) throw error;
      await patience.pause(wait_ms, signal);
      if (signal.aborted) throw error;
    }
  }
}

/** The status that the platform answered with, when the error is such an answer. */
export function statusOf(error: unknown): number | undefined {
  const status = valueAt(error, "statusCode");
  return typeof status === "number" ? status : undefined;
}

function waitAfter_ms(error: unknown, attempt: number, patience: Patience): number | undefined {
  const status = statusOf(error);
  const passes = status === undefined ? PASSING_CODES.has(textAt(error, "code") ?? "") : PASSING_STATUSES.has(status);
  if (!passes) return undefined;
  const asked_ms = retryAfter_ms(error, patience.now_ms());
  if (asked_ms !== undefined && asked_ms > LONGEST_RETRY_AFTER_ms) return undefined;
  const grown_ms = Math.min(FIRST_WAIT_ms * 2 ** (attempt - 1), LONGEST_WAIT_ms);
  const jitter_ms = patience.random() * grown_ms;
  return asked_ms === undefined ? grown_ms / 2 + jitter_ms / 2 : asked_ms + jitter_ms / 2;
}

/** Failures of the connection before anything could be sent. */
const NEVER_LEFT: ReadonlySet<string> = new Set(["ECONNREFUSED", "ENOTFOUND", "EAI_AGAIN"]);

/** True when it is certain that the platform never had the message. */
export function didNotArrive(error: unknown): boolean {
  return statusOf(error) === undefined && NEVER_LEFT.has(textAt(error, "code") ?? "");
}

/** The wait that the answer asks for, in seconds or as a date [ms]. */
export function retryAfter_ms(error: unknown, now_ms: number): number | undefined {
  const headers = valueAt(error, "response", "headers");
  const value =
    headers instanceof Object && "get" in headers && typeof headers.get === "function"
      ? headers.get("retry-after")
      : undefined;
  if (typeof value !== "string" || value === "") return undefined;
  const seconds = Number(value);
  const wait_ms = Number.isFinite(seconds) ? seconds * 1_000 : Date.parse(value) - now_ms;
  return Number.isFinite(wait_ms) ? Math.max(wait_ms, 0) : undefined;
}
