import { CsvError, parse } from "csv-parse/sync";
import type { BookTable } from "../../src/boundary/book-tables.ts";
import { readCells, unknownColumns } from "../../src/boundary/read-cells.ts";
import { type BookFile, BooksFault } from "./book-file.ts";

/** One row of cells with the line of the file that it stands on. */
interface Row {
  readonly line: number;
  readonly cells: readonly string[];
}

/**
 * Reads a CSV file of one entry a line under a line of column names, as spreadsheets save it: commas or semicolons between
 * cells, a byte-order mark or none, quoted cells with line breaks. Lines that start with # are remarks.
 */
export function readCsv(path: string, text: string, { list, columns }: BookTable): BookFile {
  const [head, ...rows] = parseRows(path, text);
  if (head === undefined) throw new BooksFault(`${path} line 1: the first line must name the columns`);
  const names = head.cells.map((name) => name.trim());
  const faults = [
    ...unknownColumns(names, columns).map((name) => `line ${head.line}: column "${name}" is not known here`),
    ...namedTwice(names).map((name) => `line ${head.line}: column "${name}" stands there twice`),
    ...rows.filter(({ cells }) => hasTooMany(cells, names)).map(({ line }) => `line ${line}: more cells than columns`),
  ];
  if (faults.length > 0) throw new BooksFault(faults.map((fault) => `${path} ${fault}`).join("\n"));
  const filled = rows.filter(({ cells }) => cells.some(isFilled));
  const entries = filled.map(({ cells }) =>
    readCells(Object.fromEntries(names.map((name, place) => [name, cells[place] ?? ""])), columns),
  );
  return {
    path,
    // A company's own table is not the demo's: what is invented stays YAML, where it says so.
    data: { invented: false, [list]: entries },
    where: ([, row, ...fields]) =>
      typeof row === "number"
        ? `line ${filled[row]?.line ?? head.line}, column ${fields.map(String).join(".")}`
        : `line ${head.line}: the file`,
  };
}

function parseRows(path: string, text: string): readonly Row[] {
  const lines: number[] = [];
  try {
    const records = parse(text, {
      bom: true,
      comment: "#",
      comment_no_infix: true,
      delimiter: delimiterOf(text),
      relax_column_count: true,
      skip_empty_lines: true,
      on_record: (record: string[], { lines: line }: { readonly lines: number }) => {
        lines.push(line);
        return record;
      },
    });
    return records.map((cells, place) => ({ line: lines[place] ?? 1, cells }));
  } catch (error) {
    if (!(error instanceof CsvError)) throw error;
    throw new BooksFault(`${path}: is no table that can be read: ${error.message}`);
  }
}

/** Spreadsheets of many countries write semicolons; the line of column names tells which it is. */
function delimiterOf(text: string): "," | ";" {
  const head = text.split(/\r?\n/).find((line) => line.trim() !== "" && !line.startsWith("#")) ?? "";
  return head.includes(";") && !head.includes(",") ? ";" : ",";
}

function namedTwice(names: readonly string[]): readonly string[] {
  return names.filter((name, place) => names.indexOf(name) !== place);
}

function hasTooMany(cells: readonly string[], names: readonly string[]): boolean {
  return cells.slice(names.length).some(isFilled);
}

function isFilled(cell: string): boolean {
  return cell.trim() !== "";
}
