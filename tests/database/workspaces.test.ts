import { mkdtemp, rm, stat } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import Database from "better-sqlite3";
import { afterEach, beforeEach, expect, test } from "vitest";
import { OWN_WORKSPACE, openStore, type StoreSettings } from "../../adapters/database/open-store.ts";
import type { Books } from "../../src/books/books.ts";
import type { Caller, Store } from "../../src/ports/store.ts";
import { BOOKS } from "../support/sample-books.ts";
import { ANN, card, exchangeOf, STRANGER } from "../support/store-samples.ts";

let folder = "";
let path = "";
const opened: Store[] = [];
beforeEach(async () => {
  folder = await mkdtemp(join(tmpdir(), "oldhand-workspaces-"));
  path = join(folder, "oldhand.sqlite");
});
afterEach(async () => {
  await Promise.all(opened.splice(0).map((store) => store.close()));
  await rm(folder, { recursive: true });
});

async function open(change: Partial<StoreSettings> = {}): Promise<Store> {
  const store = await openStore({ path, books: BOOKS, ownOrganisations: [], ...change });
  opened.push(store);
  return store;
}
async function personOf(store: Store, caller: Caller) {
  return await (await store.openWorkspace(caller)).findPerson(caller);
}
const at = (door: Caller["door"], organisation: string, user: string): Caller => ({
  door,
  organisation,
  user,
  name: user,
});
const OWN_TEAM = { door: "slack", organisation: "T-OWN" } as const;

test.each(["web", "terminal"] as const)("people of the books are known at the %s door by their id", async (door) => {
  const store = await open();
  expect(await personOf(store, at(door, "local", "olga"))).toEqual({
    id: "olga",
    name: "Olga Owner",
    role: "owner",
    language: "en",
    units: "si",
  });
});

test("somebody who is not in the books joins the company as a technician who reads what the company reads", async () => {
  const company = { ...BOOKS.company, language: "es", units: "si" } as const;
  const store = await open({ books: { ...BOOKS, company } });
  const visitor = await personOf(store, { ...at("web", "local", "visitor"), name: "  Vi Sitor " });
  expect(visitor).toMatchObject({ name: "Vi Sitor", role: "technician", language: "es", units: "si" });
});

test("a caller without a name is called by the user id", async () => {
  expect(await personOf(await open(), { ...ANN, name: " " })).toMatchObject({ name: "U1" });
});

test("a chat platform called local does not get into the company's workspace", async () => {
  const workspace = await (await open()).openWorkspace(at("slack", "local", "olga"));
  expect(workspace.workspace).not.toBe(OWN_WORKSPACE);
});

test("an organisation that the settings map onto the company shares its workspace and knows its people", async () => {
  const store = await open({ ownOrganisations: [OWN_TEAM] });
  expect((await store.openWorkspace(at("slack", "T-OWN", "U-OLGA"))).workspace).toBe(OWN_WORKSPACE);
  expect(await personOf(store, at("slack", "T-OWN", "U-OLGA"))).toMatchObject({ id: "olga", role: "owner" });
  expect(await personOf(store, at("slack", "T-OWN", "olga"))).toMatchObject({ role: "technician" });
  expect((await store.openWorkspace(at("slack", "T-OTHER", "U-OLGA"))).workspace).not.toBe(OWN_WORKSPACE);
  expect(await personOf(store, at("slack", "T-OTHER", "U-OLGA"))).toMatchObject({ role: "technician" });
});

test("an organisation that is no longer mapped loses the company's workspace", async () => {
  const mapped = await open({ ownOrganisations: [OWN_TEAM] });
  await personOf(mapped, at("slack", "T-OWN", "U-OLGA"));
  const store = await open();
  expect((await store.openWorkspace(at("slack", "T-OWN", "U-OLGA"))).workspace).not.toBe(OWN_WORKSPACE);
});

test("a caller is not looked up in a workspace of somebody else", async () => {
  const store = await open();
  const ann = await store.openWorkspace(ANN);
  await expect(ann.findPerson(STRANGER)).rejects.toMatchObject({ code: "wrong_workspace" });
  await expect(ann.acceptLink(STRANGER, "1", 0)).rejects.toMatchObject({ code: "wrong_workspace" });
});

test("the books rule over name and role, the person over language and units", async () => {
  const first = await open();
  const olga = at("web", "local", "olga");
  const workspace = await first.openWorkspace(olga);
  const person = await workspace.findPerson(olga);
  await workspace.commit(exchangeOf({ ...person, language: "es", units: "us" }));
  const people: Books["people"] = [
    { id: "olga", name: "Olga Manager", role: "manager", language: "en", units: "si" },
    ...BOOKS.people.slice(1),
  ];
  const again = await open({ books: { ...BOOKS, people } });
  expect(await personOf(again, olga)).toEqual({
    id: "olga",
    name: "Olga Manager",
    role: "manager",
    language: "es",
    units: "us",
  });
});

test("who has left the books keeps the past and loses the role, and gets it back on return", async () => {
  const olga = at("web", "local", "olga");
  const first = await open();
  await (await first.openWorkspace(olga)).commit(exchangeOf(await personOf(first, olga), { delivery: "before" }));
  const without = await open({ books: { ...BOOKS, people: BOOKS.people.slice(1) } });
  expect(await personOf(without, olga)).toMatchObject({ id: "olga", role: "technician" });
  expect(await (await without.openWorkspace(olga)).findDelivery("before")).toEqual(card("before"));
  expect(await personOf(await open(), olga)).toMatchObject({ id: "olga", role: "owner" });
});

