import type { AnswerTable, Finding, TableCell } from "../declaration/answer.ts";
import type { Chart, ChartSeries } from "../declaration/chart.ts";
import type { QuantityKind } from "../units/quantity-kinds.ts";
import type { ChartBlock, TableBlock } from "./card.ts";
import { sayFinding, showDatum, showQuantity, type TopicVoice } from "./voice.ts";

/** Rows beyond which the table beside a chart only picks points. */
const MOST_CHART_ROWS = 13;

/** A table of results with its columns and cells in words. */
export function buildTableBlock(voice: TopicVoice, table: AnswerTable): TableBlock {
  const texts = voice.words.tables?.[table.id];
  const columns = voice.topic.tables?.[table.id] ?? [];
  return {
    kind: "table",
    caption: texts?.title ?? table.id,
    columns: columns.map((id) => texts?.columns[id] ?? id),
    rows: table.rows.map((row) => row.map((cell) => showCell(voice, cell))),
  };
}

export function showCell(voice: TopicVoice, cell: TableCell): string {
  if (isList(cell)) return cell.map((finding) => sayFinding(voice, finding)).join(" ");
  return typeof cell === "object" && "code" in cell ? sayFinding(voice, cell) : showDatum(voice, cell);
}

function isList(cell: TableCell): cell is readonly Finding[] {
  return Array.isArray(cell);
}

/** A chart with its words, a text that says the same, and a table of its points. */
export function buildChartBlock(voice: TopicVoice, chart: Chart): ChartBlock {
  const texts = voice.words.charts?.[chart.id];
  const labels: Readonly<Record<string, string>> = texts?.columns ?? {};
  const title = texts?.title ?? chart.id;
  return {
    kind: "chart",
    chart,
    units: voice.units,
    title,
    alt: [title, ...describable(chart.series).map((series) => describeSeries(voice, chart, series, labels))].join(". "),
    labels: { x: voice.common.axes[chart.xKind], ...monthLabels(voice, chart), ...labels },
    table: tabulate(voice, chart, voice.common.chartNumbers(title), labels),
  };
}

type Labels = Readonly<Record<string, string>>;

/** Letters of a month's name that stand on an axis; in English and Spanish the first three are its usual short form. */
const SHORT_MONTH = 3;

/** Short names of the months under `month-1` to `month-12`, for an axis of months. */
function monthLabels({ common }: TopicVoice, { xKind }: Chart): Labels {
  if (xKind !== "month") return {};
  return Object.fromEntries(common.months.map((name, index) => [`month-${index + 1}`, name.slice(0, SHORT_MONTH)]));
}

/** Id of the words for all the layers of a tank together. */
const ALL_LAYERS = "layers";

/** The layers of a tank say one thing between them, from the coldest to the warmest; the others each say their own. */
function describable(series: readonly ChartSeries[]): readonly ChartSeries[] {
  const layers = series.filter(({ mark }) => mark === "layer");
  const [top] = layers;
  if (top === undefined) return series;
  const together: ChartSeries = {
    ...top,
    id: ALL_LAYERS,
    y: layers.flatMap(({ y }) => y),
    x: layers.flatMap(({ x }) => x),
  };
  const kept = series.filter((one) => one.mark !== "layer" || one === top);
  return kept.map((one) => (one === top ? together : one));
}

/** Of the layers of a tank a table shows the top and the bottom, which say how it is layered. */
function tabulable(series: readonly ChartSeries[]): readonly ChartSeries[] {
  const layers = series.filter(({ mark }) => mark === "layer");
  return series.filter((one) => one.mark !== "layer" || one === layers.at(0) || one === layers.at(-1));
}

function describeSeries(voice: TopicVoice, chart: Chart, series: ChartSeries, labels: Labels): string {
  const lowest = Math.min(...(series.y0 ?? series.y));
  const highest = Math.max(...series.y);
  const [first, last] = [series.x.at(0), series.x.at(-1)];
  if (first === undefined || last === undefined) return voice.common.chartEmpty(labels[series.id] ?? series.id);
  return voice.common.chartSpan(
    labels[series.id] ?? series.id,
    showQuantity(voice, { kind: series.kind, value: lowest }),
    showQuantity(voice, { kind: series.kind, value: highest }),
    showX(voice, chart, first),
    showX(voice, chart, last),
  );
}

function tabulate(voice: TopicVoice, chart: Chart, caption: string, labels: Labels): TableBlock {
  const shown = tabulable(chart.series);
  const xs = pickEvenly([...new Set(shown.flatMap((series) => series.x))].sort((a, b) => a - b));
  return {
    kind: "table",
    caption,
    columns: [voice.common.axes[chart.xKind], ...shown.map((series) => labels[series.id] ?? series.id)],
    rows: xs.map((x) => [showX(voice, chart, x), ...shown.map((series) => showPoint(voice, series, x))]),
  };
}

function pickEvenly(xs: readonly number[]): readonly number[] {
  if (xs.length <= MOST_CHART_ROWS) return xs;
  const step = (xs.length - 1) / (MOST_CHART_ROWS - 1);
  return Array.from({ length: MOST_CHART_ROWS }, (_, index) => xs[Math.round(index * step)]).filter(
    (x) => x !== undefined,
  );
}

function showPoint(voice: TopicVoice, series: ChartSeries, x: number): string {
  const index = series.x.indexOf(x);
  const y = series.y[index];
  const y0 = series.y0?.[index];
  if (y === undefined) return "";
  const high = showQuantity(voice, { kind: series.kind, value: y });
  if (y0 === undefined) return high;
  return voice.common.between(showQuantity(voice, { kind: series.kind, value: y0 }), high);
}

function showX(voice: TopicVoice, chart: Chart, x: number): string {
  return showAxisValue(voice, chart.xKind, x);
}

function showAxisValue(voice: TopicVoice, kind: QuantityKind | "hour_of_day" | "month", x: number): string {
  if (kind === "month") return voice.common.months[Math.round(x) - 1] ?? String(x);
  if (kind === "hour_of_day") {
    const minutes = Math.round(x * 60);
    return `${Math.floor(minutes / 60)}:${String(minutes % 60).padStart(2, "0")}`;
  }
  return showQuantity(voice, { kind, value: x });
}
