import { afterEach, describe, expect, test } from "vitest";
import type { CrewChange } from "../../src/crew/crew-event.ts";
import type { JobChange, JobStatus } from "../../src/jobs/job.ts";
import { RULES, STEPS } from "../../src/jobs/job-rules.ts";
import type { Card } from "../../src/messages/card.ts";
import { ROLES, type Role } from "../../src/ports/store.ts";
import { at, type CompanyDesk, openCompanyDesk } from "../support/company-desk.ts";

/*
 * Every action whose result depends on the role, said at the desk by each role. What is refused must name who may, and
 * leave no trace; what is allowed must write. A new kind of change does not compile until it has a row here.
 */

type CrewAction = `crew ${Exclude<CrewChange["kind"], "used" | "withdrawn">}`;
type JobAction = `job ${Exclude<JobChange["kind"], "status" | "withdrawn">}`;
type Step = `${JobStatus} to ${JobStatus}`;

/** Who may: "all", "office" from the dispatcher up, "leads" from the manager up. */
type May = "all" | "office" | "leads" | "owner";
const MAY: Readonly<Record<May, readonly Role[]>> = {
  all: ["technician", "dispatcher", "manager", "owner"],
  office: ["dispatcher", "manager", "owner"],
  leads: ["manager", "owner"],
  owner: ["owner"],
};
const WHO: Readonly<Record<Role, string>> = {
  technician: "ebbe",
  dispatcher: "lupe",
  manager: "tobias",
  owner: "ingrid",
};
interface Row {
  readonly may: May;
  /** What is said, one after the other; only the last may write. */
  readonly says: readonly [string, ...string[]];
  /** What somebody who may not reads. */
  readonly told: RegExp;
  /** Said by the owner before. */
  readonly before?: string;
}
/** Everybody may, so that there is nothing to refuse; the rules are asked for that below. */
type Free = "everybody";

const OFFICE = /dispatcher, (a )?manager,? (or an )?owner/i;
const LEADS = /manager(, owner| or an owner)/i;
const office = (...says: readonly [string, ...string[]]): Row => ({ may: "office", says, told: OFFICE });
const owner = (...says: readonly [string, ...string[]]): Row => ({
  may: "owner",
  says,
  told: /Only an owner|manager or an owner|dispatcher, a manager/,
});
const leads = (...says: readonly [string, ...string[]]): Row => ({ may: "leads", says, told: LEADS });

const CREW: Readonly<Record<CrewAction, Row>> = {
  "crew joined": leads("crew add person=lupe"),
  "crew role": leads("crew wren role=dispatcher"),
  "crew credential": leads("crew wren credential=driver expires=2030-01-01"),
  "crew credential_gone": leads("crew wren driver gone"),
  "crew training": office("crew wren subject=Lifting until=2027-12-01"),
  "crew tool": office("crew wren tool=manometer serial=MA-9 until=2027-12-01"),
  "crew tool_gone": office("crew tool=MA-2 wren gone"),
  "crew calibrated": office("crew wren tool=TH-3 until=2027-12-01"),
  "crew hours": office("crew wren hours=07:00-12:00 weekday=monday"),
  "crew off": office("crew wren off 2026-12-24"),
  "crew works": office("crew ebbe works 2026-12-24 to 2026-12-24"),
  "crew truck": office("crew wren truck truck-1"),
  "crew stock": office("crew stock truck-1 ball-valve +2"),
  // The last: afterwards there is nobody to tell anything of.
  "crew left": leads("crew remove person=wren"),
};

const JOBS: Readonly<Record<JobAction, Row | Free>> = {
  "job opened": "everybody",
  "job planned": office("job 1005 day=2026-12-03 crew=ebbe"),
  "job unit": "everybody",
  "job permit": "everybody",
  "job facts": "everybody",
  "job reading": "everybody",
  "job item_opened": "everybody",
  "job item_closed": "everybody",
  "job file": "everybody",
  "job parts": "everybody",
  "job note": "everybody",
  "job trail": "everybody",
};

/** What is said for a step that not everybody may take; other steps of that kind are no words of the chat. */
const STEP_ROWS: Readonly<Partial<Record<Step, Row>>> = {
  "planned to cancelled": office("job 1004 cancel the house is sold"),
  "surveyed to cancelled": office("job 1003 cancel the house is sold"),
  "under_way to cancelled": leads("job 1006 cancel the house is sold"),
  "cancelled to planned": office("job 1008 reopen"),
};

