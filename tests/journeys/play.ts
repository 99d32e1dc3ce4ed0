import { mkdir, readFile, writeFile } from "node:fs/promises";
import { expect } from "vitest";
import { renderText } from "../../adapters/terminal/render-text.ts";
import type { Card } from "../../src/messages/card.ts";
import type { Door } from "../../src/ports/store.ts";
import type { OpenJourneyDoor, Photo, Shown } from "./journey-door.ts";
import { type JourneyHouse, openJourneyHouse } from "./journey-house.ts";
import { openSlackJourney } from "./slack-journey.ts";
import { openTeamsJourney } from "./teams-journey.ts";
import { openTerminalJourney } from "./terminal-journey.ts";
import { openWebJourney } from "./web-journey.ts";

export const JOURNEY_DOORS: Readonly<Record<Door, OpenJourneyDoor>> = {
  slack: openSlackJourney,
  teams: openTeamsJourney,
  web: openWebJourney,
  terminal: openTerminalJourney,
};

/** What somebody must read in an answer: words, or a pattern. */
type Must = string | RegExp;

/** A journey while it is played: what the crew does, what must then be seen, and all of it written down. */
export interface Play {
  readonly house: JourneyHouse;
  says(who: string, text: string, ...must: readonly Must[]): Promise<Shown>;
  sends(who: string, photo: Photo, text: string, ...must: readonly Must[]): Promise<Shown>;
  presses(who: string, label: string, ...must: readonly Must[]): Promise<Shown>;
  /** Several answers of one walk, one after the other. */
  answers(who: string, ...texts: readonly [string, ...string[]]): Promise<Shown>;
  /** The team's channel as it stands, oldest first, thread and all. */
  readsTeam(): ReturnType<JourneyHouse["team"]>;
  /** The clock on the wall of the company goes on to this moment, in UTC. */
  waitsUntil(moment: string): void;
}

/** Plays a journey through one door, and holds what was seen against its golden file. */
export async function play(name: string, door: Door, script: (play: Play) => Promise<void>): Promise<void> {
  const house = await openJourneyHouse(JOURNEY_DOORS[door]);
  const lines: string[] = [];
  try {
    await script(begin(house, lines));
    expect(house.faults).toEqual([]);
    // Also where a step was not as it must be: what was seen says why.
  } finally {
    await house.close();
    if (process.env["UPDATE_GOLDEN"] === "1") await write(name, door, lines);
  }
  expect(textOf(lines)).toBe(await readFile(fileOf(name, door), "utf8"));
}

function begin(house: JourneyHouse, lines: string[]): Play {
  const at = () => new Date(house.now_ms()).toISOString().slice(0, 16).replace("T", " ");
  const note = (did: string, text: string) => lines.push(`=== ${at()} UTC, ${did}`, ...text.split("\n"), "");
  const step = async (did: string, work: Promise<Shown>, must: readonly Must[]): Promise<Shown> => {
    const shown = await work.catch((error: unknown) => {
      note(did, String(error));
      throw error;
    });
    note(did, shown.text);
    const text = flat(shown.text);
    for (const one of must) {
      if (typeof one === "string") expect(text, did).toContain(one);
      else expect(text, did).toMatch(one);
    }
    return shown;
  };
  const played: Play = {
    house,
    says: (who, text, ...must) => step(`${who}: ${text}`, house.door.say(who, text), must),
    sends: (who, photo, text, ...must) =>
      step(`${who} sends ${photo.name}: ${text}`, house.door.say(who, text, [photo]), must),
    presses: (who, label, ...must) =>
      step(
        `${who} presses [${label}]`,
        Promise.resolve().then(() => house.door.press(who, label)),
        must,
      ),
    async answers(who, first, ...rest) {
      let shown = await played.says(who, first);
      for (const text of rest) shown = await played.says(who, text);
      return shown;
    },
    async readsTeam() {
      const posts = await house.team();
      const texts = posts.map(
        ({ id, follows, card }) =>
          `--- ${id}${follows === undefined ? "" : ` in the thread of ${follows}`}\n${renderText(card, 100)}`,
      );
      note("the team's channel", texts.join("\n"));
      return posts;
    },
    waitsUntil: (moment) => house.waitUntil(Date.parse(moment)),
  };
  return played;
}

/** A door breaks lines where it likes. */
function flat(text: string): string {
  return text.replace(/\s+/g, " ");
}

function fileOf(name: string, door: Door): URL {
  return new URL(`golden/${name}.${door}.txt`, import.meta.url);
}

function textOf(lines: readonly string[]): string {
  return `${lines.map((line) => line.trimEnd()).join("\n")}\n`;
}

async function write(name: string, door: Door, lines: readonly string[]): Promise<void> {
  await mkdir(new URL("golden/", import.meta.url), { recursive: true });
  await writeFile(fileOf(name, door), textOf(lines));
}

/** The rows of a card, by their labels. */
export function rowsOf(card: Card): Readonly<Record<string, string>> {
  const rows = card.blocks.flatMap((block) => (block.kind === "rows" ? block.rows : []));
  return Object.fromEntries(rows.map(({ label, value }) => [label, value]));
}
