import { cp, mkdtemp, readdir, readFile, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join, parse } from "node:path";
import { afterEach, beforeEach, expect, test } from "vitest";
import { BOOK_NAMES, checkBooks } from "../../adapters/books/check-books.ts";
import { writeTemplates } from "../../adapters/books/write-templates.ts";
import { loadLibrary } from "../../adapters/library/load-library.ts";
import { BOOK_TABLES } from "../../src/boundary/book-tables.ts";

const { cautions: CAUTIONS } = await loadLibrary();
const SEEDS = new URL("../../seeds", import.meta.url).pathname;
const TEMPLATES = new URL("../../seeds/templates/", import.meta.url).pathname;

let folder = "";
beforeEach(async () => {
  folder = await mkdtemp(join(tmpdir(), "oldhand-books-"));
});
afterEach(() => rm(folder, { recursive: true }));

test("the demo company's books are good, each said in a line", async () => {
  const checks = await checkBooks(SEEDS, CAUTIONS);
  expect(checks.map(({ path }) => parse(path).name).sort()).toEqual([...BOOK_NAMES].sort());
  expect(checks.filter(({ isGood }) => !isGood)).toEqual([]);
  expect(checks.find(({ path }) => path.includes("catalogue"))?.says).toMatch(/catalogue\.yaml: good \(models: 15\)$/);
});

test("there is a template for every book", async () => {
  const names = (await readdir(TEMPLATES)).map((file) => parse(file).name);
  expect(names.sort()).toEqual([...BOOK_NAMES].sort());
});

test.each(["yaml", "csv"])(
  "empty %s books ask for every thing that must be filled in, and for nothing unknown",
  async (kept) => {
    await writeTemplates(folder, kept === "csv");
    const checks = await checkBooks(folder, CAUTIONS);
    expect(checks.map(({ isGood }) => isGood)).toEqual(checks.map(() => false));
    const says = checks.map((check) => check.says).join("\n");
    expect(says).not.toMatch(/not known here|Invalid input|cannot be read/);
    expect(says).toMatch(/company\.yaml line 3: name: write words/);
  },
);

test("the template of a table in YAML names each of its fields", async () => {
  for (const [name, table] of Object.entries(BOOK_TABLES)) {
    const text = await readFile(join(TEMPLATES, `${name}.yaml`), "utf8");
    for (const column of table?.columns ?? [])
      for (const field of column.name.split(".").filter((part) => part !== "*")) expect(text).toContain(`${field}:`);
  }
});

test("a book that stands there already is left as it is", async () => {
  await writeFile(join(folder, "people.csv"), "ours");
  const { written, kept } = await writeTemplates(folder, false);
  expect(kept.map((path) => parse(path).base)).toEqual(["people.yaml"]);
  expect(written.map((path) => parse(path).base)).not.toContain("people.yaml");
  expect(await readFile(join(folder, "people.csv"), "utf8")).toBe("ours");
});

test("a file of another name is read as the book it is said to be", async () => {
  const path = join(folder, "staff.csv");
  await writeFile(path, "id,name,role,language,units\na,A B,owner,en,us\n");
  expect(await checkBooks(path, CAUTIONS, "people")).toEqual([
    { path, isGood: true, says: `${path}: good (people: 1)` },
  ]);
  expect((await checkBooks(path, CAUTIONS))[0]?.says).toMatch(
    /staff\.csv: which book is it\? Name the file, or add --as with one of /,
  );
});

test("a path that leads nowhere is said", async () => {
  const [check] = await checkBooks(join(folder, "nowhere.csv"), CAUTIONS);
  expect(check?.says).toMatch(/nowhere\.csv: there is no such file or folder\.$/);
});

test("prices do not fit a table, and are not taken as one", async () => {
  const path = join(folder, "prices.csv");
  await writeFile(path, "a,b\n");
  expect((await checkBooks(path, CAUTIONS))[0]?.says).toMatch(
    /prices is kept as YAML; only catalogue, display-codes, parts, people, places may be CSV\.$/,
  );
});

test("a part of a job that the book of parts does not know is found, with its line; without such a book it stands", async () => {
  await cp(SEEDS, folder, { recursive: true });
  const path = join(folder, "jobs.yaml");
  const jobs = await readFile(path, "utf8");
  await writeFile(path, jobs.replace("parts: { expansion-tank-2-gal: 1,", "parts: { expansion-tank: 1,"));
  const [check] = await checkBooks(path, CAUTIONS);
  expect(check?.says).toMatch(/jobs\.yaml line \d+: .*expansion-tank is no part of parts\.yaml/);
  await rm(join(folder, "parts.yaml"));
  expect((await checkBooks(path, CAUTIONS))[0]?.isGood).toBe(true);
});
