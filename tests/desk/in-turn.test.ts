import { expect, test } from "vitest";
import { createTurns } from "../../src/desk/in-turn.ts";
import { createTryLimit } from "../../src/desk/try-limit.ts";

test("work of one key is done in order, and work that fails lets the next one through", async () => {
  const turns = createTurns();
  const done: string[] = [];
  const failed = turns.take("a", async () => {
    await Promise.resolve();
    done.push("first");
    throw new Error("no");
  });
  const next = turns.take("a", async () => done.push("second"));
  const other = turns.take("b", async () => done.push("other"));
  await expect(failed).rejects.toThrow("no");
  await Promise.all([next, other]);
  expect(done.indexOf("first")).toBeLessThan(done.indexOf("second"));
  expect(done).toContain("other");
});

test("1,000 keys leave nothing behind", async () => {
  const turns = createTurns();
  await Promise.all(Array.from({ length: 1000 }, (_, key) => turns.take(String(key), async () => key)));
  await turns.take("last", async () => {});
  await Promise.resolve();
  await Promise.resolve();
  expect(turns.busy()).toBe(0);
});

test("five wrong tries are over the limit until the window has passed", () => {
  const tries = createTryLimit(5, 1000);
  for (let at_ms = 0; at_ms < 5; at_ms++) {
    expect(tries.isOver("a", at_ms)).toBe(false);
    tries.countWrong("a", at_ms);
  }
  expect(tries.isOver("a", 5)).toBe(true);
  expect(tries.isOver("b", 5)).toBe(false);
  expect(tries.isOver("a", 999)).toBe(true);
  expect(tries.isOver("a", 1000)).toBe(false);
});
