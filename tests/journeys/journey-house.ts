import { mkdir, mkdtemp, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { loadBooks } from "../../adapters/books/load-books.ts";
import { openStore } from "../../adapters/database/open-store.ts";
import { createFileStore } from "../../adapters/files/file-store.ts";
import { createPapers } from "../../adapters/papers/create-papers.ts";
import { drawRecordPdf } from "../../adapters/papers/draw-record.ts";
import { openHighsSolver } from "../../adapters/solver/highs-solver.ts";
import { createInlineRunner } from "../../adapters/workers/inline-runner.ts";
import { createOutboxRelay } from "../../adapters/workers/outbox-relay.ts";
import { createPostPapers } from "../../adapters/workers/post-papers.ts";
import type { Books } from "../../src/books/books.ts";
import { createChannelReader } from "../../src/desk/house-channels.ts";
import { createDesk, type Desk } from "../../src/desk.ts";
import type { Job, JobEvent } from "../../src/jobs/job.ts";
import type { Fault } from "../../src/ports/fault-log.ts";
import type { Caller, ChannelCard, Store } from "../../src/ports/store.ts";
import { library } from "../support/ask-library.ts";
import { createFakeChat } from "../support/fake-chat.ts";
import { TENANT_ID } from "../teams/fake-platform.ts";
import {
  type DoorParts,
  type JourneyDoor,
  type OpenJourneyDoor,
  SLACK_TEAM,
  slackUser,
  teamsUser,
} from "./journey-door.ts";

/** The demo company with one door open, its store on a disk, and a relay that sends what is due when it is told to. */
export interface JourneyHouse {
  readonly door: JourneyDoor;
  readonly faults: readonly Fault[];
  now_ms(): number;
  /** Time passes until this moment. */
  waitUntil(moment_ms: number): void;
  /** What the team's channel shows, once the relay has sent what is due. */
  team(): Promise<readonly ChannelCard[]>;
  job(number: string): Promise<Job>;
  history(number: string): Promise<readonly JobEvent[]>;
  /** A kept file, as it lies on the disk. */
  file(hash: string): Promise<Uint8Array | undefined>;
  /** The house is shut and opened again: store, desk and door are new, the disk is the same. */
  restart(): Promise<void>;
  close(): Promise<void>;
}

const SEEDS = new URL("../../seeds", import.meta.url).pathname;
const seeds = await loadBooks(SEEDS, library.cautions, library.faults);
const BOOKS: Books = {
  ...seeds,
  people: seeds.people.map((person) => ({
    ...person,
    slackUser: slackUser(person.id),
    teamsUser: teamsUser(person.id),
  })),
};
/** November 26, 2026, 07:30 where the demo company is. */
const BEGIN_ms = Date.UTC(2026, 10, 26, 13, 30);
const MINUTE_ms = 60_000;
const PAPERS = createPapers({ printPhoto: async (bytes) => bytes, draw: drawRecordPdf });
const HOME: Caller = { door: "web", organisation: "local", user: "ebbe", name: "Ebbe" };

interface Clock {
  now_ms: number;
  ids: number;
}

export async function openJourneyHouse(openDoor: OpenJourneyDoor): Promise<JourneyHouse> {
  const folder = await mkdtemp(join(tmpdir(), "oldhand-journey-"));
  const faults: Fault[] = [];
  const clock: Clock = { now_ms: BEGIN_ms, ids: 0 };
  let store = await openOn(folder);
  const parts = () => furnish(folder, store, clock, faults);
  await mkdir(join(folder, "home"));
  const door = await openDoor(parts());
  const workspace = () => store.openWorkspace(HOME);
  return {
    door,
    faults,
    now_ms: () => clock.now_ms,
    waitUntil(moment_ms) {
      if (moment_ms < clock.now_ms) throw new Error("no day comes back");
      clock.now_ms = moment_ms;
    },
    async team() {
      const relay = openRelay(folder, store, clock, faults);
      do clock.now_ms += MINUTE_ms;
      while ((await relay.runOnce()) > 0);
      return await (await workspace()).channelCards("team", 50);
    },
    async job(number) {
      const found = await (await workspace()).findJob(number);
      if (found === undefined) throw new Error(`there is no job ${number}`);
      return found;
    },
    history: async (number) => (await workspace()).jobHistory(number),
    file: async (hash) => await filesIn(folder).read((await workspace()).workspace, hash),
    restart: () =>
      door.reopen(async () => {
        await store.close();
        store = await openOn(folder);
        return parts();
      }),
    async close() {
      await door.close();
      await store.close();
      await rm(folder, { recursive: true, force: true });
    },
  };
}

async function openOn(folder: string) {
  return await openStore({
    path: join(folder, "store.sqlite"),
    books: BOOKS,
    ownOrganisations: [
      { door: "slack", organisation: SLACK_TEAM },
      { door: "teams", organisation: TENANT_ID },
    ],
  });
}

function filesIn(folder: string) {
  return createFileStore({ folder: join(folder, "files"), keepsPlace: false });
}

/** Everything behind the door, new. */
function furnish(folder: string, store: Store, clock: Clock, faults: Fault[]): DoorParts {
  const files = filesIn(folder);
  const inner = createDesk({
    library,
    books: BOOKS,
    store,
    runner: createInlineRunner(library, BOOKS, openHighsSolver),
    clock: { now_ms: () => clock.now_ms },
    newId: () => `0000-${String(++clock.ids).padStart(8, "0")}`,
    newCode: () => "111111",
    faults: { report: (fault) => faults.push(fault) },
    files,
    papers: PAPERS,
    openSolver: openHighsSolver,
  });
  // A minute passes with every message, as it does on a job.
  const desk: Desk = {
    receive(...parts) {
      clock.now_ms += MINUTE_ms;
      return inner.receive(...parts);
    },
  };
  return {
    desk,
    books: BOOKS,
    readFile: async (caller, hash) => await files.read((await store.openWorkspace(caller)).workspace, hash),
    channels: createChannelReader(store, BOOKS.company),
    languageOf: async (caller) => (await (await store.openWorkspace(caller)).findPerson(caller)).language,
    home: join(folder, "home"),
  };
}

function openRelay(folder: string, store: Store, clock: Clock, faults: Fault[]) {
  const chat = createFakeChat(true);
  return createOutboxRelay({
    outbox: store.outbox,
    ports: { slack: chat, teams: chat, web: store.houseChat, terminal: store.houseChat },
    clock: { now_ms: () => clock.now_ms },
    language: BOOKS.company.language,
    complete: createPostPapers({ files: filesIn(folder), papers: PAPERS }),
    jitter: () => 0,
    report: (error) => faults.push({ id: "relay", doing: "post", door: "web", error }),
  });
}
