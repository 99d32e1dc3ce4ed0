import { setTimeout as sleep } from "node:timers/promises";

/** Waits, or ends early with an error when the signal is given. */
export type Wait = (wait_ms: number) => Promise<void>;

export function waitUntilStopped(signal: AbortSignal): Wait {
  return async (wait_ms) => {
    await sleep(wait_ms, undefined, { signal });
  };
}

/** Resolves with what comes first: the work, or `undefined` after the wait. */
export async function withinTime<T>(work: Promise<T>, wait_ms: number): Promise<T | undefined> {
  const timer = new AbortController();
  const late = sleep(wait_ms, undefined, { signal: timer.signal, ref: false }).catch(() => undefined);
  try {
    return await Promise.race([work, late]);
  } finally {
    timer.abort();
  }
}
