import { expect, test } from "vitest";
import { loadLibrary } from "../../adapters/library/load-library.ts";
import { createInlineRunner } from "../../adapters/workers/inline-runner.ts";
import { toBase } from "../../src/units/convert.ts";
import { BOOKS } from "../support/sample-books.ts";

const facts = {
  setpoint: { value: toBase(135, "F"), from: "asked" },
  wanted: { value: toBase(120, "F"), from: "asked" },
  cold: { value: toBase(50, "F"), from: "asked" },
} as const;
const open = async () => createInlineRunner(await loadLibrary(), BOOKS);
const never = new AbortController().signal;
const quiet = () => undefined;

test("a topic is run on the facts: 135 °F to 120 °F with 50 °F is 70/85 hot", async () => {
  const { result } = await (await open()).run("mix", facts, quiet, never);
  const share = result.kind === "answer" && result.results.find(({ id }) => id === "mix_fraction_hot");
  expect(share && "quantity" in share && share.quantity.value).toBeCloseTo(70 / 85, 2);
});

test("a fact that is missing comes back as a value, not as a throw", async () => {
  const { result } = await (await open()).run("mix", {}, quiet, never);
  expect(result).toMatchObject({ kind: "needs-facts", missing: expect.arrayContaining(["setpoint", "wanted"]) });
});

test("work that was called off before it began is not done", async () => {
  await expect((await open()).run("mix", facts, quiet, AbortSignal.abort())).rejects.toThrow();
});

test("a topic that nobody knows is a mistake of ours and throws", async () => {
  await expect((await open()).run("bath", facts, quiet, never)).rejects.toThrow(
    "there is no topic bath in the library",
  );
});
