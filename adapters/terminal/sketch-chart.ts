import type { ChartSeries } from "../../src/declaration/chart.ts";
import type { ChartBlock } from "../../src/messages/card.ts";
import { makePrintable } from "./wrap-text.ts";

const LEVELS = " .:-=+*#";

/**
 * A chart as one strip of characters a series, darkest where the value is highest. A rough picture for a plain
 * terminal; the numbers stand in the chart's text and table.
 */
export function sketchChart(block: ChartBlock, width: number): readonly string[] {
  const names = block.chart.series.map((series) => makePrintable(block.labels[series.id] ?? series.id));
  const labels = Math.min(18, Math.max(0, ...names.map((name) => name.length)));
  return block.chart.series.map((series, index) => {
    const name = (names[index] ?? "").slice(0, labels).padEnd(labels);
    return `${name} |${sketchStrip(series, Math.max(10, width - labels - 4))}|`;
  });
}

function sketchStrip(series: ChartSeries, columns: number): string {
  const lowest = Math.min(...series.y);
  const span = Math.max(...series.y) - lowest;
  return Array.from({ length: columns }, (_, column) => {
    const from = Math.floor((column * series.y.length) / columns);
    const to = Math.max(from + 1, Math.floor(((column + 1) * series.y.length) / columns));
    const highest = Math.max(...series.y.slice(from, to));
    const share = span > 0 ? (highest - lowest) / span : 0;
    return LEVELS[Math.round(share * (LEVELS.length - 1))] ?? " ";
  }).join("");
}
