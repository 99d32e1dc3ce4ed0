import { loadBooks } from "../../adapters/books/load-books.ts";
import type { Books } from "../../src/books/books.ts";

const demo = await loadBooks(new URL("../../seeds", import.meta.url).pathname);

/**
 * Books of an invented company without people and without local amendments; its catalogue, places, prices and adopted code
 * are the demo company's.
 */
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
  jobs: [],
  jobEvents: [],
  code: { ...demo.code, amendments: [] },
  codes: Object.fromEntries(Object.entries(demo.codes).map(([place, code]) => [place, { ...code, amendments: [] }])),
};
