import { access } from "node:fs/promises";
import { join } from "node:path";
import { readPeople } from "../../src/boundary/company-books.ts";
import { readCrew } from "../../src/boundary/crew-book.ts";
import type { KnownIds } from "../../src/boundary/crew-fields.ts";
import { readParts } from "../../src/boundary/parts-book.ts";
import { readTravel } from "../../src/boundary/travel-book.ts";
import { readTrucks } from "../../src/boundary/trucks-book.ts";
import { type CrewBooks, NO_CREW_BOOKS } from "../../src/crew/crew.ts";
import { BooksFault } from "./book-file.ts";
import { readBook } from "./read-book.ts";

/** Everything about the crew that stands in a folder, and whether all of it is invented. */
export interface LoadedCrew {
  readonly isInvented: boolean;
  readonly crew: CrewBooks;
}

/**
 * Loads who goes to site with what, each file held against the others. A company may do without any of them, and then
 * hears that nobody, or nothing, is in its books.
 * @param people ids of the people's book
 */
export async function loadCrew(folder: string, people: readonly string[]): Promise<LoadedCrew> {
  const parts = await readWhereThere(folder, "parts", () => readBook(folder, "parts", readParts));
  const known: KnownIds = { people: new Set(people), ...(parts && partIds(parts.parts)) };
  const trucks = await readWhereThere(folder, "trucks", () =>
    readBook(folder, "trucks", (contents) => readTrucks(contents, known)),
  );
  const driven = new Set((trucks?.trucks ?? []).map(({ id }) => id));
  const crew = await readWhereThere(folder, "crew", () =>
    readBook(folder, "crew", (contents) => readCrew(contents, { ...known, trucks: driven })),
  );
  const travel = await readWhereThere(folder, "travel", () => readBook(folder, "travel", readTravel));
  const books = [parts, trucks, crew, travel].filter((book) => book !== undefined);
  return {
    isInvented: books.every((book) => book.isInvented),
    crew: {
      members: crew?.members ?? NO_CREW_BOOKS.members,
      parts: parts?.parts ?? NO_CREW_BOOKS.parts,
      trucks: trucks ?? NO_CREW_BOOKS.trucks,
      travel: travel ?? NO_CREW_BOOKS.travel,
    },
  };
}

/** Ids of parts and of tools, which are asked for apart. */
function partIds(
  parts: readonly { readonly id: string; readonly group: "part" | "tool" }[],
): Required<Pick<KnownIds, "parts" | "tools">> {
  const idsOf = (wanted: "part" | "tool") => new Set(parts.filter(({ group }) => group === wanted).map(({ id }) => id));
  return { parts: idsOf("part"), tools: idsOf("tool") };
}

/** Ids of the books of a folder that can be read; a book that cannot be read tells its own faults and binds no other. */
export async function findKnownIds(folder: string): Promise<KnownIds> {
  const [people, parts, trucks] = await Promise.all([
    readWhereGood(() => readBook(folder, "people", readPeople)),
    readWhereGood(() => readBook(folder, "parts", readParts)),
    readWhereGood(() => readBook(folder, "trucks", (contents) => readTrucks(contents))),
  ]);
  return {
    ...(people && { people: new Set(people.people.map(({ id }) => id)) }),
    ...(parts && partIds(parts.parts)),
    ...(trucks && { trucks: new Set(trucks.trucks.map(({ id }) => id)) }),
  };
}

async function readWhereGood<T>(readIt: () => Promise<T>): Promise<T | undefined> {
  try {
    return await readIt();
  } catch (error) {
    if (error instanceof BooksFault) return undefined;
    throw error;
  }
}

async function readWhereThere<T>(folder: string, name: string, readIt: () => Promise<T>): Promise<T | undefined> {
  const found = await Promise.all([`${name}.yaml`, `${name}.csv`].map((file) => isThere(join(folder, file))));
  return found.some(Boolean) ? await readIt() : undefined;
}

function isThere(path: string): Promise<boolean> {
  return access(path).then(
    () => true,
    () => false,
  );
}
