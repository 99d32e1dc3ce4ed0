import { randomUUID } from "node:crypto";
import { homedir, userInfo } from "node:os";
import type { Books } from "../src/books/books.ts";
import type { Settings } from "../src/boundary/settings.ts";
import { createChannelReader } from "../src/desk/house-channels.ts";
import { MOST_FILE_B } from "../src/ports/files.ts";
import type { Caller } from "../src/ports/store.ts";
import { readWords } from "./commands/read-words.ts";
import { type House, openHouse } from "./open-house.ts";
import { openTerminal } from "./terminal/open-terminal.ts";
import type { TerminalHouse } from "./terminal/own-lines.ts";

const USAGE = "npm run chat -- [--as marisol]";
const USUAL_COLUMNS = 80;

/** A conversation in the terminal, or through a pipe: one line in, one card out. */
export async function runChat(settings: Settings, words: readonly string[], root: string): Promise<number> {
  const read = readWords(words, ["as"], USAGE);
  if (!read.ok) return complain(read.say);
  const house = await openHouse(settings, root);
  try {
    const user = read.options["as"];
    if (user !== undefined && !isKnown(house.books, user)) return complain(sayWhoIsThere(house.books, user));
    const caller = callerOf(user ?? userInfo().username);
    await openTerminal(house.desk, {
      house: lendHouse(house, caller),
      input: process.stdin,
      output: process.stdout,
      columns: process.stdout.columns ?? USUAL_COLUMNS,
      isInteractive: process.stdin.isTTY === true,
      caller,
      conversation: "terminal",
      newId: randomUUID,
      onInterrupt,
    });
    return 0;
  } finally {
    await house.close();
  }
}

function lendHouse({ store, books, readFile }: House, caller: Caller): TerminalHouse {
  const { company } = books;
  return {
    channels: createChannelReader(store, company),
    readFile: (hash) => readFile(caller, hash),
    mostFile_bytes: MOST_FILE_B,
    timeZone: company.timeZone,
    language: async () => (await (await store.openWorkspace(caller)).findPerson(caller)).language,
    home: homedir(),
  };
}

function onInterrupt(hear: () => void): () => void {
  process.on("SIGINT", hear);
  return () => process.off("SIGINT", hear);
}

function callerOf(user: string): Caller {
  return { door: "terminal", organisation: "local", user, name: user };
}

function isKnown(books: Books, user: string): boolean {
  return books.people.some(({ id }) => id === user);
}

function sayWhoIsThere(books: Books, user: string): string {
  return `Nobody in the books is called ${user}. Type one of: ${books.people.map(({ id }) => id).join(", ")}.`;
}

function complain(line: string): number {
  process.stderr.write(`${line}\n`);
  return 2;
}
