import type { RawTextElement, TableBlock as SlackTable } from "@slack/types";
import type { TableBlock } from "../../src/messages/card.ts";
import type { BlockGroup } from "./block-groups.ts";
import { chunk, jsonSize } from "./chunk.ts";
import { LIMITS } from "./limits.ts";
import { renderRows } from "./render-rows.ts";
import { bold, plain, richParagraphs } from "./rich-text.ts";
import { fitRaw } from "./slack-text.ts";

type Cells = readonly string[];

/** A caption and as many tables as the limits ask for; the first column is repeated when a table is too wide. */
export function renderTable(table: TableBlock): readonly BlockGroup[] {
  const [first, ...others] = splitWide(squareUp(table)).flatMap(splitLong);
  const caption = richParagraphs(table.caption, bold);
  return [first === undefined ? caption : [...caption, first], ...others.map((more) => [more])];
}

/** Whether a table is shown as lines: a detail that a line of a phone has room for. */
export function mayBeLines({ isDetail, columns }: TableBlock): boolean {
  return isDetail === true && columns.length > 0 && columns.length <= LIMITS.lineCells;
}

/** A table as lines, "first: second · third", because a message takes only one table. */
export function renderTableLines({ caption, columns, rows }: TableBlock): readonly BlockGroup[] {
  const [label = "", ...others] = columns;
  const join = (cells: Cells) => cells.filter((cell) => cell.trim() !== "").join(" · ");
  const lines = rows.map(([first = "", ...rest]) => ({ label: first, value: join(rest) }));
  const head = [label, join(others)].filter((part) => part !== "").join(": ");
  return [
    [...richParagraphs(caption, bold), ...richParagraphs(head, plain), ...renderRows({ kind: "rows", rows: lines })],
  ];
}

/** Header and rows, all of one length. */
function squareUp(table: TableBlock): readonly Cells[] {
  const width = Math.max(table.columns.length, ...table.rows.map((row) => row.length));
  const pad = (row: Cells): Cells => Array.from({ length: width }, (_, column) => row[column] ?? "");
  return width === 0 ? [] : [pad(table.columns), ...table.rows.map(pad)];
}

function splitWide(rows: readonly Cells[]): readonly (readonly Cells[])[] {
  const width = rows[0]?.length ?? 0;
  if (width <= LIMITS.tableCells) return rows.length === 0 ? [] : [rows];
  const others = LIMITS.tableCells - 1;
  const starts = Array.from({ length: Math.ceil((width - 1) / others) }, (_, part) => 1 + part * others);
  return starts.map((start) => rows.map((row) => [row[0] ?? "", ...row.slice(start, start + others)]));
}

/** Cuts after so many rows or characters; each part begins with the header. */
function splitLong(rows: readonly Cells[]): readonly SlackTable[] {
  const [header, ...body] = rows.map(toCells);
  if (header === undefined) return [];
  const room = { mostItems: LIMITS.tableRows - 1, mostSize: LIMITS.tableBudget - jsonSize(header) };
  const parts = chunk(body, room, jsonSize);
  return parts.length === 0 ? [toTable([header])] : parts.map((part) => toTable([header, ...part]));
}

/** A cell is cut so that a header and one row always fit one table, even when every character is written as two. */
function toCells(row: Cells): RawTextElement[] {
  const share = Math.floor(LIMITS.tableBudget / (4 * row.length)) - CELL_FRAME;
  return row.map((text) => ({ type: "raw_text", text: fitRaw(text, Math.min(LIMITS.cellText, share)) }));
}
/** Characters of `{"type":"raw_text","text":""},` with room to spare. */
const CELL_FRAME = 32;

function toTable(rows: RawTextElement[][]): SlackTable {
  const columns = rows[0] ?? [];
  return { type: "table", rows, column_settings: columns.map(() => ({ is_wrapped: true })) };
}
