import type { Chart, ChartSeries } from "../declaration/chart.ts";
import type { HeatSource, WaterHeater } from "../equipment/water-heater.ts";
import { cell } from "../physics/tank/cell.ts";
import type { Trace } from "../physics/tank/trace.ts";
import type { TracedDay } from "./trace-day.ts";

/** The series of a day: outlet and what was wanted, the tank from top to bottom, water drawn, and what was heating. */
export const DAY_SERIES = [
  "outlet",
  "wanted",
  "layers",
  "layer_1",
  "layer_2",
  "layer_3",
  "layer_4",
  "layer_5",
  "layer_6",
  "layer_7",
  "layer_8",
  "layer_9",
  "layer_10",
  "layer_11",
  "layer_12",
  "drawn",
  "heat_pump",
  "upper",
  "lower",
] as const;

/** A picture needs no more points: one each ten minutes. */
const SHOWN_EVERY_s = 600;
const HOUR_s = 3600;
/** A source that ran for less of an interval than this is drawn as off. */
const RAN_LEAST = 0.1;

/** Draws one traced day as a chart: what left the tank, how it was layered, what was drawn and what ran. */
export function chartDay({ trace, from }: TracedDay, wanted_C: number, unit: WaterHeater): Chart {
  const step = Math.round(SHOWN_EVERY_s / trace.every_s);
  const starts = Array.from({ length: Math.floor((trace.count - from) / step) }, (_, k) => from + k * step);
  const x = starts.map((start) => ((start - from) * trace.every_s) / HOUR_s);
  const atEnd = (read: (i: number) => number) => starts.map((start) => round(read(start + step - 1)));
  const sum = (values: Float64Array) => starts.map((start) => sumOf(values, start, step));
  const strip = (id: string, values: Float64Array): ChartSeries => {
    const y = sum(values).map((share) => (share / step >= RAN_LEAST ? 1 : 0));
    return { id, mark: "strip", kind: "share", x, y };
  };
  const layers = Array.from({ length: trace.layers }, (_, place): ChartSeries => {
    const y = atEnd((i) => cell(trace.layers_C, i * trace.layers + trace.layers - 1 - place));
    return { id: `layer_${place + 1}`, mark: "layer", kind: "temperature", x, y };
  });
  return {
    id: "day",
    xKind: "hour_of_day",
    series: [
      { id: "outlet", mark: "line", kind: "temperature", x, y: atEnd((i) => cell(trace.outlet_C, i)) },
      ...layers,
      { id: "drawn", mark: "bar", kind: "volume", x, y: sum(trace.drawn_L).map(round) },
      ...stripsOf(trace, unit).map(([id, values]) => strip(id, values)),
    ],
    marks: [{ id: "wanted", kind: "temperature", value: wanted_C }],
  };
}

/** Sources that the unit has; one that never ran is shown as off all day. */
function stripsOf(trace: Trace, { elements, heatPump }: WaterHeater): readonly (readonly [HeatSource, Float64Array])[] {
  const all = [
    ["heat_pump", trace.heatPumpOn],
    ["upper", trace.upperOn],
    ["lower", trace.lowerOn],
  ] as const;
  return all.filter(([source]) =>
    source === "heat_pump" ? heatPump !== undefined : elements.some(({ place }) => place === source),
  );
}

function sumOf(values: Float64Array, start: number, count: number): number {
  let sum = 0;
  for (let i = start; i < start + count; i++) sum += cell(values, i);
  return sum;
}

/** Hundredths are finer than any picture, and keep a stored chart small. */
function round(value: number): number {
  return Math.round(value * 100) / 100;
}
