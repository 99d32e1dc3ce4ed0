import type { Chart, ChartSeries } from "../../src/declaration/chart.ts";
import { fromBase } from "../../src/units/convert.ts";
import type { QuantityKind, UnitSystem } from "../../src/units/quantity-kinds.ts";
import { describeUnit, readersUnit } from "../../src/units/unit-table.ts";

/** Series that share one pair of axes, values in the unit that the reader reads. */
export interface Panel {
  readonly look: "lines" | "bars" | "layers" | "strips";
  readonly unit: string;
  readonly series: readonly PanelSeries[];
  readonly marks: readonly { readonly id: string; readonly value: number }[];
}
export interface PanelSeries {
  readonly id: string;
  readonly x: readonly number[];
  readonly y: readonly number[];
}

const LOOKS = {
  line: "lines",
  area: "lines",
  band: "lines",
  dots: "lines",
  bar: "bars",
  layer: "layers",
  strip: "strips",
} as const satisfies Record<ChartSeries["mark"], Panel["look"]>;

/** Groups the series of a chart into panels: same look and same kind of quantity share one, in order of appearance. */
export function splitPanels(chart: Chart, units: UnitSystem): readonly Panel[] {
  const groups = new Map<string, ChartSeries[]>();
  for (const series of chart.series) {
    const key = `${LOOKS[series.mark]} ${series.kind}`;
    groups.set(key, [...(groups.get(key) ?? []), series]);
  }
  return [...groups.values()].flatMap(([first, ...rest]) =>
    first === undefined ? [] : [makePanel(chart, first, rest, units)],
  );
}

function makePanel(chart: Chart, first: ChartSeries, rest: readonly ChartSeries[], units: UnitSystem): Panel {
  const look = LOOKS[first.mark];
  const read = (kind: QuantityKind, value: number) => fromBase(value, readersUnit(kind, units));
  const marks = look === "lines" ? (chart.marks ?? []).filter((mark) => mark.kind === first.kind) : [];
  return {
    look,
    unit: describeUnit(readersUnit(first.kind, units)).symbol,
    series: [first, ...rest].map(({ id, x, y, kind }) => ({ id, x, y: y.map((value) => read(kind, value)) })),
    marks: marks.map(({ id, kind, value }) => ({ id, value: read(kind, value) })),
  };
}
