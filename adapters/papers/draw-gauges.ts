import type { Gauge, PaperBlock } from "../../src/ports/papers.ts";
import {
  heightOf,
  INK,
  makeRoom,
  QUIET,
  RULE,
  type Sheet,
  SMALL,
  STRONG,
  setFigure,
  setParagraph,
  setStyle,
  setText,
  type TextStyle,
} from "./sheet.ts";
import { tidyText } from "./tidy-text.ts";

type Gauges = Extract<PaperBlock, { readonly kind: "gauges" }>;

const ROW = 30;
const BAND = { height: 9, fill: "#cfcfcf" } as const;
/** Shares of the width: name, scale, what was measured. */
const SHARES = { label: 0.32, scale: 0.48 } as const;
/** Free scale on either side, as a share of what is drawn. */
const ROOM = 0.18;
const LABEL: TextStyle = { size: 8.5 };

/** Readings on scales, told apart by form and not by colour: a shaded band with ends, and a black diamond. */
export function drawGauges(sheet: Sheet, { alt, legend, gauges }: Gauges): void {
  const { doc, left, width } = sheet;
  for (const [at, gauge] of gauges.entries()) {
    makeRoom(sheet, ROW);
    const top = doc.y;
    // The whole is said once, with the first scale; the numbers stand in the table above.
    const said = at === 0 ? alt : gaugeAlt(gauge);
    setFigure(sheet, said, { x: left, y: top, width, height: ROW }, () => drawGauge(sheet, gauge, top));
    doc.y = top + ROW;
  }
  setParagraph(sheet, SMALL, legend);
  doc.y += 6;
}

function gaugeAlt({ label, valueText, lowText, highText }: Gauge): string {
  return `${label}: ${valueText} (${lowText} – ${highText})`;
}

function drawGauge(sheet: Sheet, gauge: Gauge, top: number): void {
  const { doc, left, width } = sheet;
  const { label, value, low, high, valueText } = gauge;
  const labelWidth = width * SHARES.label - 8;
  const labelTop = top + Math.max(0, (18 - heightOf(sheet, LABEL, label, labelWidth)) / 2);
  setText(sheet, LABEL, label, left, labelTop, labelWidth);
  const x0 = left + width * SHARES.label;
  const wide = width * SHARES.scale;
  const [from, to] = [Math.min(low, value), Math.max(high, value)];
  const span = to - from || 1;
  const place = (one: number) => x0 + wide * ((one - from) / span / (1 + 2 * ROOM) + ROOM / (1 + 2 * ROOM));
  const middle = top + 9;
  doc
    .lineWidth(0.75)
    .strokeColor(RULE)
    .moveTo(x0, middle)
    .lineTo(x0 + wide, middle)
    .stroke();
  const [start, end] = [place(low), Math.max(place(high), place(low) + 1.5)];
  doc.rect(start, middle - BAND.height / 2, end - start, BAND.height).fillAndStroke(BAND.fill, QUIET);
  const at = place(value);
  doc.polygon([at, middle - 7], [at + 4, middle], [at, middle + 7], [at - 4, middle]).fill(INK);
  drawEnds(sheet, gauge, start, end, middle + 8);
  setText(sheet, STRONG, valueText, x0 + wide + 10, middle - 6, width * (1 - SHARES.label - SHARES.scale) - 10);
}

/** The names of both ends, as one where they would run into each other. */
function drawEnds(sheet: Sheet, { lowText, highText }: Gauge, start: number, end: number, y: number): void {
  const doc = setStyle(sheet, SMALL);
  const wide = (text: string) => doc.widthOfString(tidyText(text));
  const put = (text: string, x: number) => setText(sheet, SMALL, text, x - wide(text) / 2, y, wide(text) + 4);
  if (lowText === highText) put(lowText, (start + end) / 2);
  else if (end - start > (wide(lowText) + wide(highText)) / 2 + 8) {
    put(lowText, start);
    put(highText, end);
  } else put(`${lowText} – ${highText}`, (start + end) / 2);
}
