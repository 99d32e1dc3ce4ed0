import { PassThrough } from "node:stream";
import { openTerminal } from "../../adapters/terminal/open-terminal.ts";
import type { JourneyDoor, OpenJourneyDoor, Shown } from "./journey-door.ts";

interface Seat {
  readonly input: PassThrough;
  readonly over: Promise<void>;
  readonly next: () => Promise<string>;
  onScreen: string;
}

/** A terminal for each person. */
export const openTerminalJourney: OpenJourneyDoor = async (desk) => {
  const seats = new Map<string, Seat>();
  let count = 0;
  const sit = (who: string): Seat => {
    const known = seats.get(who);
    if (known !== undefined) return known;
    const [input, output] = [new PassThrough(), new PassThrough()];
    const over = openTerminal(desk, {
      ...{ input, output, columns: 78, isInteractive: false, conversation: "terminal" },
      caller: { door: "terminal", organisation: "local", user: who, name: who },
      newId: () => `${who}-${++count}`,
    });
    const next = () =>
      new Promise<string>((resolve) => output.once("data", (data: Buffer) => resolve(data.toString())));
    const seat: Seat = { input, over, next, onScreen: "" };
    seats.set(who, seat);
    return seat;
  };
  const type = async (who: string, line: string): Promise<Shown> => {
    const seat = sit(who);
    const printed = seat.next();
    seat.input.write(`${line}\n`);
    seat.onScreen = (await printed).trim();
    return { text: seat.onScreen, buttons: lettersOf(seat.onScreen).map(({ label }) => label) };
  };
  const journey: JourneyDoor = {
    door: "terminal",
    say: type,
    press(who, label) {
      const found = lettersOf(sit(who).onScreen).find((one) => one.label === label);
      if (found === undefined) throw new Error(`no button ${label} before ${who}`);
      return type(who, found.letter);
    },
    async close() {
      for (const { input, over } of seats.values()) {
        input.end();
        await over;
      }
    },
  };
  return journey;
};

/** "  a) Site survey": the letter that presses a button. */
function lettersOf(printed: string): readonly { readonly letter: string; readonly label: string }[] {
  return [...printed.matchAll(/^ {2}([a-z]{1,2})\) (.+)$/gm)].map(([, letter = "", label = ""]) => ({ letter, label }));
}
