import type { QuantityKind } from "../units/quantity-kinds.ts";

/** A picture as data. Labels are ids that the message catalogues word; values are in base units. */
export interface ChartSeries {
  readonly id: string;
  /** A tank layer is a row of colour, the top layer first; a strip is on (1) or off (0) and holds until the next `x`. */
  readonly mark: "line" | "area" | "bar" | "band" | "dots" | "layer" | "strip";
  readonly kind: QuantityKind;
  readonly x: readonly number[];
  readonly y: readonly number[];
  /** Lower edge of a band; `y` is the upper edge. */
  readonly y0?: readonly number[];
}
export interface Chart {
  readonly id: string;
  readonly xKind: QuantityKind | "hour_of_day" | "month";
  readonly series: readonly ChartSeries[];
  /** Horizontal lines that matter, such as the temperature somebody asked for. */
  readonly marks?: readonly { readonly id: string; readonly kind: QuantityKind; readonly value: number }[];
}
