import { crc32 } from "node:zlib";

/** Words that stand for where a picture was taken; none of them may be left. */
export const PLACE = "47.1234N 93.4321W";

const ascii = (text: string) => Buffer.from(text, "latin1");
export const jpegSegment = (marker: number, body: Uint8Array): Buffer => {
  const head = Buffer.from([0xff, marker, 0, 0]);
  head.writeUInt16BE(body.length + 2, 2);
  return Buffer.concat([head, body]);
};

/** An Exif segment with a turn and, in a directory of its own, where it was taken. */
export function exifSegment(turn: number, isLittle: boolean): Buffer {
  const tiff = Buffer.alloc(64);
  const u16 = (value: number, at: number) => (isLittle ? tiff.writeUInt16LE(value, at) : tiff.writeUInt16BE(value, at));
  const u32 = (value: number, at: number) => (isLittle ? tiff.writeUInt32LE(value, at) : tiff.writeUInt32BE(value, at));
  tiff.write(isLittle ? "II" : "MM", 0, "latin1");
  u16(42, 2);
  u32(8, 4);
  u16(2, 8);
  // Tag, type, count and value of the turn, then of the pointer to the places.
  u16(0x0112, 10);
  u16(3, 12);
  u32(1, 14);
  u16(turn, 18);
  u16(0x8825, 22);
  u16(4, 24);
  u32(1, 26);
  u32(40, 30);
  return jpegSegment(0xe1, Buffer.concat([ascii("Exif\0\0"), tiff, ascii(PLACE)]));
}

const JFIF = jpegSegment(0xe0, Buffer.concat([ascii("JFIF\0"), Buffer.from([1, 1, 0, 0, 1, 0, 1, 0, 0])]));
export const ICC = jpegSegment(0xe2, Buffer.concat([ascii("ICC_PROFILE\0"), Buffer.from([1, 1, 9, 9])]));
const TABLES = jpegSegment(0xdb, Buffer.alloc(65, 1));
const FRAME = jpegSegment(0xc2, Buffer.from([8, 0, 1, 0, 1, 1, 1, 0x11, 0]));
/** Two scans, with stuffed zeros and a restart in what is coded, as a progressive picture has them. */
const SCANS = Buffer.concat([
  jpegSegment(0xda, Buffer.from([1, 1, 0, 0, 0, 0])),
  Buffer.from([0x12, 0xff, 0x00, 0x34, 0xff, 0xd0, 0x56]),
  jpegSegment(0xda, Buffer.from([1, 1, 0, 1, 5, 0])),
  Buffer.from([0x78, 0xff, 0x00, 0x9a]),
]);
const END = Buffer.from([0xff, 0xd9]);
const START = Buffer.from([0xff, 0xd8]);

/** A picture with these segments behind its first, and these bytes behind its end. */
export function jpegWith(segments: readonly Buffer[], after: Uint8Array = Buffer.alloc(0)): Buffer {
  return Buffer.concat([START, JFIF, ...segments, TABLES, FRAME, SCANS, END, after]);
}

/** A chunk of a PNG file with its checksum. */
export function pngChunk(name: string, body: Uint8Array): Buffer {
  const named = Buffer.concat([ascii(name), body]);
  const [length, check] = [Buffer.alloc(4), Buffer.alloc(4)];
  length.writeUInt32BE(body.length);
  check.writeUInt32BE(crc32(named));
  return Buffer.concat([length, named, check]);
}

/** A WebP file of these chunks. */
export function webpOf(...chunks: readonly (readonly [name: string, body: Uint8Array])[]): Buffer {
  const parts = chunks.map(([name, body]) => {
    const length = Buffer.alloc(4);
    length.writeUInt32LE(body.length);
    return Buffer.concat([ascii(name), length, body, Buffer.alloc(body.length % 2)]);
  });
  const body = Buffer.concat([ascii("WEBP"), ...parts]);
  const length = Buffer.alloc(4);
  length.writeUInt32LE(body.length);
  return Buffer.concat([ascii("RIFF"), length, body]);
}