/** Whose entry it is, whose own it is, and what the plan, the digest and the figures show. */
const OTHERS: Readonly<Record<string, Row>> = {
  "a plan confirmed": office("plan confirm=1005@2026-12-03:ebbe+wren"),
  "an entry of somebody else put right": {
    ...leads("job 1003 amend 6 stairs turn once"),
    told: /or a manager, to put/,
  },
  "an entry of somebody else taken back": {
    ...leads("job 1003 withdraw 4 because it was another house"),
    told: /or a manager, to put|manager, owner/,
  },
  "an entry about the crew taken back": { ...office("crew withdraw entry=1"), before: "crew wren off 2026-12-24" },
  "somebody made an owner": owner("crew marisol role=owner"),
  "an owner made something else": { ...owner("crew marisol role=technician"), before: "crew marisol role=owner" },
  "an owner taken out": { ...owner("crew remove person=marisol"), before: "crew marisol role=owner" },
};

let desk: CompanyDesk | undefined;
afterEach(() => desk?.store.close());

function wordsOf(card: Card): string {
  return card.blocks
    .flatMap((block): readonly string[] => {
      if ("text" in block) return [block.text];
      return block.kind === "table" ? block.rows.flat() : [];
    })
    .join("\n");
}
async function record({ store }: CompanyDesk): Promise<string> {
  const workspace = await store.openWorkspace(at("lupe"));
  const roles = (await workspace.listPeople()).map(({ id, role }) => [id, role]);
  return JSON.stringify([await workspace.crewHistory(0), await workspace.allHistory(), roles]);
}

const ROWS: readonly (readonly [string, Row])[] = [
  ...Object.entries(OTHERS),
  ...Object.entries(JOBS).flatMap(([name, row]) => (row === "everybody" ? [] : [[name, row] as const])),
  ...Object.entries(STEP_ROWS).flatMap(([name, row]) => (row === undefined ? [] : [[name, row] as const])),
  ...Object.entries(CREW),
];

/** Each row in a conversation of its own, so that no open question takes it for an answer. */
async function sayRow(house: CompanyDesk, role: Role, name: string, { says, before }: Row): Promise<Card> {
  if (before !== undefined) await house.say(before, at("ingrid"), `before ${name}`);
  for (const text of says.slice(0, -1)) await house.say(text, at(WHO[role]), name);
  return await house.say(says.at(-1) ?? "", at(WHO[role]), name);
}

describe.each(ROLES)("a %s", (role) => {
  test("is refused what the role may not do, with who may, and nothing is written", async () => {
    const house = await openCompanyDesk();
    desk = house;
    for (const [name, row] of ROWS.filter(([, { may }]) => !MAY[may].includes(role))) {
      if (row.before !== undefined) await house.say(row.before, at("ingrid"), `before ${name}`);
      const start = await record(house);
      const { before: _, ...bare } = row;
      expect(wordsOf(await sayRow(house, role, name, bare)), name).toMatch(row.told);
      expect(await record(house), name).toBe(start);
    }
    expect(house.faults).toEqual([]);
  });

  test("does what the role may, and it is written", async () => {
    const house = await openCompanyDesk();
    desk = house;
    for (const [name, row] of ROWS.filter(([, { may }]) => MAY[may].includes(role))) {
      const start = await record(house);
      const card = await sayRow(house, role, name, row);
      expect(wordsOf(card), name).not.toMatch(/Ask one of them|Only an owner|Not saved/);
      expect(await record(house), name).not.toBe(start);
    }
    expect(house.faults).toEqual([]);
  });
});

describe("the rules of the record", () => {
  test("what has no row here is for everybody", () => {
    const restricted = Object.entries(RULES).filter(([, { roles }]) => roles.length < ROLES.length);
    const rows = Object.entries(JOBS).filter(([, row]) => row !== "everybody");
    expect(restricted.map(([kind]) => `job ${kind}`).sort()).toEqual(rows.map(([name]) => name).sort());
  });

  /** Every step of a job that not everybody may take. */
  const HELD_BACK: Readonly<Partial<Record<Step, May>>> = {
    "planned to cancelled": "office",
    "surveyed to planned": "office",
    "surveyed to cancelled": "office",
    "under_way to planned": "office",
    "under_way to surveyed": "office",
    "under_way to cancelled": "leads",
    "called_back to complete": "office",
    "cancelled to planned": "office",
  };
  test("steps that are held back are these and no others", () => {
    const held = Object.entries(STEPS).flatMap(([from, tos]) =>
      Object.entries(tos).flatMap(([to, roles]) => (roles.length < ROLES.length ? [[`${from} to ${to}`, roles]] : [])),
    );
    const expected = Object.entries(HELD_BACK).map(([step, may]) => [step, MAY[may]]);
    expect(Object.fromEntries(held)).toEqual(Object.fromEntries(expected));
  });
});

