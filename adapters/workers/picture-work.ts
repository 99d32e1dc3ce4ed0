import type { ChartBlock } from "../../src/messages/card.ts";

/** One picture to draw in another thread. */
export type PictureWork =
  | { readonly kind: "svg"; readonly block: ChartBlock }
  | { readonly kind: "png"; readonly block: ChartBlock; readonly most_B?: number };
/** What came of it; a PNG that does not fit is left out. */
export interface DrawnPicture {
  readonly svg?: string;
  readonly png?: Uint8Array;
}
