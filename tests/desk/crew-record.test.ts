import { mkdtemp, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeEach, describe, expect, test } from "vitest";
import { openStore } from "../../adapters/database/open-store.ts";
import { shelveBooks } from "../../src/desk/workspace-books.ts";
import type { Store, WorkspaceStore } from "../../src/ports/store.ts";
import { seedBooks } from "../support/ask-with-seeds.ts";
import { at, type CompanyDesk, openCompanyDesk } from "../support/company-desk.ts";
import { openJobDeskOn } from "../support/job-desk.ts";
import { headlineOf, textsOf } from "../support/talk.ts";

let folder = "";
let open: Store | undefined;
beforeEach(async () => {
  folder = await mkdtemp(join(tmpdir(), "oldhand-crew-"));
});
afterEach(async () => {
  await open?.close();
  await rm(folder, { recursive: true });
});

async function openOnFile(books = seedBooks) {
  await open?.close();
  open = await openStore({ path: join(folder, "oldhand.sqlite"), books, ownOrganisations: [] });
  const desk = openJobDeskOn(open, books);
  return { store: open, as: (user: string, text: string) => desk.say(text, at(user), `c-${user}-${text}`) };
}

describe("after a restart on the same file", () => {
  test("roles, days off and stock are as they were told, though the books were loaded anew", async () => {
    const before = await openOnFile();
    await before.as("ingrid", "crew lupe role=manager");
    await before.as("tobias", "crew wren off 2026-12-03");
    await before.as("tobias", "crew stock truck-2 mixing-valve +2");
    const after = await openOnFile();
    expect(headlineOf(await after.as("lupe", "crew ebbe credential=driver expires=2031-01-01"))).toMatch(/saved/);
    expect(headlineOf(await after.as("lupe", "ready person=wren day=2026-12-03"))).toMatch(/is not ready/);
    expect(JSON.stringify(await after.as("wren", "crew stock truck-2"))).toContain('"2"');
  });

  test("a role that was taken back falls to what the books say by then", async () => {
    const before = await openOnFile();
    await before.as("ingrid", "crew lupe role=manager");
    await before.as("ingrid", "crew withdraw entry=1");
    const people = seedBooks.people.map((one) => (one.id === "lupe" ? { ...one, role: "technician" as const } : one));
    const after = await openOnFile({ ...seedBooks, people });
    expect(textsOf(await after.as("lupe", "crew wren off 2026-12-24")).join()).not.toMatch(/is off/);
    expect(await (await after.store.openWorkspace(at("lupe"))).crewHistory(0)).toHaveLength(2);
  });
});

/** A store that calls something between what a message read and what it writes, once. */
function interrupt(store: Store, meanwhile: (workspace: WorkspaceStore) => Promise<void>): Store {
  let isDone = false;
  return {
    ...store,
    openWorkspace: async (caller) => {
      const workspace = await store.openWorkspace(caller);
      return {
        ...workspace,
        commit: async (exchange) => {
          if (!isDone && exchange.crew !== undefined) {
            isDone = true;
            await meanwhile(workspace);
          }
          return await workspace.commit(exchange);
        },
      };
    },
  };
}

test("when somebody else changed the crew in the same moment, the message is taken once more and both stand", async () => {
  const { store } = await openOnFile();
  const interrupted = interrupt(store, async (workspace) => {
    const person = await workspace.findPerson(at("tobias"));
    await workspace.commit({
      person,
      conversation: "elsewhere",
      state: { walksStarted: 0, past: [] },
      delivery: "meanwhile",
      card: { title: "t", blocks: [], summary: "t" },
      at_ms: 1,
      crew: {
        version: 0,
        entries: [{ change: { kind: "off", person: "ebbe", from: "2026-12-03", to: "2026-12-03" } }],
      },
    });
  });
  const desk = openJobDeskOn(interrupted, seedBooks);
  const card = await desk.say("crew wren off 2026-12-04", at("lupe"), "c-lupe");
  expect(headlineOf(card)).toBe("Wren Oduyami is off from 2026-12-04 through 2026-12-04.");
  const said = await (await store.openWorkspace(at("lupe"))).crewHistory(0);
  expect(said.map(({ number, change, by }) => [number, "person" in change ? change.person : "", by])).toEqual([
    [1, "ebbe", "Tobias Quillmark"],
    [2, "wren", "Lupe Harrastegui"],
  ]);
  expect(desk.faults).toEqual([]);
});

describe("the books of a workspace", () => {
  test("are read once, then only what was said since", async () => {
    const { store, as } = await openOnFile();
    await as("lupe", "crew wren off 2026-12-03");
    const asked: number[] = [];
    const workspace = await store.openWorkspace(at("lupe"));
    const counted: WorkspaceStore = {
      ...workspace,
      crewHistory: async (after) => {
        asked.push(after);
        return await workspace.crewHistory(after);
      },
      listPeople: () => Promise.reject(new Error("people are not read for the books")),
    };
    const shelf = shelveBooks(seedBooks);
    const first = await shelf.booksOf(counted);
    const second = await shelf.booksOf(counted);
    expect(second).toBe(first);
    await as("lupe", "crew wren off 2026-12-04");
    const third = await shelf.booksOf(counted);
    expect(third.crewEvents.map(({ number }) => number)).toEqual([1, 2]);
    expect(asked).toEqual([0, 1, 1]);
  });
});

describe("parts of a job", () => {
  let desk: CompanyDesk;
  beforeEach(async () => {
    desk = await openCompanyDesk();
    open = desk.store;
  });
  const stockOf = async (part: string) => {
    const { books } = await shelveBooks(seedBooks).booksOf(await desk.store.openWorkspace(at("lupe")));
    return books.crew.trucks.trucks.find(({ id }) => id === "truck-2")?.stock[part];
  };

  test("are back on the truck when the entry that used them is withdrawn", async () => {
    await desk.as("ebbe", "job 1003");
    await desk.as("ebbe", "survey closed, set to 140F, no mixing valve");
    for (const text of ["stop", "done", "yes", "lupe", "2026-12-05"]) await desk.as("ebbe", text);
    expect(await stockOf("ball-valve")).toBe(1);
    const events = await (await desk.store.openWorkspace(at("lupe"))).jobHistory("1003");
    const used = events.find(({ change }) => change.kind === "parts");
    const card = await desk.as("tobias", `job 1003 withdraw ${used?.number} because they were for another house`);
    expect(textsOf(card).join("\n")).toMatch(/Back on Truck 2/);
    expect(await stockOf("ball-valve")).toBe(2);
    const said = await (await desk.store.openWorkspace(at("lupe"))).crewHistory(0);
    expect(said.at(-1)).toMatchObject({ change: { kind: "withdrawn" }, amends: 1 });
  });
});
