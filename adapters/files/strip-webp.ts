import { textAt } from "./sniff-type.ts";

const HEADER_bytes = 12;
const CHUNK_HEAD_bytes = 8;
const TAKEN_OUT = new Set(["EXIF", "XMP "]);
/** Bits of the extended header that announce Exif (3) and XMP (2). */
const ANNOUNCED = 0b0000_1100;

/**
 * Takes Exif and XMP out of a WebP file, with the bits that announce them, and whatever follows its end.
 * @source RFC 9649, 2.3 to 2.7 (RIFF chunks, extended header, metadata chunks)
 * @returns nothing when the file is damaged or cut off
 */
export function stripWebp(bytes: Uint8Array): Uint8Array | undefined {
  if (bytes.length < HEADER_bytes) return undefined;
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const size = CHUNK_HEAD_bytes + view.getUint32(4, true);
  if (size > bytes.length) return undefined;
  const kept: Uint8Array[] = [];
  for (let at = HEADER_bytes; at + CHUNK_HEAD_bytes <= size; ) {
    const length = view.getUint32(at + 4, true);
    // Chunks end at an even place.
    const end = at + CHUNK_HEAD_bytes + length + (length % 2);
    if (end > size) return undefined;
    const name = textAt(bytes, at, 4);
    const chunk = Uint8Array.from(bytes.subarray(at, end));
    if (name === "VP8X") chunk[CHUNK_HEAD_bytes] = (chunk[CHUNK_HEAD_bytes] ?? 0) & ~ANNOUNCED;
    if (!TAKEN_OUT.has(name)) kept.push(chunk);
    at = end;
  }
  if (kept.length === 0) return undefined;
  const body = Buffer.concat(kept);
  const header = Buffer.from(bytes.subarray(0, HEADER_bytes));
  header.writeUInt32LE(body.length + 4, 4);
  return Buffer.concat([header, body]);
}
