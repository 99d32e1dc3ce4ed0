import { SlackBusyError } from "./errors.ts";
import type { Wait } from "./wait.ts";

/** Calls of one channel go out one after another, in order; channels do not wait for each other. */
export interface ChannelQueue {
  run<T>(channel: string, call: () => Promise<T>): Promise<T>;
}

export interface QueueSettings {
  readonly wait: Wait;
  /** A share of the wait that is added to it, so that many waiting calls do not return at once [0..1]. */
  readonly jitter: () => number;
}

const MOST_TRIES = 5;
/** A longer wait than this helps nobody who stands in front of a heater [s]. */
const LONGEST_WAIT_s = 120;
/** Largest share of the asked wait that jitter adds. */
const JITTER_SHARE = 0.25;

/**
 * Slack counts calls per method, workspace and channel and says how long to wait. Only the channel that was told to
 * wait does so: the client's own waiting would stop every channel.
 */
export function createChannelQueue({ wait, jitter }: QueueSettings): ChannelQueue {
  const ends = new Map<string, Promise<unknown>>();

  async function callPatiently<T>(call: () => Promise<T>): Promise<T> {
    for (let tries = 1; ; tries += 1) {
      try {
        return await call();
      } catch (error) {
        const isFinal = !(error instanceof SlackBusyError) || tries === MOST_TRIES || error.wait_s > LONGEST_WAIT_s;
        if (isFinal) throw error;
        await wait(error.wait_s * 1000 * (1 + JITTER_SHARE * jitter()));
      }
    }
  }

  return {
    run<T>(channel: string, call: () => Promise<T>): Promise<T> {
      const before = ends.get(channel) ?? Promise.resolve();
      const result = before.then(() => callPatiently(call));
      const end = result.then(
        () => {},
        () => {},
      );
      ends.set(channel, end);
      end.then(() => ends.get(channel) === end && ends.delete(channel));
      return result;
    },
  };
}
