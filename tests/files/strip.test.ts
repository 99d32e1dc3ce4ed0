import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { stripJpeg } from "../../adapters/files/strip-jpeg.ts";
import { stripPng } from "../../adapters/files/strip-png.ts";
import { stripWebp } from "../../adapters/files/strip-webp.ts";
import { createPictures } from "../../adapters/pictures/draw-chart.ts";
import { exifSegment, ICC, jpegSegment, jpegWith, PLACE, pngChunk, webpOf } from "../support/picture-files.ts";
import { SAMPLE_CARDS } from "../support/sample-cards.ts";

const place = Buffer.from(PLACE, "latin1");
const text = (head: string) => Buffer.from(`${head}${PLACE}`, "latin1");

describe("JPEG", () => {
  const XMP = jpegSegment(0xe1, text("http://ns.adobe.com/xap/1.0/\0"));
  const MORE_PICTURES = jpegSegment(0xe2, text("MPF\0"));
  const SMALL_PICTURE = jpegSegment(0xe0, text("JFXX\0"));
  const CAPTION = jpegSegment(0xed, text("Photoshop 3.0\0"));
  const COMMENT = jpegSegment(0xfe, place);
  const OF_A_MAKER = jpegSegment(0xe5, place);

  test("everything that says where it was taken goes, and the picture stays byte for byte", () => {
    const full = jpegWith(
      [exifSegment(1, false), XMP, ICC, MORE_PICTURES, SMALL_PICTURE, CAPTION, COMMENT, OF_A_MAKER],
      jpegWith([exifSegment(1, true)]),
    );
    expect(full.includes(place)).toBe(true);
    expect(stripJpeg(full)).toEqual(jpegWith([ICC]));
  });

  test.each([
    { turn: 6, isLittle: true },
    { turn: 3, isLittle: false },
    { turn: 8, isLittle: true },
  ])("a picture that is to be turned ($turn) still is", ({ turn, isLittle }) => {
    const stripped = Buffer.from(stripJpeg(jpegWith([exifSegment(turn, isLittle)])) ?? []);
    expect(stripped.includes(place)).toBe(false);
    // Stripped once more, the turn is read back from what was written.
    expect(Buffer.from(stripJpeg(stripped) ?? [])).toEqual(stripped);
    expect(stripped.indexOf("Exif\0\0", 0, "latin1")).toBe(6);
    expect(stripped[6 + 6 + 8 + 2 + 9]).toBe(turn);
  });

  test("a turn that is none is left out", () => {
    expect(stripJpeg(jpegWith([exifSegment(9, true)]))).toEqual(jpegWith([]));
  });

  test("a file that is cut off anywhere is refused", () => {
    const whole = jpegWith([exifSegment(6, true), ICC]);
    for (let length = 2; length < whole.length; length += 1)
      expect({ length, stripped: stripJpeg(whole.subarray(0, length)) }).toEqual({ length, stripped: undefined });
  });
});

describe("PNG", () => {
  const chart = SAMPLE_CARDS["chart"]?.blocks.find((block) => block.kind === "chart");
  if (chart?.kind !== "chart") throw new Error("no chart among the samples");
  // A picture that another library has written.
  const picture = Buffer.from(createPictures().drawPng(chart));
  const HEADER_end = 33;
  const withChunks = (...chunks: readonly Buffer[]) =>
    Buffer.concat([picture.subarray(0, HEADER_end), ...chunks, picture.subarray(HEADER_end)]);

  test("Exif, words and the time go, and the rest stays byte for byte", () => {
    const chunks = ["eXIf", "tEXt", "iTXt", "zTXt", "tIME"].map((name) => pngChunk(name, place));
    expect(stripPng(picture)).toEqual(picture);
    expect(stripPng(Buffer.concat([withChunks(...chunks), place]))).toEqual(picture);
  });

  test("a file that is cut off is refused", () => {
    for (const length of [8, 20, HEADER_end, picture.length - 13, picture.length - 1])
      expect(stripPng(picture.subarray(0, length))).toBeUndefined();
  });
});

describe("WebP", () => {
  const coded = ["VP8 ", Buffer.from([1, 2, 3])] as const;
  const header = (bits: number) => ["VP8X", Buffer.from([bits, 0, 0, 0, 0, 0, 0, 0, 0, 0])] as const;

  test("Exif and XMP go with the bits that announce them", () => {
    const full = webpOf(header(0b0011_1100), coded, ["EXIF", place], ["XMP ", place]);
    expect(stripWebp(Buffer.concat([full, place]))).toEqual(webpOf(header(0b0011_0000), coded));
  });

  test("a file that is cut off is refused", () => {
    const full = webpOf(coded);
    for (let length = 0; length < full.length; length += 1) expect(stripWebp(full.subarray(0, length))).toBeUndefined();
  });
});

test("no bytes at all make a stripper throw, and what it gives back is never longer by more than the turn", () => {
  const start = fc.constantFrom<readonly number[]>(
    [0xff, 0xd8],
    [0x89, 0x50, 0x4e, 0x47, 13, 10, 26, 10],
    [0x52, 0x49],
  );
  fc.assert(
    fc.property(start, fc.uint8Array({ maxLength: 200 }), (head, rest) => {
      const bytes = Uint8Array.from([...head, ...rest]);
      for (const strip of [stripJpeg, stripPng, stripWebp])
        expect(strip(bytes)?.length ?? 0).toBeLessThanOrEqual(bytes.length + 36);
    }),
  );
});
