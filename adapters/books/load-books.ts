import { join } from "node:path";
import type { Books } from "../../src/books/books.ts";
import type { BookRead } from "../../src/boundary/book-schema.ts";
import { readCatalogue } from "../../src/boundary/catalogue-book.ts";
import { readCompany, readPeople } from "../../src/boundary/company-books.ts";
import { freezeDeep } from "../../src/boundary/freeze-deep.ts";
import { readPlaces } from "../../src/boundary/places-book.ts";
import { readPrices } from "../../src/boundary/prices-book.ts";
import { BooksFault, readYaml } from "./read-yaml.ts";

/** Loads and freezes a company's books; every fault of a file is told at once. */
export async function loadBooks(folder: string): Promise<Books> {
  const company = await readBook(join(folder, "company.yaml"), readCompany);
  const people = await readBook(join(folder, "people.yaml"), readPeople);
  const catalogue = await readBook(join(folder, "catalogue.yaml"), readCatalogue);
  const places = await readBook(join(folder, "places.yaml"), readPlaces);
  const prices = await readBook(join(folder, "prices.yaml"), readPrices);
  const isInvented = [company, people, catalogue, places, prices].every((book) => book.isInvented);
  return freezeDeep({
    company: { ...company, isInvented },
    people: people.people,
    catalogue: catalogue.models,
    places: places.places,
    prices: prices.prices,
  });
}

async function readBook<T>(path: string, read: (file: unknown) => BookRead<T>): Promise<T> {
  const file = await readYaml(path);
  const book = read(file.data);
  if (book.ok) return book.value;
  const lines = book.faults.map(({ path: at, reason }) => {
    const where = at.length === 0 ? "the file" : at.map(String).join(".");
    return `${path} line ${file.lineOf(at)}: ${where}: ${reason}`;
  });
  throw new BooksFault(lines.join("\n"));
}
