import type { ChartBlock } from "../messages/card.ts";

/** Draws a chart; the same chart gives the same picture. */
export interface PicturePort {
  /** A picture for a page, with its text alternative inside. */
  drawSvg(block: ChartBlock): string;
  /** A picture for a platform that takes files. */
  drawPng(block: ChartBlock): Uint8Array;
  /**
   * The best picture that is no larger.
   * @param most_B size of the file [bytes]
   * @returns nothing when even the smallest is larger
   */
  drawPngWithin(block: ChartBlock, most_B: number): Uint8Array | undefined;
}
