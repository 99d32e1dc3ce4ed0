import type { Books } from "../../src/books/books.ts";
import type { Desk } from "../../src/desk.ts";
import type { Door } from "../../src/ports/store.ts";

/** What a person sees after they said or pressed something, whatever the platform made of it. */
export interface Shown {
  readonly text: string;
  readonly buttons: readonly string[];
}
export interface Photo {
  readonly name: string;
  readonly bytes: Uint8Array;
}

/** A door as its people use it: what they type, press and send goes in as the platform sends it. */
export interface JourneyDoor {
  readonly door: Door;
  say(who: string, text: string, photos?: readonly Photo[]): Promise<Shown>;
  /** Presses the button of this label under what this person saw last. */
  press(who: string, label: string): Promise<Shown>;
  close(): Promise<void>;
}
export type OpenJourneyDoor = (desk: Desk, books: Books) => Promise<JourneyDoor>;

/** How the platforms call the people of the demo company. */
export const SLACK_TEAM = "T1";
export const slackUser = (who: string) => `U${who.toUpperCase()}`;
export const teamsUser = (who: string) => `${who}-object`;
