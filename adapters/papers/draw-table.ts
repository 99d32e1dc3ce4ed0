import type { PaperBlock } from "../../src/ports/papers.ts";
import {
  BODY,
  drawArtifact,
  heightOf,
  makeRoom,
  RULE,
  SHADE,
  type Sheet,
  STRONG,
  setText,
  type TextStyle,
} from "./sheet.ts";

type Table = Extract<PaperBlock, { readonly kind: "table" }>;

const PAD = { x: 4, y: 3 } as const;
/** A row that takes more of a page than this is set line by line instead. */
const TALLEST_SHARE = 0.5;
/** So much of a tall row stands under the head of its table. */
const SOME_OF_TALL = 80;
const MEASURED = { x: 0, width: 0 };

/** Of what cells a head is the head; known to the library and not to its types. */
const COLUMN_HEAD: { readonly scope: string; readonly title?: string } = { scope: "Column" };

interface Column {
  readonly x: number;
  readonly width: number;
}

/** A table with its head again on every page; a row stays on one page unless it is taller than most of one. */
export function drawTable(sheet: Sheet, { widths, columns: heads, rows }: Table): void {
  const { doc, root } = sheet;
  const columns = placeColumns(sheet, widths);
  const table = doc.struct("Table");
  root.add(table);
  const drawHead = (tag: "TH" | undefined) => drawRow(sheet, table, columns, heads, STRONG, tag);
  makeRoom(sheet, leastOfTable(sheet, { widths, columns: heads, rows }));
  drawHead("TH");
  for (const cells of rows) {
    const height = rowHeight(sheet, columns, cells, BODY);
    if (height > tallest(sheet)) {
      drawTallRow(sheet, table, heads, cells);
      continue;
    }
    if (doc.y + height > sheet.bottom) {
      doc.addPage();
      drawHead(undefined);
    }
    drawRow(sheet, table, columns, cells, BODY, "TD");
  }
  table.end();
  doc.y += 6;
}

function placeColumns({ left, width }: Sheet, shares: readonly number[]): readonly Column[] {
  let x = left;
  return shares.map((share) => {
    const column = { x, width: share * width };
    x += column.width;
    return column;
  });
}

/** How high a table stands at the least: its head with the first row, or with some of it where that is tall. */
export function leastOfTable(
  sheet: Sheet,
  { widths, columns: heads, rows: [first] }: Pick<Table, "widths" | "columns" | "rows">,
): number {
  const columns = placeColumns(sheet, widths);
  const firstHeight = first === undefined ? 0 : rowHeight(sheet, columns, first, BODY);
  return rowHeight(sheet, columns, heads, STRONG) + (firstHeight > tallest(sheet) ? SOME_OF_TALL : firstHeight);
}

function tallest({ doc, bottom }: Sheet): number {
  return (bottom - doc.page.margins.top) * TALLEST_SHARE;
}

function rowHeight(sheet: Sheet, columns: readonly Column[], cells: readonly string[], style: TextStyle): number {
  const heights = cells.map((cell, at) => heightOf(sheet, style, cell, (columns[at] ?? MEASURED).width - 2 * PAD.x));
  return Math.max(...heights) + 2 * PAD.y;
}

type Structure = ReturnType<Sheet["doc"]["struct"]>;

/** @param tag left out where the head is only shown again */
function drawRow(
  sheet: Sheet,
  table: Structure,
  columns: readonly Column[],
  cells: readonly string[],
  style: TextStyle,
  tag: "TH" | "TD" | undefined,
): void {
  const { doc, left, width } = sheet;
  const top = doc.y;
  const height = rowHeight(sheet, columns, cells, style);
  drawArtifact(sheet, () => {
    if (tag !== "TD") doc.rect(left, top, width, height).fill(SHADE);
    doc
      .lineWidth(0.5)
      .strokeColor(RULE)
      .moveTo(left, top + height)
      .lineTo(left + width, top + height)
      .stroke();
  });
  const draw = (cell: string, at: number) => {
    const { x, width: wide } = columns[at] ?? MEASURED;
    setText(sheet, style, cell, x + PAD.x, top + PAD.y, wide - 2 * PAD.x);
  };
  if (tag === undefined) drawArtifact(sheet, () => cells.forEach(draw));
  else {
    const row = doc.struct("TR");
    table.add(row);
    for (const [at, cell] of cells.entries())
      row.add(doc.struct(tag, tag === "TH" ? COLUMN_HEAD : {}, [() => draw(cell, at)]));
    row.end();
  }
  doc.y = top + height;
}

/** Each cell over the whole width under the name of its column, from page to page. */
function drawTallRow(sheet: Sheet, table: Structure, heads: readonly string[], cells: readonly string[]): void {
  const { doc, left, width } = sheet;
  const row = doc.struct("TR");
  table.add(row);
  for (const [at, cell] of cells.entries()) {
    makeRoom(sheet, 30);
    drawArtifact(sheet, () => setText(sheet, STRONG, heads[at] ?? "", left + PAD.x, doc.y + PAD.y, width - 2 * PAD.x));
    row.add(doc.struct("TD", {}, [() => setText(sheet, BODY, cell, left + PAD.x, doc.y, width - 2 * PAD.x)]));
  }
  row.end();
  drawArtifact(sheet, () => {
    doc
      .lineWidth(0.5)
      .strokeColor(RULE)
      .moveTo(left, doc.y + PAD.y)
      .lineTo(left + width, doc.y + PAD.y)
      .stroke();
  });
  doc.y += 2 * PAD.y;
}
