/** What a file is by its first bytes; its name and what the sender says of it count for nothing. */
export type SniffedType = "image/jpeg" | "image/png" | "image/webp" | "application/pdf" | "heic" | "unknown";

/** Brands of the ISO base media format under which phones send HEIC and AVIF pictures. */
const HEIC_BRANDS = new Set(["heic", "heix", "hevc", "hevx", "heim", "heis", "mif1", "msf1", "avif", "avis"]);

/**
 * Tells the type of a file.
 * @source signatures: JPEG ITU-T T.81 (SOI and the marker after it); PNG ISO/IEC 15948, 5.2; WebP RFC 9649, 2.4;
 *   PDF ISO 32000-1, 7.5.2; `ftyp` box and brands ISO/IEC 14496-12 and 23008-12
 */
export function sniffType(bytes: Uint8Array): SniffedType {
  if (startsWith(bytes, [0xff, 0xd8, 0xff])) return "image/jpeg";
  if (startsWith(bytes, [0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a])) return "image/png";
  if (textAt(bytes, 0, 4) === "RIFF" && textAt(bytes, 8, 4) === "WEBP") return "image/webp";
  if (textAt(bytes, 0, 5) === "%PDF-") return "application/pdf";
  if (textAt(bytes, 4, 4) === "ftyp" && HEIC_BRANDS.has(textAt(bytes, 8, 4))) return "heic";
  return "unknown";
}

/** The bytes at a place, as the letters that they stand for. */
export function textAt(bytes: Uint8Array, start: number, length: number): string {
  return String.fromCharCode(...bytes.subarray(start, start + length));
}

function startsWith(bytes: Uint8Array, start: readonly number[]): boolean {
  return start.every((byte, place) => bytes[place] === byte);
}
