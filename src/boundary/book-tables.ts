import { type Column, listColumns } from "./book-columns.ts";
import { modelEntry } from "./catalogue-book.ts";
import { personEntry } from "./company-books.ts";
import { displayCodeEntry } from "./display-codes-book.ts";
import { partEntry } from "./parts-book.ts";
import { placeEntry } from "./places-book.ts";

/** A book that may be kept as a table, one entry a line: under which name its entries stand, and its columns. */
export interface BookTable {
  readonly list: string;
  readonly columns: readonly Column[];
}

/** Books flat enough for a spreadsheet, by the name of their file. */
export const BOOK_TABLES: Readonly<Record<string, BookTable | undefined>> = {
  catalogue: { list: "models", columns: listColumns(modelEntry) },
  "display-codes": { list: "codes", columns: listColumns(displayCodeEntry) },
  parts: { list: "parts", columns: listColumns(partEntry) },
  people: { list: "people", columns: listColumns(personEntry) },
  places: { list: "places", columns: listColumns(placeEntry) },
};
