import { copyFileSync } from "node:fs";
import { mkdtemp, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, expect, test } from "vitest";
import { openOn } from "../../adapters/database/open-database.ts";
import { createStore, openStore } from "../../adapters/database/open-store.ts";
import { createFileStore } from "../../adapters/files/file-store.ts";
import { createPapers } from "../../adapters/papers/create-papers.ts";
import { drawRecordPdf } from "../../adapters/papers/draw-record.ts";
import { createOutboxRelay } from "../../adapters/workers/outbox-relay.ts";
import { createPostPapers } from "../../adapters/workers/post-papers.ts";
import type { JobEntry } from "../../src/jobs/job.ts";
import type { Block } from "../../src/messages/card.ts";
import type { FileStore, KeptFile } from "../../src/ports/files.ts";
import type { PostPaper } from "../../src/ports/outbox.ts";
import type { Exchange, Store } from "../../src/ports/store.ts";
import { type CrashingDatabase, crashBefore } from "../support/crashing-database.ts";
import { type ChatFate, createFakeChat, type FakeChat } from "../support/fake-chat.ts";
import { BOOKS } from "../support/sample-books.ts";
import { SMALL_JPEG } from "../support/small-jpeg.ts";
import { ANN, card, exchangeOf, SAMPLE_PAPER } from "../support/store-samples.ts";

const settings = { books: BOOKS, ownOrganisations: [] };
const START_ms = 1_800_000_000_000;

let folder = "";
let base = "";
let exchange: Exchange;
let files: FileStore;
let photo: KeptFile;
/** Hash of the paper, as it was made in a process that nothing happened to. */
let paper = "";

const entry = (change: JobEntry["change"]): JobEntry => ({ job: "1001", change });
const CLOSE_OUT: readonly JobEntry[] = [
  entry({
    kind: "reading",
    reading: { id: "outlet_temperature", quantity: { kind: "temperature", value: 49 }, isAccepted: true },
  }),
  entry({ kind: "status", status: "complete" }),
];

beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), "oldhand-close-out-"));
  base = join(folder, "base.sqlite");
  const store = await openStore({ path: base, ...settings });
  const workspace = await store.openWorkspace(ANN);
  const person = await workspace.findPerson(ANN);
  const opened = [
    entry({ kind: "opened", customer: "T. M.", place: "Testbench" }),
    entry({ kind: "status", status: "under_way" }),
  ];
  await workspace.commit(exchangeOf(person, { delivery: "opened", jobs: opened, at_ms: START_ms }));
  await store.close();
  files = createFileStore({ folder: join(folder, "files"), keepsPlace: false });
  const kept = await files.keep(workspace.workspace, "left.jpg", SMALL_JPEG);
  if (!kept.ok) throw new Error(kept.because);
  photo = kept.file;
  const shown: Block = { kind: "file", file: photo, text: "left.jpg" };
  const rest = card("The rest");
  exchange = exchangeOf(person, {
    delivery: "close-out",
    at_ms: START_ms,
    jobs: CLOSE_OUT,
    posts: [
      { id: "p1", channel: { door: "slack", id: "C1" }, card: card("Job 1001 is complete"), language: "en" },
      {
        id: "p2",
        channel: { door: "slack", id: "C1" },
        card: { ...rest, blocks: [...rest.blocks, shown] },
        language: "en",
        follows: "p1",
        paper: paperWith(photo),
      },
    ],
  });
  const chat = createFakeChat(true);
  await closeOut("paper", Number.POSITIVE_INFINITY, chat);
  paper = filesIn(chat.messages[1])[1]?.hash ?? "";
  expect((await files.read(workspace.workspace, paper))?.subarray(0, 5)).toEqual(Buffer.from("%PDF-"));
});

const paperWith = (file: KeptFile): PostPaper => ({
  ...SAMPLE_PAPER,
  record: {
    ...SAMPLE_PAPER.record,
    blocks: [{ kind: "photos", photos: [{ file, caption: "left.jpg", missing: "gone", elsewhere: "kept" }] }],
  },
});
const filesIn = (message: FakeChat["messages"][number] | undefined): readonly KeptFile[] =>
  (message?.card.blocks ?? []).flatMap((block) => (block.kind === "file" ? [block.file] : []));
afterAll(() => rm(folder, { recursive: true }));

/** Drawn as in the house; nothing is remembered from one process to the next. */
const PAPERS = createPapers({ printPhoto: async (bytes) => bytes, draw: (one, photos) => drawRecordPdf(one, photos) });

/** A relay whose clock jumps ahead with every turn. */
async function relayFor(turns: number, store: Store, chat: FakeChat, from_ms: number): Promise<void> {
  let now_ms = from_ms;
  const relay = createOutboxRelay({
    outbox: store.outbox,
    ports: { slack: chat, teams: chat, web: store.houseChat, terminal: store.houseChat },
    clock: { now_ms: () => now_ms },
    complete: createPostPapers({ files, papers: PAPERS }),
    language: "en",
    jitter: () => 0,
    report: () => undefined,
  });
  for (let turn = 0; turn < turns; turn += 1) {
    await relay.runOnce();
    now_ms += 90_000;
  }
}

interface Run {
  /** Statements before the close-out, in its commit, and in all. */
  readonly opening: number;
  readonly committing: number;
  readonly all: number;
  /** The person was told that it is saved. */
  readonly acknowledged: boolean;
}

