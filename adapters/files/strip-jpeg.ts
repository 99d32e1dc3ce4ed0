import { textAt } from "./sniff-type.ts";

const SOI = 0xd8;
const EOI = 0xd9;
const SOS = 0xda;
const APP0 = 0xe0;
const APP1 = 0xe1;
const APP2 = 0xe2;
const APP14 = 0xee;
const APP15 = 0xef;
const COMMENT = 0xfe;
const ORIENTATION = 0x0112;
const SHORT = 3;
/** An IFD entry: tag, type, count, value [bytes] */
const ENTRY_bytes = 12;

/**
 * Takes out of a JPEG file everything that may say where and by whom it was taken: Exif, XMP, captions, makers'
 * segments, comments, and whatever follows the end of the picture, such as further pictures with Exif of their own.
 * How the picture is to be turned is written back, and the colour profile stays.
 * @source ITU-T T.81, annex B (markers and segments); Exif in APP1 and its TIFF fields: CIPA DC-008; ICC profile in
 *   APP2: ICC.1, annex B.4; further pictures in APP2 "MPF": CIPA DC-007
 * @returns nothing when the file is damaged or cut off
 */
export function stripJpeg(bytes: Uint8Array): Uint8Array | undefined {
  const kept: Uint8Array[] = [bytes.subarray(0, 2)];
  let turn = 1;
  for (let at = 2; at < bytes.length; ) {
    if (bytes[at] !== 0xff) return undefined;
    const marker = bytes[at + 1];
    // Bytes of 0xff may stand before a marker.
    if (marker === 0xff) {
      at += 1;
      continue;
    }
    if (marker === EOI) return join([...kept, bytes.subarray(at, at + 2)], turn);
    if (marker === undefined || marker === 0 || marker === SOI) return undefined;
    const length = readUint16(bytes, at + 2);
    const end = at + 2 + (length ?? 0);
    if (length === undefined || length < 2 || end > bytes.length) return undefined;
    const segment = bytes.subarray(at, end);
    if (marker === APP1) turn = readTurn(segment) ?? turn;
    if (isKept(marker, segment)) kept.push(segment);
    at = end;
    if (marker !== SOS) continue;
    const next = endOfScan(bytes, end);
    if (next === undefined) return undefined;
    kept.push(bytes.subarray(end, next));
    at = next;
  }
  return undefined;
}

/** How a JPEG picture is to be turned, 1 to 8; 1 where it does not say. */
export function turnOfJpeg(bytes: Uint8Array): number {
  for (let at = 2; at + 4 <= bytes.length && bytes[at] === 0xff; ) {
    const marker = bytes[at + 1];
    const length = readUint16(bytes, at + 2) ?? 0;
    if (marker === SOS || length < 2) return 1;
    const turn = marker === APP1 ? readTurn(bytes.subarray(at, at + 2 + length)) : undefined;
    if (turn !== undefined) return turn;
    at += 2 + length;
  }
  return 1;
}

/** Application segments and comments go, but for those that say how to read the size and the colours. */
function isKept(marker: number, segment: Uint8Array): boolean {
  if (marker === COMMENT) return false;
  if (marker < APP0 || marker > APP15 || marker === APP14) return true;
  // The other kind of first segment, JFXX, is a small picture of its own, which may show what was cut away since.
  if (marker === APP0) return textAt(segment, 4, 4) === "JFIF";
  return marker === APP2 && textAt(segment, 4, 11) === "ICC_PROFILE";
}

/** The next marker after the coded picture: bytes of 0xff in it are followed by zero or by a restart. */
function endOfScan(bytes: Uint8Array, start: number): number | undefined {
  for (let at = start; at + 1 < bytes.length; at += 1) {
    if (bytes[at] !== 0xff) continue;
    const next = bytes[at + 1] ?? 0;
    if (next !== 0 && next !== 0xff && (next < 0xd0 || next > 0xd7)) return at;
  }
  return undefined;
}

/** How the picture is to be turned, 1 to 8, from the first directory of an Exif segment. */
function readTurn(segment: Uint8Array): number | undefined {
  if (textAt(segment, 4, 6) !== "Exif\0\0") return undefined;
  const tiff = segment.subarray(10);
  const isLittle = textAt(tiff, 0, 2) === "II";
  const view = new DataView(tiff.buffer, tiff.byteOffset, tiff.byteLength);
  if (tiff.length < 8) return undefined;
  const first = view.getUint32(4, isLittle);
  if (first + 2 > tiff.length) return undefined;
  const count = view.getUint16(first, isLittle);
  for (let entry = 0; entry < count; entry += 1) {
    const at = first + 2 + entry * ENTRY_bytes;
    if (at + ENTRY_bytes > tiff.length) return undefined;
    if (view.getUint16(at, isLittle) !== ORIENTATION || view.getUint16(at + 2, isLittle) !== SHORT) continue;
    const turn = view.getUint16(at + 8, isLittle);
    return turn >= 1 && turn <= 8 ? turn : undefined;
  }
  return undefined;
}

/** Puts the parts together, with an Exif segment that says the turn alone where the picture is not upright. */
function join(parts: readonly Uint8Array[], turn: number): Uint8Array {
  const [start = new Uint8Array(), ...rest] = parts;
  return Buffer.concat(turn === 1 ? [start, ...rest] : [start, turnSegment(turn), ...rest]);
}

function turnSegment(turn: number): Uint8Array {
  const tiff = [0x4d, 0x4d, 0, 42, 0, 0, 0, 8, 0, 1, 0x01, 0x12, 0, SHORT, 0, 0, 0, 1, 0, turn, 0, 0, 0, 0, 0, 0];
  const body = [...Buffer.from("Exif\0\0", "latin1"), ...tiff];
  return Uint8Array.from([0xff, APP1, 0, body.length + 2, ...body]);
}

function readUint16(bytes: Uint8Array, at: number): number | undefined {
  const [high, low] = [bytes[at], bytes[at + 1]];
  return high === undefined || low === undefined ? undefined : high * 256 + low;
}
