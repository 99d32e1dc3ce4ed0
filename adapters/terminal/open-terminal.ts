import { createInterface } from "node:readline";
import { readCancel } from "../../src/conversation/commands.ts";
import type { Desk, Inbound } from "../../src/desk.ts";
import type { Button, Card } from "../../src/messages/card.ts";
import type { Caller } from "../../src/ports/store.ts";
import { type OwnLine, readOwnLine, type TerminalHouse } from "./own-lines.ts";
import { queueLines } from "./queue-lines.ts";
import { letterButtons, renderText } from "./render-text.ts";
import { showProgress } from "./show-progress.ts";
import { TERMINAL_TEXTS } from "./terminal-texts.ts";
import { wrapText } from "./wrap-text.ts";

export interface TerminalSettings {
  readonly input: NodeJS.ReadableStream;
  readonly output: NodeJS.WritableStream;
  /** Width of the screen [characters]. */
  readonly columns: number;
  /** True: somebody sits there, so a prompt is shown and work is called off by a line typed meanwhile. */
  readonly isInteractive: boolean;
  readonly caller: Caller;
  readonly conversation: string;
  readonly newId: () => string;
  /** Hears each Ctrl-C until the returned function is called; without it Ctrl-C ends the program as ever. */
  readonly onInterrupt?: (hear: () => void) => () => void;
  /** Files and the house's channels; without it lines go to the desk only. */
  readonly house?: TerminalHouse;
}

/** Work that goes on: how it is stopped, and the card that offers to cancel it once that is on the screen. */
interface Work {
  readonly stop: AbortController;
  offer?: Card;
}

const LEAVE = /^\s*(exit|quit|salir)\s*$/i;

/**
 * A conversation in the terminal: one line in, one card out, until the input ends. Ctrl-C calls off the work that goes
 * on; where none does, it ends the conversation.
 */
export async function openTerminal(desk: Desk, settings: TerminalSettings): Promise<void> {
  const { input, output, columns, isInteractive } = settings;
  const show = async (card: Card) => output.write(`${renderText(card, columns, await fileHint(settings))}\n\n`);
  const prompt = () => isInteractive && output.write("> ");
  let work: Work | undefined;
  let asides: Promise<unknown> = Promise.resolve();
  const answerAside = (line: string) => {
    if (!isInteractive || work === undefined || !callsOff(line, work.offer)) return false;
    const said = desk.receive(readLine(line, work.offer, settings), () => {}, new AbortController().signal);
    asides = Promise.all([asides, said.then(({ card }) => show(card))]);
    return true;
  };
  const lines = queueLines(createInterface({ input, terminal: false }), answerAside);
  const release = settings.onInterrupt?.(() => {
    if (work === undefined || work.stop.signal.aborted) lines.close();
    else work.stop.abort();
  });

  let onScreen: Card | undefined;
  if (isInteractive && settings.house)
    output.write(`${wrapText(TERMINAL_TEXTS[await settings.house.language()].welcome, columns).join("\n")}\n\n`);
  prompt();
  for (let line = await lines.next(); line !== undefined && !LEAVE.test(line); line = await lines.next()) {
    if (line.trim() !== "") {
      const now: Work = { stop: new AbortController() };
      const progress = showProgress(output, columns, release !== undefined, (card) => {
        now.offer = card;
      });
      const own = settings.house && (await readOwnLine({ ...settings, house: settings.house, line, onScreen }));
      if (own?.kind === "card") {
        await show(own.card);
        onScreen = keepScreen(own.card, onScreen);
      } else {
        work = now;
        const inbound = own ? withFile(own, settings) : readLine(line, onScreen, settings);
        const { card } = await desk.receive(inbound, progress, now.stop.signal);
        work = undefined;
        await asides;
        await show(card);
        onScreen = card;
      }
    }
    prompt();
  }
  lines.close();
  release?.();
}

/** What a note of the terminal leaves on the screen can still be pressed and saved. */
function keepScreen(own: Card, before: Card | undefined): Card | undefined {
  return own.blocks.some(({ kind }) => kind !== "text") ? own : before;
}

async function fileHint({ house }: TerminalSettings): Promise<((number: number) => string) | undefined> {
  return house && TERMINAL_TEXTS[await house.language()].saveHint;
}

function withFile({ text, file }: OwnLine & { kind: "send" }, settings: TerminalSettings): Inbound {
  const { caller, conversation, newId } = settings;
  return { caller, conversation, delivery: newId(), text, files: [file] };
}

function callsOff(line: string, offer: Card | undefined): boolean {
  return readCancel(line) !== undefined || findButton(offer, line) !== undefined;
}

/** A line is a message, unless it is the letter of a button on the screen: then it is that button. */
function readLine(line: string, onScreen: Card | undefined, settings: TerminalSettings): Inbound {
  const { caller, conversation, newId } = settings;
  const pressed = findButton(onScreen, line);
  const said = pressed ? { text: pressed.say, ...(pressed.aim && { aim: pressed.aim }) } : { text: line };
  return { caller, conversation, delivery: newId(), ...said };
}

function findButton(card: Card | undefined, line: string): Button | undefined {
  const typed = line.trim().toLowerCase();
  return card && [...letterButtons(card)].find(([, letter]) => letter === typed)?.[0];
}
