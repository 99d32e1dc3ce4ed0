import type { ChartBlock } from "../messages/card.ts";

/** Draws a chart; the same chart gives the same picture. */
export interface PicturePort {
  /** A picture for a page, with its text alternative inside. */
  drawSvg(block: ChartBlock): string;
  /** A picture for a platform that takes files. */
  drawPng(block: ChartBlock): Uint8Array;
}
