import { expect, test } from "vitest";
import { openHighsSolver } from "../../adapters/solver/highs-solver.ts";
import { createInlineRunner } from "../../adapters/workers/inline-runner.ts";
import { library } from "../support/ask-library.ts";
import { seedBooks } from "../support/ask-with-seeds.ts";

const FACTS = {
  day: { value: "2026-11-30", from: "asked" },
  days: { value: 1, from: "asked" },
} as const;
const signal = new AbortController().signal;

test("the solver is opened when the first topic asks for it, and once", async () => {
  let opened = 0;
  const runner = createInlineRunner(library, seedBooks, async () => {
    opened++;
    return await openHighsSolver();
  });
  await runner.run("ready", { day: FACTS.day }, () => undefined, signal);
  expect(opened).toBe(0);
  const first = await runner.run("plan", FACTS, () => undefined, signal);
  const again = await runner.run("plan", FACTS, () => undefined, signal);
  expect(opened).toBe(1);
  expect(first.result).toMatchObject({ kind: "answer", headline: { code: "some_left" } });
  expect(again.result).toEqual(first.result);
});

test("a runner without a solver says so", async () => {
  const runner = createInlineRunner(library, seedBooks);
  await expect(runner.run("plan", FACTS, () => undefined, signal)).rejects.toThrow("nobody lends this runner a solver");
});
