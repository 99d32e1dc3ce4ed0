import { describe, expect, test } from "vitest";
import type { CrewChange, CrewEntry } from "../../src/crew/crew-event.ts";
import type { Caller, Person, WorkspaceStore } from "../../src/ports/store.ts";
import { ANN, BEN, exchangeOf, STRANGER } from "../support/store-samples.ts";

type Meet = (caller: Caller) => Promise<{ readonly workspace: WorkspaceStore; readonly person: Person }>;

/** One of each kind, filled as far as it goes. */
const CHANGES: readonly CrewChange[] = [
  { kind: "joined", person: "p", name: "P." },
  { kind: "role", person: "p", role: "dispatcher" },
  {
    kind: "credential",
    person: "p",
    credential: {
      kind: "first_aid",
      number: "F-1",
      issuer: "A school",
      expires: "2028-11-30",
      lapse: "grace",
      grace_days: 30,
      checked: "2026-11-01",
    },
  },
  { kind: "credential_gone", person: "p", credential: "driver" },
  { kind: "training", person: "p", training: { subject: "Lifting", done: "2026-11-01", until: "2027-11-01" } },
  { kind: "tool", person: "p", tool: { tool: "multimeter", id: "MM-9", calibratedUntil: "2027-01-01" } },
  { kind: "tool_gone", person: "p", id: "MM-9" },
  { kind: "calibrated", person: "p", id: "MM-9", until: "2027-06-01" },
  { kind: "hours", person: "p", weekdays: ["monday"], shifts: [{ from_min: 1320, to_min: 1800 }] },
  { kind: "off", person: "p", from: "2026-12-24", to: "2027-01-02" },
  { kind: "works", person: "p", from: "2026-12-28", to: "2026-12-28" },
  { kind: "truck", person: "p", truck: "truck-2" },
  { kind: "truck", person: "p" },
  { kind: "stock", truck: "truck-2", part: "mixing-valve", how: "add", amount: -2 },
  { kind: "used", truck: "truck-2", job: "1001", entry: 4, parts: { "ball-valve": 2 } },
  { kind: "left", person: "p" },
];

const off: CrewChange = { kind: "off", person: "p", from: "2026-12-24", to: "2026-12-24" };
const say = (...entries: readonly CrewEntry[]) => ({ crew: { version: 0, entries } });

/** What every store must do with what is said of people, trucks and stock. */
export function describeCrewContract(meet: Meet): void {
  describe("crew", () => {
    checkHistory(meet);
    checkVersions(meet);
    checkRoles(meet);
  });
}

function checkHistory(meet: Meet): void {
  test("every kind of change comes back with who said it, when and at which door", async () => {
    const { workspace, person } = await meet(ANN);
    expect(await workspace.crewHistory(0)).toEqual([]);
    await workspace.commit(exchangeOf(person, { ...say(...CHANGES.map((change) => ({ change }))), at_ms: 7 }));
    const who = { by: "Ann", said_by: person.id, at_ms: 7, door: "slack" };
    const all = CHANGES.map((change, index) => ({ number: index + 1, change, ...who }));
    expect(await workspace.crewHistory(0)).toEqual(all);
    expect(await workspace.crewHistory(10)).toEqual(all.slice(10));
  });

  test("what was said may be taken back once, and stays in the history", async () => {
    const { workspace, person } = await meet(ANN);
    const takeBack: CrewEntry = { change: { kind: "withdrawn" }, amends: 1 };
    await workspace.commit(exchangeOf(person, say({ change: off })));
    await workspace.commit(exchangeOf(person, { crew: { version: 1, entries: [takeBack] } }));
    expect((await workspace.crewHistory(0)).map(({ change, amends }) => [change.kind, amends])).toEqual([
      ["off", undefined],
      ["withdrawn", 1],
    ]);
    await expect(
      workspace.commit(exchangeOf(person, { crew: { version: 2, entries: [takeBack] } })),
    ).rejects.toMatchObject({ code: "job_refused" });
    expect(await workspace.crewHistory(2)).toEqual([]);
  });

  test("everybody of a workspace sees what was said, and nobody else", async () => {
    const [ann, ben, stranger] = [await meet(ANN), await meet(BEN), await meet(STRANGER)];
    await ann.workspace.commit(exchangeOf(ann.person, say({ change: off })));
    expect(await ben.workspace.crewHistory(0)).toHaveLength(1);
    expect(await stranger.workspace.crewHistory(0)).toEqual([]);
    expect((await ben.workspace.listPeople()).map(({ name }) => name)).toEqual(["Ann", "Ben"]);
    expect((await stranger.workspace.listPeople()).map(({ name }) => name)).toEqual(["Stranger"]);
  });
}

function checkVersions(meet: Meet): void {
  test("what was said meanwhile is not written over: nothing of the exchange is kept", async () => {
    const { workspace, person } = await meet(ANN);
    await workspace.commit(exchangeOf(person, say({ change: off })));
    const late = exchangeOf(person, {
      ...say({ change: off }),
      jobs: [{ job: "1", change: { kind: "opened", customer: "T. M.", place: "Testbench" } }],
    });
    await expect(workspace.commit(late)).rejects.toMatchObject({ code: "crew_changed" });
    expect(await workspace.crewHistory(0)).toHaveLength(1);
    expect(await workspace.findJob("1")).toBeUndefined();
    expect(await workspace.findDelivery(late.delivery)).toBeUndefined();
  });

  test("an exchange that says nothing of the crew can still ask that it is as it was seen", async () => {
    const { workspace, person } = await meet(ANN);
    await workspace.commit(exchangeOf(person, say({ change: off })));
    await expect(workspace.commit(exchangeOf(person, say()))).rejects.toMatchObject({ code: "crew_changed" });
    await workspace.commit(exchangeOf(person, { crew: { version: 1, entries: [] } }));
    expect(await workspace.crewHistory(1)).toEqual([]);
  });
}

function checkRoles(meet: Meet): void {
  test("whose role is changed may do from then on what the new role may, until it is taken back", async () => {
    const [ann, ben] = [await meet(ANN), await meet(BEN)];
    const change: CrewChange = { kind: "role", person: ben.person.id, role: "dispatcher" };
    await ann.workspace.commit(exchangeOf(ann.person, say({ change })));
    expect((await meet(BEN)).person.role).toBe("dispatcher");
    expect((await meet(ANN)).person.role).toBe("technician");
    const back: CrewEntry = { change: { kind: "withdrawn" }, amends: 1 };
    await ann.workspace.commit(exchangeOf(ann.person, { crew: { version: 1, entries: [back] } }));
    expect((await meet(BEN)).person.role).toBe("technician");
  });

  test("who leaves may do what a technician may", async () => {
    const [ann, ben] = [await meet(ANN), await meet(BEN)];
    const person = ben.person.id;
    const raise: CrewEntry = { change: { kind: "role", person, role: "manager" } };
    await ann.workspace.commit(exchangeOf(ann.person, say(raise, { change: { kind: "left", person } })));
    expect((await meet(BEN)).person.role).toBe("technician");
  });
}
