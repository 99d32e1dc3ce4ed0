import * as Plot from "@observablehq/plot";
import { parseHTML } from "linkedom";
import { PALETTE, seriesColour } from "./palette.ts";
import type { Panel, PanelSeries } from "./split-panels.ts";

export const PANEL_WIDTH = 900;
const MARGIN_LEFT = 150;
const MARGIN_RIGHT = 24;
const AXIS_HEIGHT = 46;
const HEADING_HEIGHT = 24;
/** Heights of the plotting area, by look and number of series. */
const HEIGHTS = {
  lines: () => 200,
  bars: () => 120,
  layers: () => 130,
  strips: (count: number) => 24 * count,
} as const satisfies Record<Panel["look"], (count: number) => number>;

/** Cells overlap by this much, so that no hairline shows between them. */
const SEAM = 0.6;
/** Share of a span that stays free on either side of its bars. */
const BAR_EDGE = 0.08;
/** Bars begin with the second colour: in a picture of a day they are water. */
const FIRST_BAR_COLOUR = 1;

interface Span {
  readonly x1: number;
  readonly x2: number;
  readonly y: number;
}
export interface PanelFrame {
  readonly labels: Readonly<Record<string, string>>;
  readonly xDomain: readonly [number, number];
  readonly xTicks: readonly number[];
  readonly showTick: (x: number) => string;
  /** Label of the shared x axis; given to the last panel only. */
  readonly xLabel?: string;
}

export interface PanelPicture {
  readonly svg: string;
  readonly height: number;
}

/** The colour of a series in its panel. */
export function colourOf(panel: Panel, index: number): string {
  return seriesColour(panel.look === "bars" ? index + FIRST_BAR_COLOUR : index);
}

/** Draws one panel as SVG; every text stands beside what it names, and none is left to colour alone. */
export function plotPanel(panel: Panel, frame: PanelFrame): PanelPicture {
  const marginBottom = frame.xLabel === undefined ? 6 : AXIS_HEIGHT;
  const height = HEADING_HEIGHT + HEIGHTS[panel.look](panel.series.length) + marginBottom;
  const { document } = parseHTML("<html><body></body></html>");
  const figure = Plot.plot({
    document,
    width: PANEL_WIDTH,
    height,
    marginLeft: MARGIN_LEFT,
    marginRight: MARGIN_RIGHT,
    marginTop: HEADING_HEIGHT,
    marginBottom,
    style: { fontFamily: "DejaVu Sans", fontSize: "13px", color: PALETTE.ink, background: "none" },
    x: { domain: [...frame.xDomain], axis: null },
    ...scalesOf(panel),
    marks: [...marksOf(panel, frame), ...xAxis(frame)],
  });
  return { svg: namespaced(figure.outerHTML), height };
}

function scalesOf(panel: Panel): Plot.PlotOptions {
  switch (panel.look) {
    case "lines":
      return { y: { nice: true, grid: true, label: null, ticks: 5 } };
    case "bars":
      return { y: { nice: true, grid: true, label: null, ticks: 3, zero: true } };
    case "layers": {
      const values = panel.series.flatMap(({ y }) => y);
      const domain = [Math.min(...values), Math.max(...values)];
      return {
        y: { type: "band", domain: panel.series.map(({ id }) => id), axis: null, padding: 0 },
        color: { type: "linear", domain: stretch(domain), range: [...PALETTE.layers], interpolate: "rgb" },
      };
    }
    case "strips":
      return { y: { type: "band", domain: panel.series.map(({ id }) => id), axis: null, padding: 0.25 } };
  }
}

/** As many domain points as there are layer colours, evenly spaced. */
function stretch([low = 0, high = 1]: number[]): number[] {
  const steps = PALETTE.layers.length - 1;
  return PALETTE.layers.map((_, index) => low + ((high - low) * index) / steps);
}

function marksOf(panel: Panel, frame: PanelFrame): Plot.Markish[] {
  switch (panel.look) {
    case "lines":
      return [...limitMarks(panel), ...lineMarks(panel)];
    case "bars":
      return barMarks(panel, frame);
    case "layers":
      return layerMarks(panel, frame);
    case "strips":
      return stripMarks(panel, frame);
  }
}

const DASHES = ["", "7 4", "2 3", "10 3 2 3"] as const;
/** Of a horizontal line that matters; its name stands over the panel, where no line crosses it. */
export const LIMIT_DASH = "3 4";

/** The dashes of a line, so that lines differ without colour. */
export function dashOf(index: number): string {
  return DASHES[index % DASHES.length] ?? "";
}

