import { randomInt, randomUUID } from "node:crypto";
import { availableParallelism } from "node:os";
import { join, resolve } from "node:path";
import type { Books } from "../src/books/books.ts";
import type { Settings } from "../src/boundary/settings.ts";
import { dayAt } from "../src/crew/zone-time.ts";
import { createDesk, type Desk } from "../src/desk.ts";
import type { Library } from "../src/library.ts";
import type { FaultLog } from "../src/ports/fault-log.ts";
import type { FileStore } from "../src/ports/files.ts";
import type { PaperPort } from "../src/ports/papers.ts";
import type { Solve } from "../src/ports/solver.ts";
import type { Caller, Store } from "../src/ports/store.ts";
import type { TopicRunner } from "../src/ports/topic-runner.ts";
import { loadBooks } from "./books/load-books.ts";
import { createFileStore } from "./files/file-store.ts";
import { loadLibrary } from "./library/load-library.ts";
import { createFaultLog } from "./log/fault-log.ts";
import { type Log, openLog } from "./log/open-log.ts";
import { startDigests } from "./open-digests.ts";
import { startRelay } from "./open-relay.ts";
import { openSlackAccess, type SlackAccess } from "./open-slack-access.ts";
import { createPapers } from "./papers/create-papers.ts";
import { readTeamsAccess } from "./read-teams-access.ts";
import { createInlineRunner } from "./workers/inline-runner.ts";
import { createPicturePool, type PicturePool } from "./workers/picture-pool.ts";
import { createPoolRunner } from "./workers/pool-runner.ts";
import { createPostPapers } from "./workers/post-papers.ts";

/** What answers a question that nobody need remember. */
export interface Shelf {
  readonly library: Library;
  readonly books: Books;
  readonly runner: TopicRunner;
}
/** Everything behind the doors. */
export interface House extends Shelf {
  readonly store: Store;
  readonly desk: Desk;
  readonly files: FileStore;
  /** A kept file of the workspace that a caller belongs to, for a door that hands it over. */
  readonly readFile: (caller: Caller, hash: string) => Promise<Uint8Array | undefined>;
  readonly log: Log;
  readonly pictures: PicturePool;
  /** Left out where Slack is not set up. */
  readonly slack?: SlackAccess;
  /** Shuts the store and ends the worker threads, once the doors are shut. */
  close(): Promise<void>;
}

const WORKER_FILE = new URL("./long-work-thread.mjs", import.meta.url).pathname;
const PICTURE_FILE = new URL("./picture-thread.mjs", import.meta.url).pathname;
const DATABASE_FILE = "oldhand.sqlite";
const FILES_FOLDER = "files";

let solver: Promise<Solve> | undefined;
/** The solver is loaded when the first plan is asked for, and once. */
function openSolver(): Promise<Solve> {
  solver ??= import("./solver/highs-solver.ts").then(({ openHighsSolver }) => openHighsSolver());
  return solver;
}

/**
 * Loads what Oldhand knows and the company's books. Folders in the settings are told from `root`.
 * @param at_ms the moment of the one question that is asked; left out where many are
 */
export async function openShelf(settings: Settings, root: string, at_ms?: number): Promise<Shelf> {
  const library = await loadLibrary();
  const loaded = await loadBooks(resolve(root, settings.companyFolder), library.cautions, library.faults);
  const books = at_ms === undefined ? loaded : { ...loaded, today: dayAt(loaded.company.timeZone, at_ms) };
  return { library, books, runner: createInlineRunner(library, books, openSolver) };
}

/**
 * Opens everything behind the doors. Whoever opened it closes it when the doors are shut.
 * @param sendsPosts false where another process may be sending what stands in the outbox
 */
export async function openHouse(
  settings: Settings,
  root: string,
  { sendsPosts = true }: { readonly sendsPosts?: boolean } = {},
): Promise<House> {
  const [shelf, { openStore }] = await Promise.all([openShelf(settings, root), import("./database/open-store.ts")]);
  const log = openLog(settings.logLevel, process.stderr);
  const { slack, teams } = settings;
  const slackReady = slack.kind === "ready" ? slack.settings : undefined;
  const ownTeam = slackReady?.ownTeam;
  const ownTenant = teams.kind === "ready" ? teams.settings.ownTenant : undefined;
  const store = await openStore({
    path: join(resolve(root, settings.dataFolder), DATABASE_FILE),
    books: shelf.books,
    ownOrganisations: [
      ...(ownTeam === undefined ? [] : [{ door: "slack", organisation: ownTeam } as const]),
      ...(ownTenant === undefined ? [] : [{ door: "teams", organisation: ownTenant } as const]),
    ],
    ...(slackReady?.oauth && { secretKeys: slackReady.oauth.secretKeys }),
  });
  const runner = createPoolRunner(shelf.library, shelf.books, shelf.runner, {
    booksFolder: resolve(root, settings.companyFolder),
    threads: Math.max(1, availableParallelism()),
    workerFile: WORKER_FILE,
  });
  const pictures = createPicturePool(PICTURE_FILE);
  const faults = createFaultLog(log);
  const files = createFileStore({
    folder: join(resolve(root, settings.dataFolder), FILES_FOLDER),
    keepsPlace: shelf.books.company.keepsPhotoPlace === true,
  });
  const slackAccess = slackReady && openSlackAccess(slackReady, store.installations, log);
  const papers = createPapers({ printPhoto: pictures.printPhoto, draw: pictures.drawRecord });
  const relayParts = { store, faults, files, papers, books: shelf.books, settings, root, slackAccess };
  const relay = sendsPosts ? startOwnRelay(relayParts) : undefined;
  const digests = sendsPosts ? startDigests({ ...shelf, store, faults }) : undefined;
  const desk = createDesk({
    ...shelf,
    runner,
    store,
    clock: { now_ms: Date.now },
    newId: randomUUID,
    newCode: () => String(randomInt(1_000_000)).padStart(6, "0"),
    faults,
    files,
    papers,
    openSolver,
  });
  const close = async () => {
    await runner.close();
    // A post that is under way may still want its paper.
    await Promise.all([digests?.stop(), relay?.stop()]);
    await pictures.close();
    await slackAccess?.tokens.settled();
    await store.close();
  };
  const readFile = async (caller: Caller, hash: string) =>
    await files.read((await store.openWorkspace(caller)).workspace, hash);
  const doors = { ...(slackAccess && { slack: slackAccess }), readFile };
  return { ...shelf, ...doors, runner, store, desk, files, log, pictures, close };
}

interface RelayParts {
  readonly store: Store;
  readonly faults: FaultLog;
  readonly files: FileStore;
  readonly papers: PaperPort;
  readonly books: Books;
  readonly settings: Settings;
  readonly root: string;
  readonly slackAccess: SlackAccess | undefined;
}

function startOwnRelay({ store, faults, files, papers, books, settings, root, slackAccess }: RelayParts) {
  const { teams } = settings;
  return startRelay({
    store,
    faults,
    language: books.company.language,
    readFile: files.read,
    complete: createPostPapers({ files, papers }),
    ...(slackAccess && { slack: slackAccess }),
    ...(teams.kind === "ready" && { teams: () => readTeamsAccess(teams.settings, root) }),
  });
}
