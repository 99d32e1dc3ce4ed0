import { setMaxListeners } from "node:events";
import { withinTime } from "./wait.ts";

/** Work that goes on after its request was acknowledged. */
export interface WorkInFlight {
  /** Given when the work must end now. */
  readonly signal: AbortSignal;
  count(): number;
  /** Keeps an eye on work that reports its own failures. */
  track(work: Promise<void>): void;
  /**
   * Waits until all work is done; what goes on for longer is told to end.
   * @param most_ms longest wait [ms]
   */
  drain(most_ms: number): Promise<void>;
}

export function watchWork(): WorkInFlight {
  const going = new Set<Promise<void>>();
  const stop = new AbortController();
  // All work that goes on listens to it.
  setMaxListeners(0, stop.signal);
  const settled = async (): Promise<"done"> => {
    while (going.size > 0) await Promise.allSettled(going);
    return "done";
  };
  return {
    signal: stop.signal,
    count: () => going.size,
    track(work) {
      going.add(work);
      work.finally(() => going.delete(work)).catch(() => {});
    },
    async drain(most_ms) {
      const isDone = await withinTime(settled(), most_ms);
      stop.abort();
      // What heeds the signal gets a moment to say so; what does not is left behind.
      if (isDone === undefined) await withinTime(settled(), most_ms / 10);
    },
  };
}
