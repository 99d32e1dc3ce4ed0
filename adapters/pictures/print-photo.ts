import { Resvg } from "@resvg/resvg-js";
import { encodePalettePng, type Pixels } from "./palette-png.ts";
import { sizeOfJpeg, sizeOfPng } from "./photo-size.ts";

/** How a JPEG picture is to be turned, 1 to 8. */
export type TurnOf = (jpeg: Uint8Array) => number;

/** A photo this small goes on a paper as it is [bytes]. */
const SMALL_bytes = 250_000;
/** Longest side on paper: a photo of 3.5 in at about 200 dots an inch [pixels]. */
const LONGEST_px = 720;
/** Larger pictures would take more memory than their worth on paper [pixels]. */
const MOST_px = 60_000_000;

/**
 * A photo small enough for a paper: JPEG as it is where it is small, anything else as a PNG of few colours, upright.
 * @returns nothing where it cannot be read, such as WebP, which the renderer does not know
 */
export function printPhoto(bytes: Uint8Array, type: string, turnOf: TurnOf): Uint8Array | undefined {
  const isJpeg = type === "image/jpeg";
  if (!isJpeg && type !== "image/png") return undefined;
  const size = isJpeg ? sizeOfJpeg(bytes) : sizeOfPng(bytes);
  if (size === undefined || size.width * size.height > MOST_px) return undefined;
  if (isJpeg && bytes.length <= SMALL_bytes) return bytes;
  const pixels = render(bytes, type, size, isJpeg ? turnOf(bytes) : 1);
  return pixels && encodePalettePng(pixels, 256);
}

interface Size {
  readonly width: number;
  readonly height: number;
}

function render(bytes: Uint8Array, type: string, { width, height }: Size, turn: number): Pixels | undefined {
  const isOnSide = turn > 4;
  const [across, down] = isOnSide ? [height, width] : [width, height];
  const scale = Math.min(1, LONGEST_px / Math.max(across, down));
  const data = Buffer.from(bytes).toString("base64");
  const svg = [
    `<svg xmlns="http://www.w3.org/2000/svg" width="${Math.max(1, Math.round(across * scale))}"`,
    ` height="${Math.max(1, Math.round(down * scale))}" viewBox="0 0 ${across} ${down}" preserveAspectRatio="none">`,
    `<g transform="matrix(${turnMatrix(turn, width, height).join(" ")})">`,
    `<image width="${width}" height="${height}" href="data:${type};base64,${data}"/></g></svg>`,
  ].join("");
  const image = new Resvg(svg, { font: { loadSystemFonts: false } }).render();
  return onWhite({ width: image.width, height: image.height, rgba: image.pixels });
}

/** Brings a picture upright. @source CIPA DC-008 (Exif), Orientation 1 to 8 */
function turnMatrix(turn: number, width: number, height: number): readonly number[] {
  switch (turn) {
    case 2:
      return [-1, 0, 0, 1, width, 0];
    case 3:
      return [-1, 0, 0, -1, width, height];
    case 4:
      return [1, 0, 0, -1, 0, height];
    case 5:
      return [0, 1, 1, 0, 0, 0];
    case 6:
      return [0, 1, -1, 0, height, 0];
    case 7:
      return [0, -1, -1, 0, height, width];
    case 8:
      return [0, -1, 1, 0, 0, width];
    default:
      return [1, 0, 0, 1, 0, 0];
  }
}

/** The renderer leaves out what it cannot read: a picture without a single dot is none. Its colours are premultiplied. */
function onWhite({ width, height, rgba }: Pixels): Pixels | undefined {
  const paper = new Uint8Array(rgba.length);
  let isAnything = false;
  for (let at = 0; at < rgba.length; at += 4) {
    const opacity = rgba[at + 3] ?? 0;
    isAnything ||= opacity > 0;
    for (let channel = 0; channel < 3; channel += 1)
      paper[at + channel] = Math.min(255, (rgba[at + channel] ?? 0) + 255 - opacity);
    paper[at + 3] = 255;
  }
  return isAnything ? { width, height, rgba: paper } : undefined;
}
