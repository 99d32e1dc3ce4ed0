import { createRequire } from "node:module";
import { type Covers, readCoverage } from "./font-coverage.ts";

const require = createRequire(import.meta.url);

/** The fonts of papers, as files. */
export const FONTS = {
  plain: require.resolve("dejavu-fonts-ttf/ttf/DejaVuSansCondensed.ttf"),
  bold: require.resolve("dejavu-fonts-ttf/ttf/DejaVuSansCondensed-Bold.ttf"),
} as const;

let coverages: readonly Covers[] | undefined;

/** True where both fonts of papers have this letter or sign. */
export function canPrint(codePoint: number): boolean {
  coverages ??= Object.values(FONTS).map(readCoverage);
  return coverages.every((covers) => covers(codePoint));
}
