import { Resvg } from "@resvg/resvg-js";
import { expect, test } from "vitest";
import { turnOfJpeg } from "../../adapters/files/strip-jpeg.ts";
import { printPhoto } from "../../adapters/pictures/print-photo.ts";
import { exifSegment, jpegSegment, pngChunk, webpOf } from "../support/picture-files.ts";
import { SMALL_JPEG } from "../support/small-jpeg.ts";

const START_B = 2;
/** A photo as a camera writes it: how it is to be turned stands first; large where more than a paper wants is in it. */
function photo(turn: number, isLarge: boolean): Buffer {
  const jpeg = Buffer.from(SMALL_JPEG);
  const weight = isLarge ? Array.from({ length: 5 }, () => jpegSegment(0xfe, Buffer.alloc(60_000))) : [];
  return Buffer.concat([jpeg.subarray(0, START_B), exifSegment(turn, true), ...weight, jpeg.subarray(START_B)]);
}

/** Reads a printed photo back by another way than it was written. */
function look(png: Uint8Array | undefined) {
  if (png === undefined) throw new Error("not printed");
  const file = Buffer.from(png);
  const [width, height] = [file.readUInt32BE(16), file.readUInt32BE(20)];
  const href = `data:image/png;base64,${file.toString("base64")}`;
  const size = `width="${width}" height="${height}"`;
  const { pixels } = new Resvg(
    `<svg xmlns="http://www.w3.org/2000/svg" ${size}><image ${size} href="${href}"/></svg>`,
  ).render();
  return { width, height, at: (x: number, y: number) => pixels.subarray((y * width + x) * 4, (y * width + x) * 4 + 3) };
}
const print = (turn: number) => look(printPhoto(photo(turn, true), "image/jpeg", turnOfJpeg));

const [WIDTH, HEIGHT] = [80, 60];
const [RIGHT, BOTTOM] = [WIDTH - 1, HEIGHT - 1];
type Place = readonly [column: number, row: number];
/**
 * Where the dot of an upright picture is stored.
 * @source CIPA DC-008 (Exif), Orientation: at which sides the stored first row and first column are to be seen
 */
const STORED_AT: Readonly<Record<number, (x: number, y: number) => Place>> = {
  1: (x, y) => [x, y],
  2: (x, y) => [RIGHT - x, y],
  3: (x, y) => [RIGHT - x, BOTTOM - y],
  4: (x, y) => [x, BOTTOM - y],
  5: (x, y) => [y, x],
  6: (x, y) => [y, BOTTOM - x],
  7: (x, y) => [RIGHT - y, BOTTOM - x],
  8: (x, y) => [RIGHT - y, x],
};

test.each([1, 2, 3, 4, 5, 6, 7, 8])("a large photo that was taken with turn %d is printed upright", (turn) => {
  const [stored, printed] = [print(1), print(turn)];
  expect([printed.width, printed.height]).toEqual(turn > 4 ? [HEIGHT, WIDTH] : [WIDTH, HEIGHT]);
  /** How far the printed picture is from what is stored, if it were turned so. */
  const distance = (find: (x: number, y: number) => Place) => {
    let sum = 0;
    for (let y = 0; y < printed.height; y += 1)
      for (let x = 0; x < printed.width; x += 1) {
        const was = stored.at(...find(x, y));
        sum += printed.at(x, y).reduce((far, value, channel) => far + Math.abs(value - (was[channel] ?? 0)), 0);
      }
    return sum;
  };
  const like = Object.entries(STORED_AT).filter(([one]) => Number(one) > 4 === turn > 4);
  const [nearest] = like.toSorted(([, one], [, other]) => distance(one) - distance(other));
  expect(nearest?.[0]).toBe(String(turn));
});

test("a small photo goes as it is, with its turn for whoever draws it", () => {
  const small = photo(6, false);
  const printed = printPhoto(small, "image/jpeg", turnOfJpeg);
  expect(printed).toBe(small);
  expect(turnOfJpeg(printed ?? Buffer.alloc(0))).toBe(6);
});

const header = (width: number, height: number) => {
  const body = Buffer.from([0, 0, 0, 0, 0, 0, 0, 0, 8, 2, 0, 0, 0]);
  body.writeUInt32BE(width, 0);
  body.writeUInt32BE(height, 4);
  return Buffer.concat([Buffer.from("\x89PNG\r\n\x1a\n", "latin1"), pngChunk("IHDR", body)]);
};

test.each([
  { name: "WebP, which the renderer does not know", bytes: webpOf(["VP8 ", Buffer.from([1])]), type: "image/webp" },
  { name: "a PNG without a picture in it", bytes: header(4, 4), type: "image/png" },
  { name: "a picture that says to be larger than memory", bytes: header(60_000, 60_000), type: "image/png" },
  { name: "no picture at all", bytes: Buffer.from("nothing"), type: "image/jpeg" },
])("$name is not printed, and nobody fails of it", ({ bytes, type }) => {
  expect(printPhoto(bytes, type, turnOfJpeg)).toBeUndefined();
});
