import { expect, onTestFinished, test } from "vitest";
import { holdConsole, quietly } from "../../adapters/teams/quiet-console.ts";

function catchConsole() {
  const before = console.error;
  const said: unknown[][] = [];
  console.error = (...parts) => void said.push(parts);
  onTestFinished(() => {
    console.error = before;
  });
  return said;
}

test("drops what is printed inside, after a wait too, and nothing else", async () => {
  const said = catchConsole();
  const release = holdConsole();
  const secret = quietly(async () => {
    console.error("key 1");
    await new Promise((resolve) => setImmediate(resolve));
    console.error("key 2");
  });
  console.error("said meanwhile");
  await secret;
  console.error("said after", 7);
  release();
  expect(said).toEqual([["said meanwhile"], ["said after", 7]]);
});

test("gives the console back when the last of two doors closes", () => {
  catchConsole();
  const original = console.error;
  const [first, second] = [holdConsole(), holdConsole()];
  first();
  expect(console.error).not.toBe(original);
  second();
  expect(console.error).toBe(original);
});

test("passes on what fails inside", async () => {
  const release = holdConsole();
  await expect(quietly(() => Promise.reject(new Error("refused")))).rejects.toThrow("refused");
  release();
});
