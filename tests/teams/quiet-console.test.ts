import jwt from "jsonwebtoken";
import { expect, onTestFinished, test } from "vitest";
import { holdConsole } from "../../adapters/teams/botbuilder/quiet-console.ts";
import { PUBLIC_PEM } from "./fake-platform.ts";

function catchConsole() {
  const before = console.error;
  const said: unknown[][] = [];
  console.error = (...parts) => void said.push(parts);
  onTestFinished(() => {
    console.error = before;
  });
  return said;
}

test("drops signing keys and the errors of tokens, and nothing else", () => {
  const said = catchConsole();
  const release = holdConsole();
  console.error(`Error finding key for token. Available keys: ${PUBLIC_PEM}`);
  console.error("any text", PUBLIC_PEM.replace("BEGIN PUBLIC", "BEGIN RSA PUBLIC"));
  console.error(new jwt.TokenExpiredError("jwt expired", new Date(0)));
  console.error(new jwt.JsonWebTokenError("invalid signature"));
  const fault = new Error("disk full");
  console.error("said meanwhile", 7, fault);
  release();
  expect(said).toEqual([["said meanwhile", 7, fault]]);
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
