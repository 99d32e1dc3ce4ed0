import { cp, mkdtemp, readFile, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeEach, describe, expect, test } from "vitest";
import { checkBooks } from "../../adapters/books/check-books.ts";
import { loadCrew } from "../../adapters/books/load-crew.ts";
import { NO_CREW_BOOKS, travelTime_s } from "../../src/crew/crew.ts";
import { toBase } from "../../src/units/convert.ts";

const SEEDS = new URL("../../seeds", import.meta.url).pathname;
const PEOPLE = ["ebbe", "marisol", "wren"];

let folder = "";
beforeEach(async () => {
  folder = await mkdtemp(join(tmpdir(), "oldhand-crew-"));
  for (const name of ["people", "crew", "trucks", "parts", "travel"])
    await cp(join(SEEDS, `${name}.yaml`), join(folder, `${name}.yaml`));
});
afterEach(() => rm(folder, { recursive: true }));

async function change(name: string, from: string, to: string): Promise<void> {
  const path = join(folder, `${name}.yaml`);
  const text = await readFile(path, "utf8");
  expect(text).toContain(from);
  await writeFile(path, text.replace(from, to));
}
async function faultOf(): Promise<string> {
  const error: unknown = await loadCrew(folder, PEOPLE).catch((fault: unknown) => fault);
  return error instanceof Error ? error.message.replaceAll(`${folder}/`, "") : "no fault";
}

test("the demo crew is loaded: shifts by the clock, lengths in metres, drives both ways", async () => {
  const { crew, isInvented } = await loadCrew(folder, PEOPLE);
  expect(isInvented).toBe(true);
  expect(crew.members.map(({ person }) => person)).toEqual(PEOPLE);
  expect(crew.members[0]?.hours.monday).toEqual([{ from_min: 420, to_min: 930 }]);
  expect(crew.members[0]?.daysOff).toEqual([{ from: "2026-12-23", to: "2027-01-02" }]);
  expect(crew.trucks.trucks[0]?.stock["pipe-insulation"]).toBeCloseTo(toBase(48, "ft"), 9);
  expect(crew.trucks.trucks[0]?.stock["ball-valve"]).toBe(3);
  expect(travelTime_s(crew.travel, "saltmere", "ostrowick")).toBe(55 * 60);
  expect(travelTime_s(crew.travel, "ostrowick", "ostrowick")).toBe(15 * 60);
  expect(travelTime_s(crew.travel, "ostrowick", "elsewhere")).toBe(40 * 60);
});

test("a shift that ends before it begins ends on the next day", async () => {
  await change("crew", "monday: [07:00-15:30]", "monday: [22:00-06:00]");
  const { crew } = await loadCrew(folder, PEOPLE);
  expect(crew.members[0]?.hours.monday).toEqual([{ from_min: 1320, to_min: 1800 }]);
});

test("a company that has written none of these books has an empty crew", async () => {
  const empty = await mkdtemp(join(tmpdir(), "oldhand-crew-"));
  expect(await loadCrew(empty, PEOPLE)).toEqual({ isInvented: true, crew: NO_CREW_BOOKS });
  await rm(empty, { recursive: true });
});

test("parts may be kept as a table", async () => {
  await rm(join(folder, "parts.yaml"));
  for (const name of ["crew", "trucks"]) await rm(join(folder, `${name}.yaml`));
  await writeFile(join(folder, "parts.csv"), "id,group,measure,name.en,name.es\ntowels,part,each,Towels,Toallas\n");
  const { crew } = await loadCrew(folder, PEOPLE);
  expect(crew.parts).toEqual([{ id: "towels", group: "part", measure: "each", name: { en: "Towels", es: "Toallas" } }]);
});

describe("a slip is told with file, line and what to write", () => {
  test.each([
    ["crew", "person: ebbe", "person: ebba", /crew\.yaml line 7: crew\.0\.person: ebba does not stand in people\.yaml/],
    ["crew", "truck: truck-1", "truck: truck-9", /crew\.0\.truck: truck-9 does not stand in trucks\.yaml/],
    ["crew", "tool: level, id: LV-1", "tool: towels, id: LV-1", /towels does not stand in parts\.yaml as a tool/],
    ["crew", "kind: gas_fitter", "kind: gas", /credentials\.1\.kind: write one of contractor_license/],
    ["crew", "expires: 2027-06-30", "expires: 2027-06-31", /expires: write a day of the calendar/],
    ["crew", "lapse: warns", "lapse: grace", /lapse: grace and grace_days stand together/],
    ["crew", "[07:00-15:30]", "[7 to 3]", /"7 to 3": write hours by the clock, such as 07:00-15:30/],
    [
      "crew",
      "{ from: 2026-12-23, to: 2027-01-02 }",
      "{ from: 2026-12-23, to: 2026-01-02 }",
      /to: ends before it begins/,
    ],
    ["crew", "- person: marisol", "- person: ebbe", /crew\.1\.person: ebbe stands above already/],
    ["trucks", "ball-valve: 8", "ball-valv: 8", /shop\.ball-valv: ball-valv does not stand in parts\.yaml as a part/],
    ["trucks", "pipe-insulation: 48 ft", "pipe-insulation: 48 gal", /"48 gal": write how many there are/],
    ["trucks", "id: truck-2", "id: truck-1", /trucks\.1\.id: truck-1 stands above already/],
    ["parts", "id: towels", "id: heater", /parts\.\d+\.id: heater stands above already/],
    ["travel", "within: 15 min", "within: 15", /"15": write a number with its unit, such as 10 min/],
    ["travel", "time: 55 min", "time: 55 h", /time: is over 12 hours/],
  ])("%s: %s for %s", async (name, from, to, says) => {
    await change(name, from, to);
    expect(await faultOf()).toMatch(says);
  });

  test("the check of a folder holds the crew against people, trucks and parts", async () => {
    await change("crew", "person: ebbe", "person: ebba");
    const checks = await checkBooks(folder, []);
    const crew = checks.find(({ path }) => path.endsWith("crew.yaml"));
    expect(crew).toMatchObject({ isGood: false, says: expect.stringContaining("ebba does not stand in people.yaml") });
    expect(checks.find(({ path }) => path.endsWith("trucks.yaml"))?.isGood).toBe(true);
  });
});
