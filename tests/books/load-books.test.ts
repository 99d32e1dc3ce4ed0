import { cp, mkdtemp, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeEach, expect, test } from "vitest";
import { loadBooks } from "../../adapters/books/load-books.ts";
import { ROLES } from "../../src/ports/store.ts";

const SEEDS = new URL("../../seeds", import.meta.url).pathname;
const COMPANY =
  "invented: true\nname: Plain Pipes\ntown: Nowhere\ntime_zone: America/Chicago\nlanguage: en\nunits: us\n";
const PEOPLE =
  "invented: true\npeople:\n  - id: a\n    name: A B\n    role: owner\n    language: en\n    units: us\n  - id: b\n    name: C D\n    role: technician\n    language: es\n    units: si\n    slack: U1\n    teams: T1\n";

let folder = "";
beforeEach(async () => {
  folder = await mkdtemp(join(tmpdir(), "oldhand-books-"));
  await cp(SEEDS, folder, { recursive: true });
  // The demo crew are people of the demo company, who are not these.
  await rm(join(folder, "crew.yaml"));
});
afterEach(() => rm(folder, { recursive: true }));

async function faultOf(company: string, people: string): Promise<string> {
  await writeFile(join(folder, "company.yaml"), company);
  await writeFile(join(folder, "people.yaml"), people);
  const error: unknown = await loadBooks(folder).catch((fault: unknown) => fault);
  return error instanceof Error ? error.message.replaceAll(`${folder}/`, "") : "no fault";
}

test("the demo company says that it is invented and has people in all four roles", async () => {
  const { company, people } = await loadBooks(SEEDS);
  expect(company.isInvented).toBe(true);
  expect(new Set(people.map(({ role }) => role))).toEqual(new Set(ROLES));
  expect(people.some(({ language }) => language === "es")).toBe(true);
  expect(people.some(({ units }) => units === "si")).toBe(true);
});

test("books are frozen to the last person", async () => {
  const books = await loadBooks(SEEDS);
  expect([books, books.company, books.people, ...books.people].every(Object.isFrozen)).toBe(true);
});

test("people keep the ids that chat platforms call them by", async () => {
  await writeFile(join(folder, "company.yaml"), COMPANY);
  await writeFile(join(folder, "people.yaml"), PEOPLE);
  const { people } = await loadBooks(folder);
  expect(people).toEqual([
    { id: "a", name: "A B", role: "owner", language: "en", units: "us" },
    { id: "b", name: "C D", role: "technician", language: "es", units: "si", slackUser: "U1", teamsUser: "T1" },
  ]);
});

test("one file that is not invented makes the books not invented", async () => {
  await writeFile(join(folder, "company.yaml"), COMPANY);
  await writeFile(join(folder, "people.yaml"), PEOPLE.replace("invented: true", "invented: false"));
  expect((await loadBooks(folder)).company.isInvented).toBe(false);
});

const FAULTS: readonly { readonly name: string; readonly company?: string; readonly people?: string; line: string }[] =
  [
    {
      name: "a misspelt role",
      people: PEOPLE.replace("role: owner", "role: boss"),
      line: "people.yaml line 5: people.0.role: write one of technician, dispatcher, manager, owner",
    },
    {
      name: "a word nobody knows",
      company: `${COMPANY}colour: red\n`,
      line: "company.yaml line 7: colour: is not known here; check the spelling",
    },
    {
      name: "a missing name",
      company: COMPANY.replace("name: Plain Pipes\n", ""),
      line: "company.yaml line 1: name: is missing: write words, such as Ostrowick Pipe & Heat",
    },
    {
      name: "an empty town",
      company: COMPANY.replace("Nowhere", '" "'),
      line: "company.yaml line 3: town: write words, such as Ostrowick",
    },
    {
      name: "a time zone that does not exist",
      company: COMPANY.replace("America/Chicago", "America/Ostrowick"),
      line: "company.yaml line 4: time_zone: is no IANA time zone; write one such as America/Chicago",
    },
    {
      name: "two people of one id",
      people: PEOPLE.replace("id: b", "id: a"),
      line: "people.yaml line 8: people.1.id: a is taken by somebody above",
    },
    {
      name: "an id with a space",
      people: PEOPLE.replace("id: b", "id: b c"),
      line: "people.yaml line 8: people.1.id: use small letters, digits and hyphens, starting with a letter",
    },
    {
      name: "nobody at all",
      people: "invented: true\npeople: []\n",
      line: "people.yaml line 2: people: name at least one person",
    },
    {
      name: "a number where words belong",
      people: PEOPLE.replace("name: C D", "name: 12"),
      line: "people.yaml line 9: people.1.name: write words, such as Marisol Vantreaux",
    },
    { name: "an empty file", company: "", line: "company.yaml line 1: the file: is not a list of names and values" },
    {
      name: "a list where a table belongs",
      company: "- a\n",
      line: "company.yaml line 1: the file: is not a list of names and values",
    },
    {
      name: "the same name twice",
      company: `${COMPANY}name: Other\n`,
      line: "company.yaml line 7: Map keys must be unique",
    },
    { name: "a bracket left open", company: "name: [a\n", line: "company.yaml line 2: Flow sequence" },
  ];

test.each(FAULTS)("refuses $name with file, line and reason", async ({ company = COMPANY, people = PEOPLE, line }) => {
  const fault = await faultOf(company, people);
  expect(fault.slice(0, line.length)).toBe(line);
});

test("every fault of a file is told at once, one line each", async () => {
  const fault = await faultOf(
    "invented: yes\nname: Plain Pipes\ntown: T\ntime_zone: UTC\nlanguage: de\nunits: us\n",
    PEOPLE,
  );
  expect(fault.split("\n")).toEqual([
    "company.yaml line 1: invented: write true when everything in this file is invented, else false",
    "company.yaml line 5: language: write one of en, es",
  ]);
});

test("a missing folder is told in one line that says what to set", async () => {
  await expect(loadBooks(join(folder, "nowhere"))).rejects.toThrow(
    /company\.yaml: cannot be read\. Put the company's books there, or set OLDHAND_COMPANY\./,
  );
});

test("the hours of the digests are by the clock on the wall, and go to the managers' page where no channel is named", async () => {
  const { company } = await loadBooks(SEEDS);
  expect(company.digest).toEqual({
    channel: { door: "web", id: "managers" },
    daily_min: 390,
    weekly: { day: "monday", at_min: 390 },
  });
  await writeFile(join(folder, "company.yaml"), `${COMPANY}digest: { weekly: { day: friday, at: "16:00" } }\n`);
  await writeFile(join(folder, "people.yaml"), PEOPLE);
  expect((await loadBooks(folder)).company.digest).toEqual({
    channel: { door: "web", id: "managers" },
    weekly: { day: "friday", at_min: 960 },
  });
});

test.each([
  ['digest: { daily: "6:30" }', 'write a time of day from "00:00" to "23:59", such as "06:30"'],
  ['digest: { daily: "24:00" }', 'write a time of day from "00:00" to "23:59", such as "06:30"'],
  ["digest: { daily: 630 }", "write a time of day in quotes"],
  ['digest: { weekly: { day: someday, at: "06:30" } }', "write one of monday, tuesday"],
  ["digest: {}", "or leave digest out"],
  ['digest: { hourly: "06:30" }', "is not known here"],
])("%s is refused with what to write", async (line, advice) => {
  expect(await faultOf(`${COMPANY}${line}\n`, PEOPLE)).toContain(advice);
});