function lineMarks(panel: Panel): Plot.Markish[] {
  return panel.series.map((series, index) =>
    Plot.lineY(pointsOf(series), {
      x: "x",
      y: "y",
      stroke: colourOf(panel, index),
      strokeWidth: 2.2,
      ...(dashOf(index) !== "" && { strokeDasharray: dashOf(index) }),
    }),
  );
}

function limitMarks(panel: Panel): Plot.Markish[] {
  return panel.marks.map(({ value }) =>
    Plot.ruleY([value], { stroke: PALETTE.quiet, strokeDasharray: LIMIT_DASH, strokeWidth: 1.4 }),
  );
}

function barMarks(panel: Panel, frame: PanelFrame): Plot.Markish[] {
  const bars = panel.series.flatMap((series, index) =>
    spansOf(series, frame.xDomain[1]).map((span) => ({ ...span, series: index })),
  );
  const slots = panel.series.length;
  return [
    Plot.rect(bars, {
      x1: (bar) => bar.x1 + (bar.x2 - bar.x1) * (BAR_EDGE + ((1 - 2 * BAR_EDGE) * bar.series) / slots),
      x2: (bar) => bar.x1 + (bar.x2 - bar.x1) * (BAR_EDGE + ((1 - 2 * BAR_EDGE) * (bar.series + 1)) / slots),
      y1: 0,
      y2: "y",
      fill: (bar) => colourOf(panel, bar.series),
    }),
    Plot.ruleY([0], { stroke: PALETTE.quiet }),
  ];
}

function layerMarks(panel: Panel, frame: PanelFrame): Plot.Markish[] {
  const cells = panel.series.flatMap((series) =>
    spansOf(series, frame.xDomain[1]).map((span) => ({ ...span, id: series.id })),
  );
  return [Plot.barX(cells, { x1: "x1", x2: "x2", y: "id", fill: "y", insetBottom: -SEAM, insetRight: -SEAM })];
}

function stripMarks(panel: Panel, frame: PanelFrame): Plot.Markish[] {
  const on = panel.series.flatMap((series, index) =>
    joinSpans(spansOf(series, frame.xDomain[1]))
      .filter(({ y }) => y > 0)
      .map((span) => ({ ...span, id: series.id, index })),
  );
  const names = panel.series.map(({ id }) => ({ id, name: frame.labels[id] ?? id }));
  const track = { x1: frame.xDomain[0], x2: frame.xDomain[1], y: "id", fill: PALETTE.seam, fillOpacity: 0.45 };
  return [
    Plot.barX(names, track),
    Plot.barX(on, {
      x1: "x1",
      x2: "x2",
      y: "id",
      fill: (bar) => colourOf(panel, bar.index),
      fillOpacity: (bar) => bar.y,
    }),
    Plot.text(names, { frameAnchor: "left", y: "id", text: "name", textAnchor: "end", dx: -8, fill: PALETTE.ink }),
  ];
}

function xAxis(frame: PanelFrame): Plot.Markish[] {
  if (frame.xLabel === undefined) return [];
  const axis = { anchor: "bottom", ticks: [...frame.xTicks], tickFormat: frame.showTick } as const;
  return [Plot.axisX({ ...axis, label: frame.xLabel, labelAnchor: "center", labelArrow: "none", color: PALETTE.ink })];
}

function pointsOf({ x, y }: PanelSeries): { x: number; y: number }[] {
  return x.map((at, index) => ({ x: at, y: y[index] ?? Number.NaN }));
}

/** Neighbouring spans of the same value as one, so that no seam shows between them. */
function joinSpans(spans: readonly Span[]): Span[] {
  const joined: Span[] = [];
  for (const span of spans) {
    const last = joined.at(-1);
    if (last !== undefined && last.y === span.y && last.x2 === span.x1)
      joined[joined.length - 1] = { ...last, x2: span.x2 };
    else joined.push(span);
  }
  return joined;
}

/** Each value from its `x` to the next; the last as long as the one before it, or to the end of the axis. */
function spansOf({ x, y }: PanelSeries, end: number): Span[] {
  return x.map((x1, index) => {
    const step = index > 0 ? x1 - (x[index - 1] ?? x1) : end - x1;
    return { x1, x2: Math.min(end, x[index + 1] ?? x1 + step), y: y[index] ?? Number.NaN };
  });
}

/** The drawing library leaves out what a picture file needs. */
function namespaced(svg: string): string {
  return svg.includes("xmlns=") ? svg : svg.replace("<svg", '<svg xmlns="http://www.w3.org/2000/svg"');
}
