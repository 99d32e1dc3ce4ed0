import { inflateSync } from "node:zlib";
import { Resvg } from "@resvg/resvg-js";
import { describe, expect, test } from "vitest";
import { encodePalettePng, type Pixels } from "../../adapters/pictures/palette-png.ts";

/** Red, green, blue and white squares, nine to a row: an odd width, so that a line ends inside a byte. */
const WIDTH = 9;
const COLOURS = [
  [200, 16, 16],
  [16, 200, 16],
  [16, 16, 200],
  [255, 255, 255],
];
const colourAt = (x: number, y: number) => COLOURS[(x + y) % COLOURS.length] ?? [];
const pixels: Pixels = {
  width: WIDTH,
  height: 5,
  rgba: Uint8Array.from(
    Array.from({ length: WIDTH * 5 }, (_, at) => [...colourAt(at % WIDTH, Math.floor(at / WIDTH)), 255]).flat(),
  ),
};

/** Opened again by somebody else's decoder: the renderer draws the file into a picture of the same size. */
function decode(png: Uint8Array, width: number, height: number): Uint8Array {
  const url = `data:image/png;base64,${Buffer.from(png).toString("base64")}`;
  const svg = `<svg xmlns="http://www.w3.org/2000/svg" width="${width}" height="${height}"><image href="${url}" width="${width}" height="${height}" image-rendering="optimizeSpeed"/></svg>`;
  return new Resvg(svg).render().pixels;
}

describe.each([16, 256] as const)("a PNG of %d colours", (most) => {
  test("opens in another decoder pixel for pixel", () => {
    expect([...decode(encodePalettePng(pixels, most), WIDTH, 5)]).toEqual([...pixels.rgba]);
  });

  test("has the parts of the specification, in order, the last of them empty", () => {
    const png = Buffer.from(encodePalettePng(pixels, most));
    const types: string[] = [];
    for (let at = 8; at < png.length; at += png.readUInt32BE(at) + 12)
      types.push(png.toString("latin1", at + 4, at + 8));
    expect(types).toEqual(["IHDR", "PLTE", "IDAT", "IEND"]);
    // W3C PNG, 11.2.2: width, height, bit depth, colour type 3 (indexed), and three zeros.
    expect([...png.subarray(16, 29)]).toEqual([0, 0, 0, WIDTH, 0, 0, 0, 5, most === 16 ? 4 : 8, 3, 0, 0, 0]);
  });
});

test("sixteen colours take half the bytes of a line", () => {
  const sizes = ([16, 256] as const).map((most) => {
    const png = Buffer.from(encodePalettePng(pixels, most));
    const at = png.indexOf("IDAT");
    return inflateSync(png.subarray(at + 4, at + 4 + png.readUInt32BE(at - 4))).length;
  });
  expect(sizes).toEqual([5 * (1 + 5), 5 * (1 + 9)]);
});

test("a colour beyond the palette becomes its nearest", () => {
  const greys = Array.from({ length: 32 }, (_, step) => [step * 8, step * 8, step * 8, 255]);
  const common = Array.from({ length: 320 }, () => [0, 0, 0, 255]);
  const rgba = Uint8Array.from([...greys, ...common].flat());
  const [first = -1] = decode(encodePalettePng({ width: 352, height: 1, rgba }, 16), 352, 1);
  expect(first).toBe(0);
});
