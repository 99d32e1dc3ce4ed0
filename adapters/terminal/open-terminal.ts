import { createInterface } from "node:readline";
import type { Desk, Inbound } from "../../src/desk.ts";
import type { Button, Card } from "../../src/messages/card.ts";
import type { Caller } from "../../src/ports/store.ts";
import { letterButtons, renderText } from "./render-text.ts";

export interface TerminalSettings {
  readonly input: NodeJS.ReadableStream;
  readonly output: NodeJS.WritableStream;
  /** Width of the screen [characters]. */
  readonly columns: number;
  /** True: somebody sits there, so a prompt is shown. */
  readonly isInteractive: boolean;
  readonly caller: Caller;
  readonly conversation: string;
  readonly newId: () => string;
}

/** A conversation in the terminal: one line in, one card out, until the input ends. */
export async function openTerminal(desk: Desk, settings: TerminalSettings): Promise<void> {
  const { input, output, columns } = settings;
  const lines = createInterface({ input, terminal: false });
  const show = (card: Card) => output.write(`${renderText(card, columns)}\n\n`);
  const prompt = () => settings.isInteractive && output.write("> ");
  let onScreen: Card | undefined;
  prompt();
  for await (const line of lines) {
    if (/^\s*(exit|quit|salir)\s*$/i.test(line)) break;
    if (line.trim() !== "") {
      const { card } = await desk.receive(readLine(line, onScreen, settings), show, new AbortController().signal);
      show(card);
      onScreen = card;
    }
    prompt();
  }
  lines.close();
}

/** A line is a message, unless it is the letter of a button on the screen: then it is that button. */
function readLine(line: string, onScreen: Card | undefined, settings: TerminalSettings): Inbound {
  const { caller, conversation, newId } = settings;
  const pressed = onScreen && findButton(onScreen, line.trim().toLowerCase());
  const said = pressed ? { text: pressed.say, ...(pressed.aim && { aim: pressed.aim }) } : { text: line };
  return { caller, conversation, delivery: newId(), ...said };
}

function findButton(card: Card, typed: string): Button | undefined {
  return [...letterButtons(card)].find(([, letter]) => letter === typed)?.[0];
}
