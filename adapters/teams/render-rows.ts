import type { Row, RowsBlock, TableBlock } from "../../src/messages/card.ts";
import type { AdaptiveElement, AdaptiveTable } from "./adaptive-card.ts";
import {
  MOST_FACT_LABEL_WORD_CHARACTERS,
  MOST_FACT_VALUE_WORD_CHARACTERS,
  MOST_TABLE_WORD_CHARACTERS,
} from "./limits.ts";
import { isFreeOfMarkdown, longestWord, paragraphs, plainLine, run, widthOf } from "./plain-text.ts";
import { headingElements } from "./render-text.ts";

/** The share of a column's width that one letter asks for stays between these, so that no column starves. Our own choice. */
const LEAST_COLUMN_WEIGHT = 4;
const MOST_COLUMN_WEIGHT = 20;

/** Labels and values. */
export function renderRows(block: RowsBlock): AdaptiveElement[] {
  return [...(block.heading ? headingElements(block.heading) : []), ...renderPairs(block.rows)];
}

/** A set of facts, or a line for each pair when a text is too wide or has characters that facts would read as Markdown. */
function renderPairs(rows: readonly Row[]): AdaptiveElement[] {
  if (rows.length === 0) return [];
  const facts = rows.map(({ label, value, note }) => ({
    title: plainLine(label),
    value: note ? `${plainLine(value)} (${plainLine(note)})` : plainLine(value),
  }));
  if (facts.every(fitsFacts)) return [{ type: "FactSet", facts }];
  return facts.map(({ title, value }) => ({
    type: "RichTextBlock",
    inlines: [run(`${title}: `, { weight: "bolder" }), run(value)],
    spacing: "small",
  }));
}

function fitsFacts({ title, value }: { readonly title: string; readonly value: string }): boolean {
  const isNarrow =
    longestWord(title) <= MOST_FACT_LABEL_WORD_CHARACTERS && longestWord(value) <= MOST_FACT_VALUE_WORD_CHARACTERS;
  return isNarrow && isFreeOfMarkdown(title) && isFreeOfMarkdown(value);
}

/** A table where a phone is wide enough for it; else each row as a small list under its first cell. */
export function renderTable(block: TableBlock): AdaptiveElement[] {
  const caption = headingElements(block.caption);
  const cells = joinUnnamed([block.columns, ...block.rows].map((row) => row.map(plainLine)));
  const [columns = [], ...rows] = cells;
  if (columns.length === 0) return caption;
  if (longestWords(cells) <= MOST_TABLE_WORD_CHARACTERS) return [...caption, gridOf(cells)];
  return [...caption, ...rows.map((row) => listOf(columns, row))];
}

/** A column without a name, such as that of bars, stands under the one before it: a phone has no room beside. */
function joinUnnamed(cells: readonly (readonly string[])[]): readonly (readonly string[])[] {
  const names = cells[0] ?? [];
  return cells.map((row) => {
    const joined: string[] = [];
    for (const [column, cell] of row.entries()) {
      const before = joined.at(-1);
      if (before === undefined || names[column] !== "") joined.push(cell);
      else if (cell !== "") joined.splice(-1, 1, `${before}\n${cell}`);
    }
    return joined;
  });
}

function longestWords(cells: readonly (readonly string[])[]): number {
  const columns = cells[0]?.length ?? 0;
  let sum = 0;
  for (let column = 0; column < columns; column++)
    sum += Math.max(...cells.map((row) => longestWord(row[column] ?? "")));
  return sum;
}

function gridOf(cells: readonly (readonly string[])[]): AdaptiveTable {
  const columns = cells[0] ?? [];
  const widest = columns.map((_, column) => Math.max(...cells.map((row) => widestLine(row[column] ?? ""))));
  return {
    type: "Table",
    columns: widest.map((length) => ({ width: Math.min(Math.max(length, LEAST_COLUMN_WEIGHT), MOST_COLUMN_WEIGHT) })),
    rows: cells.map((row, index) => ({
      type: "TableRow",
      cells: columns.map((_, column) => ({
        type: "TableCell",
        items: paragraphs(row[column] ?? "", index === 0 ? { weight: "bolder" } : {}),
      })),
    })),
  };
}

function widestLine(cell: string): number {
  return Math.max(...cell.split("\n").map(widthOf));
}

function listOf(columns: readonly string[], row: readonly string[]): AdaptiveElement {
  const pairs = columns.map((label, column) => ({ label, value: row[column] ?? "" }));
  return { type: "Container", separator: true, spacing: "small", items: renderPairs(pairs) };
}