/** Closes the job and sends what is to be posted, in a process that dies before a statement. */
async function closeOut(name: string, at: number, chat: FakeChat): Promise<Run> {
  const path = join(folder, `run-${name}`);
  copyFileSync(base, path);
  const connection: CrashingDatabase = crashBefore(at, path, join(folder, `image-${name}`));
  const store = await createStore(await openOn(connection), settings);
  const workspace = await store.openWorkspace(ANN);
  const opening = connection.begun();
  let committing = opening;
  let acknowledged = false;
  try {
    await workspace.commit(exchange);
    acknowledged = true;
    committing = connection.begun();
    await relayFor(3, store, chat, START_ms);
  } catch {
    // The process is dead; nobody is told anything any more.
  }
  const all = connection.begun();
  await store.close();
  return { opening, committing, all, acknowledged };
}

/** Starts again on what the dead process left: a person who was told nothing sends the same message again. */
async function startAgain(name: string, run: Run, chat: FakeChat) {
  const store = await openStore({ path: join(folder, `image-${name}`), ...settings });
  const workspace = await store.openWorkspace(ANN);
  const kept = await workspace.findDelivery("close-out");
  const isLost = run.acknowledged && kept === undefined;
  if (kept === undefined) await workspace.commit(exchange);
  await relayFor(6, store, chat, START_ms + 600_000);
  const [job, history, lost] = [
    await workspace.findJob("1001"),
    await workspace.jobHistory("1001"),
    await workspace.lostPosts(),
  ];
  const due = await store.outbox.due(START_ms + 10 * 3_600_000);
  await store.close();
  return { isLost, status: job?.status, readings: Object.keys(job?.readings ?? {}), events: history.length, lost, due };
}

const RIGHT = { isLost: false, status: "complete", readings: ["outlet_temperature"], events: 4, lost: [], due: [] };
/** The rest of the summary stands under the first message, whatever id that was given. */
const IN_THREAD = [{ id: "p1" }, { id: "p2", thread: "m0" }];
const placeOf = ({ id, thread }: FakeChat["messages"][number]) => ({ id, ...(thread !== undefined && { thread }) });
/** What every message of the rest carries: the photo and the paper, the same file however often it was made. */
const carriedBy = ({ messages }: FakeChat) =>
  messages
    .filter(({ id }) => id === "p2")
    .map(filesIn)
    .map((all) => all.map(({ hash }) => hash));
const isRepeatNoted = ({ card: { blocks } }: FakeChat["messages"][number]) =>
  blocks.some((block) => block.kind === "text" && /may be a repeat/.test(block.text));

test("a process that dies before any statement of the close-out itself loses nothing and posts nothing twice", async () => {
  const { opening, committing } = await closeOut("whole", Number.POSITIVE_INFINITY, createFakeChat(true));
  expect(committing - opening).toBeGreaterThan(15);
  for (let at = opening; at < committing; at += 1) {
    const chat = createFakeChat(true);
    const run = await closeOut(`commit-${at}`, at, chat);
    expect({ at, acknowledged: run.acknowledged, sends: chat.sends.length }).toEqual({
      at,
      acknowledged: false,
      sends: 0,
    });
    expect({ at, ...(await startAgain(`commit-${at}`, run, chat)) }).toEqual({ at, ...RIGHT });
    expect(chat.messages.map(placeOf)).toEqual(IN_THREAD);
    expect(carriedBy(chat)).toEqual([[photo.hash, paper]]);
  }
});

const FATES: readonly { readonly name: string; readonly fate: ChatFate }[] = [
  { name: "takes every post", fate: "arrives" },
  { name: "takes the post and does not get round to saying so", fate: "answer_lost" },
  { name: "dies before it takes the post", fate: "never_arrives" },
  { name: "asks to wait", fate: { kind: "retryLater", after_ms: 5_000, because: "busy" } },
];

test.each(FATES)("a process that dies at any step of sending to a platform that $name", async ({ name, fate }) => {
  const openChat = (canLook: boolean) => {
    const chat = createFakeChat(canLook);
    chat.fates.push(fate);
    return chat;
  };
  const { committing, all } = await closeOut(`${name}-whole`, Number.POSITIVE_INFINITY, openChat(true));
  expect(all - committing).toBeGreaterThan(8);
  for (let at = committing; at < all; at += 1) {
    const chat = openChat(true);
    const run = await closeOut(`${name}-${at}`, at, chat);
    expect(run.acknowledged).toBe(true);
    expect({ at, ...(await startAgain(`${name}-${at}`, run, chat)) }).toEqual({ at, ...RIGHT });
    expect({ at, messages: chat.messages.map(placeOf) }).toEqual({ at, messages: IN_THREAD });
    expect({ at, carried: carriedBy(chat) }).toEqual({ at, carried: [[photo.hash, paper]] });
    expect(chat.messages.filter(isRepeatNoted)).toEqual([]);
  }
});

test("where a platform cannot be looked through nothing is lost either, and every repeat says that it may be one", async () => {
  const { committing, all } = await closeOut("blind-whole", Number.POSITIVE_INFINITY, createFakeChat(false));
  let repeats = 0;
  for (let at = committing; at < all; at += 1) {
    const chat = createFakeChat(false);
    const run = await closeOut(`blind-${at}`, at, chat);
    expect({ at, ...(await startAgain(`blind-${at}`, run, chat)) }).toEqual({ at, ...RIGHT });
    const seen = new Set<string>();
    for (const message of chat.messages) {
      if (seen.has(message.id)) {
        repeats += 1;
        expect({ at, isNoted: isRepeatNoted(message) }).toEqual({ at, isNoted: true });
      }
      seen.add(message.id);
    }
    expect([...seen]).toEqual(["p1", "p2"]);
    for (const carried of carriedBy(chat)) expect({ at, carried }).toEqual({ at, carried: [photo.hash, paper] });
  }
  expect(repeats).toBeGreaterThan(0);
});