describe("what is whose own", () => {
  test.each([
    ["crew tool=CM-1 until=2027-12-01", "ebbe", true],
    ["crew tool=CM-2 marisol until=2027-12-01", "ebbe", false],
    ["crew person=ebbe", "ebbe", true],
    ["crew person=marisol", "ebbe", false],
    ["crew history person=marisol", "ebbe", false],
    ["crew history person=marisol", "lupe", true],
    ["crew stock truck-2", "ebbe", true],
  ])("%s by %s: %s", async (says, who, may) => {
    desk = await openCompanyDesk();
    expect(/dispatcher, a manager or an owner/.test(wordsOf(await desk.as(who, says)))).toBe(!may);
  });

  test("the last owner stays one", async () => {
    desk = await openCompanyDesk();
    const start = await record(desk);
    for (const says of ["crew ingrid role=manager", "crew remove person=ingrid"])
      expect(wordsOf(await desk.as("ingrid", says))).toMatch(/Make somebody an owner first/);
    expect(await record(desk)).toBe(start);
  });

  test("a confirmed plan is taken back by who confirmed it or who leads", async () => {
    desk = await openCompanyDesk();
    const say = "plan withdraw=yes confirm=1005@2026-12-03:ebbe+wren";
    await desk.as("tobias", "plan confirm=1005@2026-12-03:ebbe+wren");
    const start = await record(desk);
    for (const who of ["ebbe", "lupe"]) {
      expect(wordsOf(await desk.as(who, say))).toMatch(/manager|Tobias/);
      expect(await record(desk)).toBe(start);
    }
    await desk.as("ingrid", say);
    expect(await record(desk)).not.toBe(start);
  });

  test("one's own entry is put right by oneself", async () => {
    desk = await openCompanyDesk();
    await desk.as("ebbe", "job 1003 note the dog bites");
    const start = await record(desk);
    await desk.as("ebbe", "job 1003 amend 8 the dog sleeps");
    expect(await record(desk)).not.toBe(start);
  });

  test("whose role was taken may do it no more, and whose was given may", async () => {
    desk = await openCompanyDesk();
    await desk.as("ingrid", "crew lupe role=technician");
    await desk.as("ingrid", "crew wren role=manager");
    expect(wordsOf(await desk.as("lupe", "crew ebbe off 2026-12-21"))).toMatch(OFFICE);
    expect(wordsOf(await desk.as("wren", "crew ebbe credential=driver expires=2031-01-01"))).toMatch(/saved/);
  });
});

describe("what is shown to whom", () => {
  const WEEK = "digest last week";
  test.each([
    ["technician", WEEK, /for the manager and the owner/],
    ["dispatcher", `${WEEK} show=on_site`, /The manager and the owner see this figure/],
    ["dispatcher", `${WEEK} show=readings`, /The manager and the owner see this figure/],
  ] as const)("a %s is refused: %s", async (role, says, told) => {
    desk = await openCompanyDesk();
    expect(wordsOf(await desk.as(WHO[role], says))).toMatch(told);
  });
  test.each([
    ["dispatcher", WEEK],
    ["manager", `${WEEK} show=on_site`],
    ["owner", `${WEEK} show=readings`],
  ] as const)("a %s may: %s", async (role, says) => {
    desk = await openCompanyDesk();
    expect(wordsOf(await desk.as(WHO[role], says))).not.toMatch(/manager and the owner/);
  });

  test("nobody of another workspace reads a job or the crew of this one", async () => {
    desk = await openCompanyDesk();
    const stranger = { door: "slack" as const, organisation: "other", user: "U7", name: "Stranger" };
    for (const says of ["job 1003", "record 1003", "crew history", "kit job=1003"]) {
      const words = JSON.stringify(await desk.say(says, stranger, says));
      expect(words).not.toMatch(/R\. K\.|Saltmere.*Wren|Stairs turn/);
    }
    const start = await record(desk);
    await desk.say("job 1003 note I was here", stranger, "s1");
    await desk.say("crew wren off 2026-12-24", stranger, "s2");
    expect(await record(desk)).toBe(start);
  });
});
