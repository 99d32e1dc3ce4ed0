import { Resvg } from "@resvg/resvg-js";
import { parseHTML } from "linkedom";
import { describe, expect, test } from "vitest";
import { createPictures, drawChart } from "../../adapters/pictures/draw-chart.ts";
import { buildChartBlock } from "../../src/messages/build-table-blocks.ts";
import type { ChartBlock } from "../../src/messages/card.ts";
import { speakOf, voiceFor } from "../../src/messages/voice.ts";
import { fixtureLibrary } from "../support/fixture-library.ts";

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

/** An invented year of costs, as the answer's card holds it. */
const YEAR = buildChartBlock(speakOf(voiceFor(fixtureLibrary, { language: "es", units: "us" }), "barrel"), {
  id: "cost",
  xKind: "month",
  series: ["new_heater", "old_heater"].map((id, index) => ({
    id,
    mark: "bar" as const,
    kind: "money" as const,
    x: [1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12],
    y: [30, 28, 26, 24, 22, 20, 18, 18, 20, 23, 26, 29].map((cost) => cost + 10 * index),
  })),
});
const LABELLED: ChartBlock = {
  ...YEAR,
  title: "Costo por mes",
  labels: { ...YEAR.labels, new_heater: "Este equipo", old_heater: "Calentador viejo" },
};

describe("the picture of a year", () => {
  test("says its title, its unit, the months in the reader's language in order, its axis, and every series", () => {
    const texts = textsOf(drawChart(LABELLED));
    const months = ["ene", "feb", "mar", "abr", "may", "jun", "jul", "ago", "sep", "oct", "nov", "dic"];
    expect(texts.filter((said) => months.includes(said))).toEqual(months);
    expect(texts).toEqual(expect.arrayContaining(["Costo por mes", "$", "Mes", "Este equipo", "Calentador viejo"]));
  });

  test("has two bars a month around the middle of the month", () => {
    const { document } = parseHTML(drawChart(LABELLED));
    const bars = [...document.querySelectorAll('g[aria-label="rect"] rect')].map((rect) => ({
      x: Number(rect.getAttribute("x")),
      width: Number(rect.getAttribute("width")),
    }));
    expect(bars).toHaveLength(24);
    const [first, second] = [bars[0], bars[12]];
    // The plotting area is 150 to 876 px wide; January is its first twelfth.
    const middle = 150 + (876 - 150) / 24;
    expect((first?.x ?? 0) + (first?.width ?? 0)).toBeCloseTo(middle, 1);
    expect(second?.x).toBeCloseTo(middle, 1);
  });
});

test("a limit is named over its panel, where no line crosses its name", () => {
  const { document } = parseHTML(drawChart(DAY));
  const named = [...document.querySelectorAll("text")].find((node) => node.textContent === "Wanted at the taps");
  const series = [...document.querySelectorAll("text")].find((node) => node.textContent === "Water at the outlet");
  expect(named?.getAttribute("y")).toBe(series?.getAttribute("y"));
});

describe("a picture that must fit", () => {
  const pictures = createPictures();
  const sizes = [LABELLED, DAY].map((block) => pictures.drawPng(block).byteLength);

  test("is the usual one where there is room", () => {
    const [year = 0] = sizes;
    expect(pictures.drawPngWithin(LABELLED, year)?.byteLength).toBe(year);
  });

  test("is a smaller one where there is less, and none where there is hardly any", () => {
    const [year = 0] = sizes;
    const smaller = pictures.drawPngWithin(LABELLED, year - 1);
    expect(smaller?.byteLength).toBeLessThan(year);
    expect(pictures.drawPngWithin(LABELLED, 200)).toBeUndefined();
  });
});

test("the PNG has ink where its title is, and loses it when the font is taken away", () => {
  const svg = drawChart(DAY);
  const inkWith = inkOfTitle(svg, true);
  expect(inkWith).toBeGreaterThan(500);
  expect(inkOfTitle(svg, false)).toBe(0);
  const png = createPictures().drawPng(DAY);
  expect([...png.slice(1, 4)].map((byte) => String.fromCharCode(byte)).join("")).toBe("PNG");
  expect(darkPixelsOf(png)).toBeGreaterThan(500);
});

/** Dark pixels of a PNG file, opened by the renderer. */
function darkPixelsOf(png: Uint8Array): number {
  const url = `data:image/png;base64,${Buffer.from(png).toString("base64")}`;
  const svg = `<svg xmlns="http://www.w3.org/2000/svg" width="900" height="700"><image href="${url}" width="900" height="700"/></svg>`;
  const { pixels } = new Resvg(svg).render();
  let dark = 0;
  for (let at = 0; at < pixels.length; at += 4) if ((pixels[at] ?? 255) < 80 && (pixels[at + 3] ?? 0) > 0) dark++;
  return dark;
}

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
