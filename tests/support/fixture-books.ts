import { loadBooks } from "../../adapters/books/load-books.ts";
import type { Books } from "../../src/books/books.ts";

const demo = await loadBooks(new URL("../../seeds", import.meta.url).pathname);

/** Books of an invented company without people; its catalogue, places and prices are the demo company's. */
export const fixtureBooks: Books = {
  ...demo,
  company: {
    name: "Testbench Plumbing",
    isInvented: true,
    town: "Testbench",
    timeZone: "America/Chicago",
    language: "en",
    units: "us",
  },
  people: [],
};
