import { copyFile, mkdir, readdir, writeFile } from "node:fs/promises";
import { join, parse } from "node:path";
import { BOOK_TABLES, type BookTable } from "../../src/boundary/book-tables.ts";

const TEMPLATES = new URL("../../seeds/templates/", import.meta.url).pathname;

/**
 * Puts an empty book of each kind into a folder, to be filled in.
 * @param folder made where there is none
 * @param asTables true: books that a spreadsheet can hold are CSV, with nothing but their line of column names
 * @returns the files written, and those that stood there already and were left as they are
 */
export async function writeTemplates(
  folder: string,
  asTables: boolean,
): Promise<{ readonly written: readonly string[]; readonly kept: readonly string[] }> {
  await mkdir(folder, { recursive: true });
  const present = new Set((await readdir(folder)).map((file) => parse(file).name));
  const written: string[] = [];
  const kept: string[] = [];
  for (const file of (await readdir(TEMPLATES)).sort()) {
    const { name } = parse(file);
    const table = asTables ? BOOK_TABLES[name] : undefined;
    const path = join(folder, table === undefined ? file : `${name}.csv`);
    if (present.has(name)) {
      kept.push(path);
      continue;
    }
    await (table === undefined ? copyFile(join(TEMPLATES, file), path) : writeFile(path, headOf(table)));
    written.push(path);
  }
  return { written, kept };
}

function headOf({ columns }: BookTable): string {
  const needed = columns.filter(({ isNeeded }) => isNeeded).map(({ name }) => name);
  return [
    "# One entry a line. Numbers carry their unit: 46 gal, 122 F. Several values in a cell stand apart by semicolons.",
    `# Needed: ${needed.join(" ")}`,
    columns.map(({ name }) => name.replace(/\*$/, "A1")).join(","),
    "",
  ].join("\n");
}
