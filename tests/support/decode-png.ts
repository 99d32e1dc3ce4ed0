import { inflateSync } from "node:zlib";

export interface DecodedPng {
  readonly width: number;
  readonly height: number;
  /** Four bytes a pixel: red, green, blue, opacity. */
  readonly rgba: Uint8Array;
}

/**
 * Reads a PNG of eight bits a channel in true colour with opacity, not interlaced.
 * @source W3C, "Portable Network Graphics (PNG) Specification": 5 (chunks), 9.2 (filters), 11.2.2 (IHDR)
 */
export function decodePng(png: Uint8Array): DecodedPng {
  const bytes = Buffer.from(png);
  if (bytes.toString("latin1", 1, 4) !== "PNG") throw new Error("no PNG");
  const [width, height] = [bytes.readUInt32BE(16), bytes.readUInt32BE(20)];
  const format = [...bytes.subarray(24, 29)];
  if (String(format) !== "8,6,0,0,0") throw new Error(`PNG of another kind: ${format}`);
  const parts: Buffer[] = [];
  for (let at = 8; at < bytes.length; at += bytes.readUInt32BE(at) + 12)
    if (bytes.toString("latin1", at + 4, at + 8) === "IDAT")
      parts.push(bytes.subarray(at + 8, at + 8 + bytes.readUInt32BE(at)));
  return { width, height, rgba: unfilter(inflateSync(Buffer.concat(parts)), width * 4, height) };
}

function unfilter(lines: Buffer, row_B: number, rows: number): Uint8Array {
  const out = new Uint8Array(row_B * rows);
  for (let y = 0; y < rows; y++) {
    const kind = lines[y * (row_B + 1)];
    for (let x = 0; x < row_B; x++) {
      const at = y * row_B + x;
      const left = x < 4 ? 0 : (out[at - 4] ?? 0);
      const above = y === 0 ? 0 : (out[at - row_B] ?? 0);
      const corner = x < 4 || y === 0 ? 0 : (out[at - row_B - 4] ?? 0);
      const guess = [0, left, above, Math.floor((left + above) / 2), paeth(left, above, corner)][kind ?? 0] ?? 0;
      out[at] = (lines[y * (row_B + 1) + 1 + x] ?? 0) + guess;
    }
  }
  return out;
}

function paeth(left: number, above: number, corner: number): number {
  const guess = left + above - corner;
  const [a, b, c] = [left, above, corner].map((value) => Math.abs(guess - value));
  if (a === undefined || b === undefined || c === undefined) return 0;
  if (a <= b && a <= c) return left;
  return b <= c ? above : corner;
}
