import { PassThrough } from "node:stream";
import { expect, test } from "vitest";
import { openTerminal } from "../../adapters/terminal/open-terminal.ts";
import type { Desk, Inbound } from "../../src/desk.ts";
import type { Card } from "../../src/messages/card.ts";

const question: Card = {
  title: "Expansion",
  summary: "How cold?",
  blocks: [
    {
      kind: "buttons",
      buttons: [
        { label: "50 °F", say: "50F", aim: { walk: "w1", fact: "cold" } },
        { label: "Stop", say: "stop" },
      ],
    },
  ],
};

async function typeLines(lines: string[]): Promise<{ heard: Inbound[]; printed: string }> {
  const heard: Inbound[] = [];
  const desk: Desk = {
    receive: async (inbound) => {
      heard.push(inbound);
      return { card: question, isRepeat: false };
    },
  };
  const output = new PassThrough();
  let id = 0;
  await openTerminal(desk, {
    input: PassThrough.from(lines.map((line) => `${line}\n`)),
    output,
    columns: 78,
    isInteractive: false,
    caller: { door: "terminal", organisation: "local", user: "u", name: "U" },
    conversation: "tty",
    newId: () => `d${++id}`,
  });
  return { heard, printed: output.read()?.toString() ?? "" };
}

test("each line of a pipe is one message with its own delivery id", async () => {
  const { heard } = await typeLines(["expansion", "", "80 gal"]);
  expect(heard.map(({ text, delivery }) => [text, delivery])).toEqual([
    ["expansion", "d1"],
    ["80 gal", "d2"],
  ]);
});

test("the letter of a button on the screen presses it, aim included", async () => {
  const { heard } = await typeLines(["expansion", "a", "B"]);
  expect(heard[1]).toMatchObject({ text: "50F", aim: { walk: "w1", fact: "cold" } });
  expect(heard[2]?.text).toBe("stop");
  expect(heard[2]?.aim).toBeUndefined();
});

test("a letter without a button is a message", async () => {
  const { heard } = await typeLines(["a", "z"]);
  expect(heard.map(({ text }) => text)).toEqual(["a", "z"]);
});

test("exit ends the conversation before the rest of the pipe", async () => {
  const { heard } = await typeLines(["help", "exit", "help"]);
  expect(heard).toHaveLength(1);
});

test("without a person at the screen no prompt is printed", async () => {
  const { printed } = await typeLines(["help"]);
  expect(printed).toMatch(/^Expansion\n/);
});
