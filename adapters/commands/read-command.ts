/** What the program was asked to do, with the words behind it. */
export type Command = { readonly name: CommandName; readonly words: readonly string[] };
export const COMMAND_NAMES = ["start", "ask", "chat", "manual", "cautions", "manifest", "books", "record"] as const;
export type CommandName = (typeof COMMAND_NAMES)[number];

/** Reads the command line; without a word it is `start`. */
export function readCommand(line: readonly string[]): Command | { readonly unknown: string } {
  const [first = "start", ...words] = line;
  const name = COMMAND_NAMES.find((known) => known === first);
  return name === undefined ? { unknown: first } : { name, words };
}
