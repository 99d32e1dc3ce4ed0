import type { TerminalHouse } from "../../adapters/terminal/own-lines.ts";
import type { Books } from "../../src/books/books.ts";
import type { Desk } from "../../src/desk.ts";
import type { Caller, Door } from "../../src/ports/store.ts";

/** What a person sees after they said or pressed something, whatever the platform made of it. */
export interface Shown {
  readonly text: string;
  readonly buttons: readonly string[];
}
export interface Photo {
  readonly name: string;
  readonly bytes: Uint8Array;
}

/** What a door is opened on. */
export interface DoorParts {
  readonly desk: Desk;
  readonly books: Books;
  readonly readFile: (caller: Caller, hash: string) => Promise<Uint8Array | undefined>;
  readonly channels: TerminalHouse["channels"];
  readonly languageOf: (caller: Caller) => ReturnType<TerminalHouse["language"]>;
  /** A folder of the crew's own, where their photos are. */
  readonly home: string;
}

/** A door as its people use it: what they type, press and send goes in as the platform sends it. */
export interface JourneyDoor {
  readonly door: Door;
  say(who: string, text: string, photos?: readonly Photo[]): Promise<Shown>;
  /** Presses the button of this label under what this person saw last. */
  press(who: string, label: string): Promise<Shown>;
  /** Shuts the door and opens it on other parts, as the next start does; what people have on their screens stays there. */
  reopen(next: () => Promise<DoorParts>): Promise<void>;
  close(): Promise<void>;
}
export type OpenJourneyDoor = (parts: DoorParts) => Promise<JourneyDoor>;

/** What people have on their screens, and the button of this label there. */
export function createScreens<B extends { readonly label: string }>() {
  const buttons = new Map<string, readonly B[]>();
  return {
    show(who: string, text: string, seen: readonly B[]): Shown {
      buttons.set(who, seen);
      return { text, buttons: seen.map(({ label }) => label) };
    },
    find(who: string, label: string): B {
      const seen = buttons.get(who) ?? [];
      const found = seen.find((one) => one.label === label) ?? seen.find((one) => isCutShort(one.label, label));
      if (found !== undefined) return found;
      throw new Error(`no button “${label}” before ${who}, only ${seen.map((one) => one.label).join(", ")}`);
    },
  };
}

/** A platform may cut a long label short. */
function isCutShort(seen: string, label: string): boolean {
  return seen.endsWith("…") && label.startsWith(seen.slice(0, -1));
}

/** How the platforms call the people of the demo company. */
export const SLACK_TEAM = "T1";
export const slackUser = (who: string) => `U${who.toUpperCase()}`;
export const teamsUser = (who: string) => `${who}-object`;
