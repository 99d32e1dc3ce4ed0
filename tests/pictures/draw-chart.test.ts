import { Resvg } from "@resvg/resvg-js";
import { parseHTML } from "linkedom";
import { describe, expect, test } from "vitest";
import { createPictures, drawChart } from "../../adapters/pictures/draw-chart.ts";
import type { ChartBlock } from "../../src/messages/card.ts";

const HOURS = Array.from({ length: 96 }, (_, quarter) => quarter / 4);
const outlet_C = HOURS.map((hour) => 57 - 14 * Math.exp(-((hour - 19) ** 2)));
const layers = Array.from({ length: 12 }, (_, layer) => ({
  id: `layer_${layer + 1}`,
  mark: "layer" as const,
  kind: "temperature" as const,
  x: HOURS,
  y: outlet_C.map((top_C) => top_C - layer * 1.5),
}));
/** An invented day; only its shape matters. */
const DAY: ChartBlock = {
  kind: "chart",
  units: "us",
  title: "Hot water & heat <through> the day",
  alt: "The outlet falls to 109 °F at 19 h.",
  labels: { x: "Hour of the day", outlet: "Water at the outlet", wanted: "Wanted at the taps", heat_pump: "Heat pump" },
  table: { kind: "table", caption: "", columns: [], rows: [] },
  chart: {
    id: "day",
    xKind: "hour_of_day",
    series: [
      { id: "outlet", mark: "line", kind: "temperature", x: HOURS, y: outlet_C },
      ...layers,
      { id: "heat_pump", mark: "strip", kind: "share", x: [0, 7, 14, 24], y: [0, 1, 0, 0] },
    ],
    marks: [{ id: "wanted", kind: "temperature", value: 40.6 }],
  },
};
const textsOf = (svg: string) =>
  [...parseHTML(svg).document.querySelectorAll("text")].map((node) => node.textContent ?? "");

describe("the picture of a day", () => {
  const svg = drawChart(DAY);

  test.each([
    "Hot water & heat <through> the day",
    "Water at the outlet",
    "Wanted at the taps",
    "Heat pump",
    "Hour of the day",
  ])("says %s", (said) => expect(textsOf(svg)).toContain(said));

  test("numbers its axes in the reader's unit: 134.6 °F is the highest outlet, so 130 stands and 57 does not", () => {
    const numbers = textsOf(svg);
    expect(numbers).toContain("130");
    expect(numbers).not.toContain("57");
    expect(textsOf(drawChart({ ...DAY, units: "si" }))).toContain("55");
  });

  test("carries its text alternative", () => {
    expect(parseHTML(svg).document.querySelector("desc")?.textContent).toBe(DAY.alt);
  });

  test("shows twelve rows of layers and joins a running source into one bar", () => {
    const { document } = parseHTML(svg);
    const heights = [...document.querySelectorAll("rect")].map((rect) => Number(rect.getAttribute("height")));
    expect(heights.filter((height) => height > 10.5 && height < 12).length).toBe(12 * HOURS.length);
  });
});

test("the PNG has ink where its title is, and loses it when the font is taken away", () => {
  const svg = drawChart(DAY);
  const inkWith = inkOfTitle(svg, true);
  expect(inkWith).toBeGreaterThan(500);
  expect(inkOfTitle(svg, false)).toBe(0);
  const png = createPictures().drawPng(DAY);
  expect([...png.slice(1, 4)].map((byte) => String.fromCharCode(byte)).join("")).toBe("PNG");
});

/** Dark pixels in the strip that holds the title. */
function inkOfTitle(svg: string, hasFont: boolean): number {
  const font = new URL("../../node_modules/dejavu-fonts-ttf/ttf/DejaVuSans-Bold.ttf", import.meta.url).pathname;
  const image = new Resvg(svg, {
    font: { fontFiles: hasFont ? [font] : [], loadSystemFonts: false, defaultFontFamily: "DejaVu Sans" },
  }).render();
  const { width, pixels } = image;
  let ink = 0;
  for (let y = 8; y < 34; y++) for (let x = 0; x < width; x++) if ((pixels[(y * width + x) * 4] ?? 255) < 80) ink++;
  return ink;
}
