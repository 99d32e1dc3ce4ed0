import { readFile } from "node:fs/promises";
import { extname, join } from "node:path";
import type { BookRead } from "../../src/boundary/book-schema.ts";
import { BOOK_TABLES } from "../../src/boundary/book-tables.ts";
import { type BookFile, BooksFault } from "./book-file.ts";
import { readCsv } from "./read-csv.ts";
import { readYaml } from "./read-yaml.ts";

/** Reads one book of a folder, kept as YAML or, where it is flat enough, as CSV; every fault is told at once. */
export async function readBook<T>(folder: string, name: string, read: (contents: unknown) => BookRead<T>): Promise<T> {
  return judgeBook(await findBook(folder, name), read);
}

/** What a file says, or every fault of it, a line each. */
export function judgeBook<T>(file: BookFile, read: (contents: unknown) => BookRead<T>): T {
  const book = read(file.data);
  if (book.ok) return book.value;
  throw new BooksFault(book.faults.map(({ path, reason }) => `${file.path} ${file.where(path)}: ${reason}`).join("\n"));
}

/** Reads a file as the book it is named. */
export async function readBookFile(path: string, name: string): Promise<BookFile> {
  const text = await readText(path);
  if (text === undefined) throw missing(path);
  return parseBook(path, name, text);
}

async function findBook(folder: string, name: string): Promise<BookFile> {
  const [yaml, csv] = [join(folder, `${name}.yaml`), join(folder, `${name}.csv`)];
  const [written, table] = await Promise.all([readText(yaml), BOOK_TABLES[name] ? readText(csv) : undefined]);
  if (written !== undefined && table !== undefined)
    throw new BooksFault(`${yaml} and ${csv} both stand there. Keep one of them.`);
  if (table !== undefined) return parseBook(csv, name, table);
  if (written === undefined) throw missing(yaml);
  return parseBook(yaml, name, written);
}

function parseBook(path: string, name: string, text: string): BookFile {
  const table = BOOK_TABLES[name];
  if (extname(path).toLowerCase() !== ".csv") return readYaml(path, text);
  if (table !== undefined) return readCsv(path, text, table);
  const tables = Object.keys(BOOK_TABLES).join(", ");
  throw new BooksFault(`${path}: ${name} is kept as YAML; only ${tables} may be CSV.`);
}

function missing(path: string): BooksFault {
  return new BooksFault(`${path}: cannot be read. Put the company's books there, or set OLDHAND_COMPANY.`);
}

/** The text of a file, or nothing where none stands. */
async function readText(path: string): Promise<string | undefined> {
  try {
    return await readFile(path, "utf8");
  } catch (error) {
    if (error instanceof Error && "code" in error && error.code === "ENOENT") return undefined;
    throw new BooksFault(`${path}: cannot be read.`, { cause: error });
  }
}
