import type { Settings } from "../src/boundary/settings.ts";
import type { TeamsDoorSettings } from "../src/boundary/settings-teams.ts";
import type { DoorSettings } from "../src/boundary/settings-values.ts";
import { createChannelReader } from "../src/desk/house-channels.ts";
import type { Language } from "../src/messages/language.ts";
import { MOST_FILE_B } from "../src/ports/files.ts";
import type { Caller } from "../src/ports/store.ts";
import { sniffType } from "./files/sniff-type.ts";
import type { House } from "./open-house.ts";
import { readTeamsAccess } from "./read-teams-access.ts";

/** A door that is open: where, and how it is shut. */
interface OpenDoor {
  readonly describe: string;
  close(): Promise<void>;
}
/** A door and what became of it at the start. */
export type DoorState =
  | { readonly name: DoorName; readonly isOpen: true; readonly door: OpenDoor }
  | { readonly name: DoorName; readonly isOpen: false; readonly because: readonly string[] };
/** Questions to try, in each language, and what to type for the day's work where a topic answers it. */
export interface Openers {
  readonly questions: Readonly<Record<Language, readonly string[]>>;
  readonly today?: Readonly<Record<Language, string>>;
}
type DoorName = "web" | "slack" | "teams";

/** The setting that names the port of each door. */
const PORT_SETTINGS: Readonly<Record<DoorName, string>> = {
  web: "OLDHAND_PORT",
  slack: "SLACK_PORT",
  teams: "TEAMS_PORT",
};

/**
 * Opens every door that the settings allow; each is loaded only then. A door that does not open says why and keeps
 * nobody else from opening.
 */
export async function openDoors(
  house: House,
  settings: Settings,
  root: string,
  openers: Openers,
): Promise<readonly DoorState[]> {
  return await Promise.all([
    open("web", { kind: "ready", settings: settings.web }, (web) => openWeb(house, web, openers)),
    open("slack", settings.slack, async (slack) => {
      const { openSlackDoor } = await import("./slack/open-slack-door.ts");
      return await openSlackDoor({
        desk: house.desk,
        settings: slack,
        log: house.log,
        drawPng: house.pictures.drawPng,
        readKept: house.readFile,
        walksFor: (caller) => offerWalks(house, caller),
        ...(house.slack && { installed: house.slack }),
      });
    }),
    open("teams", settings.teams, (teams) => openTeams(house, teams, root)),
  ]);
}

async function openWeb(house: House, settings: Settings["web"], openers: Openers): Promise<OpenDoor> {
  const { openWebDoor } = await import("./web/open-web-door.ts");
  const { desk, log, store, books, pictures } = house;
  const languageOf = (caller: Caller) => readLanguage(store, caller);
  const find = async (caller: Caller, hash: string) => {
    const bytes = await house.readFile(caller, hash);
    return bytes && { bytes, type: sniffType(bytes) };
  };
  const people = books.people.map(({ id, name, role }) => ({ user: id, name, role }));
  return await openWebDoor({
    desk,
    settings,
    people,
    log,
    languageOf,
    company: books.company,
    examples: openers.questions,
    today: openers.today,
    drawSvg: pictures.drawSvg,
    files: { most_bytes: MOST_FILE_B, find },
    channels: createChannelReader(store, books.company),
  });
}

async function readLanguage(store: House["store"], caller: Caller): Promise<Language> {
  return (await (await store.openWorkspace(caller)).findPerson(caller)).language;
}

/** The walks of a visit in the order of the visit, each with the word that begins it. */
const WALKS: readonly string[] = ["job", "survey", "kit", "startup", "fault", "done"];

async function offerWalks({ library, store }: House, caller: Caller) {
  const language = await readLanguage(store, caller);
  const walks = WALKS.flatMap((id) => {
    const words = library.texts[language].topics.get(id);
    return words === undefined ? [] : [{ label: words.title, say: id }];
  });
  return { language, walks };
}

async function openTeams(house: House, settings: TeamsDoorSettings, root: string): Promise<OpenDoor> {
  const { openTeamsDoor } = await import("./teams/open-teams-door.ts");
  return await openTeamsDoor({
    desk: house.desk,
    log: house.log,
    settings: await readTeamsAccess(settings, root),
    drawPng: house.pictures.drawPngWithin,
    references: house.store.conversations,
    readFile: house.readFile,
  });
}

async function open<S extends { readonly port: number }>(
  name: DoorName,
  settings: DoorSettings<S>,
  openDoor: (settings: S) => Promise<OpenDoor>,
): Promise<DoorState> {
  if (settings.kind === "unset") return { name, isOpen: false, because: [settings.because] };
  if (settings.kind === "faulty") return { name, isOpen: false, because: settings.because };
  try {
    return { name, isOpen: true, door: await openDoor(settings.settings) };
  } catch (error) {
    return { name, isOpen: false, because: [sayWhy(name, settings.settings.port, error)] };
  }
}

/** One line that says what to do; a port that is taken is the usual reason. */
function sayWhy(name: DoorName, port: number, error: unknown): string {
  const codes = [error, error instanceof Error ? error.cause : undefined].map(codeOf);
  const setting = PORT_SETTINGS[name];
  if (codes.includes("EADDRINUSE"))
    return `port ${port} is taken by another program; stop that one, or set ${setting} to a free port`;
  if (codes.includes("EACCES")) return `port ${port} may not be opened by this user; set ${setting} to one above 1023`;
  return error instanceof Error ? (error.message.split("\n")[0] ?? error.name) : String(error);
}

function codeOf(error: unknown): unknown {
  return error instanceof Error && "code" in error ? error.code : undefined;
}
