import { mkdtemp, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { loadBooks } from "../../adapters/books/load-books.ts";
import { openStore } from "../../adapters/database/open-store.ts";
import { createFileStore } from "../../adapters/files/file-store.ts";
import { openHighsSolver } from "../../adapters/solver/highs-solver.ts";
import { createInlineRunner } from "../../adapters/workers/inline-runner.ts";
import { createOutboxRelay } from "../../adapters/workers/outbox-relay.ts";
import type { Books } from "../../src/books/books.ts";
import { createDesk, type Desk } from "../../src/desk.ts";
import type { Job } from "../../src/jobs/job.ts";
import type { Card } from "../../src/messages/card.ts";
import type { Fault } from "../../src/ports/fault-log.ts";
import { library } from "../support/ask-library.ts";
import { createFakeChat } from "../support/fake-chat.ts";
import { TENANT_ID } from "../teams/fake-platform.ts";
import { type JourneyDoor, type OpenJourneyDoor, SLACK_TEAM, slackUser, teamsUser } from "./journey-door.ts";

/** The demo company with one door open, its store on a disk, and a relay that sends what is due when it is told to. */
export interface JourneyHouse {
  readonly door: JourneyDoor;
  readonly books: Books;
  readonly faults: readonly Fault[];
  /** Time passes [ms]. */
  pass(ms: number): void;
  /** What the team's channel shows, once the relay has sent what is due. */
  team(): Promise<readonly Card[]>;
  job(number: string): Promise<Job>;
  close(): Promise<void>;
}

const SEEDS = new URL("../../seeds", import.meta.url).pathname;
/** November 26, 2026, 07:30 where the demo company is. */
const BEGIN_ms = Date.UTC(2026, 10, 26, 13, 30);
const MINUTE_ms = 60_000;

export async function openJourneyHouse(openDoor: OpenJourneyDoor): Promise<JourneyHouse> {
  const folder = await mkdtemp(join(tmpdir(), "oldhand-journey-"));
  const seeds = await loadBooks(SEEDS);
  const people = seeds.people.map((person) => ({
    ...person,
    slackUser: slackUser(person.id),
    teamsUser: teamsUser(person.id),
  }));
  const books: Books = { ...seeds, people };
  const store = await openStore({
    path: join(folder, "store.sqlite"),
    books,
    ownOrganisations: [
      { door: "slack", organisation: SLACK_TEAM },
      { door: "teams", organisation: TENANT_ID },
    ],
  });
  const faults: Fault[] = [];
  let [now_ms, ids] = [BEGIN_ms, 0];
  const inner = createDesk({
    library,
    books,
    store,
    runner: createInlineRunner(library, books, openHighsSolver),
    clock: { now_ms: () => now_ms },
    newId: () => `0000-${String(++ids).padStart(8, "0")}`,
    newCode: () => "111111",
    faults: { report: (fault) => faults.push(fault) },
    files: createFileStore({ folder: join(folder, "files"), keepsPlace: false }),
    openSolver: openHighsSolver,
  });
  // A minute passes with every message, as it does on a job.
  const desk: Desk = {
    receive(...parts) {
      now_ms += MINUTE_ms;
      return inner.receive(...parts);
    },
  };
  const door = await openDoor(desk, books);
  const home = { door: "web", organisation: "local", user: "ebbe", name: "Ebbe" } as const;
  const chat = createFakeChat(true);
  const relay = createOutboxRelay({
    outbox: store.outbox,
    ports: { slack: chat, teams: chat, web: store.houseChat, terminal: store.houseChat },
    clock: { now_ms: () => now_ms },
    language: books.company.language,
    jitter: () => 0,
    report: (error) => faults.push({ id: "relay", doing: "post", door: "web", error }),
  });
  return {
    door,
    books,
    faults,
    pass(ms) {
      now_ms += ms;
    },
    async team() {
      do now_ms += MINUTE_ms;
      while ((await relay.runOnce()) > 0);
      const cards = await (await store.openWorkspace(home)).channelCards("team", 50);
      return cards.map(({ card }) => card);
    },
    async job(number) {
      const found = await (await store.openWorkspace(home)).findJob(number);
      if (found === undefined) throw new Error(`there is no job ${number}`);
      return found;
    },
    async close() {
      await door.close();
      await store.close();
      await rm(folder, { recursive: true, force: true });
    },
  };
}
