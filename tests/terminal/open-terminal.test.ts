import { PassThrough } from "node:stream";
import { describe, expect, test } from "vitest";
import { openTerminal } from "../../adapters/terminal/open-terminal.ts";
import type { Desk, Inbound } from "../../src/desk.ts";
import { buildProgressCard } from "../../src/messages/build-progress-card.ts";
import type { Card } from "../../src/messages/card.ts";
import { speakOf, voiceFor } from "../../src/messages/voice.ts";
import { fixtureLibrary } from "../support/fixture-library.ts";
import { CALLED_OFF, LONG_ANSWER, LONG_QUESTION, openLongDesk, STOPPED } from "../support/long-desk.ts";

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

interface Seat {
  type(line: string): void;
  interrupt(): void;
  /** Comes back once this has been printed. */
  until(text: string): Promise<void>;
  printed(): string;
  readonly over: Promise<void>;
}

/** Somebody at the keyboard. */
function sitDown(desk: Desk, isInteractive = true): Seat {
  const [input, output] = [new PassThrough(), new PassThrough()];
  let printed = "";
  let wake = () => {};
  output.setEncoding("utf8").on("data", (text: string) => {
    printed += text;
    wake();
  });
  let interrupt = () => {};
  let id = 0;
  const over = openTerminal(desk, {
    input,
    output,
    columns: 78,
    isInteractive,
    caller: { door: "terminal", organisation: "local", user: "u", name: "U" },
    conversation: "tty",
    newId: () => `d${++id}`,
    onInterrupt: (hear) => {
      interrupt = hear;
      return () => {
        interrupt = () => {};
      };
    },
  });
  return {
    type: (line) => input.write(`${line}\n`),
    interrupt: () => interrupt(),
    until: async (text) => {
      while (!printed.includes(text))
        await new Promise<void>((resolve) => {
          wake = resolve;
        });
    },
    printed: () => printed,
    over,
  };
}

describe("work that takes long", () => {
  test("is called off by Ctrl-C, which says so, saves nothing, and leaves the chat open", async () => {
    const long = openLongDesk();
    const seat = sitDown(long.desk);
    seat.type(LONG_QUESTION);
    await seat.until("a) Cancel (Ctrl-C)");
    seat.interrupt();
    await seat.until(STOPPED);
    expect(long.signals.map(({ aborted }) => aborted)).toEqual([true]);
    expect([long.store.commits, long.faults]).toEqual([[], []]);
    seat.type("help");
    await seat.until("What I can answer");
    seat.type("exit");
    await seat.over;
  });

  test.each(["cancel", "a", "Cancelar"])("is called off by %j typed meanwhile", async (line) => {
    const long = openLongDesk();
    const seat = sitDown(long.desk);
    seat.type(LONG_QUESTION);
    await seat.until("a) Cancel");
    seat.type(line);
    await seat.until(STOPPED);
    expect(seat.printed().indexOf(CALLED_OFF)).toBeLessThan(seat.printed().indexOf(STOPPED));
    expect(seat.printed()).toContain(CALLED_OFF);
    seat.interrupt();
    await seat.over;
  });

  test("lets other lines typed meanwhile wait their turn", async () => {
    const long = openLongDesk();
    const seat = sitDown(long.desk);
    seat.type(LONG_QUESTION);
    await long.begun(1);
    seat.type("help");
    long.finish();
    await seat.until("What I can answer");
    expect(seat.printed().indexOf(LONG_ANSWER)).toBeLessThan(seat.printed().indexOf("What I can answer"));
    seat.type("exit");
    await seat.over;
  });

  test("in a pipe is finished before the next line is read, cancel included", async () => {
    const long = openLongDesk();
    const seat = sitDown(long.desk, false);
    seat.type(LONG_QUESTION);
    seat.type("cancel");
    await long.begun(1);
    long.finish();
    await seat.until("no open question to stop");
    expect(seat.printed()).toContain(LONG_ANSWER);
    seat.type("exit");
    await seat.over;
  });

  test("prints a line a quarter and not one a day", async () => {
    const voice = speakOf(voiceFor(fixtureLibrary, { language: "en", units: "us" }), "barrel");
    const desk: Desk = {
      receive: async (_, show) => {
        for (let done = 0; done <= 200; done++) show(buildProgressCard(voice, done, 200, "0a1b2c3d"));
        return { card: question, isRepeat: false };
      },
    };
    const seat = sitDown(desk);
    seat.type("size");
    await seat.until("Expansion");
    expect(seat.printed().match(/Working on it/g)).toHaveLength(5);
    seat.type("exit");
    await seat.over;
  });
});

test("Ctrl-C with no work under way ends the chat", async () => {
  const seat = sitDown(openLongDesk().desk);
  await seat.until("> ");
  seat.interrupt();
  await seat.over;
  expect(seat.printed()).toBe("> ");
});

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
