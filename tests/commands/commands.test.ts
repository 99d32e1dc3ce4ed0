import { expect, test } from "vitest";
import { describeClosed, describeStart } from "../../adapters/commands/describe-start.ts";
import { readCommand } from "../../adapters/commands/read-command.ts";
import { readWords } from "../../adapters/commands/read-words.ts";
import { shutInTurn, untilStopped } from "../../adapters/commands/until-stopped.ts";

test.each([
  { line: [], read: { name: "start", words: [] } },
  { line: ["ask", "help", "--json"], read: { name: "ask", words: ["help", "--json"] } },
  { line: ["Start"], read: { unknown: "Start" } },
])("the command line $line is read", ({ line, read }) => {
  expect(readCommand(line)).toEqual(read);
});

test.each([
  { words: ["teams", "--url", "x"], read: { ok: true, first: "teams", options: { url: "x" } } },
  { words: [], read: { ok: true, first: undefined, options: {} } },
  { words: ["a", "b"], read: { ok: false, say: '"b" is one word too many. Type: USAGE' } },
  { words: ["--other", "x"], read: { ok: false, say: expect.stringMatching(/--other.*Type: USAGE$/) } },
  { words: ["--url"], read: { ok: false, say: expect.stringMatching(/--url.*Type: USAGE$/) } },
])("the words $words are read", ({ words, read }) => {
  expect(readWords(words, ["url"], "USAGE")).toEqual(read);
});

test("the start screen says who it is for, each door, what to look at and what to try", () => {
  const screen = describeStart({
    company: { name: "Plain Pipes", isInvented: false },
    doors: [
      "Web: open at http://127.0.0.1:4600/",
      ...describeClosed("Slack", ["set it up"]),
      ...describeClosed("Teams", ["one", "two"]),
    ],
    questions: ["mix 135 to 120"],
    warnings: ["TEAMS_X does nothing"],
  });
  expect(screen.split("\n")).toEqual([
    "Oldhand for Plain Pipes",
    "",
    "  Web: open at http://127.0.0.1:4600/",
    "  Slack: closed; set it up",
    "  Teams: closed",
    "    one",
    "    two",
    "",
    "  Note: TEAMS_X does nothing",
    "",
    "Three questions to try:",
    "  mix 135 to 120",
    "",
    "Ctrl+C stops it.",
    "",
  ]);
});

test.each(["SIGINT", "SIGTERM"] as const)("%s stops it", async (signal) => {
  const heard = new Map<string, () => void>();
  const stopped = untilStopped({ once: (name, hear) => heard.set(name, hear) });
  heard.get(signal)?.();
  expect(await stopped).toBe(signal);
});

test("everything is shut one after the other, also after one that fails", async () => {
  const shut: string[] = [];
  const failed = await shutInTurn([
    async () => {
      await Promise.resolve();
      shut.push("doors");
    },
    async () => {
      throw new Error("stuck");
    },
    async () => {
      shut.push("store");
    },
  ]);
  expect(shut).toEqual(["doors", "store"]);
  expect(failed).toEqual([new Error("stuck")]);
});
