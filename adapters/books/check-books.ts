import { readdir, stat } from "node:fs/promises";
import { dirname, extname, join, parse } from "node:path";
import type { BookRead } from "../../src/boundary/book-schema.ts";
import { readCatalogue } from "../../src/boundary/catalogue-book.ts";
import { readCode } from "../../src/boundary/code-book.ts";
import { readCompany, readPeople } from "../../src/boundary/company-books.ts";
import { readCrew } from "../../src/boundary/crew-book.ts";
import { readDisplayCodes } from "../../src/boundary/display-codes-book.ts";
import { readNewJobs } from "../../src/boundary/jobs-book.ts";
import { readParts } from "../../src/boundary/parts-book.ts";
import { readPlaces } from "../../src/boundary/places-book.ts";
import { readPrices } from "../../src/boundary/prices-book.ts";
import { readTravel } from "../../src/boundary/travel-book.ts";
import { readTrucks } from "../../src/boundary/trucks-book.ts";
import type { AnyCaution } from "../../src/cautions/caution.ts";
import type { AdoptedCode } from "../../src/cautions/code.ts";
import { BooksFault } from "./book-file.ts";
import { codeContext } from "./load-books.ts";
import { findKnownIds } from "./load-crew.ts";
import { judgeBook, readBook, readBookFile } from "./read-book.ts";

type ReadBook = (contents: unknown) => BookRead<{ readonly count: string }>;

/** Every book that stands alone, by the name of its file, with how it is read and what a good one holds. */
const BOOKS: Readonly<Record<string, ReadBook>> = {
  company: counted(readCompany, ({ name }) => name),
  people: counted(readPeople, ({ people }) => `people: ${people.length}`),
  catalogue: counted(readCatalogue, ({ models }) => `models: ${models.length}`),
  places: counted(readPlaces, ({ places }) => `places: ${places.length}`),
  prices: counted(readPrices, ({ prices }) => `${prices.electricity.length} plans, set on ${prices.setOn}`),
  "display-codes": counted(
    (contents) => readDisplayCodes(contents),
    ({ displayCodes }) => `codes: ${displayCodes.length}`,
  ),
  parts: counted(readParts, ({ parts }) => `parts and tools: ${parts.length}`),
  travel: counted(readTravel, ({ legs }) => `drives: ${legs.length}`),
};
/** Books that a company may do without. */
const MAY_LACK = ["display-codes", "parts", "travel"];
/** Books that are read against others of the same folder. A company may do without any of them. */
const READ_AGAINST: Readonly<Record<string, (folder: string, cautions: readonly AnyCaution[]) => Promise<ReadBook>>> = {
  code: readerOfCode,
  jobs: async (folder) => {
    const people = await readBook(folder, "people", readPeople);
    const { models } = await readBook(folder, "catalogue", readCatalogue);
    const ids = models.map(({ id }) => id);
    const { parts } = await findKnownIds(folder);
    return counted(
      (contents) => readNewJobs(contents, people.people, ids, parts),
      ({ jobs }) => `jobs: ${jobs.length}`,
    );
  },
  crew: async (folder) => {
    const known = await findKnownIds(folder);
    return counted(
      (contents) => readCrew(contents, known),
      ({ members }) => `people: ${members.length}`,
    );
  },
  trucks: async (folder) => {
    const known = await findKnownIds(folder);
    return counted(
      (contents) => readTrucks(contents, known),
      ({ trucks }) => `trucks: ${trucks.length}`,
    );
  },
};
export const BOOK_NAMES = [...Object.keys(BOOKS), ...Object.keys(READ_AGAINST)];
const ENDINGS = [".yaml", ".yml", ".csv"];

/** What was looked at: a line for each good book, or every fault of it. */
export interface BookCheck {
  readonly path: string;
  readonly isGood: boolean;
  readonly says: string;
}

/**
 * Looks through one file, or every book of a folder, and stops at no fault.
 * @param path file or folder
 * @param cautions what a code book may amend
 * @param named which book the file is, where its own name does not say
 */
export async function checkBooks(
  path: string,
  cautions: readonly AnyCaution[],
  named?: string,
): Promise<readonly BookCheck[]> {
  const found = await stat(path).catch(() => undefined);
  if (found === undefined) return [{ path, isGood: false, says: `${path}: there is no such file or folder.` }];
  if (!found.isDirectory()) return [await checkFile(path, named ?? parse(path).name, cautions)];
  const files = (await readdir(path)).filter(
    (file) => ENDINGS.includes(extname(file)) && BOOK_NAMES.includes(parse(file).name),
  );
  const missing = Object.keys(BOOKS).filter(
    (name) => !MAY_LACK.includes(name) && !files.some((file) => parse(file).name === name),
  );
  return [
    ...(await Promise.all(files.sort().map((file) => checkFile(join(path, file), parse(file).name, cautions)))),
    ...missing.map((name) => ({
      path: join(path, name),
      isGood: false,
      says: `${join(path, `${name}.yaml`)}: is missing.`,
    })),
  ];
}

async function checkFile(path: string, name: string, cautions: readonly AnyCaution[]): Promise<BookCheck> {
  if (!BOOK_NAMES.includes(name)) {
    const names = BOOK_NAMES.join(", ");
    return { path, isGood: false, says: `${path}: which book is it? Name the file, or add --as with one of ${names}.` };
  }
  try {
    const read = BOOKS[name] ?? (await READ_AGAINST[name]?.(dirname(path), cautions));
    if (read === undefined) throw new Error(`nothing reads the book ${name}`);
    const { count } = judgeBook(await readBookFile(path, name), read);
    return { path, isGood: true, says: `${path}: good (${count})` };
  } catch (error) {
    if (!(error instanceof BooksFault)) throw error;
    return { path, isGood: false, says: error.message };
  }
}

async function readerOfCode(folder: string, cautions: readonly AnyCaution[]): Promise<ReadBook> {
  const places = await readBook(folder, "places", readPlaces);
  const [home = "", ...others] = places.places.map(({ id }) => id);
  const context = await codeContext([home, ...others], cautions);
  return counted(
    (contents) => readCode(contents, context),
    ({ code }) => `${Object.values(code.adopted).map(sayAdopted).join(", ")}; amendments: ${code.amendments.length}`,
  );
}

function sayAdopted({ family, edition }: AdoptedCode): string {
  return `${family} ${edition}`;
}

function counted<T>(read: (contents: unknown) => BookRead<T>, count: (book: T) => string) {
  return (contents: unknown): BookRead<{ readonly count: string }> => {
    const book = read(contents);
    return book.ok ? { ok: true, value: { count: count(book.value) } } : book;
  };
}
