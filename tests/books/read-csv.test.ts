import { cp, mkdtemp, readFile, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeEach, describe, expect, test } from "vitest";
import { parse } from "yaml";
import { loadBooks } from "../../adapters/books/load-books.ts";
import { BOOK_TABLES } from "../../src/boundary/book-tables.ts";
import { writeCsv } from "../support/write-csv.ts";

const SEEDS = new URL("../../seeds", import.meta.url).pathname;
const PEOPLE = "id,name,role,language,units,slack\n";

let folder = "";
beforeEach(async () => {
  folder = await mkdtemp(join(tmpdir(), "oldhand-books-"));
  await cp(SEEDS, folder, { recursive: true });
  // The demo crew are people of the demo company; a table of people here holds others.
  await rm(join(folder, "crew.yaml"));
});
afterEach(() => rm(folder, { recursive: true }));

async function loadWith(file: string, text: string) {
  await rm(join(folder, file.replace(/csv$/, "yaml")));
  await writeFile(join(folder, file), text);
  return await loadBooks(folder);
}
async function faultOf(file: string, text: string): Promise<string> {
  const error: unknown = await loadWith(file, text).catch((fault: unknown) => fault);
  return error instanceof Error ? error.message.replaceAll(`${folder}/`, "") : "no fault";
}

describe.each(["catalogue", "places"] as const)("the demo %s as a table", (name) => {
  test("is read as the same entries", async () => {
    const written: Record<string, unknown> = parse(await readFile(join(folder, `${name}.yaml`), "utf8"));
    const text = writeCsv(written[BOOK_TABLES[name]?.list ?? ""]);
    const [table, yaml] = [await loadWith(`${name}.csv`, text), await loadBooks(SEEDS)];
    // What is kept as a table is a company's own, so only the word of who says so differs.
    const plain = (value: unknown) =>
      JSON.parse(JSON.stringify(value, (key: string, inner: unknown) => (key === "source" ? undefined : inner)));
    expect(plain(table[name])).toEqual(plain(yaml[name]));
    expect(table[name].length).toBeGreaterThan(1);
  });
});

test.each([
  { name: "a byte-order mark and semicolons", text: `\uFEFF${PEOPLE}a,A B,owner,en,us,\n`.replaceAll(",", ";") },
  {
    name: "empty lines, remarks and blanks around words",
    text: `# our people\n\n${PEOPLE}\na , A B ,owner,en,us\n,,,,,\n`,
  },
  { name: "quoted cells and Windows line ends", text: `${PEOPLE}"a","A B",owner,en,us,""\n`.replaceAll("\n", "\r\n") },
])("people with $name are read", async ({ text }) => {
  expect((await loadWith("people.csv", text)).people).toEqual([
    { id: "a", name: "A B", role: "owner", language: "en", units: "us" },
  ]);
});

const FAULTS = [
  {
    name: "a misspelt role on its own line",
    text: `# people\n${PEOPLE}a,A B,owner,en,us,\nb,"C\nD",boss,en,us,\n`,
    says: "people.csv line 5, column role: write one of technician, dispatcher, manager, owner",
  },
  {
    name: "a column that is not known",
    text: "id,name,rolle\n",
    says: 'people.csv line 1: column "rolle" is not known here',
  },
  { name: "a column named twice", text: "id,name,id\n", says: 'people.csv line 1: column "id" stands there twice' },
  {
    name: "more cells than columns",
    text: `${PEOPLE}a,A B,owner,en,us,,late\n`,
    says: "people.csv line 2: more cells than columns",
  },
  { name: "a missing cell", text: `${PEOPLE}a,,owner,en,us,\n`, says: "people.csv line 2, column name: is missing" },
  { name: "nobody at all", text: PEOPLE, says: "people.csv line 1: the file: name at least one person" },
  { name: "no line at all", text: "\n", says: "people.csv line 1: the first line must name the columns" },
  { name: "a quote left open", text: `${PEOPLE}"a,A B\n`, says: "people.csv: is no table that can be read" },
];

test.each(FAULTS)("a table with $name is refused in one line that says where", async ({ text, says }) => {
  const fault = await faultOf("people.csv", text);
  expect(fault.slice(0, says.length)).toBe(says);
});

test("a silly number in a catalogue names its line, its column and what to write", async () => {
  const models: unknown = parse(await readFile(join(folder, "catalogue.yaml"), "utf8"))["models"];
  const text = writeCsv(models).replace(/,1300 W,3\.4,/, ",1300 W,much,");
  expect(await faultOf("catalogue.csv", text)).toBe(
    "catalogue.csv line 3, column heat_pump.cop: write a number, such as 3.4",
  );
});

test("a book that stands there twice is refused, because nobody could say which one counts", async () => {
  await writeFile(join(folder, "people.csv"), `${PEOPLE}a,A B,owner,en,us,\n`);
  await expect(loadBooks(folder)).rejects.toThrow(
    /people\.yaml and .*people\.csv both stand there\. Keep one of them\./,
  );
});
