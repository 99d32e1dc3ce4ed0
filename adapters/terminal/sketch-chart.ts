import type { ChartSeries } from "../../src/declaration/chart.ts";
import type { ChartBlock } from "../../src/messages/card.ts";
import { canSketchColumns, sketchColumns } from "./sketch-columns.ts";
import { makePrintable } from "./wrap-text.ts";

/** From nothing to the most; what is always there, such as a temperature, begins with the second. */
const LEVELS = " .:-=+*#";
const MOST_LABEL_CHARACTERS = 18;
const LEAST_COLUMNS = 10;

/**
 * A chart in characters: months as columns, everything else as one strip a series, darkest where the value is highest.
 * Series that are drawn alike and count the same share their scale. A rough picture for a plain terminal; the numbers
 * stand in the chart's text and table.
 */
export function sketchChart(block: ChartBlock, width: number): readonly string[] {
  if (canSketchColumns(block, width)) return sketchColumns(block);
  const names = block.chart.series.map((series) => makePrintable(block.labels[series.id] ?? series.id));
  const labels = Math.min(MOST_LABEL_CHARACTERS, Math.max(0, ...names.map((name) => name.length)));
  const columns = Math.max(LEAST_COLUMNS, width - labels - 4);
  const domain = domainOf(block);
  const strips = block.chart.series.map((series, index) => {
    const name = (names[index] ?? "").slice(0, labels).padEnd(labels);
    return `${name} |${sketchStrip(series, scaleOf(block.chart.series, series), domain, columns)}|`;
  });
  return [...strips, ...hourAxis(block, columns).map((line) => " ".repeat(labels + 2) + line)];
}

type Span = readonly [low: number, high: number];

/** Of all series together, so that what stands in one column happens at one time. */
function domainOf({ chart }: ChartBlock): Span {
  const xs = chart.series.flatMap(({ x }) => x);
  if (chart.xKind === "hour_of_day") return [0, Math.max(24, ...xs)];
  if (chart.xKind === "month") return [1, 13];
  return [Math.min(...xs), Math.max(...xs)];
}

const isAmount = ({ mark }: ChartSeries) => mark === "bar" || mark === "strip";

function scaleOf(all: readonly ChartSeries[], series: ChartSeries): Span {
  const alike = all.filter((one) => one.kind === series.kind && isAmount(one) === isAmount(series));
  const values = alike.flatMap(({ y }) => y);
  return [isAmount(series) ? Math.min(0, ...values) : Math.min(...values), Math.max(...values)];
}

function sketchStrip(series: ChartSeries, [low, high]: Span, [start, end]: Span, columns: number): string {
  const least = isAmount(series) ? 0 : 1;
  const step = (end - start) / columns;
  return Array.from({ length: columns }, (_, column) => {
    const value = valueBetween(series, start + column * step, start + (column + 1) * step);
    if (value === undefined) return " ";
    const share = high > low ? (value - low) / (high - low) : 0;
    return LEVELS[least + Math.round(share * (LEVELS.length - 1 - least))] ?? " ";
  }).join("");
}

/** The most of an amount, so that a short draw is not lost; of anything else the mean, so that a dip is not. */
function valueBetween(series: ChartSeries, from: number, to: number): number | undefined {
  const inside = series.y.filter((_, index) => {
    const at = series.x[index] ?? Number.NaN;
    return at >= from && at < to;
  });
  const before = series.x.findLastIndex((at) => at < from);
  const values = inside.length > 0 || before < 0 ? inside : [heldAt(series, before, (from + to) / 2)];
  if (values.length === 0) return undefined;
  return isAmount(series) ? Math.max(...values) : values.reduce((sum, value) => sum + value, 0) / values.length;
}

/** What holds after a point: an amount as it was, a line on its way to the next point. */
function heldAt({ mark, x, y }: ChartSeries, before: number, at: number): number {
  const [x0 = 0, x1, y0 = 0, y1] = [x[before], x[before + 1], y[before], y[before + 1]];
  if (mark !== "line" || x1 === undefined || y1 === undefined || x1 === x0) return y0;
  return y0 + ((y1 - y0) * (at - x0)) / (x1 - x0);
}

const HOURS_A_TICK = 6;

/** "0       6       12       18       24" under a day. */
function hourAxis(block: ChartBlock, columns: number): readonly string[] {
  if (block.chart.xKind !== "hour_of_day") return [];
  const [start, end] = domainOf(block);
  let line = "";
  for (let hour = start; hour <= end; hour += HOURS_A_TICK) {
    const mark = String(hour);
    const place = Math.round(((hour - start) / (end - start)) * columns) - (hour === end ? mark.length : 0);
    if (place >= line.length) line = line.padEnd(place) + mark;
  }
  return [line];
}