test("people, states and cards are there after closing and opening again", async () => {
  const first = await open();
  const person = await personOf(first, ANN);
  await (await first.openWorkspace(ANN)).commit(exchangeOf(person, { delivery: "kept" }));
  await first.close();
  const workspace = await (await open()).openWorkspace(ANN);
  expect(await workspace.findPerson(ANN)).toEqual(person);
  expect(await workspace.findDelivery("kept")).toEqual(card("kept"));
});

test("a code that somebody else holds is refused, so that nobody is joined to the wrong person", async () => {
  const workspace = await (await open()).openWorkspace(ANN);
  const [ann, ben] = [await workspace.findPerson(ANN), await workspace.findPerson({ ...ANN, user: "U2" })];
  await workspace.offerLink(ann.id, "4711", 5_000);
  await expect(workspace.offerLink(ben.id, "4711", 5_000)).rejects.toMatchObject({ code: "link_code_taken" });
  await workspace.offerLink(ann.id, "4711", 9_000);
  expect(await workspace.acceptLink({ ...ANN, user: "U3" }, "4711", 8_000)).toEqual(ann);
  await workspace.offerLink(ben.id, "4711", 19_000);
  expect(await workspace.acceptLink({ ...ANN, user: "U4" }, "4711", 10_000)).toEqual(ben);
});

const DAY_ms = 86_400_000;

test("cards of deliveries are forgotten after two weeks, the log and other workspaces stay", async () => {
  const store = await open();
  const [ann, stranger] = [await store.openWorkspace(ANN), await store.openWorkspace(STRANGER)];
  const [annSelf, strangerSelf] = [await ann.findPerson(ANN), await stranger.findPerson(STRANGER)];
  await ann.commit(exchangeOf(annSelf, { delivery: "old", at_ms: 0 }));
  await stranger.commit(exchangeOf(strangerSelf, { delivery: "old", at_ms: 0 }));
  await ann.commit(exchangeOf(annSelf, { delivery: "of today", at_ms: 14 * DAY_ms }));
  expect(await ann.findDelivery("old")).toEqual(card("old"));
  await ann.commit(exchangeOf(annSelf, { delivery: "next", at_ms: 14 * DAY_ms + 3_600_001 }));
  expect(await ann.findDelivery("old")).toBeUndefined();
  expect(await ann.findDelivery("of today")).toEqual(card("of today"));
  expect(await stranger.findDelivery("old")).toEqual(card("old"));
  const file = new Database(path);
  expect(file.prepare("select count(*) from exchange").pluck().get()).toBe(4);
  file.close();
});

test("a code that has expired is free for somebody else within the hour", async () => {
  const workspace = await (await open()).openWorkspace(ANN);
  const [ann, ben] = [await workspace.findPerson(ANN), await workspace.findPerson({ ...ANN, user: "U2" })];
  await workspace.offerLink(ann.id, "4711", 5_000);
  await workspace.commit(exchangeOf(ann, { at_ms: 5_001 }));
  await workspace.offerLink(ben.id, "4711", 9_000);
  expect(await workspace.acceptLink({ ...ANN, user: "U3" }, "4711", 8_000)).toEqual(ben);
});

test("a data folder that is made here is for its owner only", async () => {
  const store = await openStore({ path: join(folder, "made", "oldhand.sqlite"), books: BOOKS, ownOrganisations: [] });
  await store.close();
  expect((await stat(join(folder, "made"))).mode & 0o777).toBe(0o700);
});

test("the log says who, when, at which door, what was said and the title of the answer", async () => {
  const store = await open();
  const workspace = await store.openWorkspace(ANN);
  const person = await workspace.findPerson(ANN);
  await workspace.commit({
    ...exchangeOf(person, { delivery: "d", at_ms: 7, card: card("Mixed") }),
    text: "mix 135 to 120",
  });
  const file = new Database(path);
  const log = file.prepare("select * from exchange").all();
  file.close();
  expect(log).toEqual([
    {
      number: 1,
      workspace: workspace.workspace,
      person: person.id,
      door: "slack",
      conversation: "c1",
      delivery: "d",
      at_ms: 7,
      said: "mix 135 to 120",
      card_title: "Mixed",
    },
  ]);
});

test.each(["update exchange set said = 'other'", "delete from exchange", "delete from exchange where number = 1"])(
  "the database itself refuses: %s",
  async (change) => {
    const store = await open();
    const workspace = await store.openWorkspace(ANN);
    await workspace.commit(exchangeOf(await workspace.findPerson(ANN)));
    const file = new Database(path);
    expect(() => file.prepare(change).run()).toThrow(/only ever added/);
    expect(file.prepare("select count(*) from exchange").pluck().get()).toBe(1);
    file.close();
  },
);

test("the same organisation id at another door is another workspace", async () => {
  const store = await open();
  const [slack, teams] = [await store.openWorkspace(ANN), await store.openWorkspace({ ...ANN, door: "teams" })];
  expect(teams.workspace).not.toBe(slack.workspace);
});

test("an exchange changes nobody's name or role", async () => {
  const store = await open();
  const workspace = await store.openWorkspace(ANN);
  const person = await workspace.findPerson(ANN);
  await workspace.commit(exchangeOf({ ...person, name: "Boss", role: "owner" }));
  expect(await workspace.findPerson(ANN)).toEqual(person);
});
