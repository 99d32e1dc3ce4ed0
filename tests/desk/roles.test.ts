import { afterAll, beforeAll, describe, expect, test } from "vitest";
import type { Card } from "../../src/messages/card.ts";
import type { WorkspaceStore } from "../../src/ports/store.ts";
import { at, type CompanyDesk, openCompanyDesk } from "../support/company-desk.ts";

const OFFICE = /dispatcher, a manager or an owner/i;
const LEADS = /manager or an owner/i;

/** What somebody says, and who may say it instead. */
const FORBIDDEN: readonly (readonly [who: string, says: string, told: RegExp])[] = [
  ["ebbe", "plan confirm=1005@2026-12-03:ebbe+wren", OFFICE],
  ["ebbe", "plan withdraw=yes confirm=1004@2026-12-02:ebbe", OFFICE],
  ["ebbe", "crew ebbe off 2026-12-24", OFFICE],
  ["ebbe", "crew ebbe works 2026-12-24 to 2026-12-24", OFFICE],
  ["ebbe", "crew ebbe hours=07:00-12:00 weekday=monday", OFFICE],
  ["ebbe", "crew wren truck truck-1", OFFICE],
  ["ebbe", "crew stock truck=truck-1 part=ball-valve amount=+2", OFFICE],
  ["ebbe", "crew ebbe subject=Lifting until=2027-12-01", OFFICE],
  ["ebbe", "crew ebbe tool=manometer serial=MA-9 until=2027-12-01", OFFICE],
  ["ebbe", "crew ebbe gone=yes tool=CM-1", OFFICE],
  ["ebbe", "crew marisol tool=CM-2 until=2027-12-01", OFFICE],
  ["ebbe", "crew withdraw entry=1", OFFICE],
  ["ebbe", "crew person=marisol", OFFICE],
  ["ebbe", "crew history person=marisol", OFFICE],
  ["ebbe", "crew ebbe credential=driver expires=2030-01-01", LEADS],
  ["ebbe", "crew ebbe role=owner", LEADS],
  ["ebbe", "crew add person=lupe", LEADS],
  ["ebbe", "crew remove person=wren", LEADS],
  ["lupe", "crew ebbe credential=driver expires=2030-01-01", LEADS],
  ["lupe", "crew ebbe credential=driver gone", LEADS],
  ["lupe", "crew lupe role=manager", LEADS],
  ["lupe", "crew add person=lupe", LEADS],
  ["lupe", "crew remove person=wren", LEADS],
  ["tobias", "crew tobias role=owner", /Only an owner/],
  ["tobias", "crew ingrid role=technician", /Only an owner/],
  ["tobias", "crew remove person=ingrid", /Only an owner/],
  ["ingrid", "crew ingrid role=manager", /Make somebody an owner first/],
  ["ingrid", "crew remove person=ingrid", /Make somebody an owner first/],
];

let desk: CompanyDesk;
let workspace: WorkspaceStore;
beforeAll(async () => {
  desk = await openCompanyDesk();
  workspace = await desk.store.openWorkspace(at("lupe"));
});
afterAll(() => desk.store.close());

let talks = 0;
/** Each in a conversation of its own, so that no open question takes it for an answer. */
async function sayAnew(who: string, says: string): Promise<Card> {
  talks += 1;
  return await desk.say(says, at(who), `talk ${talks}`);
}

function wordsOf(card: Card): string {
  return card.blocks.flatMap((block) => ("text" in block ? [block.text] : [])).join("\n");
}
async function record(): Promise<string> {
  const roles = (await workspace.listPeople()).map(({ id, role }) => [id, role]);
  return JSON.stringify([await workspace.crewHistory(0), await workspace.allHistory(), roles]);
}

describe("what a role may not do is refused with who may, and nothing is written", () => {
  test.each(FORBIDDEN)("%s: %s", async (who, says, told) => {
    const before = await record();
    expect(wordsOf(await sayAnew(who, says))).toMatch(told);
    expect(await record()).toBe(before);
    expect(desk.faults).toEqual([]);
  });
});

/** The same actions by the first role that may: each writes, so that a refusal above is about the role and nothing else. */
const ALLOWED: readonly (readonly [who: string, says: string])[] = [
  ["lupe", "plan confirm=1005@2026-12-03:ebbe+wren"],
  ["lupe", "plan withdraw=yes confirm=1005@2026-12-03:ebbe+wren"],
  ["lupe", "crew ebbe off 2026-12-20"],
  ["lupe", "crew ebbe works 2026-12-24 to 2026-12-24"],
  ["lupe", "crew ebbe hours=07:00-12:00 weekday=monday"],
  ["lupe", "crew wren truck truck-1"],
  ["lupe", "crew stock truck=truck-1 part=ball-valve amount=+2"],
  ["lupe", "crew ebbe subject=Lifting until=2027-12-01"],
  ["lupe", "crew ebbe tool=manometer serial=MA-9 until=2027-12-01"],
  ["lupe", "crew ebbe gone=yes tool=MA-9"],
  ["ebbe", "crew tool=CM-1 until=2027-12-01"],
  ["lupe", "crew withdraw entry=1"],
  ["tobias", "crew ebbe credential=driver expires=2030-01-01"],
  ["tobias", "crew ebbe credential=first_aid gone"],
  ["tobias", "crew add person=lupe"],
  ["tobias", "crew remove person=lupe"],
  ["tobias", "crew lupe role=manager"],
  ["ingrid", "crew tobias role=owner"],
  ["ingrid", "crew ingrid role=technician"],
];

describe("what a role may do is done", () => {
  test.each(ALLOWED)("%s: %s", async (who, says) => {
    const before = await record();
    const card = await sayAnew(who, says);
    expect(wordsOf(card)).not.toMatch(/Ask one of them|Not saved/);
    expect(await record()).not.toBe(before);
  });

  test("whose role was taken may do it no more, and whose was given may", async () => {
    expect(wordsOf(await sayAnew("ingrid", "crew ebbe off 2026-12-21"))).toMatch(OFFICE);
    expect(wordsOf(await sayAnew("lupe", "crew wren credential=driver expires=2031-01-01"))).toMatch(/saved/);
  });
});
