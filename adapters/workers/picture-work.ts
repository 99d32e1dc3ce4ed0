import type { ChartBlock } from "../../src/messages/card.ts";
import type { RecordPaper } from "../../src/ports/papers.ts";

/** One picture or paper to draw in another thread. */
export type PictureWork =
  | { readonly kind: "svg"; readonly block: ChartBlock }
  | { readonly kind: "png"; readonly block: ChartBlock; readonly most_B?: number }
  | { readonly kind: "photo"; readonly bytes: Uint8Array; readonly type: string }
  | {
      readonly kind: "record";
      readonly paper: RecordPaper;
      /** Those that are nothing could not be printed. */
      readonly photos: ReadonlyMap<string, Uint8Array | undefined>;
    };
/** What came of it; a PNG that does not fit and a photo that cannot be printed are left out. */
export interface DrawnPicture {
  readonly svg?: string;
  readonly png?: Uint8Array;
  readonly photo?: Uint8Array;
  readonly pdf?: Uint8Array;
}
