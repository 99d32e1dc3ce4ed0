import { on } from "node:events";
import { writeFile } from "node:fs/promises";
import { join } from "node:path";
import { PassThrough } from "node:stream";
import { openTerminal } from "../../adapters/terminal/open-terminal.ts";
import { MOST_FILE_B } from "../../src/ports/files.ts";
import { createScreens, type DoorParts, type JourneyDoor, type OpenJourneyDoor, type Shown } from "./journey-door.ts";

interface Seat {
  readonly input: PassThrough;
  readonly over: Promise<void>;
  readonly next: () => Promise<string>;
}
interface Button {
  readonly letter: string;
  readonly label: string;
}
/** Width of the screens [characters]. */
const COLUMNS = 78;

/** A terminal for each person. */
export const openTerminalJourney: OpenJourneyDoor = async (first) => {
  const screens = createScreens<Button>();
  const seats = new Map<string, Seat>();
  let parts = first;
  let count = 0;
  const sit = (who: string): Seat => {
    const known = seats.get(who);
    if (known !== undefined) return known;
    const seat = openSeat(who, parts, () => `${who}-${++count}`);
    seats.set(who, seat);
    return seat;
  };
  const type = async (who: string, line: string): Promise<Shown> => {
    const seat = sit(who);
    const printed = seat.next();
    seat.input.write(`${line}\n`);
    const text = (await printed).trim();
    return screens.show(who, text, lettersOf(text));
  };
  const leave = async () => {
    for (const { input, over } of seats.values()) {
      input.end();
      await over;
    }
    seats.clear();
  };
  const journey: JourneyDoor = {
    door: "terminal",
    async say(who, text, photos = []) {
      for (const [at, { name, bytes }] of photos.entries()) {
        await writeFile(join(parts.home, name), bytes);
        const isLast = at === photos.length - 1;
        const shown = await type(who, `attach ~/${name}${isLast && text !== "" ? ` ${text}` : ""}`);
        if (isLast) return shown;
      }
      return await type(who, text);
    },
    press: (who, label) => type(who, screens.find(who, label).letter),
    async reopen(next) {
      await leave();
      parts = await next();
    },
    close: leave,
  };
  return journey;
};

function openSeat(who: string, { desk, books, readFile, channels, languageOf, home }: DoorParts, newId: () => string) {
  const [input, output] = [new PassThrough(), new PassThrough()];
  const caller = { door: "terminal", organisation: "local", user: who, name: who } as const;
  const over = openTerminal(desk, {
    ...{ input, output, columns: COLUMNS, isInteractive: false, conversation: "terminal", caller, newId },
    house: {
      ...{ channels, home, mostFile_bytes: MOST_FILE_B, timeZone: books.company.timeZone },
      readFile: (hash) => readFile(caller, hash),
      language: () => languageOf(caller),
    },
  });
  // What is printed of work that goes on ends with one line break, an answer with two.
  const next = async () => {
    for await (const [data] of on(output, "data")) if (String(data).endsWith("\n\n")) return String(data);
    throw new Error("the terminal is shut");
  };
  return { input, over, next };
}

/** "  a) Site survey": the letter that presses a button. */
function lettersOf(printed: string): readonly Button[] {
  return [...printed.matchAll(/^ {2}([a-z]{1,2})\) (.+)$/gm)].map(([, letter = "", label = ""]) => ({ letter, label }));
}
