import { describe, expect, test } from "vitest";
import { createChannelQueue } from "../../adapters/slack/channel-queue.ts";
import { SlackBusyError, SlackRefusalError } from "../../adapters/slack/errors.ts";

/** A queue whose waits are noted instead of waited. */
function queueWith(jitter: number) {
  const waits_ms: number[] = [];
  const wait = async (wait_ms: number) => {
    waits_ms.push(wait_ms);
  };
  return { waits_ms, queue: createChannelQueue({ wait, jitter: () => jitter }) };
}
/** Fails so many times with this, and then says how often it was tried. */
function failing(times: number, error: Error): () => Promise<number> {
  let tries = 0;
  return async () => {
    tries += 1;
    if (tries <= times) throw error;
    return tries;
  };
}

const JITTER: readonly (readonly [jitter: number, wait_ms: number])[] = [
  [0, 30_000],
  [0.5, 33_750],
  [1, 37_500],
];
test.each(JITTER)(
  "asked to wait 30 s, with jitter %d it waits %d ms, never less than asked",
  async (jitter, wait_ms) => {
    const { queue, waits_ms } = queueWith(jitter);
    expect(await queue.run("C1", failing(1, new SlackBusyError(30)))).toBe(2);
    expect(waits_ms).toEqual([wait_ms]);
  },
);

describe("gives up", () => {
  test("after 5 tries", async () => {
    const { queue, waits_ms } = queueWith(0);
    expect(await queue.run("C1", failing(4, new SlackBusyError(1)))).toBe(5);
    await expect(queue.run("C1", failing(5, new SlackBusyError(1)))).rejects.toThrow(SlackBusyError);
    expect(waits_ms).toHaveLength(8);
  });
  test("at once when asked to wait 121 s, not 120 s", async () => {
    const { queue, waits_ms } = queueWith(0);
    await expect(queue.run("C1", failing(1, new SlackBusyError(121)))).rejects.toThrow(SlackBusyError);
    expect(waits_ms).toEqual([]);
    await queue.run("C1", failing(1, new SlackBusyError(120)));
    expect(waits_ms).toEqual([120_000]);
  });
  test("at once on a refusal", async () => {
    const { queue, waits_ms } = queueWith(0);
    await expect(queue.run("C1", failing(1, new SlackRefusalError("x")))).rejects.toThrow(SlackRefusalError);
    expect(waits_ms).toEqual([]);
  });
});

test("calls of one channel go out in order, one at a time, past one that fails; another channel goes on", async () => {
  const { queue } = queueWith(0);
  const said: string[] = [];
  let release = () => {};
  const gate = new Promise<void>((resolve) => {
    release = resolve;
  });
  const first = queue.run("C1", async () => {
    await gate;
    said.push("C1 first");
    throw new SlackRefusalError("x");
  });
  const second = queue.run("C1", async () => {
    said.push("C1 second");
  });
  await queue.run("C2", async () => {
    said.push("C2");
  });
  release();
  await Promise.allSettled([first, second]);
  expect(said).toEqual(["C2", "C1 first", "C1 second"]);
});
