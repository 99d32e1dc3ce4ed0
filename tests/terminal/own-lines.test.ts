import { mkdtemp, readFile, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { PassThrough } from "node:stream";
import { afterEach, beforeEach, describe, expect, test } from "vitest";
import { openTerminal } from "../../adapters/terminal/open-terminal.ts";
import { createChannelReader } from "../../src/desk/house-channels.ts";
import type { Desk, Inbound } from "../../src/desk.ts";
import type { Card } from "../../src/messages/card.ts";
import type { Language } from "../../src/messages/language.ts";
import type { Caller, Role, Store } from "../../src/ports/store.ts";
import { createMemoryStore } from "../support/memory-store.ts";

const CALLER: Caller = { door: "terminal", organisation: "local", user: "wren", name: "Wren" };
const HASH = "a1".repeat(32);
/** November 25, 2026, 14:02 in Chicago. */
const POSTED_ms = Date.UTC(2026, 10, 25, 20, 2);
const PHOTO: Card = {
  title: "Job 1003",
  summary: "One photo.",
  blocks: [
    { kind: "file", file: { hash: HASH, name: "panel.jpg", type: "image/jpeg", size_B: 5 }, text: "The panel" },
    { kind: "buttons", buttons: [{ label: "Open job 1003", say: "job 1003" }] },
  ],
};
const QUESTION: Card = {
  title: "Open item",
  summary: "Who?",
  blocks: [{ kind: "question", prompt: "Who sees to it?" }],
};

let folder: string;
beforeEach(async () => {
  folder = await mkdtemp(join(tmpdir(), "oldhand-terminal-"));
});
afterEach(() => rm(folder, { recursive: true, force: true }));

interface Sitting {
  readonly language?: Language;
  readonly role?: Role;
  readonly card?: Card;
  readonly store?: Store;
  readonly isInteractive?: boolean;
}
async function type(lines: readonly string[], sitting: Sitting = {}) {
  const { language = "en", role = "technician", card = PHOTO, store = createMemoryStore() } = sitting;
  const heard: Inbound[] = [];
  const desk: Desk = {
    receive: async (inbound) => {
      heard.push(inbound);
      return { card, isRepeat: false };
    },
  };
  const withRole: Store = {
    ...store,
    openWorkspace: async (caller) => {
      const workspace = await store.openWorkspace(caller);
      return { ...workspace, findPerson: async (one) => ({ ...(await workspace.findPerson(one)), role }) };
    },
  };
  const output = new PassThrough();
  let id = 0;
  await openTerminal(desk, {
    input: PassThrough.from(lines.map((line) => `${line}\n`)),
    output,
    columns: 200,
    isInteractive: sitting.isInteractive ?? false,
    caller: CALLER,
    conversation: "tty",
    newId: () => `d${++id}`,
    house: {
      channels: createChannelReader(withRole, {}),
      readFile: async (hash) => (hash === HASH ? Buffer.from("bytes") : undefined),
      mostFile_bytes: 2_000_000,
      timeZone: "America/Chicago",
      language: async () => language,
      home: folder,
    },
  });
  return { heard, printed: output.read()?.toString() ?? "" };
}

describe("attach", () => {
  const SPELLINGS: readonly { readonly line: (path: string) => string; readonly words: string }[] = [
    { line: (path) => `attach ${path}`, words: "" },
    { line: (path) => `  ATTACH   "${path}"  before we opened it`, words: "before we opened it" },
    { line: (path) => `adjuntar ${path.replace(/ /g, "\\ ")} antes de abrir`, words: "antes de abrir" },
    { line: (path) => `attach ~${path.slice(folder.length)}`, words: "" },
  ];
  test.each(SPELLINGS)("sends the file, and words behind it: $line", async ({ line, words }) => {
    const path = join(folder, "the panel.jpg");
    await writeFile(path, "photo");
    const { heard } = await type([line(path)]);
    const [file] = heard[0]?.files ?? [];
    expect(heard.map(({ text }) => text)).toEqual([words]);
    expect([file?.name, file?.size_B]).toEqual(["the panel.jpg", 5]);
    expect(Buffer.from((await file?.read()) ?? []).toString()).toBe("photo");
  });

  const WRONG: readonly { readonly name: string; readonly line: () => string; readonly says: string }[] = [
    { name: "nothing", line: () => "attach", says: "Type attach and where the file is" },
    { name: "a file that is not there", line: () => "attach nowhere.jpg", says: "There is no file at nowhere.jpg." },
    { name: "a folder", line: () => `attach ${folder}`, says: "is a folder. Type the name of a file in it too" },
  ];
  test.each(WRONG)("says what to type after $name, and sends nothing", async ({ line, says }) => {
    const { heard, printed } = await type([line()]);
    expect(printed).toContain(says);
    expect(heard).toEqual([]);
  });

  test("refuses a file over the limit before it is read", async () => {
    await writeFile(join(folder, "big.pdf"), Buffer.alloc(2_000_001));
    const { heard, printed } = await type([`attach ${folder}/big.pdf`]);
    expect(printed).toContain("is larger than 2 MB");
    expect(heard).toEqual([]);
  });

  test("speaks Spanish to a Spanish reader", async () => {
    const { printed } = await type(["adjuntar nada.jpg"], { language: "es" });
    expect(printed).toContain("No hay archivo en nada.jpg. Escriba adjuntar y dónde está");
  });
});

describe("save", () => {
  test("writes a copy of a file on the screen into a folder, under its name", async () => {
    const { heard, printed } = await type(["job 1003", "save 1 ~"]);
    expect(printed).toContain("To keep a copy, type: save 1 ~/Downloads");
    expect(printed).toContain(`Saved: ${folder}/panel.jpg`);
    expect(await readFile(join(folder, "panel.jpg"), "utf8")).toBe("bytes");
    expect(heard.map(({ text }) => text)).toEqual(["job 1003"]);
  });

  test("never writes over a file that is there", async () => {
    await writeFile(join(folder, "panel.jpg"), "mine");
    const { printed } = await type(["job 1003", `save 1 ${folder}/panel.jpg`]);
    expect(printed).toContain("is there already. Type another name.");
    expect(await readFile(join(folder, "panel.jpg"), "utf8")).toBe("mine");
  });

  const WRONG: readonly { readonly lines: readonly string[]; readonly says: string }[] = [
    { lines: ["job 1003", "save"], says: "Type save, the number of the file (1 to 1) and where to" },
    { lines: ["job 1003", "save 1"], says: "Type save, the number of the file (1 to 1) and where to" },
    { lines: ["job 1003", "save 2 ~"], says: "There is no file 2 on the screen; there are 1 to 1." },
    { lines: ["save 1 ~"], says: "Ask for the job first" },
    { lines: ["job 1003", "save 1 ~/no/such/place.jpg"], says: "There is no folder for" },
  ];
  test.each(WRONG)("says what to type after $lines", async ({ lines, says }) => {
    expect((await type(lines)).printed).toContain(says);
  });

  test("leaves the buttons of the card on the screen as they were", async () => {
    const { heard } = await type(["job 1003", "save 9 ~", "a"]);
    expect(heard.map(({ text }) => text)).toEqual(["job 1003", "job 1003"]);
  });

  test("says so where it cannot write", async () => {
    // A name that no file system takes, whoever writes.
    expect((await type(["job 1003", `save 1 ~/${"n".repeat(300)}`])).printed).toContain("I may not write to");
  });

  test("is a word for the desk where no file is on the screen", async () => {
    const { heard } = await type(["save"]);
    expect(heard.map(({ text }) => text)).toEqual(["save"]);
  });
});

describe("the house's channels", () => {
  async function storeWith(...posts: readonly { id: string; card: Card; thread?: string; channel?: string }[]) {
    const store = createMemoryStore();
    await store.openWorkspace(CALLER);
    for (const [at, { channel = "team", ...post }] of posts.entries())
      await store.houseChat.send({
        workspace: "local",
        channel: { door: "web", id: channel },
        written_ms: POSTED_ms + at * 60_000,
        ...post,
      });
    return store;
  }
  const note = (title: string): Card => ({ title, summary: title, blocks: [] });

  test("prints the team's posts where the company is, each thread together and the latest last", async () => {
    const store = await storeWith(
      { id: "p1", card: note("First") },
      { id: "p2", card: note("Second") },
      { id: "p3", card: note("About the first"), thread: "p1" },
    );
    const { heard, printed } = await type(["team"], { store });
    expect(printed.trim().split(/\n+/)).toEqual([
      "Team",
      "== 25 Nov 14:03  Second",
      "== 25 Nov 14:02  First",
      "-- reply, 25 Nov 14:04  About the first",
    ]);
    expect(heard).toEqual([]);
  });

  test("lets a button and a file of a post be used", async () => {
    const store = await storeWith({ id: "p1", card: PHOTO }, { id: "p2", card: PHOTO });
    const { heard, printed } = await type(["equipo", "b", "team", "save 2 ~"], { store });
    expect(heard.map(({ text }) => text)).toEqual(["job 1003"]);
    expect(printed).toContain("Saved:");
  });

  const OPEN: readonly { readonly role: Role; readonly word: string; readonly says: string }[] = [
    { role: "technician", word: "owner", says: "These posts are not for you. You can type: team" },
    { role: "dispatcher", word: "managers", says: "These posts are not for you. You can type: team" },
    { role: "manager", word: "posts owner", says: "These posts are not for you. You can type: team, managers" },
    { role: "manager", word: "managers", says: "for managers" },
    { role: "owner", word: "dirección", says: "for owner" },
  ];
  test.each(OPEN)("$role who types $word reads: $says", async ({ role, word, says }) => {
    const store = await storeWith(
      { id: "p1", card: note("for managers"), channel: "managers" },
      { id: "p2", card: note("for owner"), channel: "owner" },
    );
    expect((await type([word], { store, role })).printed).toContain(says);
  });

  test("a word that answers the question on the screen goes to the desk", async () => {
    const { heard } = await type(["item", "owner"], { card: QUESTION, role: "owner" });
    expect(heard.map(({ text }) => text)).toEqual(["item", "owner"]);
  });

  test("says so when nothing was posted", async () => {
    expect((await type(["posts"])).printed).toContain("Nothing has been posted yet.");
  });
});

test("somebody who sits there is told the words once; a pipe is not", async () => {
  expect((await type([], { isInteractive: true })).printed).toContain("attach PATH sends a photo");
  expect((await type([])).printed).toBe("");
});
