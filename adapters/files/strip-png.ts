import { textAt } from "./sniff-type.ts";

const SIGNATURE_bytes = 8;
/** Length, name and checksum around what a chunk holds. */
const AROUND_bytes = 12;
/** Exif, words (XMP is kept in them) and the time; none of them is needed to show the picture. */
const TAKEN_OUT = new Set(["eXIf", "zxIf", "tEXt", "zTXt", "iTXt", "tIME"]);

/**
 * Takes out of a PNG file what may say where and when it was taken, and whatever follows its end. Every other chunk
 * stays as it is, with its checksum.
 * @source ISO/IEC 15948 (PNG), 5.3 chunk layout and 11.3 ancillary chunks; eXIf: PNG third edition, 11.3.4.5
 * @returns nothing when the file is damaged or cut off
 */
export function stripPng(bytes: Uint8Array): Uint8Array | undefined {
  const kept: Uint8Array[] = [bytes.subarray(0, SIGNATURE_bytes)];
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  for (let at = SIGNATURE_bytes; at + AROUND_bytes <= bytes.length; ) {
    const end = at + AROUND_bytes + view.getUint32(at);
    if (end > bytes.length) return undefined;
    const name = textAt(bytes, at + 4, 4);
    if (!TAKEN_OUT.has(name)) kept.push(bytes.subarray(at, end));
    if (name === "IEND") return Buffer.concat(kept);
    at = end;
  }
  return undefined;
}
