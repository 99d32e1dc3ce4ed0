import type { ChartSeries } from "../../src/declaration/chart.ts";
import type { ChartBlock } from "../../src/messages/card.ts";
import { makePrintable } from "./wrap-text.ts";

/** One sign a series, told apart without colour. */
const SIGNS = "#o+=";
const ROWS = 8;
/** Characters of one column of one series, and of the gap after each month. */
const COLUMN = 2;
const GAP = 1;
const MONTHS = 12;
const LEAST_MONTH_CHARACTERS = 4;

/** True for a year of months that fits, all counting the same. */
export function canSketchColumns(block: ChartBlock, width: number): boolean {
  const { series, xKind } = block.chart;
  const isAlike = series.every(({ mark, kind }) => mark === "bar" && kind === series[0]?.kind);
  const isYear = series.every(({ x }) => x.length === MONTHS) && block.table.rows.length === MONTHS;
  const total = highestText(block).length + 2 + MONTHS * monthWidth(series);
  return xKind === "month" && series.length > 0 && series.length <= SIGNS.length && isAlike && isYear && total <= width;
}

/** Columns from zero to the highest value, which is written beside the top, over the names of the months. */
export function sketchColumns(block: ChartBlock): readonly string[] {
  const { series } = block.chart;
  const highest = Math.max(...series.flatMap(({ y }) => y));
  const top = highestText(block);
  const heights = series.map(({ y }) => y.map((value) => (highest > 0 ? Math.round((value / highest) * ROWS) : 0)));
  const width = monthWidth(series);
  const rows = Array.from({ length: ROWS }, (_, index) => {
    const level = ROWS - index;
    const months = Array.from({ length: MONTHS }, (_, month) =>
      heights
        .map((column, one) => ((column[month] ?? 0) >= level ? (SIGNS[one] ?? "") : " ").repeat(COLUMN))
        .join("")
        .padEnd(width),
    );
    return `${(index === 0 ? top : "").padStart(top.length)} |${months.join("")}`.trimEnd();
  });
  const names = Array.from({ length: MONTHS }, (_, month) => monthName(block, month).padEnd(width)).join("");
  const key = series.map(({ id }, one) => `${SIGNS[one]} ${makePrintable(block.labels[id] ?? id)}`).join("   ");
  const margin = " ".repeat(top.length + 2);
  return [...rows, margin + names.trimEnd(), margin + key];
}

function monthWidth(series: readonly ChartSeries[]): number {
  return Math.max(LEAST_MONTH_CHARACTERS, series.length * COLUMN + GAP);
}

function monthName({ labels }: ChartBlock, month: number): string {
  return makePrintable(labels[`month-${month + 1}`] ?? String(month + 1));
}

/** The highest value as the table writes it. */
function highestText({ chart, table }: ChartBlock): string {
  const cells = chart.series.flatMap(({ y }, one) =>
    y.map((value, month) => ({ value, text: table.rows[month]?.[one + 1] ?? "" })),
  );
  const highest = cells.reduce((best, cell) => (cell.value > best.value ? cell : best), { value: -Infinity, text: "" });
  return makePrintable(highest.text);
}
