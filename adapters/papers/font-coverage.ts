import { readFileSync } from "node:fs";

/** True where the font has a picture of this code point. */
export type Covers = (codePoint: number) => boolean;

/** Tells what a TrueType font can print. @source OpenType 1.9, "cmap", format 12 */
export function readCoverage(path: string): Covers {
  const font = readFileSync(path);
  const groups = font.subarray(findGroups(font));
  const count = groups.readUInt32BE(12);
  const ranges = Array.from({ length: count }, (_, at) => {
    const start = 16 + at * 12;
    return { first: groups.readUInt32BE(start), last: groups.readUInt32BE(start + 4) };
  });
  return (codePoint) => ranges.some(({ first, last }) => codePoint >= first && codePoint <= last);
}

/** Where the table of whole Unicode begins. */
function findGroups(font: Buffer): number {
  const tables = font.readUInt16BE(4);
  for (let at = 12; at < 12 + tables * 16; at += 16) {
    if (font.toString("latin1", at, at + 4) !== "cmap") continue;
    const cmap = font.readUInt32BE(at + 8);
    const count = font.readUInt16BE(cmap + 2);
    for (let entry = cmap + 4; entry < cmap + 4 + count * 8; entry += 8) {
      const table = cmap + font.readUInt32BE(entry + 4);
      if (font.readUInt16BE(table) === 12) return table;
    }
  }
  throw new Error("the font does not say which letters it has");
}
