import { createRequire } from "node:module";
import { Resvg } from "@resvg/resvg-js";
import type { ChartBlock } from "../../src/messages/card.ts";
import type { PicturePort } from "../../src/ports/picture.ts";
import { PALETTE } from "./palette.ts";
import { encodePalettePng } from "./palette-png.ts";
import { colourOf, dashOf, LIMIT_DASH, PANEL_WIDTH, type PanelFrame, plotPanel } from "./plot-panel.ts";
import { type Panel, splitPanels } from "./split-panels.ts";

const require = createRequire(import.meta.url);
const FONTS = ["DejaVuSans.ttf", "DejaVuSans-Bold.ttf"].map((name) => require.resolve(`dejavu-fonts-ttf/ttf/${name}`));
const TITLE_HEIGHT = 40;
const HEADING_BASELINE = 16;

interface Rendering {
  readonly width: number;
  readonly colours: 16 | 256;
}
const USUAL: Rendering = { width: 1.5 * PANEL_WIDTH, colours: 256 };
/** From the best to the smallest; below two thirds of its width the letters of a picture run together. */
const SMALLER: readonly Rendering[] = [
  USUAL,
  { width: PANEL_WIDTH, colours: 256 },
  { width: PANEL_WIDTH, colours: 16 },
  { width: PANEL_WIDTH / 1.5, colours: 16 },
];

/** Draws charts with the plotting library, and turns them to PNG with the bundled font. */
export function createPictures(): PicturePort {
  return {
    drawSvg: drawChart,
    drawPng: (block) => toPng(drawChart(block), USUAL),
    drawPngWithin(block, most_B) {
      const svg = drawChart(block);
      for (const rendering of SMALLER) {
        const png = toPng(svg, rendering);
        if (png.byteLength <= most_B) return png;
      }
      return undefined;
    },
  };
}

function toPng(svg: string, { width, colours }: Rendering): Uint8Array {
  const image = new Resvg(svg, {
    fitTo: { mode: "width", value: width },
    background: PALETTE.paper,
    font: { fontFiles: FONTS, loadSystemFonts: false, defaultFontFamily: "DejaVu Sans" },
  }).render();
  return encodePalettePng({ width: image.width, height: image.height, rgba: image.pixels }, colours);
}

/** One SVG: the title, then the panels one under the other over a shared x axis. */
export function drawChart(block: ChartBlock): string {
  const panels = splitPanels(block.chart, block.units);
  const frame = frameOf(block);
  let top = TITLE_HEIGHT;
  const drawn = panels.map((panel, index) => {
    const isLast = index === panels.length - 1;
    const picture = plotPanel(panel, isLast ? { ...frame, xLabel: block.labels["x"] ?? "" } : frame);
    const placed = `${headPanel(panel, block, top)}<g transform="translate(0 ${top})">${picture.svg}</g>`;
    top += picture.height + 8;
    return placed;
  });
  const font = `font-family="DejaVu Sans, sans-serif"`;
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${PANEL_WIDTH} ${top}" width="${PANEL_WIDTH}" height="${top}" role="img" ${font}>`,
    `<title>${escapeXml(block.title)}</title><desc>${escapeXml(block.alt)}</desc>`,
    `<rect width="100%" height="100%" fill="${PALETTE.paper}"/>`,
    `<text x="16" y="26" font-size="18" font-weight="bold" fill="${PALETTE.ink}">${escapeXml(block.title)}</text>`,
    ...drawn,
    "</svg>",
  ].join("");
}

/** Over each panel its unit and, for lines and bars, a sample of every series and limit with its name. */
function headPanel(panel: Panel, block: ChartBlock, top: number): string {
  const y = top + HEADING_BASELINE;
  const unit = text(16, y, panel.look === "strips" ? "" : panel.unit, PALETTE.quiet);
  if (panel.look === "strips") return unit;
  if (panel.look === "layers") return unit + text(150, y, layerHeading(panel, block), PALETTE.ink);
  let x = 150;
  const key = (id: string, sample: (x: number) => string) => {
    const name = block.labels[id] ?? id;
    const drawn = sample(x) + text(x + SAMPLE_WIDTH + 6, y, name, PALETTE.ink);
    x += SAMPLE_WIDTH + 30 + name.length * 8;
    return drawn;
  };
  const keys = panel.series.map(({ id }, index) => key(id, (at) => sampleOf(panel, index, at, y)));
  const limits = panel.marks.map(({ id }) => key(id, (at) => lineSample(at, y, PALETTE.quiet, 1.4, LIMIT_DASH)));
  return unit + keys.join("") + limits.join("");
}

const SAMPLE_WIDTH = 22;

/** A series as it is drawn: a block of its bars, or a piece of its line with its dashes. */
function sampleOf(panel: Panel, index: number, x: number, y: number): string {
  const colour = colourOf(panel, index);
  if (panel.look === "lines") return lineSample(x, y, colour, 2.2, dashOf(index));
  return `<rect x="${x}" y="${y - 10}" width="${SAMPLE_WIDTH}" height="10" fill="${colour}"/>`;
}

function lineSample(x: number, y: number, colour: string, width: number, dash: string): string {
  const dashes = dash === "" ? "" : ` stroke-dasharray="${dash}"`;
  return `<path d="M${x} ${y - 4.5}h${SAMPLE_WIDTH}" stroke="${colour}" stroke-width="${width}"${dashes}/>`;
}

/** "Tank layers, top to bottom: 58 to 139": what the colours of the layers span. */
function layerHeading(panel: Panel, block: ChartBlock): string {
  const values = panel.series.flatMap(({ y }) => y);
  const name = block.labels["layers"] ?? "";
  return `${name}: ${Math.round(Math.min(...values))} – ${Math.round(Math.max(...values))} ${panel.unit}`;
}

function frameOf({ chart, labels }: ChartBlock): PanelFrame {
  if (chart.xKind === "month") {
    const months = Array.from({ length: 12 }, (_, index) => index + 1);
    return {
      labels,
      xDomain: [1, 13],
      xTicks: months.map((month) => month + 0.5),
      showTick: (x) => labels[`month-${Math.floor(x)}`] ?? String(Math.floor(x)),
    };
  }
  const lastHour = Math.max(24, ...chart.series.flatMap(({ x }) => x));
  const step = lastHour > 48 ? 12 : 3;
  const xTicks = Array.from({ length: Math.floor(lastHour / step) + 1 }, (_, index) => index * step);
  return { labels, xDomain: [0, lastHour], xTicks, showTick: (x) => `${x % 24 || (x === 0 ? 0 : 24)}` };
}

function text(x: number, y: number, said: string, fill: string): string {
  return `<text x="${x}" y="${y}" font-size="13" fill="${fill}">${escapeXml(said)}</text>`;
}

function escapeXml(said: string): string {
  return said.replace(/&/g, "&amp;").replace(/</g, "&lt;").replace(/>/g, "&gt;").replace(/"/g, "&quot;");
}
