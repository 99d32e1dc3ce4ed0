import { Resvg } from "@resvg/resvg-js";

/** Draws a square SVG without text as a PNG so many pixels wide. */
export function drawIcon(svg: string, width_px: number): Uint8Array {
  return new Resvg(svg, { fitTo: { mode: "width", value: width_px }, font: { loadSystemFonts: false } })
    .render()
    .asPng();
}
