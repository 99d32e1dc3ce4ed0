import { textAt, valueAt } from "./payload.ts";
import { statusOf } from "./send-patiently.ts";

const MOST_MESSAGE_CHARACTERS = 300;

/**
 * What a log may hold of an error. The library's errors carry the request with its bearer token, so an error never goes
 * into the log as a whole.
 */
export function describeError(error: unknown): Readonly<Record<string, string | number>> {
  const status = statusOf(error);
  const code = textAt(error, "code");
  const message = error instanceof Error ? error.message : String(error);
  const name = error instanceof Error ? error.name : typeof error;
  const cause = valueAt(error, "cause");
  return {
    error: name,
    message: message.replace(/Bearer\s+\S+/gi, "Bearer …").slice(0, MOST_MESSAGE_CHARACTERS),
    ...(status !== undefined && { status }),
    ...(code !== undefined && { code }),
    ...(cause instanceof Error && { cause: cause.name }),
  };
}
